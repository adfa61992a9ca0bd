namespace Evengrist.Tracing.Structure;

/// <summary>How many batches an order is cut from when batches of one size are used up one after another. Model: docs/model/lot-structure.md.</summary>
/// <remarks>Idea: expected number of fragments under first in first out, arXiv 1905.08651 (abstract read); the two formulas are derived, and tested by simulation.</remarks>
public static class Fragments
{
    /// <summary>Expected number of batches in an order whose beginning lies anywhere in a batch: 1 + Q/B.</summary>
    /// <param name="order">Q, above 0, in any unit.</param>
    /// <param name="batch">B, above 0, in the same unit.</param>
    public static double Expected(double order, double batch)
    {
        Check(order, batch);
        return 1 + order / batch;
    }

    /// <summary>The same where both are whole numbers of units that are not cut: 1 + (Q − 1)/B.</summary>
    /// <param name="order">Q units, at least 1.</param>
    /// <param name="batch">B units, at least 1.</param>
    public static double ExpectedOfUnits(long order, long batch)
    {
        Check(order, batch);
        return 1 + (order - 1) / (double)batch;
    }

    /// <summary>Chance that an order holds some of a bad batch, each being bad by itself with one chance: about 1 − (1 − p)^(1 + Q/B).</summary>
    /// <param name="chance">p, 0 to 1.</param>
    /// <param name="order">Q, above 0.</param>
    /// <param name="batch">B, above 0, in the same unit.</param>
    public static double ChanceHit(double chance, double order, double batch)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(chance);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(chance, 1);
        return 1 - Math.Pow(1 - chance, Expected(order, batch));
    }

    private static void Check(double order, double batch)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(order);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(batch);
    }
}
