using System.Diagnostics;
using Evengrist.Demo;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Tracing;
using Evengrist.Tracing.Bounds;
using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Bench.Recall;

/// <summary>Recalls on the demonstration year and on ten of it laid end to end.</summary>
internal static class RecallBench
{
    public static int Run()
    {
        var folder = Directory.CreateTempSubdirectory("evengrist-recall-");
        try
        {
            using var mill = Mill.Open(MillOptions.InFile(Path.Combine(folder.FullName, "year.db")), SystemClock.Instance);
            DemonstrationMill.Load(mill);
            Console.WriteLine($"{Environment.ProcessorCount} cores, .NET {Environment.Version}; wall seconds, the first and the median of five more");
            mill.Ask(v => Ask("one year", v.Book, 0));
            var long10 = mill.Ask(v => TenYears.Of(v.Book, 10));
            Ask("ten years", long10, 9);
            return 0;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static bool Ask(string what, Book book, int years)
    {
        var later = Duration.FromDays(365 * years);
        var asOf = Instant.FromUtc(2026, 1, 14, 17, 0) + later;
        var tracer = Tracer.Over(book);
        Console.WriteLine($"{what}: {book.Places.Count:N0} places, {book.Movements.Count:N0} movements");
        Time("  reckon, once", () => tracer.Roots(new TraceQuestion("B14") { AsOf = asOf }), 0);
        var truck = new Suspicion(book.Named("25-0709-061"));
        var hours = new Suspicion(book.Named("B14"), Instant.FromUtc(2025, 9, 17, 20, 0) + later, Instant.FromUtc(2025, 9, 18, 2, 0) + later);
        foreach (var unknown in new[] { false, true })
        {
            BoundsOutcome? bounds = null;
            Time($"  bounds alone, lines and rest {(unknown ? "unknown" : "in order")}", () => bounds = tracer.Bounds([truck], asOf, new BoundsOptions { ThroughIsUnknown = unknown }), 3);
            Console.WriteLine($"    {bounds!.Packages.Count:N0} packages can hold a gram, {bounds.Packages.Values.Count(b => b.Most > 50_000):N0} over 50 kg; unexplained {bounds.Unexplained:N0} g");
        }

        RecallOutcome? recall = null;
        var asked = 0;

        // A gram more each time: the same question again would only be remembered.
        RecallQuestion Of(Suspicion start) => new([start]) { AsOf = asOf, Threshold = Mass.FromGrams(50_000 + asked++), Chance = 0.5 };
        Time("  a truck recalled", () => recall = tracer.Recall(Of(truck), null, Run), 5);
        foreach (var net in recall!.Nets)
        {
            Console.WriteLine($"    {net.Kind}: {net.Packages.Count:N0} packages, {net.Balance.Made}, outside {net.ExpectedOutside / 1000:N0} kg, missing {net.ChanceOfMissing:0.00}");
        }

        var outside = recall.Packages.SelectMany(p => p.Grams.Each.Select(g => Math.Max(p.Bound.Least - g, g - p.Bound.Most))).Max();
        Console.WriteLine($"    a hypothesis lies outside the bounds by at most {outside:N1} g; unknown {recall.Unknown.Count}");
        Time("  six hours of a bin recalled", () => recall = tracer.Recall(Of(hours), null, Run), 5);
        Console.WriteLine($"    {recall!.Packages.Count:N0} packages");
        return true;
    }

    private static void Run(Action[] all) => Parallel.Invoke(all);

    private static void Time(string what, Action act, int more)
    {
        var first = Once(act);
        var rest = Enumerable.Range(0, more).Select(_ => Once(act)).Order().ToArray();
        Console.WriteLine($"{what,-60} {first,8:F3} {(more > 0 ? rest[more / 2] : first),8:F3}");
    }

    private static double Once(Action act)
    {
        var watch = Stopwatch.StartNew();
        act();
        return watch.Elapsed.TotalSeconds;
    }
}
