using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Web.Sights.Traces;

/// <summary>One customer (or the mill's own stock) with what reached it.</summary>
/// <param name="Place">The customer; null for stock.</param>
/// <param name="Packages">The packages, by when they left.</param>
/// <param name="Mass">Their whole mass.</param>
/// <param name="Grams">Grams of what was traced in them.</param>
public sealed record Consignee(Place? Place, IReadOnlyList<Reached> Packages, Mass Mass, Trio Grams)
{
    /// <summary>When the first left; null for stock.</summary>
    public Instant? First => Packages.Min(p => p.Left);

    /// <summary>When the last left; null for stock.</summary>
    public Instant? Last => Packages.Max(p => p.Left);

    /// <summary>Code and name.</summary>
    public string Words => Place is null ? "in stock here" : string.Join(" · ", new[] { Place.Code, Place.Name, Place.Of }.Where(w => w.Length > 0));

    /// <summary>Groups packages by where they are; stock last.</summary>
    public static IReadOnlyList<Consignee> Of(IEnumerable<Reached> packages, IReadOnlyList<Belief> beliefs) =>
        [.. packages.GroupBy(p => p.Where?.Id.Value ?? 0).Select(g => new Consignee(
                g.First().Where, [.. g.OrderBy(p => p.Left ?? p.Made)], Mass.FromGrams(g.Sum(p => p.Mass.Grams)), Trio.Sum(g.Select(p => p.Grams), beliefs)))
            .OrderBy(c => c.Place is null).ThenByDescending(c => c.Grams.Expected)];
}
