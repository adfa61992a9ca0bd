using System.Globalization;
using Evengrist.Planning.Streams;
using Evengrist.Planning.Tests.Streams;
using Evengrist.Streams.Dividing;

namespace Evengrist.Bench.Streams;

/// <summary>The best divide of 24 streams into four flours and the rest, every spout whole, half of them shared, all shared.</summary>
internal static class DivideBench
{
    private const int Seeds = 40;

    public static int Run()
    {
        Console.WriteLine($"Processors {Environment.ProcessorCount}; load {(File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Trim() : "unknown")}; {Seeds} questions of 24 streams and 4 flours each\n");
        Console.WriteLine("| spouts | solver, median ms | most ms | proven |\n|---|---:|---:|---:|");
        DivideSolver.Solve(Surveys.Clears); // compiles the code
        foreach (var (words, sure, splits) in new (string, double?, Func<int, bool>)[] { ("all whole", null, _ => false), ("all whole, each limit sure to 90 %", 0.9, _ => false), ("every second shared", null, i => i % 2 == 0), ("all shared", null, _ => true) })
        {
            DivideSolved[] solved = [.. Enumerable.Range(1, Seeds).Select(seed => DivideSolver.Solve(Spec(seed, splits) with { Sure = sure })).OfType<DivideSolved>()];
            var times = solved.Select(s => s.Took.TotalMilliseconds).Order().ToArray();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {words} | {times[times.Length / 2]:0} | {times[^1]:0} | {solved.Count(s => s.IsProven)} of {Seeds} |"));
        }

        return 0;
    }

    private static DivideSpec Spec(int seed, Func<int, bool> splits)
    {
        var table = Surveys.Drawn(24, seed);
        return Surveys.Four(table) with { Valves = [.. table.Streams.Select((s, i) => new StreamValve(s.Code) { Splits = splits(i) })] };
    }
}
