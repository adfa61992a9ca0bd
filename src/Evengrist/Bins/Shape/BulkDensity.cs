using Evengrist.Quantities;

namespace Evengrist.Bins.Shape;

/// <summary>Density of loose grain, kg/m³, with where it comes from.</summary>
/// <param name="KilogramsPerCubicMetre">kg/m³ before packing, 200 to 1000.</param>
/// <param name="StandardUncertainty">One standard uncertainty, kg/m³, at least 0.</param>
/// <param name="Words">Where it comes from, with the formula chosen.</param>
public sealed record BulkDensity(double KilogramsPerCubicMetre, double StandardUncertainty, string Words)
{
    /// <summary>What a test weight of a whole bin may be off by, kg/hL, where it is not known: 0.5 [design].</summary>
    public const decimal UsualUncertainty = 0.5m;

    /// <summary>From a test weight: 10 × kg/hL, by the equation of the instrument that read it (for common wheat in lb/bu the federal one).</summary>
    /// <param name="testWeight">The test weight.</param>
    /// <param name="uncertaintyKilogramsPerHectolitre">One standard uncertainty, kg/hL.</param>
    public static BulkDensity Of(TestWeight testWeight, decimal uncertaintyKilogramsPerHectolitre = UsualUncertainty) => new(
        10 * (double)testWeight.KilogramsPerHectolitre, 10 * (double)uncertaintyKilogramsPerHectolitre,
        $"test weight {testWeight}, {testWeight.Formula.Name}; 1 kg/hL = 10 kg/m³");

    /// <summary>Given as it is.</summary>
    public static BulkDensity Given(double kilogramsPerCubicMetre, double standardUncertainty) => new(kilogramsPerCubicMetre, standardUncertainty, "density as given");
}
