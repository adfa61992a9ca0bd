using System.Globalization;

namespace Evengrist.Bench.Genealogy.Graph;

/// <summary>Counts and sums that any implementation of the generator must reproduce.</summary>
internal static class GenealogyChecks
{
    public static IEnumerable<Finding> Of(GenealogyGraph graph)
    {
        var rows = graph.Rows;
        long parents = 0, children = 0;
        var weight = 0.0;
        for (var parcel = 0; parcel < rows.Count; parcel++)
        {
            foreach (var parent in rows.ParentsOf(parcel))
            {
                parents += parent;
            }

            var row = 0.0;
            foreach (var share in rows.SharesOf(parcel))
            {
                row += share;
            }

            weight += row;
            children += (long)parcel * rows.ParentsOf(parcel).Length;
        }

        var spec = graph.Spec;
        yield return Row("nodes / edges", $"{rows.Count} / {rows.Edges}");
        yield return Row("block starts layer, run, stream, blend, pack",
            $"{graph.Layer0}, {graph.Run0}, {graph.Stream0}, {graph.Blend0}, {graph.Pack0}");
        yield return Row("edges into layer, run, stream, blend, pack",
            $"{Into(graph.Layer0, graph.Run0)}, {Into(graph.Run0, graph.Stream0)}, {Into(graph.Stream0, graph.Blend0)}, "
            + $"{Into(graph.Blend0, graph.Pack0)}, {Into(graph.Pack0, rows.Count)}");
        yield return Row("Σ parent id, Σ child id", $"{parents}, {children}");
        yield return Row("Σ weight", Text(weight));
        yield return Row("Σ kg trucks; runs; packs",
            $"{Text(Enumerable.Range(0, spec.Trucks).Sum(graph.TruckKg))}; {Text(graph.RunKg.Sum())}; "
            + Text(Enumerable.Range(0, spec.Packs).Sum(GenealogyGraph.PackKg)));

        Finding Row(string name, string value) => new(name, value, PublishedTables.Wanted(spec, name));

        int Into(int from, int to)
        {
            var edges = 0;
            for (var parcel = from; parcel < to; parcel++)
            {
                edges += rows.ParentsOf(parcel).Length;
            }

            return edges;
        }
    }

    // Six places: a sum that is whole on paper must be whole to a millionth here.
    private static string Text(double sum) => Math.Round(sum, 6).ToString("0.######", CultureInfo.InvariantCulture);
}
