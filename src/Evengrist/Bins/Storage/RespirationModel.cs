namespace Evengrist.Bins.Storage;

/// <summary>What grain breathes away. For trends only: never for a release.</summary>
/// <remarks>
/// Stoichiometry of glucose, C₆H₁₂O₆ + 6 O₂ → 6 CO₂ + 6 H₂O: 180.16 g give 264.06 g CO₂ and 108.09 g water, and about 15.7 MJ/kg of heat [derived].
/// Rate of CO₂ for wheat: log10 R = −4.054 + 0.0406 T − 0.0165 d + 0.0001 d² + 0.2389 M, mg per kg dry matter and day, d days in store [memory, order of
/// magnitude: a study of 2001 implies five times as much at 17 % and 25 °C]. Model: docs/model/safe-storage.md.
/// </remarks>
public static class RespirationModel
{
    /// <summary>kg CO₂ from 1 kg of dry matter.</summary>
    public const double CarbonDioxidePerDryMatter = 6 * 44.010 / 180.156;

    /// <summary>kg water from 1 kg of dry matter.</summary>
    public const double WaterPerDryMatter = 6 * 18.015 / 180.156;

    /// <summary>kJ of heat from 1 kg of dry matter; derived, rounded.</summary>
    public const double HeatPerDryMatter = 15_700;

    /// <summary>Heat capacity of wheat, kJ/(kg K); from memory.</summary>
    public const double GrainHeat = 1.8;

    /// <summary>What every figure of it must say.</summary>
    public const string Mark = "recalled fit, order of magnitude only: a trend, do not use for release";

    /// <summary>CO₂ breathed out, mg per kg of dry matter and day.</summary>
    /// <param name="moisturePercent">Moisture, per cent, wet basis.</param>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="days">Days in store, 0 to 80: beyond, the fit turns round, so 80 is taken.</param>
    public static double Rate(double moisturePercent, double celsius, double days)
    {
        var d = Math.Clamp(days, 0, 80);
        return Math.Pow(10, -4.054 + (0.0406 * celsius) - (0.0165 * d) + (0.0001 * d * d) + (0.2389 * moisturePercent));
    }

    /// <summary>Dry matter gone, per cent, from CO₂ in mg per kg of dry matter.</summary>
    public static double LossPercent(double carbonDioxideMg) => carbonDioxideMg / 1e6 / CarbonDioxidePerDryMatter * 100;

    /// <summary>CO₂ in g, water in g and heat in kJ from each kg of dry matter when a share of it is lost.</summary>
    /// <param name="lossPercent">Dry matter lost, per cent; 0 to 100.</param>
    public static (double CarbonDioxideGrams, double WaterGrams, double HeatKilojoules) Of(double lossPercent)
    {
        var kilograms = lossPercent / 100;
        return (1000 * kilograms * CarbonDioxidePerDryMatter, 1000 * kilograms * WaterPerDryMatter, kilograms * HeatPerDryMatter);
    }
}
