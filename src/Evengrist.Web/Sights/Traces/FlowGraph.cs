using Evengrist.Ledger;
using Evengrist.Tracing;

namespace Evengrist.Web.Sights.Traces;

/// <summary>Gathers the flow between hundreds of places into a few boxes a column, along the way of the grain.</summary>
internal static class FlowGraph
{
    /// <summary>Most boxes in a column; the smaller ones become one.</summary>
    public const int MostNodes = 8;

    /// <summary>What stands over the columns.</summary>
    public static IReadOnlyList<string> Columns { get; } = ["origin", "truck", "pit and leg", "bin", "cleaning, temper, mill", "flour bin", "line", "packages", "customers and losses"];

    /// <summary>Grams between boxes; what flows against the order of the columns comes apart, as a sum.</summary>
    public static (Dictionary<((int, string) From, (int, string) To), double> Flows, double Back) Gather(IReadOnlyList<Link> links)
    {
        var units = MillNames(links);
        var sizes = new Dictionary<(int, string), double>();
        foreach (var link in links)
        {
            foreach (var node in new[] { Node(link.From, units), Node(link.To, units) })
            {
                sizes[node] = sizes.GetValueOrDefault(node) + link.Grams;
            }
        }

        var kept = sizes.GroupBy(s => s.Key.Item1).SelectMany(g => g.Count() <= MostNodes ? g : g.OrderByDescending(s => s.Value).Take(MostNodes - 1)).Select(s => s.Key).ToHashSet();
        var dropped = sizes.Keys.Where(k => !kept.Contains(k)).GroupBy(k => k.Item1).ToDictionary(g => g.Key, g => $"{g.Count()} others");
        (int, string) Kept((int Column, string Name) node) => kept.Contains(node) ? node : (node.Column, dropped[node.Column]);

        var flows = new Dictionary<((int, string), (int, string)), double>();
        double back = 0;
        foreach (var link in links)
        {
            var (from, to) = (Kept(Node(link.From, units)), Kept(Node(link.To, units)));
            if (from.Item1 < to.Item1)
            {
                flows[(from, to)] = flows.GetValueOrDefault((from, to)) + link.Grams;
            }
            else if (from.Item1 > to.Item1)
            {
                back += link.Grams;
            }
        }

        return (flows, back);
    }

    private static (int Column, string Name) Node(Place place, Dictionary<PlaceId, string> units) => place.Kind switch
    {
        PlaceKind.Truck => (1, place.Code),
        PlaceKind.Pit or PlaceKind.Leg => (2, "pits and legs"),
        PlaceKind.Bin => (3, place.Code),
        PlaceKind.MixLine or PlaceKind.Cleaner or PlaceKind.TemperBin or PlaceKind.MillUnit => (4, units[place.Id]),
        PlaceKind.FlourBin => (5, place.Code),
        PlaceKind.PackingLine => (6, place.Code),
        PlaceKind.Pallet or PlaceKind.BulkLoad or PlaceKind.ReworkTote => (7, $"{(place.Material.Length > 0 ? place.Material + " " : "")}{place.Kind.Words()}s"),
        _ when place.Kind.Role() == PlaceRole.Source => (0, place.Code),
        _ => (8, place.Code),
    };

    // Mix line, cleaner, temper bin and mill unit that feed one another are one box, named after the unit.
    private static Dictionary<PlaceId, string> MillNames(IReadOnlyList<Link> links)
    {
        var places = links.SelectMany(l => new[] { l.From, l.To }).Where(IsMill).DistinctBy(p => p.Id).ToDictionary(p => p.Id);
        var root = places.Keys.ToDictionary(p => p);
        PlaceId Find(PlaceId id) => root[id] == id ? id : root[id] = Find(root[id]);
        foreach (var link in links.Where(l => IsMill(l.From) && IsMill(l.To)))
        {
            root[Find(link.From.Id)] = Find(link.To.Id);
        }

        return places.Values.GroupBy(p => Find(p.Id)).SelectMany(g => g.Select(p => (p.Id, Name: string.Join(" ", g.OrderBy(p => p.Kind).Select(p => p.Code))))).ToDictionary(p => p.Id, p => p.Name);
    }

    private static bool IsMill(Place place) => place.Kind is PlaceKind.MixLine or PlaceKind.Cleaner or PlaceKind.TemperBin or PlaceKind.MillUnit;
}
