using Evengrist.Ledger;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>The ways from where trucks tip to a bin.</summary>
public static class Ways
{
    private const int Longest = 4;

    /// <summary>Ways that end in some wheat bin, without the bin: <c>PIT1 | LEG1</c>, by code.</summary>
    public static IReadOnlyList<string> All(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. book.OfKind(PlaceKind.Pit).SelectMany(p => From(book, [p])).Distinct().Order(StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>The places of a way as it was chosen; null where one is unknown.</summary>
    public static IReadOnlyList<Place>? Read(Book book, string text)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(text);
        var codes = text.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var places = codes.Select(book.Find).OfType<Place>().ToArray();
        return places.Length == codes.Length ? places : null;
    }

    private static IEnumerable<string> From(Book book, Place[] way)
    {
        var next = book.Connections.Where(c => c.From == way[^1].Id).Select(c => book[c.To]).ToArray();
        if (next.Any(p => p.Kind == PlaceKind.Bin))
        {
            yield return string.Join(" | ", way.Select(p => p.Code));
        }

        foreach (var longer in next.Where(p => p.Kind is PlaceKind.Leg && way.Length < Longest && !way.Contains(p)).SelectMany(p => From(book, [.. way, p])))
        {
            yield return longer;
        }
    }
}
