namespace Evengrist.Bins.Storage;

/// <summary>Moist air: what vapour it holds and how much heat.</summary>
/// <remarks>
/// Saturation over water by the Magnus form, e = 0.61094 exp(17.625 T/(T + 243.04)) kPa [memory: Alduchov and Eskridge, 1996; checked in the tests against steam-table values from memory].
/// Enthalpy h = 1.006 T + w (2501 + 1.86 T) kJ per kg of dry air [memory]. Range: −30 to 60 °C, at 101.325 kPa. Model: docs/model/aeration.md.
/// </remarks>
public static class Air
{
    /// <summary>Density of the air blown, kg/m³; an ordinary value, taken as fixed.</summary>
    public const double Density = 1.2;

    /// <summary>Heat capacity of dry air, kJ/(kg K).</summary>
    public const double Heat = 1.006;

    private const double Pressure = 101.325;

    /// <summary>Vapour pressure over water, kPa.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    public static double SaturationKilopascals(double celsius) => 0.61094 * Math.Exp(17.625 * celsius / (celsius + 243.04));

    /// <summary>Water in the air, kg per kg of dry air.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="humidity">Relative humidity, as a fraction.</param>
    public static double HumidityRatio(double celsius, double humidity)
    {
        var vapour = humidity * SaturationKilopascals(celsius);
        return 0.62198 * vapour / (Pressure - vapour);
    }

    /// <summary>Heat in the air above 0 °C, kJ per kg of dry air.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="humidity">Relative humidity, as a fraction.</param>
    public static double Enthalpy(double celsius, double humidity) => (Heat * celsius) + (HumidityRatio(celsius, humidity) * (2501 + (1.86 * celsius)));
}
