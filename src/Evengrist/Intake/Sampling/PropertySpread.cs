using Evengrist.Ledger;

namespace Evengrist.Intake.Sampling;

/// <summary>What a site measured of the spread of one property within a load and of its test; standard deviations in the property's usual unit.</summary>
/// <param name="What">The property.</param>
/// <param name="BetweenProbes">From probe to probe in one load, at least 0.</param>
/// <param name="Test">Of laboratory sample, preparation and determination together, at least 0.</param>
/// <param name="Instrument">Of the instrument's calibration, at least 0.</param>
public sealed record PropertySpread(Property What, double BetweenProbes, double Test, double Instrument)
{
    /// <summary>As a variance model takes it.</summary>
    public VarianceSpec AsSpec => new(BetweenProbes, Test, Instrument: Instrument);

    /// <summary>What cannot be, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults() =>
        What == Property.None || !AsSpec.IsSound || AsSpec == new VarianceSpec(0) ? [$"The spread of {What.Words()}: give a property, and standard deviations of at least 0, one of them above."] : [];
}
