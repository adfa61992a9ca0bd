using Evengrist.Bins.Shape;
using Evengrist.Ledger;

namespace Evengrist.Bins.Storage;

/// <summary>Up to which height so many tonnes fill a bin.</summary>
/// <param name="Words">How the height is found, for people.</param>
/// <param name="MetresOf">Height above the floor (in a hopper: above the outlet), m, of the top of so many tonnes.</param>
public sealed record BinLevels(string Words, Func<double, double> MetresOf)
{
    private const double LooseDensity = 0.785;

    /// <summary>Heights where no shape is known: straight walls, and the highest point of a cable taken as the height of a full bin. Null where the bin has no capacity or no cable.</summary>
    public static BinLevels? Straight(Place bin, IEnumerable<CableReading> cables)
    {
        ArgumentNullException.ThrowIfNull(bin);
        var top = cables.Select(c => (double)c.Point.Metres).DefaultIfEmpty(0).Max();
        return bin.Capacity is not { } capacity || capacity.Grams <= 0 || top <= 0 ? null
            : new BinLevels("no shape of the bin is known: straight walls, and the highest point of a cable as the height of a full bin", tonnes => top * tonnes / (double)capacity.Tonnes);
    }

    /// <summary>Heights by the bin's shape with a level surface, at a loose density of 785 kg/m³ [design] times the pack factor; more than the bin holds counts as full.</summary>
    /// <param name="shape">A shape without faults.</param>
    /// <param name="pack">Its pack factor.</param>
    /// <exception cref="ArgumentException">The shape has faults.</exception>
    public static BinLevels Of(BinShape shape, PackFactor pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        var most = BinVolumeModel.MostOf(shape, Surface.Level);
        var perTonne = 1 / (LooseDensity * pack.Value);
        return new BinLevels(
            FormattableString.Invariant($"by the shape kept for the bin, surface level, 785 kg/m³ × pack factor {pack.Value:0.###}"),
            tonnes => shape.HopperMetres + BinVolumeModel.LevelOf(shape, Math.Clamp(tonnes * perTonne, 0, most), Surface.Level));
    }
}
