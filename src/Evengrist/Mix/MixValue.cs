using Evengrist.Quantities;

namespace Evengrist.Mix;

/// <summary>What is known of one property of the wheat that leaves a bin next.</summary>
/// <param name="Value">The mean, in the property's usual unit.</param>
/// <param name="Basis">The moisture basis of a share of solids; default otherwise.</param>
/// <param name="OwnUncertainty">One standard uncertainty that this bin has by itself: loads, layers, sampling; unit and basis of the value, 0 or more.</param>
public sealed record MixValue(double Value, Basis Basis = default, double OwnUncertainty = 0)
{
    /// <summary>The instrument whose error this value shares with all others it read; empty for none.</summary>
    public string Instrument { get; init; } = "";

    /// <summary>One standard uncertainty of that instrument, the same for all it read; unit and basis of the value, 0 or more.</summary>
    public double InstrumentUncertainty { get; init; }
}
