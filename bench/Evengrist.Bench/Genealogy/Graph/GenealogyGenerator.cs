namespace Evengrist.Bench.Genealogy.Graph;

/// <summary>Generates the synthetic crop year described in bench/README.md.</summary>
internal static class GenealogyGenerator
{
    public static GenealogyGraph Generate(GenealogySpec spec)
    {
        if (spec.Fault is { } fault)
        {
            throw new ArgumentException(fault, nameof(spec));
        }

        var graph = new GenealogyGraph(spec);
        new WheatSide(graph).Add();
        new FlourSide(graph).Add();
        graph.Rows.Trim();
        return graph;
    }
}
