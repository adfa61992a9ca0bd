using System.Diagnostics;
using System.Globalization;
using System.Runtime;
using Evengrist.Bench.Genealogy.Graph;
using Evengrist.Ledger;

namespace Evengrist.Bench.Genealogy;

/// <summary>The trace engine on a synthetic crop year, beside general databases on the same machine in the same run.</summary>
internal static class GenealogyBench
{
    private const double BackGoal = 0.1, ForwardGoal = 2, MemoryGoal = 250;

    public static int Run(string[] args)
    {
        if (!GenealogyArguments.TryRead(args, out var arguments, out var fault))
        {
            return Refuse(fault);
        }

        try
        {
            return Run(arguments);
        }
        catch (ArgumentException e)
        {
            return Refuse(e.Message);
        }
    }

    private static int Refuse(string fault)
    {
        Console.Error.WriteLine($"genealogy: {fault}");
        Console.Error.WriteLine(GenealogyArguments.Usage);
        return 2;
    }

    private static int Run(GenealogyArguments arguments)
    {
        var spec = arguments.Spec;
        Say($"Genealogy: scale {spec.Scale}, seed {spec.Seed}, {spec.Bins} bins: {spec.Trucks} trucks, {spec.Runs} runs, {spec.Packs} packed lots");
        var watch = Stopwatch.StartNew();
        var graph = GenealogyGenerator.Generate(spec);
        var generated = watch.Elapsed.TotalSeconds;
        var forward = new ForwardRows(graph.Rows);
        var built = watch.Elapsed.TotalSeconds;
        Say($"generated in {generated:0.0} s, forward rows built in {1000 * (built - generated):0} ms");
        var passed = Check(graph, forward);
        if (!arguments.CheckOnly)
        {
            Compare(graph, forward, built, arguments.Budget);
        }

        return passed ? 0 : 1;
    }

    private static bool Check(GenealogyGraph graph, ForwardRows forward)
    {
        var oracle = new GenealogyOracle(graph, forward);
        var findings = GenealogyChecks.Of(graph).Concat(oracle.Back()).Concat(oracle.Forward()).ToList();
        foreach (var finding in findings)
        {
            Console.WriteLine($"{finding.Name,-46} {finding.Value}  [{finding.Verdict}]");
        }

        var published = findings.Where(finding => finding.Wanted.Count > 0).ToList();
        Say($"{published.Count(finding => finding.Passed)} of {published.Count} published rows reproduced");
        return findings.TrueForAll(finding => finding.Passed);
    }

    private static void Compare(GenealogyGraph graph, ForwardRows forward, double built, int budget)
    {
        var own = OwnRows.Measure(graph, forward, built);
        GCSettings.LargeObjectHeapCompactionMode = GCLargeObjectHeapCompactionMode.CompactOnce;
        GC.Collect(2, GCCollectionMode.Aggressive, blocking: true, compacting: true);
        var process = Environment.WorkingSet / 1e6;
        List<EngineResult> results = [own];
        Say($"databases: {budget} s for each of load, back and forward");
        var folder = Directory.CreateTempSubdirectory("genealogy-").FullName;
        try
        {
            using (var sqlite = new SqliteEngine(folder, budget))
            {
                results.Add(sqlite.Measure(graph, forward));
            }

            using var cluster = PostgresCluster.Start(folder, out var missing);
            if (cluster is null)
            {
                Say($"PostgreSQL is left out: {missing}");
            }
            else
            {
                using var postgres = new PostgresEngine(cluster.ConnectionString, budget);
                results.Add(postgres.Measure(graph, forward));
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        ResultTable.Print(results);
        Say($"machine: {Environment.ProcessorCount} cores, {GC.GetGCMemoryInfo().TotalAvailableMemoryBytes / 1e9:0} GB, .NET {Environment.Version}, {DateTime.UtcNow:yyyy-MM-dd}");
        Say($"load average of the last minute {LoadAverage()}; ours in the best of {OwnRows.Rounds} rounds: back {own.Back.Best:0.000} ms, forward {own.Forward.Best:0.000} ms");
        Say($"held by the rows and one sweep {own.Megabytes:0} MB; whole process, with runtime and bench, {process:0} MB");
        if (graph.Spec.Scale == 1)
        {
            Goal("back", own.Back.Median, BackGoal, "ms median");
            Goal("forward", own.Forward.Median, ForwardGoal, "ms median");
            Goal("memory, whole process", process, MemoryGoal, "MB");
        }
    }

    private static string LoadAverage() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "not known";

    private static void Goal(string what, double figure, double goal, string unit) =>
        Say($"goal {what} ≤ {goal} {unit}: {figure:0.###}, {(figure <= goal ? "met" : "MISSED")}");

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
