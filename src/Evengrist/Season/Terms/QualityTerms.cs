using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Season.Terms;

/// <summary>What a wheat that is not there yet is expected to be.</summary>
/// <param name="What">The property.</param>
/// <param name="Value">In its usual unit.</param>
/// <param name="Spread">Standard deviation of a lot about it, 0 or more.</param>
public sealed record QualityTerms(Property What, double Value, double Spread = 0)
{
    /// <summary>Standard deviation between the trucks of a lot about its mean, 0 or more: a lot of few trucks lies further off. Of arrivals alone.</summary>
    public double TruckSpread { get; init; }

    /// <summary>Standard deviation of the mean of a whole harvest about the value, 0 or more: one bad summer, every truck of it. Of arrivals alone.</summary>
    public double YearSpread { get; init; }

    /// <summary>Basis of a share of solids.</summary>
    public Basis Basis { get; init; }

    /// <summary>Several of them as the plan takes them.</summary>
    public static SeasonQuality Of(IReadOnlyList<QualityTerms> terms) => new(terms.ToDictionary(t => t.What, t => new SeasonValue(t.Value, t.Spread, t.Basis)));
}
