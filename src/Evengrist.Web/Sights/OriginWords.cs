using Evengrist.Bins;
using Evengrist.Ledger;

namespace Evengrist.Web.Sights;

/// <summary>Where grain began, in few words: the district of a field, an elevator, opening stock.</summary>
public static class OriginWords
{
    /// <summary>Grain of several districts, none of which makes up four fifths.</summary>
    public const string Mixed = "mixed";

    private const double Lead = 0.8;

    /// <summary>The district a source belongs to (the last part of what it is said to belong to), or the source itself.</summary>
    public static string Of(Place source) => source.Kind switch
    {
        PlaceKind.Field => source.Of.Split([',', '·'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) is [.., var district] ? district : source.Code,
        PlaceKind.Elevator => "elevator " + source.Code,
        PlaceKind.Opening => "opening stock",
        _ => source.Kind.Words(),
    };

    /// <summary>Grams by district, most first.</summary>
    public static IReadOnlyList<(string Origin, double Grams)> Grouped(Book book, Makeup makeup) =>
        [.. makeup.Origins.GroupBy(o => Of(book[o.Place])).Select(g => (g.Key, g.Sum(o => o.Grams))).OrderByDescending(g => g.Item2).ThenBy(g => g.Key, StringComparer.Ordinal)];

    /// <summary>The district that makes up four fifths or more, or <see cref="Mixed"/>.</summary>
    public static string Leading(IReadOnlyList<(string Origin, double Grams)> groups)
    {
        var all = groups.Sum(g => g.Grams);
        return groups.Count > 0 && groups[0].Grams >= Lead * all ? groups[0].Origin : Mixed;
    }

    /// <summary>The shares in words: <c>Northledge 62 %, Lowmere 38 %</c>; only the district where it is one alone.</summary>
    public static string Shares(IReadOnlyList<(string Origin, double Grams)> groups)
    {
        var all = groups.Sum(g => g.Grams);
        return all <= 0 ? "nothing"
            : groups[0].Grams > 0.995 * all ? groups[0].Origin
            : string.Join(", ", groups.Where(g => g.Grams >= 0.01 * all).Take(4).Select(g => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{g.Origin} {100 * g.Grams / all:0}\u00a0%")));
    }
}
