using Evengrist.Ledger;

namespace Evengrist.Bins.Storage;

/// <summary>Up to which height so many tonnes fill a bin.</summary>
/// <param name="Words">How the height is found, for people.</param>
/// <param name="MetresOf">Height above the floor, m, of the top of so many tonnes.</param>
public sealed record BinLevels(string Words, Func<double, double> MetresOf)
{
    /// <summary>Heights where no shape is known: straight walls, and the highest point of a cable taken as the height of a full bin. Null where the bin has no capacity or no cable.</summary>
    public static BinLevels? Straight(Place bin, IEnumerable<CableReading> cables)
    {
        ArgumentNullException.ThrowIfNull(bin);
        var top = cables.Select(c => (double)c.Point.Metres).DefaultIfEmpty(0).Max();
        return bin.Capacity is not { } capacity || capacity.Grams <= 0 || top <= 0 ? null
            : new BinLevels("no shape of the bin is known: straight walls, and the highest point of a cable as the height of a full bin", tonnes => top * tonnes / (double)capacity.Tonnes);
    }
}
