using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>Grain lying in a bin that is judged as one: layers of one time that lie on each other.</summary>
/// <param name="Tonnes">How much, as it lies.</param>
/// <param name="Arrived">When it came, on the mean.</param>
/// <param name="MoisturePercent">Mean moisture of the loads it came on, per cent, wet basis; null where none was read. Taken as unchanged since.</param>
/// <param name="DeliveryCelsius">Mean temperature read on the loads, °C; null where none was read.</param>
/// <param name="Read">Temperatures read on cables at its height, by time.</param>
public sealed record StoredLayer(double Tonnes, Instant Arrived, double? MoisturePercent, double? DeliveryCelsius, IReadOnlyList<TemperatureAt> Read)
{
    /// <summary>What people call it; empty where it is told by its height.</summary>
    public string Name { get; init; } = "";

    /// <summary>Share of its mass whose moisture was read, 0 to 1.</summary>
    public double ShareRead { get; init; } = 1;

    /// <summary>Moisture of its moistest load, per cent, wet basis.</summary>
    public double? MoistestPercent { get; init; }

    /// <summary>Where it begins and ends above the floor, m; null where no height is known.</summary>
    public (double From, double To)? Metres { get; init; }
}
