using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing;

namespace Evengrist.Web.Sights.Traces;

/// <summary>Packages over the threshold of one product in one kind of package.</summary>
/// <param name="Words"><c>WB pallets</c>.</param>
/// <param name="Union">How many under any hypothesis.</param>
/// <param name="Counts">How many under each hypothesis.</param>
/// <param name="Grams">Grams of what was traced in those of the union.</param>
public sealed record ProductReach(string Words, int Union, IReadOnlyList<int> Counts, Trio Grams)
{
    /// <summary>Groups packages, the most grams first.</summary>
    public static IReadOnlyList<ProductReach> Of(IReadOnlyList<Reached> packages, IReadOnlyList<Belief> beliefs, Mass threshold) =>
        [.. packages.GroupBy(p => $"{(p.Place.Material.Length > 0 ? p.Place.Material + " " : "")}{p.Place.Kind.Words()}s")
            .Select(g => new ProductReach(g.Key, g.Count(), [.. beliefs.Select((_, h) => g.Count(p => p.Grams.Each[h] > threshold.Grams))], Trio.Sum(g.Select(p => p.Grams), beliefs)))
            .OrderByDescending(p => p.Grams.Expected)];
}
