using Evengrist.Ledger;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Web.Sights.Traces;

/// <summary>A stop on the way of what was traced: one place of the plant, or all packages of a kind together.</summary>
/// <param name="Name">Code, or how many of what.</param>
/// <param name="Kind">What sort of place.</param>
/// <param name="From">When the first of it was there.</param>
/// <param name="Until">When the last of it was there.</param>
/// <param name="Share">The highest share seen there, a fraction.</param>
/// <param name="Places">How many places.</param>
public sealed record Stage(string Name, PlaceKind Kind, Instant From, Instant Until, double Share, int Places)
{
    private const int MostApart = 3;

    /// <summary>Gathers passages: what comes by the dozen becomes one stop.</summary>
    public static IReadOnlyList<Stage> Of(IReadOnlyList<Passage> passages) =>
        [.. passages.GroupBy(p => (p.Place.Kind, Group(p.Place))).SelectMany(Of).OrderBy(s => s.Kind).ThenBy(s => s.From).ThenBy(s => s.Name, StringComparer.Ordinal)];

    private static IEnumerable<Stage> Of(IGrouping<(PlaceKind Kind, string Group), Passage> group)
    {
        var all = group.ToArray();
        return group.Key.Group.Length == 0 || all.Length <= MostApart
            ? all.Select(p => new Stage(p.Place.Code, p.Place.Kind, p.From, p.Until, p.Share, 1))
            : [new Stage($"{all.Length} {group.Key.Group}", group.Key.Kind, all.Min(p => p.From), all.Max(p => p.Until), all.Max(p => p.Share), all.Length)];
    }

    // Places of the plant stand each for itself; loads, packages and sources are many.
    private static string Group(Place place) => place.Kind.Role() switch
    {
        PlaceRole.Unit => $"{(place.Material.Length > 0 ? place.Material + " " : "")}{place.Kind.Words()}s",
        PlaceRole.Source or PlaceRole.Sink => place.Kind == PlaceKind.Opening ? "openings" : place.Kind.Words() + "s",
        _ => "",
    };
}
