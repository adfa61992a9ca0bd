using System.Diagnostics;
using System.Net;
using Evengrist.Demo;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Bench.Desk;

/// <summary>A harvest day of 112 trucks taken in over HTTP, step by step, by the real server on loopback over the demonstration year.</summary>
internal static class DeskBench
{
    private const int Reads = 5;
    private static readonly int[] Stations = [1, 2, 4, 8];

    public static async Task<int> RunAsync()
    {
        var folder = Directory.CreateTempSubdirectory("evengrist-desk-");
        try
        {
            using var mill = Mill.Open(MillOptions.InFile(Path.Combine(folder.FullName, "desk.db")), SystemClock.Instance);
            DemonstrationMill.Load(mill);
            mill.Warm();
            await using var app = EvengristApp.Build(new WebOptions(folder.FullName, Urls: "http://127.0.0.1:0"), _ => mill);
            await app.StartAsync();
            using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
            await ReadyAsync(client);
            var day = HarvestDay.Read();
            Console.WriteLine($"{Environment.ProcessorCount} cores, .NET {Environment.Version}; {mill.Ask(v => v.Book.Last.Value):N0} facts; 112 trucks a run, 5 requests each (gate, weigh in, sample, send, weigh out)");
            Console.WriteLine($"{"stations",-10}{"yard page",-12}{"tickets/s",10}{"requests/s",12}{"p50 ms",9}{"p90 ms",9}{"p99 ms",9}{"most ms",9}");
            await RunAsync(client, mill, day, 2, 1, watched: false, quiet: true);
            foreach (var (n, stations) in Stations.Index())
            {
                await RunAsync(client, mill, day, stations, 2 + (2 * n), watched: false);
                await RunAsync(client, mill, day, stations, 3 + (2 * n), watched: true);
            }

            return 0;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // Each run is a day of its own, before today: nothing has happened after it, as on a real day.
    private static async Task RunAsync(HttpClient client, Mill mill, HarvestDay day, int stations, int run, bool watched, bool quiet = false)
    {
        var shift = Duration.FromDays((int)(SystemClock.Instance.GetCurrentInstant() - day.Trucks[^1].At).TotalDays - 20 + run);
        HarvestTruck[] trucks = [.. day.Trucks.Select((t, i) => t with { Bin = Roomiest(mill), Way = i % 2 == 0 ? "PIT1 | LEG1" : "PIT2 | LEG2" })];
        Station[] desks = [.. Enumerable.Range(0, stations).Select(s => new Station(client, $"scale-{s + 1}", () => 0))];
        using var stop = new CancellationTokenSource();
        var watching = watched ? WatchAsync(client, stop.Token) : Task.CompletedTask;
        var watch = Stopwatch.StartNew();
        await Task.WhenAll(desks.Select((desk, s) => WorkAsync(desk, trucks, s, stations, shift)));
        var seconds = watch.Elapsed.TotalSeconds;
        await stop.CancelAsync();
        await watching;
        double[] sorted = [.. desks.SelectMany(d => d.Milliseconds).Order()];
        if (!quiet)
        {
            Console.WriteLine($"{stations,-10}{(watched ? "each 1 s" : "no"),-12}{trucks.Length / seconds,10:F1}{sorted.Length / seconds,12:F0}{At(sorted, 0.5),9:F1}{At(sorted, 0.9),9:F1}{At(sorted, 0.99),9:F1}{sorted[^1],9:F1}");
        }
    }

    private static async Task WorkAsync(Station desk, HarvestTruck[] trucks, int first, int every, Duration shift)
    {
        for (var i = first; i < trucks.Length; i += every)
        {
            await desk.TakeAsync(trucks[i], $"truck {i}", shift);
        }
    }

    private static async Task WatchAsync(HttpClient client, CancellationToken stop)
    {
        while (!stop.IsCancellationRequested)
        {
            using var page = await client.GetAsync(new Uri("/intake/yard?asof=newest", UriKind.Relative), CancellationToken.None);
            page.EnsureSuccessStatusCode();
            await Task.Delay(1000, stop).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        }
    }

    private static async Task ReadyAsync(HttpClient client)
    {
        for (var reads = 0; reads < Reads;)
        {
            using var answer = await client.GetAsync(new Uri("/api/intake/tickets?day=2025-07-09", UriKind.Relative));
            reads += answer.StatusCode == HttpStatusCode.OK ? 1 : 0;
            await Task.Delay(20);
        }
    }

    private static string Roomiest(Mill mill) => mill.Ask(v => v.Book.OfKind(PlaceKind.Bin).Where(b => b.Capacity is not null && !v.Book.BarsOn(b.Id, Instant.MaxValue).IsAny
        && v.Book.CanFlow(v.Book.Named("LEG1"), b) && v.Book.CanFlow(v.Book.Named("LEG2"), b)).MaxBy(b => b.Capacity!.Value - v.Book.StockOf(b.Id))!.Code);

    private static double At(double[] sorted, double share) => sorted[(int)Math.Min(sorted.Length - 1, Math.Ceiling(share * sorted.Length) - 1)];
}
