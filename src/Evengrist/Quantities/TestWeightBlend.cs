namespace Evengrist.Quantities;

/// <summary>Test weight of grain put together: mass over volume, where the volumes add up.</summary>
/// <remarks>Σm/Σ(m/w) [derived]: the mean weighted by volume. A mean weighted by mass lies above it, by some hundredths of a kg/hL for usual wheats; a mix packs a little closer than either [memory].</remarks>
public static class TestWeightBlend
{
    /// <summary>Test weight of the whole; null where there is no mass.</summary>
    /// <param name="parts">Mass in any one unit, 0 or more, and test weight in any one unit, above 0.</param>
    public static double? Of(IEnumerable<(double Mass, double TestWeight)> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var (mass, volume) = (0.0, 0.0);
        foreach (var part in parts)
        {
            mass += part.Mass;
            volume += part.Mass / part.TestWeight;
        }

        return volume > 0 ? mass / volume : null;
    }
}
