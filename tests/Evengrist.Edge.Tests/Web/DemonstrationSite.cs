using System.Net;
using Evengrist.Web.Start;
using Microsoft.AspNetCore.Builder;

namespace Evengrist.Edge.Tests.Web;

/// <summary>The web app as a first start opens it, demonstration and all; laid out once, when the first test asks for it.</summary>
public sealed class DemonstrationSite : IAsyncLifetime
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("evengrist-demonstration-");
    private readonly Lazy<Task<Uri>> address;
    private WebApplication? app;

    public DemonstrationSite() => address = new Lazy<Task<Uri>>(StartAsync);

    /// <summary>Where it listens, once the year is laid out.</summary>
    public Task<Uri> AddressAsync() => address.Value;

    public Task InitializeAsync() => Task.CompletedTask;

    public async Task DisposeAsync()
    {
        if (app is not null)
        {
            await app.DisposeAsync();
        }

        folder.Delete(recursive: true);
    }

    private async Task<Uri> StartAsync()
    {
        app = EvengristApp.Build(new WebOptions(folder.FullName, Urls: "http://127.0.0.1:0"));
        await app.StartAsync();
        using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()), Timeout = TimeSpan.FromMinutes(3) };
        while (true)
        {
            using var answer = await client.GetAsync(new Uri("/api/bins", UriKind.Relative));
            if (answer.StatusCode == HttpStatusCode.OK)
            {
                return client.BaseAddress;
            }

            Assert.DoesNotContain("could not be opened", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
            await Task.Delay(200);
        }
    }
}
