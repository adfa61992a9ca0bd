using Evengrist.Bins;
using Evengrist.Bins.BestBin;

namespace Evengrist.Plant.Cases;

/// <summary>A load and bins posed in JSON, with what a tonne is worth.</summary>
/// <param name="Load">The load.</param>
/// <param name="Bins">The bins.</param>
/// <param name="Values">What a tonne is worth by class and protein; null where no money is to be shown.</param>
public sealed record BestBinCase(TruckLoad Load, IReadOnlyList<BinCandidate> Bins, BandValues? Values)
{
    private const int MostBins = 500;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "load": { "class", "t", "protein12mb": per cent, "uncertainty": one standard uncertainty, "moisture": per cent, "fallingNumber": s, "testWeight": kg/hL }
          "bins": [ { "code", "class", "t": what lies in it, "capacity": t, "protein12mb", "moisture", "fallingNumber", "purity": 0 to 1, "barred": why nothing may go in, "reachable": true | false,
                      "band": { "name", "proteinFrom", "proteinTo", "fallingNumberFrom", "fallingNumberTo", "testWeightFrom", "testWeightTo", "alsoClasses": [ ... ] },
                      "carryOver": { "of": text, "kg": number } } ... ]
          "values": { "currency", "classes": { "HW": [ { "proteinPercentAt12", "perTonne" } ... ] }, "source" }   may be left out
        }
        """,
        """
        { "load": { "class": "HW", "t": 26, "protein12mb": 14.0, "uncertainty": 0.25 },
          "bins": [ { "code": "B02", "class": "HW", "t": 9100, "capacity": 10000, "protein12mb": 12.1, "purity": 0.9, "band": { "proteinFrom": 11.9, "proteinTo": 12.3 } },
                    { "code": "B05", "class": "HW", "t": 6900, "capacity": 10000, "protein12mb": 13.9, "purity": 0.94, "band": { "proteinFrom": 13.6, "proteinTo": 14.6 } },
                    { "code": "B08", "class": "SW", "t": 6100, "capacity": 10000 } ],
          "values": { "currency": "USD", "classes": { "HW": [ { "proteinPercentAt12": 12, "perTonne": 229 }, { "proteinPercentAt12": 13, "perTonne": 240 },
                                                               { "proteinPercentAt12": 13.5, "perTonne": 248 }, { "proteinPercentAt12": 14, "perTonne": 262 } ] } } }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<BestBinCase> Read(Stream stream) => JsonCase.Read<BestBinCase>(stream, (root, _) =>
    {
        if (!root.IsObject("load", "bins", "values"))
        {
            return null;
        }

        var load = root.Member("load") is { } node ? LoadOf(node) : null;
        var bins = (root.Member("bins")?.Items(MostBins) ?? []).Select(BinOf).OfType<BinCandidate>().ToArray();
        foreach (var twice in bins.GroupBy(b => b.Bin, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1))
        {
            root.Member("bins")!.Fault($"each bin once; {twice.Key} stands there {twice.Count()} times");
        }

        var values = root.Has("values") ? ValuesOf(root.Member("values")!) : null;
        return load is null ? null : new BestBinCase(load, bins, values);
    });

    private static TruckLoad? LoadOf(JsonNode node)
    {
        if (!node.IsObject("class", "t", "protein12mb", "uncertainty", "moisture", "fallingNumber", "testWeight"))
        {
            return null;
        }

        var (wheat, tonnes, protein) = (node.Text("class"), node.Member("t")?.Number(0.001m, 200m), node.Member("protein12mb")?.Number(0m, 30m));
        return tonnes is null || protein is null ? null : new TruckLoad(wheat, (double)tonnes, (double)protein, Optional(node, "uncertainty", 0m, 10m) ?? 0)
        {
            DryShare = 1 - ((Optional(node, "moisture", 0m, 60m) ?? 12) / 100), FallingNumber = Optional(node, "fallingNumber", 60m, 1000m), TestWeight = Optional(node, "testWeight", 20m, 100m),
        };
    }

    private static BinCandidate? BinOf(JsonNode node)
    {
        if (!node.IsObject("code", "class", "t", "capacity", "protein12mb", "moisture", "fallingNumber", "purity", "barred", "reachable", "band", "carryOver")
            || node.Member("t")?.Number(0m, 1_000_000m) is not { } tonnes)
        {
            return null;
        }

        return new BinCandidate(node.Text("code"), node.Text("class", ""), (double)tonnes)
        {
            CapacityTonnes = Optional(node, "capacity", 0m, 1_000_000m), ProteinPercentAt12 = Optional(node, "protein12mb", 0m, 30m), DryShare = 1 - ((Optional(node, "moisture", 0m, 60m) ?? 12) / 100),
            FallingNumber = Optional(node, "fallingNumber", 60m, 1000m), Purity = Optional(node, "purity", 0m, 1m), Barred = node.Has("barred") ? node.Text("barred") : null,
            IsReachable = !node.Has("reachable") || node.Member("reachable")!.Raw == "true", Band = node.Has("band") ? BandOf(node.Member("band")!) : null, CarryOver = node.Has("carryOver") ? CarriedOf(node.Member("carryOver")!) : null,
        };
    }

    private static BinBand? BandOf(JsonNode node)
    {
        if (BinPapers.TryReadBand(node.Raw, out var band, out var faults))
        {
            return band;
        }

        Fault(node, "a band", faults);
        return null;
    }

    private static BandValues? ValuesOf(JsonNode node)
    {
        if (BinPapers.TryReadValues(node.Raw, out var values, out var faults))
        {
            return values;
        }

        Fault(node, "values", faults);
        return null;
    }

    private static (string, double)? CarriedOf(JsonNode node) =>
        node.IsObject("of", "kg") && node.Member("kg")?.Number(0m, 100_000m) is { } kilograms ? (node.Text("of"), (double)kilograms) : null;

    private static double? Optional(JsonNode node, string name, decimal least, decimal most) => (double?)node.Member(name, required: false)?.Number(least, most);

    private static void Fault(JsonNode node, string what, IReadOnlyList<string> faults)
    {
        foreach (var fault in faults)
        {
            node.Fault($"{what} that can be. {fault}");
        }
    }
}
