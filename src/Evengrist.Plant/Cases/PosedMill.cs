using System.Globalization;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>Gathers the places and movements of a posed mill as drafts: places first, then connections, then the rest.</summary>
internal sealed class PosedMill
{
    private const int MostRepeats = 20_000;
    private const string Counter = "{n}";
    private static readonly PlaceKind[] Openable = [PlaceKind.Pallet, PlaceKind.BulkLoad, PlaceKind.ReworkTote, PlaceKind.Truck];
    private readonly List<(Draft Draft, string Path)> places = [];
    private readonly List<(Draft Draft, string Path)> connections = [];
    private readonly List<(Draft Draft, string Path)> events = [];

    public IReadOnlyList<Draft> Drafts => All.Select(d => d.Draft).ToArray();

    public IReadOnlyList<string> Paths => All.Select(d => d.Path).ToArray();

    private IEnumerable<(Draft Draft, string Path)> All => places.Concat(connections).Concat(events);

    public void Place(JsonNode node)
    {
        if (!node.IsObject("code", "kind", "feeds", "coreShare", "stirred", "capacity", "material"))
        {
            return;
        }

        var code = node.Text("code");
        places.Add((new OpenPlace($"place {code}", code, Kind(node.Member("kind"), PlaceKinds.All), Material: node.Text("material", ""))
        {
            CoreShare = (double)(node.Member("coreShare", required: false)?.Number(0m, 1m) ?? 0.1m),
            Stirred = node.Member("stirred", required: false)?.Mass() ?? default,
            Capacity = node.Member("capacity", required: false)?.Mass(),
        }, node.Path));
        foreach (var to in node.Member("feeds", required: false)?.Items(1000) ?? [])
        {
            connections.Add((new Connect($"{code} feeds {to.Text()}", code, to.Text()), to.Path));
        }
    }

    public void Movement(JsonNode node)
    {
        if (!node.IsObject("from", "to", "t", "kg", "at", "until", "opens", "every", "count"))
        {
            return;
        }

        var (from, to, mass, at, until) = (node.Text("from"), node.Text("to"), node.Mass(), node.Time("at"), node.Time("until", required: false));
        var opens = node.Has("opens") ? Kind(node.Member("opens"), Openable) : PlaceKind.None;
        var repeated = node.Has("every") || node.Has("count");
        var (every, count) = repeated ? (node.Member("every")?.Span(), node.Member("count")?.Whole(1, MostRepeats)) : (null, 1);
        if (repeated && until is not null)
        {
            node.Fault("either until, or every and count");
        }

        if (repeated && events.Count + count > 2 * MostRepeats)
        {
            node.Fault($"at most {2 * MostRepeats} movements in all");
            return;
        }

        if (mass is null || at is null || count is null || (repeated && every is null))
        {
            return;
        }

        for (var n = 1; n <= count; n++)
        {
            var began = at.Value + ((every ?? Duration.Zero) * (n - 1));
            var ended = repeated ? began + every : until;
            var (here, there) = (Counted(from, n), Counted(to, n));
            if (opens != PlaceKind.None)
            {
                places.Add((new OpenPlace($"place {there}", there, opens), node.Path));
            }

            events.Add((new Move($"{node.Path} {n.ToString(CultureInfo.InvariantCulture)}", here, there, mass.Value, began, ended), node.Path));
        }
    }

    public void Empty(JsonNode node)
    {
        if (node.IsObject("place", "at") && node.Time("at") is { } at)
        {
            events.Add((new Happen(node.Path, node.Text("place"), at, HappeningKind.ProvenEmpty), node.Path));
        }
    }

    private static string Counted(string code, int n) => code.Replace(Counter, n.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);

    private static PlaceKind Kind(JsonNode? node, IReadOnlyList<PlaceKind> allowed)
    {
        var words = node?.Text() ?? "";
        var kind = allowed.FirstOrDefault(k => k.Words() == words);
        if (kind == PlaceKind.None && words.Length > 0)
        {
            node!.Fault($"a kind of place: {string.Join(", ", allowed.Select(k => k.Words()))}");
        }

        return kind;
    }
}
