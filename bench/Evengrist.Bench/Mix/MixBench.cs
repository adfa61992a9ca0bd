using System.Diagnostics;
using System.Globalization;
using Evengrist.Mix;
using Evengrist.Planning.Mix;
using Evengrist.Planning.Solving;

namespace Evengrist.Bench.Mix;

/// <summary>Mixes of 19 bins and 15 ends of limits: ours beside SCIP, CBC and HiGHS handed the same questions.</summary>
internal static class MixBench
{
    private const int Seeds = 12;
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20);

    private static readonly (string Words, GateRules Gates, double? Confidence)[] Kinds =
    [
        ("gates move freely", new GateRules(), null),
        ("freely, each limit sure to 90 %", new GateRules(), 0.9),
        ("steps of 1 %", new GateRules { StepPercent = 1 }, null),
        ("steps of 1 %, at most 5 gates of at least 5 %", new GateRules { StepPercent = 1, MostGates = 5, LeastOpenShare = 0.05 }, null),
        ("the same, each limit sure to 90 %", new GateRules { StepPercent = 1, MostGates = 5, LeastOpenShare = 0.05 }, 0.9),
    ];

    public static int Run()
    {
        Console.WriteLine($"Processors {Environment.ProcessorCount}; load {(File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Trim() : "unknown")}; {Seeds} questions of each kind; solve alone, then with savings and checks as a page asks it\n");
        Console.WriteLine("| question | who | median ms | most ms | whole answer, median ms | most ms | solved | dearer than ours |\n|---|---|---:|---:|---:|---:|---:|---:|");
        foreach (var (words, gates, confidence) in Kinds)
        {
            MixSpec[] specs = [.. Enumerable.Range(1, Seeds).Select(s => MadeMix.Of(s, gates, confidence))];
            var options = new MixSearchOptions { Longest = Longest };
            var ours = Row(words, "this project", specs, options, null);
            foreach (var engine in new[] { LinearEngine.Scip, LinearEngine.Cbc, LinearEngine.Highs })
            {
                Row("", engine.ToString(), specs, options with { Engine = engine }, ours);
            }
        }

        return 0;
    }

    private static double[] Row(string words, string who, MixSpec[] specs, MixSearchOptions options, double[]? ours)
    {
        new MixSearch(specs[0], options).Best(gates: true); // compiles the code
        var (times, costs) = (new double[specs.Length], new double[specs.Length]);
        for (var i = 0; i < specs.Length; i++)
        {
            var began = Stopwatch.GetTimestamp();
            var found = new MixSearch(specs[i], options).Best(gates: true);
            (times[i], costs[i]) = (Stopwatch.GetElapsedTime(began).TotalMilliseconds, found.IsThere && MixCheck.Broken(specs[i], found.Shares).Count == 0 ? found.Cost : double.NaN);
        }

        double[] whole = [.. ours is not null ? [] : specs.Select(s =>
        {
            var began = Stopwatch.GetTimestamp();
            MixSolver.Solve(s, options);
            return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
        })];
        var dearer = ours is null ? "" : costs.Zip(ours, (c, o) => c - o).Where(d => !double.IsNaN(d)).DefaultIfEmpty(double.NaN).Max().ToString("0.0000", CultureInfo.InvariantCulture);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {words} | {who} | {Median(times):0.0} | {times.Max():0.0} | {(whole.Length > 0 ? Median(whole).ToString("0.0", CultureInfo.InvariantCulture) : "")} | {(whole.Length > 0 ? whole.Max().ToString("0.0", CultureInfo.InvariantCulture) : "")} | {costs.Count(c => !double.IsNaN(c))} of {costs.Length} | {dearer} |"));
        return costs;
    }

    private static double Median(double[] values) => values.Order().ElementAt(values.Length / 2);
}
