using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>What the probe sample of a load showed of one property, as reported.</summary>
/// <param name="What">The property.</param>
/// <param name="Value">The value as reported, in <paramref name="Unit"/>.</param>
/// <param name="Unit">One of the units of the property, see <see cref="Readings.UnitsOf"/>.</param>
/// <param name="Basis">The moisture basis; stated for a share of solids, left out otherwise.</param>
/// <param name="StandardUncertainty">One standard uncertainty in <paramref name="Unit"/>, sampling included where known; null when not known.</param>
public sealed record Finding(Property What, decimal Value, string Unit, Basis Basis = default, decimal? StandardUncertainty = null)
{
    /// <summary>What is wrong and what to do, in a sentence; null where nothing is.</summary>
    public string? Fault => Readings.Fault(What, Value, Unit, Basis);

    /// <summary>The finding in a reading of the ledger.</summary>
    public static Finding Of(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return new(reading.What, reading.Value, reading.Unit, reading.Basis, reading.StandardUncertainty);
    }

    /// <summary>The finding as a figure: seen, with its basis and its ±.</summary>
    public Figure AsFigure() => Figure.Seen(What.Words(), Value, Unit, Basis) with { StandardUncertainty = StandardUncertainty };
}
