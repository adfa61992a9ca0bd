using System.Diagnostics;
using Evengrist.Bench.Genealogy.Graph;
using Evengrist.Tracing;

namespace Evengrist.Bench.Genealogy;

/// <summary>The trace engine on a synthetic crop year, beside general databases on the same machine in the same run.</summary>
internal static class GenealogyBench
{
    public static int Run(string[] args)
    {
        if (!GenealogyArguments.TryRead(args, out var arguments, out var fault))
        {
            Console.Error.WriteLine($"genealogy: {fault}");
            Console.Error.WriteLine(GenealogyArguments.Usage);
            return 2;
        }

        var spec = arguments.Spec;
        Console.WriteLine(FormattableString.Invariant($"Genealogy: scale {spec.Scale}, seed {spec.Seed}, {spec.Bins} bins: {spec.Trucks} trucks, {spec.Runs} runs, {spec.Packs} packed lots"));
        var watch = Stopwatch.StartNew();
        var graph = GenealogyGenerator.Generate(spec);
        Console.WriteLine(FormattableString.Invariant($"generated in {watch.Elapsed.TotalSeconds:0.0} s"));
        watch.Restart();
        var forward = new ForwardRows(graph.Rows);
        Console.WriteLine(FormattableString.Invariant($"forward rows built in {watch.Elapsed.TotalMilliseconds:0} ms"));
        var passed = Print(graph, forward);
        return passed ? 0 : 1;
    }

    private static bool Print(GenealogyGraph graph, ForwardRows forward)
    {
        var oracle = new GenealogyOracle(graph, forward);
        var findings = GenealogyChecks.Of(graph).Concat(oracle.Back()).Concat(oracle.Forward()).ToList();
        foreach (var finding in findings)
        {
            Console.WriteLine($"{finding.Name,-46} {finding.Value}  [{finding.Verdict}]");
        }

        var published = findings.Where(finding => finding.Wanted.Count > 0).ToList();
        Console.WriteLine($"{published.Count(finding => finding.Passed)} of {published.Count} published rows reproduced");
        return findings.TrueForAll(finding => finding.Passed);
    }
}
