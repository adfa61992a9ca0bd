using Evengrist.Packing.NetContent;

namespace Evengrist.Records.Packing;

/// <summary>By which rules checkweigher data is looked at.</summary>
/// <param name="Rules">Whose rules.</param>
public sealed record ContentOptions(NetRules Rules)
{
    /// <summary>Allowance for the drift of the fill between checks, grams, at least 0.</summary>
    public double Drift { get; init; }

    /// <summary>What a tonne of the flour is worth; null where nobody said.</summary>
    public decimal? PricePerTonne { get; init; }

    /// <summary>Moisture when packed and when sold; null where it is not reckoned with.</summary>
    public DryingOut? Drying { get; init; }

    /// <summary>Packages in the lot; null for those of the last hour.</summary>
    public int? Lot { get; init; }
}
