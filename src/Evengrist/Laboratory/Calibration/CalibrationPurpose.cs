namespace Evengrist.Laboratory.Calibration;

/// <summary>What a calibration foretells, as the reference method measures it.</summary>
/// <param name="Property">As protein, moisture, ash.</param>
/// <param name="Unit">As %.</param>
/// <param name="Basis">On which moisture, as <c>12mb</c>, <c>dry</c>, <c>as is</c>; empty where the property has none.</param>
/// <param name="Method">The reference method; empty where it is not said.</param>
public sealed record CalibrationPurpose(string Property, string Unit, string Basis = "", string Method = "")
{
    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() => Property.Trim().Length > 0 ? [] : ["A calibration is for a property: name it."];
}
