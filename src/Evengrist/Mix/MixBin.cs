using Evengrist.Ledger;

namespace Evengrist.Mix;

/// <summary>A bin offered to a mix, with what is known of the wheat that leaves it next.</summary>
/// <param name="Code">The bin's code.</param>
/// <param name="Class">Class of wheat.</param>
/// <param name="CostPerTonne">What a tonne costs today, as it lies; money of <see cref="MixSpec.Currency"/>.</param>
public sealed record MixBin(string Code, string Class, double CostPerTonne)
{
    /// <summary>What a tonne taken today costs the rest of the year beyond today's cost; null where nobody has reckoned it.</summary>
    public double? YearValuePerTonne { get; init; }

    /// <summary>Moisture, per cent wet basis, 0 to 60: makes the dry share.</summary>
    public double MoisturePercent { get; init; } = 12;

    /// <summary>What is known of it; a property of a limit must be there.</summary>
    public IReadOnlyDictionary<Property, MixValue> Values { get; init; } = new Dictionary<Property, MixValue>();

    /// <summary>Least share of the mix, 0 to 1, as it lies.</summary>
    public double LeastShare { get; init; }

    /// <summary>Most share of the mix, 0 to 1, as it lies.</summary>
    public double MostShare { get; init; } = 1;

    /// <summary>The share at which its gate is locked; null for a gate that may be moved.</summary>
    public double? LockedShare { get; init; }

    /// <summary>What can be drawn, t; null for as much as is asked.</summary>
    public double? Tonnes { get; init; }

    /// <summary>Dry matter over mass as it lies.</summary>
    public double DryShare => 1 - (MoisturePercent / 100);

    /// <summary>Today's cost and the year's value together.</summary>
    public double YearCostPerTonne => CostPerTonne + (YearValuePerTonne ?? 0);
}
