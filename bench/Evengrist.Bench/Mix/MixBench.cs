using System.Diagnostics;
using System.Globalization;
using Evengrist.Mix;
using Evengrist.Planning.Mix;
using Evengrist.Planning.Solving;
using Evengrist.Planning.Tests.Mix;

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
        Console.WriteLine($"Processors {Environment.ProcessorCount}; load {(File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Trim() : "unknown")}; {Seeds} questions of each kind; the whole answer has savings, prices of confidence and gates, and the check\n");
        Console.WriteLine("| question | who | wall, median ms | most ms | processor, mean ms | solved | dearer than ours at the most |\n|---|---|---:|---:|---:|---:|---:|");
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
        var costs = new double[specs.Length];
        void Say(string what, Action<int> solve)
        {
            solve(0); // compiles the code
            using var self = Process.GetCurrentProcess();
            var (times, cpu) = (new double[specs.Length], self.TotalProcessorTime);
            for (var i = 0; i < specs.Length; i++)
            {
                var began = Stopwatch.GetTimestamp();
                solve(i);
                times[i] = Stopwatch.GetElapsedTime(began).TotalMilliseconds;
            }

            self.Refresh();
            var mean = (self.TotalProcessorTime - cpu).TotalMilliseconds / specs.Length;
            var dearer = ours is null ? "" : costs.Zip(ours, (c, o) => c - o).Where(d => !double.IsNaN(d)).DefaultIfEmpty(double.NaN).Max().ToString("0.0000", CultureInfo.InvariantCulture);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {words} | {what} | {times.Order().ElementAt(times.Length / 2):0.0} | {times.Max():0.0} | {mean:0.0} | {costs.Count(c => !double.IsNaN(c))} of {costs.Length} | {dearer} |"));
        }

        Say(who, i =>
        {
            var found = new MixSearch(specs[i], options).Best(gates: true);
            costs[i] = found.IsThere && MixCheck.Broken(specs[i], found.Shares).Count == 0 ? found.Cost : double.NaN;
        });
        if (ours is null)
        {
            Say("this project, whole answer", i => MixSolver.Solve(specs[i], options));
        }

        return costs;
    }
}
