using Evengrist.Ledger;

namespace Evengrist.Milling.Balance;

/// <summary>A part of the plant that is balanced as one: from the mix line over cleaning, temper bins and rolls, all that is connected.</summary>
/// <param name="Places">Its places.</param>
/// <param name="Units">Its mill units that wheat reaches from a temper bin or cleaner, by code; mixers behind the rolls are not among them.</param>
public sealed record MillSection(IReadOnlySet<PlaceId> Places, IReadOnlyList<Place> Units)
{
    /// <summary>What it is called: its units.</summary>
    public string Name => string.Join(" + ", Units.Select(u => u.Code));

    /// <summary>Every section that has a mill unit, by name.</summary>
    public static IReadOnlyList<MillSection> Of(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var (left, sections) = (book.Places.Where(IsWithin).Select(p => p.Id).ToHashSet(), new List<MillSection>());
        while (left.Count > 0)
        {
            var reached = new HashSet<PlaceId> { left.Min() };
            for (var before = 0; before < reached.Count;)
            {
                before = reached.Count;
                reached.UnionWith(book.Connections.SelectMany(c => reached.Contains(c.From) ? [c.To] : reached.Contains(c.To) ? (PlaceId[])[c.From] : []).Where(left.Contains).ToArray());
            }

            left.ExceptWith(reached);
            Place[] units = [.. reached.Select(p => book[p]).Where(p => p.Kind == PlaceKind.MillUnit && !book.Connections.Any(c => c.To == p.Id && book[c.From].Kind == PlaceKind.MillUnit)).OrderBy(p => p.Code, StringComparer.OrdinalIgnoreCase)];
            if (units.Length > 0)
            {
                sections.Add(new MillSection(reached, units));
            }
        }

        return [.. sections.OrderBy(s => s.Name, StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>Several sections as one.</summary>
    public static MillSection Together(IReadOnlyList<MillSection> sections)
    {
        ArgumentNullException.ThrowIfNull(sections);
        return new MillSection(sections.SelectMany(s => s.Places).ToHashSet(), [.. sections.SelectMany(s => s.Units)]);
    }

    private static bool IsWithin(Place place) => place.Kind is PlaceKind.MixLine or PlaceKind.Cleaner or PlaceKind.TemperBin or PlaceKind.MillUnit;
}
