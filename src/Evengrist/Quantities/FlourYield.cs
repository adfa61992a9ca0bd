namespace Evengrist.Quantities;

/// <summary>Flour for wheat, said the other way round.</summary>
public static class FlourYield
{
    /// <summary>Bushels of wheat of 60 lb in one hundredweight of flour of 100 lb: 100/60 over the yield.</summary>
    /// <param name="percentOfWheat">Flour over wheat by mass in per cent; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The yield is not above 0.</exception>
    public static decimal BushelsPerHundredweight(decimal percentOfWheat)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(percentOfWheat);
        return 100m / Mass.PoundsPerWheatBushel / (percentOfWheat / 100m);
    }
}
