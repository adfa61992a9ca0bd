using System.Net;
using System.Text.RegularExpressions;
using Evengrist.Records;
using Evengrist.Web.Start;
using Microsoft.AspNetCore.Builder;

namespace Evengrist.Edge.Tests.Web;

/// <summary>The web app on a free loopback port over a tiny mill, real server and all; one for all tests of the collection.</summary>
public sealed class WebSite : IAsyncLifetime
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("evengrist-web-");
    private WebApplication? app;

    /// <summary>The mill behind the pages.</summary>
    public Mill Mill { get; private set; } = null!;

    /// <summary>Where it listens.</summary>
    public Uri Address { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        Mill = TinyMill.Open(Path.Combine(folder.FullName, "tiny.db"));
        app = EvengristApp.Build(new WebOptions(folder.FullName, Urls: "http://127.0.0.1:0"), _ => Mill);
        await app.StartAsync();
        Address = new Uri(app.Urls.First());
        using var client = Client();
        while ((await client.GetAsync(new Uri("/api/bins", UriKind.Relative))).StatusCode == HttpStatusCode.ServiceUnavailable)
        {
            await Task.Delay(20);
        }
    }

    public async Task DisposeAsync()
    {
        await app!.DisposeAsync();
        Mill.Dispose();
        folder.Delete(recursive: true);
    }

    /// <summary>A browser without a window: keeps cookies, does not follow redirections.</summary>
    public HttpClient Client() => new(new HttpClientHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer() }) { BaseAddress = Address };

    /// <summary>Fetches a page and posts one of its forms with the token that the page gave.</summary>
    public static async Task<HttpResponseMessage> PostAsync(HttpClient client, string page, string action, IEnumerable<KeyValuePair<string, string>> fields)
    {
        var html = await client.GetStringAsync(new Uri(page, UriKind.Relative));
        var token = Regex.Match(html, "name=\"__RequestVerificationToken\" value=\"([^\"]+)\"").Groups[1].Value;
        using var content = new FormUrlEncodedContent(fields.Append(new("__RequestVerificationToken", token)));
        return await client.PostAsync(new Uri(action, UriKind.Relative), content);
    }
}

/// <summary>Tests that share the site.</summary>
[CollectionDefinition(Name)]
public sealed class WebSiteCollection : ICollectionFixture<WebSite>
{
    public const string Name = "web site";
}
