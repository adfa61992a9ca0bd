using System.Diagnostics;
using Evengrist.Demo;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Bench.Year;

/// <summary>The demonstration year on embedded SQLite: laid out, opened again, reckoned from facts, given late facts, traced.</summary>
internal static class YearBench
{
    public static int Run()
    {
        var folder = Directory.CreateTempSubdirectory("evengrist-year-");
        try
        {
            var file = Path.Combine(folder.FullName, "year.db");
            Console.WriteLine($"{Environment.ProcessorCount} cores, .NET {Environment.Version}; wall and processor seconds of single runs");
            Time("lay the year out (generate and record every fact)", () =>
            {
                using var fresh = Mill.Open(MillOptions.InFile(file), SystemClock.Instance);
                DemonstrationMill.Load(fresh);
            });
            Mill? opened = null;
            Time("open again: read every fact", () => opened = Mill.Open(MillOptions.InFile(file), SystemClock.Instance));
            using var mill = opened!;
            Time("reckon the year under three hypotheses", mill.Warm);
            Console.WriteLine(mill.Ask(v => $"  {v.Book.Places.Count:N0} places, {v.Book.Movements.Count:N0} movements, {v.Book.Readings.Count:N0} readings; {GC.GetTotalMemory(true) / 1e6:N0} MB held"));
            Late(mill, "absorb a fact an hour late", Duration.FromHours(1));
            Late(mill, "absorb a fact a month late", Duration.FromDays(30));
            Late(mill, "absorb a fact ten months late", Duration.FromDays(300));
            Traces(mill);
            return 0;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // A tonne that a sounding found in B01, said to have been there all along; each is its own fact.
    private static void Late(Mill mill, string what, Duration late)
    {
        var newest = mill.Ask(v => v.Book.Newest)!.Value;
        Time(what, () =>
        {
            mill.Record(v => v.Book.Find("FOUND") is null
                ? [new OpenPlace("open", "FOUND", PlaceKind.Gain), Found(newest, late)]
                : [Found(newest, late)], "Bench", "bench");
            mill.Warm();
        });
    }

    private static Move Found(Instant newest, Duration late) => new(late.ToString(), "FOUND", "B01", Mass.FromTonnes(1), newest - late);

    private static void Traces(Mill mill)
    {
        ReachOutcome? reach = null;
        Time("first trace: truck 25-0709-061 forward, three hypotheses", () => mill.Ask(v => reach = v.Tracer().Reach(new TraceQuestion("25-0709-061"))));
        Time("the same again", () => mill.Ask(v => reach = v.Tracer().Reach(new TraceQuestion("25-0709-061"))));
        var pallet = reach!.Packages.MaxBy(p => p.Grams.Expected)!.Place.Code;
        Time($"pallet {pallet} back, three hypotheses", () => mill.Ask(v => v.Tracer().Roots(new TraceQuestion(pallet))));
        var span = new TraceQuestion("B14") { From = Instant.FromUtc(2025, 9, 17, 20, 0), Until = Instant.FromUtc(2025, 9, 18, 2, 0) };
        Time("what left B14 in six hours, forward: the year reckoned anew three times", () => mill.Ask(v => v.Tracer().Reach(span)));
    }

    private static void Time(string what, Action act)
    {
        var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        var watch = Stopwatch.StartNew();
        act();
        watch.Stop();
        process.Refresh();
        Console.WriteLine($"{what,-75} {watch.Elapsed.TotalSeconds,8:F3} s wall {(process.TotalProcessorTime - before).TotalSeconds,8:F3} s processor");
    }
}
