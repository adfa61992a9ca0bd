using System.Globalization;

namespace Evengrist.Bins.Storage;

/// <summary>Days that wheat keeps, by a recalled equation.</summary>
/// <remarks>
/// log10 t = 6.234 − 0.2118 M − 0.0527 T for 12 ≤ M ≤ 19, and 4.129 − 0.0997 M − 0.0576 T for 19 &lt; M ≤ 24; t in days, M in per cent wet basis,
/// T in °C from 5 to 30. From memory, thought to be Trans. ASAE 24(3), 1981. Model: docs/model/safe-storage.md.
/// </remarks>
public static class SafeStorageModel
{
    /// <summary>What the equation's days are multiplied by before anybody is warned by them. Ours: against the study of 2001 it ran long, 20.7 for 15 and 4.3 for 2.5 days.</summary>
    public const double AlarmFactor = 0.6;

    /// <summary>The driest the equation reaches, per cent, wet basis.</summary>
    public const double LeastMoisture = 12;

    /// <summary>The wettest the equation reaches, per cent, wet basis.</summary>
    public const double MostMoisture = 24;

    /// <summary>The coldest the equation reaches, °C.</summary>
    public const double LeastCelsius = 5;

    /// <summary>The warmest the equation reaches, °C.</summary>
    public const double MostCelsius = 30;

    /// <summary>Where the equation comes from and what is known of it; shown with every figure of it.</summary>
    public const string Source = "equation from memory (thought to be Trans. ASAE 24(3), 1981), not verified; it ran 1.3 to 1.7 times longer than what a study of 2001 measured at 17 to 19 % and shorter at 15 and 16 %";

    /// <summary>Days at a moisture and a temperature, or why there are none.</summary>
    /// <param name="moisturePercent">Moisture, per cent, wet basis.</param>
    /// <param name="celsius">Temperature, °C.</param>
    public static SafeStorageOutcome Of(double moisturePercent, double celsius)
    {
        if (moisturePercent is not (>= LeastMoisture and <= MostMoisture) || celsius is not (>= LeastCelsius and <= MostCelsius))
        {
            return new NoStorageDays(string.Create(CultureInfo.InvariantCulture,
                $"The equation holds from {LeastMoisture} to {MostMoisture} % moisture and from {LeastCelsius} to {MostCelsius} °C; asked were {moisturePercent:0.##} % and {celsius:0.##} °C."));
        }

        var days = Days(moisturePercent, celsius);
        return new StorageDays(days, AlarmFactor * days);
    }

    // Held at the edges of the equation's reach; whoever counts by it says which side was left.
    internal static double AlarmDaysHeld(double moisturePercent, double celsius) =>
        AlarmFactor * Days(Math.Clamp(moisturePercent, LeastMoisture, MostMoisture), Math.Clamp(celsius, LeastCelsius, MostCelsius));

    private static double Days(double m, double t) => Math.Pow(10, m <= 19 ? 6.234 - (0.2118 * m) - (0.0527 * t) : 4.129 - (0.0997 * m) - (0.0576 * t));
}
