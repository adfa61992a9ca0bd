using Evengrist.Quantities;

namespace Evengrist.Milling.Balance;

/// <summary>Electricity for a tonne.</summary>
/// <param name="PerTonneWheat">kWh for a tonne of wheat before cleaning.</param>
/// <param name="PerTonneFlour">kWh for a tonne of flour.</param>
public sealed record EnergyUse(double PerTonneWheat, double PerTonneFlour)
{
    /// <summary>Least and most of a census, kWh for a hundredweight of flour.</summary>
    public const double LeastPerHundredweight = 4, MostPerHundredweight = 7;

    /// <summary>Where they stand.</summary>
    public const string Source = "census of manufactures, United States 2005, 4 to 7 kWh for a hundredweight of flour, as a trade article cites it (World Grain, Electrical energy savings in flour milling); other mills, other products: a comparison, no aim";

    /// <summary>The same for a tonne of flour.</summary>
    public static double PerTonne(double perHundredweight) => perHundredweight * 1_000_000 / (100 * (double)Mass.GramsPerPound);
}
