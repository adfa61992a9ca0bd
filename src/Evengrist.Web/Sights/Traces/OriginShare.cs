using Evengrist.Ledger;
using Evengrist.Tracing;

namespace Evengrist.Web.Sights.Traces;

/// <summary>Part of what was traced back by district, elevator, water, additive or opening stock; shares sum to one.</summary>
/// <param name="Words">Where it began.</param>
/// <param name="Loads">How many loads or lots.</param>
/// <param name="Share">Share of the whole, a fraction.</param>
public sealed record OriginShare(string Words, int Loads, Trio Share)
{
    /// <summary>Groups roots, the largest first.</summary>
    public static IReadOnlyList<OriginShare> Of(IReadOnlyList<Root> roots, IReadOnlyList<Belief> beliefs) =>
        [.. roots.GroupBy(r => Name(r.Origin)).Select(g => new OriginShare(g.Key, g.Count(), Trio.Sum(g.Select(r => r.Share), beliefs))).OrderByDescending(o => o.Share.Expected)];

    private static string Name(Place origin) => origin.Kind switch
    {
        PlaceKind.Elevator => $"elevator {origin.Code}, field unknown",
        PlaceKind.AdditiveLot => $"additive {(origin.Material.Length > 0 ? origin.Material : origin.Code)}",
        PlaceKind.Opening => "opening stock, origin unknown",
        PlaceKind.Gain => "found at a count, origin unknown",
        _ => OriginWords.Of(origin),
    };
}
