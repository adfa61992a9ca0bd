using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>How much of the time that wheat keeps has been used up.</summary>
/// <param name="Used">Σ dt/t over the history, t being the alarm days: 1 is all of it.</param>
public sealed record StorageLife(double Used)
{
    /// <summary>From here on somebody is to look. Ours.</summary>
    public const double Alarm = 0.5;

    /// <summary>From here on somebody is to act. Ours.</summary>
    public const double Act = 0.8;

    /// <summary>Whether the grain is drier than the equation reaches, so that less than <see cref="Used"/> is used, nobody knows how much less.</summary>
    public bool IsAtMost { get; init; }

    /// <summary>Days warmer or wetter than the equation reaches, counted at its edge: more than <see cref="Used"/> is used.</summary>
    public double DaysBeyond { get; init; }

    /// <summary>Days colder than the equation reaches, counted at its edge: a little too much for them.</summary>
    public double DaysColder { get; init; }

    /// <summary>Days from now until <see cref="Act"/> is reached if moisture and temperature stay as they are; null where it is reached already or the grain is drier than the equation reaches.</summary>
    public double? DaysToAct { get; init; }

    /// <summary>The life used by grain of one moisture over its history.</summary>
    /// <remarks>Between two readings the mean of the two rates counts. Days outside the equation's reach count at its edge and are told.</remarks>
    /// <param name="moisturePercent">Moisture, per cent, wet basis; taken as unchanged since the arrival.</param>
    /// <param name="history">Its temperature.</param>
    public static StorageLife Of(double moisturePercent, TemperatureHistory history)
    {
        ArgumentNullException.ThrowIfNull(history);
        var (used, beyond, colder) = (0.0, 0.0, 0.0);
        foreach (var (a, b) in history.Points.Zip(history.Points.Skip(1)))
        {
            var days = (b.At - a.At) / Duration.FromDays(1);
            used += days * (Rate(moisturePercent, a.Celsius) + Rate(moisturePercent, b.Celsius)) / 2;
            var celsius = (a.Celsius + b.Celsius) / 2;
            beyond += moisturePercent > SafeStorageModel.MostMoisture || celsius > SafeStorageModel.MostCelsius ? days : 0;
            colder += celsius < SafeStorageModel.LeastCelsius ? days : 0;
        }

        var drier = moisturePercent < SafeStorageModel.LeastMoisture;
        return new StorageLife(used)
        {
            IsAtMost = drier, DaysBeyond = beyond, DaysColder = colder,
            DaysToAct = drier || used >= Act ? null : (Act - used) / Rate(moisturePercent, history.Celsius),
        };
    }

    private static double Rate(double moisture, double celsius) => 1 / SafeStorageModel.AlarmDaysHeld(moisture, celsius);
}
