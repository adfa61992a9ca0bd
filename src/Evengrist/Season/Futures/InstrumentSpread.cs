using Evengrist.Ledger;

namespace Evengrist.Season.Futures;

/// <summary>By how much readings of a property may differ from the truth.</summary>
/// <param name="What">The property.</param>
/// <param name="Shared">Standard deviation of the error that everything read has in common, in the unit of the property, 0 or more.</param>
/// <param name="Own">Standard deviation of the error of a single delivery or purchase on top of it, 0 or more.</param>
public sealed record InstrumentSpread(Property What, double Shared, double Own)
{
    /// <summary>Standard deviation of what the shared error drifts by in a week, 0 or more; over days less, as their root.</summary>
    public double Drift { get; init; }
}
