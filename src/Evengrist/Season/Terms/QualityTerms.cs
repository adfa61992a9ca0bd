using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Season.Terms;

/// <summary>What a wheat that is not there yet is expected to be.</summary>
/// <param name="What">The property.</param>
/// <param name="Value">In its usual unit.</param>
/// <param name="Spread">Standard deviation of a lot about it, 0 or more.</param>
public sealed record QualityTerms(Property What, double Value, double Spread = 0)
{
    /// <summary>Basis of a share of solids.</summary>
    public Basis Basis { get; init; }

    /// <summary>Several of them as the plan takes them.</summary>
    public static SeasonQuality Of(IReadOnlyList<QualityTerms> terms) => new(terms.ToDictionary(t => t.What, t => new SeasonValue(t.Value, t.Spread, t.Basis)));
}
