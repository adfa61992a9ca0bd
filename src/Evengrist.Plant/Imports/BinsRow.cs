using Evengrist.Ledger;

namespace Evengrist.Plant.Imports;

/// <summary>A row of a bins file: a place, and what it feeds.</summary>
internal static class BinsRow
{
    public static IReadOnlyList<Draft> Read(RowReader row)
    {
        var code = row.Text("code");
        var kind = Kind(row, "kind", PlaceKinds.All);
        var open = new OpenPlace($"place {code}", code, kind, row.Text("name"), row.Text("material"))
        {
            Of = row.Text("of"),
            Capacity = row.Mass("capacity"),
            CoreShare = (double)(row.Share("core") ?? 0.1m),
            Stirred = row.Mass("stirred", orZero: true) ?? default,
        };
        var feeds = row.Codes("feeds");
        if (feeds.Count > 0 && kind != PlaceKind.None && !kind.IsFixed())
        {
            row.Fault("feeds", $"nothing: a {kind.Words()} is no fixed place of the plant and needs no connection");
        }

        return [open, .. feeds.Select(to => new Connect($"{code} feeds {to}", code, to))];
    }

    /// <summary>A kind of place in words; <see cref="PlaceKind.None"/> with a fault where it is none of those allowed.</summary>
    public static PlaceKind Kind(RowReader row, string name, IReadOnlyList<PlaceKind> allowed)
    {
        var words = row.Text(name);
        var kind = allowed.FirstOrDefault(k => k.Words().Equals(words, StringComparison.OrdinalIgnoreCase));
        if (kind == PlaceKind.None && words.Length > 0)
        {
            row.Fault(name, Nearest.To(words, allowed.Select(k => k.Words())) is { } near
                ? $"a kind of place; the nearest is {near}"
                : $"a kind of place: {string.Join(", ", allowed.Select(k => k.Words()))}");
        }

        return kind;
    }
}
