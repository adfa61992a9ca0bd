namespace Evengrist.Season;

/// <summary>How misses and unmet demand are priced over time.</summary>
public static class SeasonPrices
{
    /// <summary>By how much the price of a miss falls from the first period to the last, a share [design]: enough that what cannot be kept lies at the end, and a starve date is well defined; too little to change what is kept.</summary>
    public const double Fall = 1e-4;

    /// <summary>The share of its price that a miss or unmet demand costs in a period: 1 − <see cref="Fall"/>·t/(T − 1).</summary>
    /// <param name="period">Number t of the period, from 0.</param>
    /// <param name="periods">Number T of periods.</param>
    public static double At(int period, int periods) => periods > 1 ? 1 - (Fall * period / (periods - 1)) : 1;
}
