using System.Globalization;
using Evengrist.Ledger;

namespace Evengrist.Bench.Genealogy.Graph;

/// <summary>The answers of the query set, as rows to compare with the published ones.</summary>
internal sealed class GenealogyOracle(GenealogyGraph graph, ForwardRows forward)
{
    private readonly Sweep sweep = new(graph.Rows, forward);

    public IEnumerable<Finding> Back() => graph.BackQueries().Select(Back);

    public IEnumerable<Finding> Forward() => graph.ForwardQueries().Select(Forward);

    private Finding Back(int pack)
    {
        sweep.Back(pack);
        var edges = 0;
        foreach (var parcel in sweep.Reached)
        {
            edges += graph.Rows.ParentsOf(parcel).Length;
        }

        var trucks = sweep.Origins.ToArray();
        var top = trucks.OrderByDescending(sweep.ShareOf).Take(3).Select(truck => Text($"{truck}: {sweep.ShareOf(truck):0.000000000}"));
        var value = Text($"{trucks.Length} trucks, {edges} edges, Σ = {trucks.Sum(sweep.ShareOf):0.000000000}, top {string.Join(", ", top)}");
        return Row($"back {pack}", value);
    }

    private Finding Forward(int truck)
    {
        sweep.Forward(truck);
        int packs = 0, edges = 0, aboveOneInAMillion = 0, top = 0;
        double kg = 0, topKg = 0;
        foreach (var parcel in sweep.Reached)
        {
            edges += forward.ChildrenOf(parcel).Length;
            if (parcel < graph.Pack0)
            {
                continue;
            }

            packs++;
            aboveOneInAMillion += sweep.ShareOf(parcel) > 1e-6 ? 1 : 0;
            var inPack = sweep.ShareOf(parcel) * GenealogyGraph.PackKg(parcel - graph.Pack0);
            kg += inPack;
            (top, topKg) = inPack > topKg ? (parcel, inPack) : (top, topKg);
        }

        var value = Text($"{packs} packs, {edges} edges, {kg:0.0000} kg in packs, {aboveOneInAMillion} packs above 1 ppm, top {top}: {topKg:0.000000} kg");
        return Row($"forward {truck}", value);
    }

    private Finding Row(string name, string value) => new(name, value, PublishedTables.Wanted(graph.Spec, name));

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
