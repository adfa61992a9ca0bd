using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Records.Intake;

/// <summary>One reading of a truck's probe sample.</summary>
/// <param name="What">The property.</param>
/// <param name="Value">As reported, digits kept.</param>
/// <param name="Unit">The unit with its convention.</param>
/// <param name="Basis">The moisture basis; default where the property has none.</param>
/// <param name="Method">How it was measured.</param>
/// <param name="Instrument">With what; may be empty.</param>
/// <param name="StandardUncertainty">One standard uncertainty, in the unit of the value; null when not known.</param>
public sealed record TruckReading(Property What, decimal Value, string Unit, Basis Basis, string Method, string Instrument = "", decimal? StandardUncertainty = null);
