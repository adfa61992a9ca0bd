using Evengrist.Ledger;
using Evengrist.Tracing.Structure;

namespace Evengrist.Plant.Cases;

/// <summary>Ways of keeping lots apart, posed in JSON.</summary>
/// <param name="Ways">Each with its name; the first is today's.</param>
public sealed record StructureCase(IReadOnlyList<(string Name, StructureSpec Spec)> Ways)
{
    private const int MostWays = 20;
    private static readonly string[] Known = ["name", "binTonnes", "binsPerMix", "order", "emptying", "lotTonnes", "yield", "heelTonnes", "flushTonnes", "cleanEveryLots", "thresholdShare", "hoursEachCleanOut"];

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "trucks": { "count": 1 to 5000, "tonnes": each } or [ tonnes of each in the order they came ... ],
          "ways": [ { "name", "binTonnes"?: one filling of a wheat bin, "binsPerMix"?: 1 to 20, "order"?: "oneAfterAnother" or "inTurn", "emptying"?: "fifo" or "stirred",
                      "lotTonnes"?: wheat for one finished lot, "yield"?: product of a kilogram of wheat, "heelTonnes"?, "flushTonnes"?: product, "cleanEveryLots"?: 0 for never,
                      "thresholdShare"?: of a lot, up to which a truck does not count, "hoursEachCleanOut"? } ... 1 to 20 ]
        }
        What a way leaves out, it has as the one before it.
        """,
        """
        { "trucks": { "count": 400, "tonnes": 26 },
          "ways": [ { "name": "today", "binTonnes": 500, "binsPerMix": 4, "lotTonnes": 120, "yield": 0.75, "heelTonnes": 15 }, { "name": "two bins", "binsPerMix": 2 }, { "name": "and a clean-out a week", "cleanEveryLots": 14 } ] }
        """);

    /// <summary>Reads a case; what cannot be reckoned is a fault too.</summary>
    public static Parsed<StructureCase> Read(Stream stream) => JsonCase.Read<StructureCase>(stream, (root, faults) => Of(root, faults));

    private static StructureCase? Of(JsonNode root, List<Fault> faults)
    {
        if (!root.IsObject("trucks", "ways"))
        {
            return null;
        }

        var trucks = Trucks(root.Member("trucks"));
        var ways = new List<(string, StructureSpec)>();
        var spec = new StructureSpec(trucks ?? []);
        foreach (var way in root.Member("ways")?.Items(MostWays) ?? [])
        {
            if (way.IsObject(Known))
            {
                spec = Of(way, spec);
                faults.AddRange((trucks is null ? [] : spec.Faults()).Select(f => Fault.AtPath(way.Path, "a way that cannot be", f)));
                ways.Add((way.Text("name"), spec));
            }
        }

        if (ways.Count == 0 && faults.Count == 0)
        {
            root.Member("ways")?.Fault("at least one way");
        }

        return faults.Count > 0 || trucks is null ? null : new StructureCase(ways);
    }

    private static double[]? Trucks(JsonNode? node)
    {
        if (node is null || !node.Has("count"))
        {
            double?[] each = [.. node?.Items(StructureSpec.Most).Select(t => (double?)t.Number(0.001m, 10_000m)) ?? []];
            return node is null || each.Any(t => t is null) ? null : [.. each.Select(t => t!.Value * 1000)];
        }

        return node.IsObject("count", "tonnes") && node.Member("count")?.Whole(1, StructureSpec.Most) is { } count && node.Member("tonnes")?.Number(0.001m, 10_000m) is { } tonnes ? [.. Enumerable.Repeat((double)tonnes * 1000, count)] : null;
    }

    private static StructureSpec Of(JsonNode way, StructureSpec before) => before with
    {
        BinKilograms = Tonnes(way, "binTonnes", before.BinKilograms), BinsPerMix = way.Member("binsPerMix", required: false)?.Whole(1, 20) ?? before.BinsPerMix,
        Order = Word(way, "order", before.Order, ("oneAfterAnother", BinOrder.OneAfterAnother), ("inTurn", BinOrder.InTurn)),
        Emptying = Word(way, "emptying", before.Emptying, ("fifo", Outflow.FirstInFirstOut), ("stirred", Outflow.Stirred)),
        LotKilograms = Tonnes(way, "lotTonnes", before.LotKilograms), Yield = Number(way, "yield", before.Yield, 1m), HeelKilograms = Tonnes(way, "heelTonnes", before.HeelKilograms), FlushKilograms = Tonnes(way, "flushTonnes", before.FlushKilograms),
        CleanEveryLots = way.Member("cleanEveryLots", required: false)?.Whole(0, StructureSpec.Most) ?? before.CleanEveryLots, ThresholdShare = Number(way, "thresholdShare", before.ThresholdShare, 1m),
        HoursEachCleanOut = Number(way, "hoursEachCleanOut", before.HoursEachCleanOut, 1000m),
    };

    private static double Tonnes(JsonNode way, string name, double before) => Number(way, name, before / 1000, 1_000_000m) * 1000;

    private static double Number(JsonNode way, string name, double before, decimal most) => way.Member(name, required: false)?.Number(0m, most) is { } number ? (double)number : before;

    private static T Word<T>(JsonNode way, string name, T before, params (string Word, T Value)[] known)
    {
        if (way.Member(name, required: false) is not { } node)
        {
            return before;
        }

        var found = Array.Find(known, k => k.Word == node.Text());
        if (found.Word is null)
        {
            node.Fault(string.Join(" or ", known.Select(k => $"\"{k.Word}\"")));
            return before;
        }

        return found.Value;
    }
}
