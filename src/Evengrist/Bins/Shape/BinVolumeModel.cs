namespace Evengrist.Bins.Shape;

/// <summary>Volume of grain in a bin at a level, and the level at a volume. Model: docs/model/bin-shape.md.</summary>
/// <remarks>
/// The level is the height of the grain at the wall above the floor there (the upper edge of a hopper). Below zero the grain stands clear of the wall:
/// a free heap, or grain in the hopper alone. At distance d from the wall the grain is as high as level ± d·tan(repose) less the floor, where that is above zero.
/// </remarks>
public static class BinVolumeModel
{
    private const int Halvings = 200;

    /// <summary>Volume, m³, of grain whose surface meets the wall (or would) at a level, m.</summary>
    /// <param name="shape">A shape without faults.</param>
    /// <param name="levelMetres">Height at the wall, m; at most the height of the wall is filled.</param>
    /// <param name="surface">How the top lies.</param>
    /// <exception cref="ArgumentException">The shape has faults.</exception>
    public static double VolumeAt(BinShape shape, double levelMetres, Surface surface) => VolumeAt(Checked(shape), levelMetres, shape.InwardSlope(surface));

    /// <summary>The level, m, at which the bin holds a volume: the inverse of <see cref="VolumeAt(BinShape, double, Surface)"/>.</summary>
    /// <param name="shape">A shape without faults.</param>
    /// <param name="cubicMetres">The volume, m³, from 0 to the most it holds with that surface.</param>
    /// <param name="surface">How the top lies.</param>
    /// <exception cref="ArgumentException">The shape has faults.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Less than nothing, or more than the bin holds.</exception>
    public static double LevelOf(BinShape shape, double cubicMetres, Surface surface)
    {
        var slope = Checked(shape).InwardSlope(surface);
        var (low, high) = (LeastLevel(shape, slope), shape.WallMetres);
        var most = VolumeAt(shape, high, slope);
        if (!(cubicMetres >= 0 && cubicMetres <= most * (1 + 1e-12)))
        {
            throw new ArgumentOutOfRangeException(nameof(cubicMetres), cubicMetres, FormattableString.Invariant($"The bin holds from 0 to {most:0.###} m³ with that surface."));
        }

        for (var i = 0; i < Halvings && high - low > 1e-12; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = VolumeAt(shape, middle, slope) < cubicMetres ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>The most the bin holds with a surface, m³: the grain at the wall as high as the eave.</summary>
    public static double MostOf(BinShape shape, Surface surface) => VolumeAt(shape, Checked(shape).WallMetres, surface);

    /// <summary>The level, m, at and below which nothing lies in the bin with a surface.</summary>
    public static double LeastLevelOf(BinShape shape, Surface surface) => LeastLevel(Checked(shape), shape.InwardSlope(surface));

    internal static double VolumeAt(BinShape shape, double level, double inwardSlope)
    {
        var (section, outlet) = (shape.Section, shape.OutletDistance);
        var atOutlet = level + (outlet * (inwardSlope + shape.HopperSlope));
        var atCentre = atOutlet + ((section.InradiusMetres - outlet) * inwardSlope);
        return Part(section, 0, outlet, level, atOutlet) + Part(section, outlet, section.InradiusMetres, atOutlet, atCentre);
    }

    private static double LeastLevel(BinShape shape, double inwardSlope)
    {
        var atOutlet = shape.OutletDistance * (inwardSlope + shape.HopperSlope);
        var atCentre = atOutlet + ((shape.Section.InradiusMetres - shape.OutletDistance) * inwardSlope);
        return -Math.Max(0, Math.Max(atOutlet, atCentre));
    }

    // The rings from one distance to another, where the height of grain goes evenly from one value to the other; what lies below the floor counts as none.
    private static double Part(CrossSection section, double from, double to, double heightFrom, double heightTo)
    {
        if (to <= from || (heightFrom <= 0 && heightTo <= 0))
        {
            return 0;
        }

        if (heightFrom < 0 || heightTo < 0)
        {
            var crossing = from + ((to - from) * heightFrom / (heightFrom - heightTo));
            (from, to, heightFrom, heightTo) = heightFrom < 0 ? (crossing, to, 0.0, heightTo) : (from, crossing, heightFrom, 0.0);
        }

        var (ringFrom, ringTo) = (section.RingAt(from), section.RingAt(to));
        return (to - from) / 6 * ((2 * ringFrom * heightFrom) + (ringFrom * heightTo) + (ringTo * heightFrom) + (2 * ringTo * heightTo));
    }

    private static BinShape Checked(BinShape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return shape.Faults() is [var fault, ..] ? throw new ArgumentException(fault, nameof(shape)) : shape;
    }
}
