using System.Globalization;

namespace Evengrist.Bins.Storage;

/// <summary>What was measured of how long wheat keeps: one red spring variety, days until germination had fallen to 90 %.</summary>
/// <remarks>
/// Points read in the abstract of "Safe storage time of high moisture wheat" (2001): 19 %: 2.5 d at 35 and at 30 °C, 37 d at 10 °C; 17 %: 5, 7 and 15 d at 35, 30 and 25 °C; 15 and
/// 16 % at 25 °C: no fall in 70 d. Between two points of one moisture, and between the moistures 17 and 19 %, the logarithm of the days is taken as
/// straight [design]. Nothing is said outside. Varieties differ. Model: docs/model/safe-storage.md.
/// </remarks>
public static class MeasuredStorage
{
    private static readonly (double Celsius, double Days)[] At17 = [(25, 15), (30, 7), (35, 5)];
    private static readonly (double Celsius, double Days)[] At19 = [(10, 37), (30, 2.5), (35, 2.5)];

    /// <summary>Where the points come from; shown with every figure of them.</summary>
    public const string Source = "points of a study of 2001 (one red spring variety, 90 % germination), read in its abstract; straight in log days between them";

    /// <summary>Days between the points that were measured, or why there are none.</summary>
    /// <param name="moisturePercent">Moisture, per cent, wet basis.</param>
    /// <param name="celsius">Temperature, °C.</param>
    public static MeasuredOutcome Of(double moisturePercent, double celsius) => moisturePercent switch
    {
        17 => On(At17, celsius) is { } at17 ? new MeasuredDays(Math.Pow(10, at17)) : Outside(moisturePercent, celsius),
        19 => On(At19, celsius) is { } at19 ? new MeasuredDays(Math.Pow(10, at19)) : Outside(moisturePercent, celsius),
        > 17 and < 19 when On(At17, celsius) is { } dry && On(At19, celsius) is { } wet => new MeasuredDays(Math.Pow(10, dry + ((wet - dry) * (moisturePercent - 17) / 2))),
        >= 15 and <= 16 when celsius is 25 => new MeasuredAtLeast(70),
        _ => Outside(moisturePercent, celsius),
    };

    private static double? On((double Celsius, double Days)[] curve, double celsius)
    {
        for (var i = 1; i < curve.Length; i++)
        {
            var ((t0, d0), (t1, d1)) = (curve[i - 1], curve[i]);
            if (celsius >= t0 && celsius <= t1)
            {
                return Math.Log10(d0) + ((Math.Log10(d1) - Math.Log10(d0)) * (celsius - t0) / (t1 - t0));
            }
        }

        return null;
    }

    private static NotMeasured Outside(double moisturePercent, double celsius) => new(string.Create(CultureInfo.InvariantCulture,
        $"Nothing was measured round {moisturePercent:0.##} % and {celsius:0.##} °C: the study has 17 % from 25 to 35 °C, 19 % from 10 to 35 °C, and 15 and 16 % at 25 °C."));
}
