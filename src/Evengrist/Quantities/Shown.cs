using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>The one place where quantities become text for a screen or a print in the units a person chose.</summary>
/// <remarks>Rounds half away from zero at the decimals shown; what is stored stays as it is. 1 lb = 0.45359237 kg, 1 wheat bu = 60 lb, 1 cwt = 100 lb, by definition.</remarks>
public static class Shown
{
    /// <summary>A truck, a pallet, a bag: kg or lb.</summary>
    public static ShownValue Weight(Mass mass, UnitSystem system, int decimals = 0) => Number(mass.Kilograms, "kg", decimals, system);

    /// <summary>A stock or load of wheat: t or bushels of 60 lb.</summary>
    public static ShownValue Wheat(Mass mass, UnitSystem system, int decimals = 2) => system == UnitSystem.Si
        ? new(Digits(mass.Tonnes, decimals), "t")
        : new(Digits(mass.WheatBushels, decimals), "bu");

    /// <summary>A stock or load of flour: t or hundredweights of 100 lb.</summary>
    public static ShownValue Flour(Mass mass, UnitSystem system, int decimals = 2) => system == UnitSystem.Si
        ? new(Digits(mass.Tonnes, decimals), "t")
        : new(Digits(mass.Pounds / 100m, decimals), "cwt");

    /// <summary>A test weight: kg/hL by the formula of its convention, or lb/bu of the US instrument for its wheat (the raw reading where it was read so).</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no reading.</exception>
    public static ShownValue TestWeight(TestWeight reading, UnitSystem system, int decimals = 1) => system == UnitSystem.Si
        ? new(Digits(reading.KilogramsPerHectolitre, decimals), "kg/hL")
        : new(Digits(reading.In(reading.IsDurum ? TestWeightConvention.UsDurum : TestWeightConvention.UsWheat), decimals), "lb/bu");

    /// <summary>A temperature: °C or °F.</summary>
    public static ShownValue Temperature(Temperature temperature, UnitSystem system, int decimals = 1) => Number(temperature.Celsius, "°C", decimals, system);

    /// <summary>Flour yield: per cent of the wheat, or bushels of wheat in one hundredweight of flour (100/60 over the yield).</summary>
    /// <param name="percentOfWheat">Flour over wheat by mass in per cent; above 0.</param>
    /// <param name="system">The units chosen.</param>
    /// <exception cref="ArgumentOutOfRangeException">The yield is not above 0.</exception>
    public static ShownValue Yield(decimal percentOfWheat, UnitSystem system)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(percentOfWheat);
        return system == UnitSystem.Si
            ? new(Digits(percentOfWheat, 1), "%")
            : new(Digits(FlourYield.BushelsPerHundredweight(percentOfWheat), 2), "bu/cwt");
    }

    /// <summary>
    /// Any number with its unit: kg, t, °C, kg/hL, kg/hL durum and their counterparts lb, short ton, °F, lb/bu, lb/bu durum are swapped
    /// where the choice asks for it, every other unit stays.
    /// </summary>
    public static ShownValue Number(decimal value, string unit, int decimals, UnitSystem system)
    {
        var (shown, shownUnit, _) = ShownUnit.Of(value, unit, system);
        return new(Digits(shown, decimals), shownUnit);
    }

    /// <summary>The digits alone, with exactly so many decimals and a comma between thousands.</summary>
    public static string Digits(decimal value, int decimals) =>
        Recorded.To(value, decimals).ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
