using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>Where the temperature of stored grain is known from.</summary>
public enum TemperatureOrigin
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Read on a cable in the bin.</summary>
    Cable = 1,

    /// <summary>Read on the trucks and held since.</summary>
    Delivery = 2,

    /// <summary>Not read at all: taken as <see cref="TemperatureHistory.AssumedCelsius"/>.</summary>
    Assumed = 3,
}

/// <summary>A temperature at a moment.</summary>
/// <param name="At">When.</param>
/// <param name="Celsius">°C.</param>
public sealed record TemperatureAt(Instant At, double Celsius);

/// <summary>The temperature of a layer since it came, from what was read; straight between readings, held after the last.</summary>
/// <remarks>
/// From the arrival to the first cable reading: from the temperature read on delivery, or, where none was, the first cable reading held back
/// to the arrival. Without any reading <see cref="AssumedCelsius"/> throughout [design].
/// </remarks>
public sealed record TemperatureHistory
{
    /// <summary>What is assumed where nothing was read, °C: warm harvest grain. Ours.</summary>
    public const double AssumedCelsius = 25;

    private TemperatureHistory(IReadOnlyList<TemperatureAt> points, TemperatureOrigin origin, string assumption) =>
        (Points, Origin, Assumption) = (points, origin, assumption);

    /// <summary>By time: the arrival first, the moment asked last.</summary>
    public IReadOnlyList<TemperatureAt> Points { get; }

    /// <summary>What the newest temperature rests on.</summary>
    public TemperatureOrigin Origin { get; }

    /// <summary>What had to be assumed, in words; empty where nothing had.</summary>
    public string Assumption { get; }

    /// <summary>The newest temperature, °C.</summary>
    public double Celsius => Points[^1].Celsius;

    /// <summary>A history up to a moment.</summary>
    /// <param name="arrived">When the grain came; not after <paramref name="at"/>.</param>
    /// <param name="deliveryCelsius">Read on delivery, °C; null where not read.</param>
    /// <param name="read">Readings at its height, in any order; those before the arrival and after the moment do not count.</param>
    /// <param name="at">The moment.</param>
    /// <exception cref="ArgumentException">The grain came after the moment.</exception>
    public static TemperatureHistory Of(Instant arrived, double? deliveryCelsius, IEnumerable<TemperatureAt> read, Instant at)
    {
        if (arrived > at)
        {
            throw new ArgumentException("Grain has no history before it came.", nameof(arrived));
        }

        TemperatureAt[] cable = [.. read.Where(r => r.At > arrived && r.At <= at).OrderBy(r => r.At)];
        var start = deliveryCelsius ?? (cable.Length > 0 ? cable[0].Celsius : AssumedCelsius);
        TemperatureAt[] points = [new(arrived, start), .. cable];
        return new TemperatureHistory(
            points[^1].At < at ? [.. points, new(at, points[^1].Celsius)] : points,
            cable.Length > 0 ? TemperatureOrigin.Cable : deliveryCelsius is null ? TemperatureOrigin.Assumed : TemperatureOrigin.Delivery,
            Words(deliveryCelsius, cable.Length > 0));
    }

    private static string Words(double? delivery, bool cable) => (delivery, cable) switch
    {
        (null, false) => $"temperature not read: taken as {AssumedCelsius:0} °C throughout",
        (null, true) => "temperature on delivery not read: the first cable reading is held back to the arrival",
        (_, false) => "no cable reading: the temperature on delivery is held",
        _ => "",
    };
}
