using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>What was read on a load of what matters in store.</summary>
/// <param name="MoisturePercent">Moisture, per cent, wet basis; null where not read.</param>
/// <param name="Celsius">Temperature, °C; null where not read.</param>
public sealed record LoadState(double? MoisturePercent, double? Celsius)
{
    /// <summary>The newest readings on a load up to a moment.</summary>
    public static LoadState Of(Book book, PlaceId load, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        double? moisture = null, celsius = null;
        foreach (var reading in book.ReadingsOn(load).Where(r => r.At <= at))
        {
            moisture = reading.What == Property.Moisture ? (double)reading.Value : moisture;
            celsius = reading.What == Property.Temperature ? (double)reading.Value : celsius;
        }

        return new LoadState(moisture, celsius);
    }
}
