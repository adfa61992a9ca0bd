using System.Net;
using Evengrist.Demo;
using Evengrist.Edge.Tests.Web.Browser;
using Evengrist.Records;
using Evengrist.Web.Start;
using Microsoft.AspNetCore.Builder;
using NodaTime;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>Tests that share the year and one browser.</summary>
[CollectionDefinition(Name)]
public sealed class DemonstrationSiteCollection : ICollectionFixture<DemonstrationSite>, ICollectionFixture<Chromium>
{
    public const string Name = "demonstration site";
}

/// <summary>The web app over the demonstration mill, laid out once for the tests that need the whole year.</summary>
public sealed class DemonstrationSite : IAsyncLifetime
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("evengrist-year-");
    private WebApplication? app;
    private Mill? mill;

    /// <summary>Where it listens.</summary>
    public Uri Address { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        mill = Mill.Open(MillOptions.InFile(Path.Combine(folder.FullName, "demonstration.db")), SystemClock.Instance);
        DemonstrationMill.Load(mill);
        mill.Warm();
        app = EvengristApp.Build(new WebOptions(folder.FullName, Urls: "http://127.0.0.1:0"), _ => mill);
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
        mill!.Dispose();
        folder.Delete(recursive: true);
    }

    /// <summary>The instrument that read most on 7 October 2025.</summary>
    public string AnyInstrument() => mill!.Ask(view => view.Book.Readings.Where(r => r.Instrument.Length > 0 && r.At >= Instant.FromUtc(2025, 10, 7, 16, 0) && r.At < Instant.FromUtc(2025, 10, 8, 0, 0)
        && view.Book[r.On].Kind is not Evengrist.Ledger.PlaceKind.Truck).GroupBy(r => r.Instrument).OrderByDescending(g => g.Count()).First().Key);

    /// <summary>A browser without a window.</summary>
    public HttpClient Client() => new(new HttpClientHandler { CookieContainer = new CookieContainer() }) { BaseAddress = Address, Timeout = TimeSpan.FromMinutes(5) };
}
