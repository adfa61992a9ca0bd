using System.Net;
using Evengrist.Demo;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Web.Start;
using Microsoft.AspNetCore.Builder;
using NodaTime;

namespace Evengrist.Edge.Tests.Web.Trucks;

/// <summary>The demonstration's fullest day taken in again through the API of a real server, by two stations at once that repeat themselves, one of which is cut off for 65 minutes.</summary>
public sealed class HarvestReplayTests : IAsyncLifetime
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("evengrist-replay-");
    private HarvestDay day = null!;
    private Mill mill = null!;
    private WebApplication? app;

    public async Task InitializeAsync()
    {
        day = HarvestDay.Read();
        mill = Mill.Open(MillOptions.InFile(Path.Combine(folder.FullName, "replay.db")), SystemClock.Instance);
        mill.Set(DemonstrationMill.Settings);
        foreach (var terms in HouseContracts.All)
        {
            mill.Contracts.Keep(terms.Code, terms.Version, Evengrist.Intake.TermsJson.Write(terms), "Ada");
        }

        foreach (var batch in day.Before)
        {
            mill.Record(batch.Drafts, batch.By, batch.Source, batch.Recorded);
        }

        app = EvengristApp.Build(new WebOptions(folder.FullName, Urls: "http://127.0.0.1:0"), _ => mill);
        await app.StartAsync();
    }

    public async Task DisposeAsync()
    {
        await app!.DisposeAsync();
        mill.Dispose();
        folder.Delete(recursive: true);
    }

    // Numbers and balance are counted from the demonstration's own trucks, which this server has never seen.
    [Fact]
    public async Task Day_OfOneHundredAndTwelveTrucksByTwoStationsAtOnce_HasNoDuplicateNoGapAndBalancesToTheGram()
    {
        Assert.Equal(112, day.Trucks.Count);
        using var client = new HttpClient { BaseAddress = new Uri(app!.Urls.First()) };
        while ((await client.GetAsync(new Uri("/api/bins", UriKind.Relative))).StatusCode == HttpStatusCode.ServiceUnavailable)
        {
            await Task.Delay(20);
        }

        var before = Stocks();
        var given = await Task.WhenAll(Work(client, "scale-1", 0), Work(client, "scale-2", 1));

        var tickets = given.SelectMany(g => g).ToArray();
        Assert.Equal(Enumerable.Range(1, 112).Select(n => $"25-0709-{n:000}"), tickets.Select(t => t.Ticket).Order(StringComparer.Ordinal));
        Assert.Equal(112, mill.Ask(v => v.Book.OfKind(PlaceKind.Truck).Count(p => p.Code.StartsWith("25-0709-", StringComparison.Ordinal))));
        var after = Stocks();
        Assert.All(after.Keys, bin => Assert.Equal(Mass.FromGrams(day.Trucks.Where(t => t.Bin == bin).Sum(t => t.Net.Grams)), after[bin] - before[bin]));
        Assert.Equal((0L, 0L), mill.Ask(v => (v.Book.Places.Sum(p => v.Book.StockOf(p.Id).Grams), tickets.Sum(t => v.Book.StockOf(v.Book.Named(t.Ticket).Id).Grams))));
        Assert.All(tickets, t => Assert.Equal(t.Truck.Net, mill.Ask(v => v.Book.ThroughputOf(v.Book.Named(t.Ticket).Id, Instant.MaxValue).In)));
    }

    private async Task<IReadOnlyList<(string Ticket, HarvestTruck Truck)>> Work(HttpClient client, string name, int first)
    {
        var random = new Random(first);
        var station = new Station(client, name, () => random.Next(3) == 0 ? 1 : 0);
        var given = new List<(string, HarvestTruck)>();
        foreach (var i in Enumerable.Range(0, day.Trucks.Count).Where(i => i % 2 == first).OrderBy(i => first == 1 && IsOffline(day.Trucks[i])))
        {
            given.Add((await station.TakeAsync(day.Trucks[i], $"truck {i}"), day.Trucks[i]));
        }

        return given;
    }

    // The second station has no network from 14:05 to 15:10 and sends what it wrote then when all else is done.
    private static bool IsOffline(HarvestTruck truck) => truck.At.InZone(DemonstrationMill.Settings.Zone).TimeOfDay is var time && time >= new LocalTime(14, 5) && time < new LocalTime(15, 10);

    private Dictionary<string, Mass> Stocks() => mill.Ask(v => v.Book.OfKind(PlaceKind.Bin).ToDictionary(b => b.Code, b => v.Book.StockOf(b.Id)));
}
