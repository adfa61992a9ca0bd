namespace Evengrist.Laboratory.Methods;

/// <summary>How far means may differ with 95 % chance where nothing is wrong [ISO 5725-6, from memory]. r and R in the same unit, 0 &lt; r ≤ R.</summary>
public static class CriticalDifference
{
    /// <summary>Of the means of two laboratories: √(R² − r²(1 − 1/2n₁ − 1/2n₂)).</summary>
    /// <param name="r">Repeatability limit.</param>
    /// <param name="reproducibility">Reproducibility limit R.</param>
    /// <param name="first">Results of the first laboratory, 1 or more.</param>
    /// <param name="second">Results of the second.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit or a count cannot be.</exception>
    public static double OfTwoLaboratories(double r, double reproducibility, int first, int second)
    {
        Demand(r, reproducibility, Math.Min(first, second));
        return Math.Sqrt((reproducibility * reproducibility) - (r * r * (1 - (1.0 / (2 * first)) - (1.0 / (2 * second)))));
    }

    /// <summary>Of one laboratory's mean from a reference value: √(R² − r²(n − 1)/n)/√2.</summary>
    /// <param name="r">Repeatability limit.</param>
    /// <param name="reproducibility">Reproducibility limit R.</param>
    /// <param name="count">Results in the mean, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit or a count cannot be.</exception>
    public static double FromReference(double r, double reproducibility, int count)
    {
        Demand(r, reproducibility, count);
        return Math.Sqrt((reproducibility * reproducibility) - (r * r * (count - 1) / count)) / Math.Sqrt(2);
    }

    private static void Demand(double r, double reproducibility, int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(r);
        ArgumentOutOfRangeException.ThrowIfLessThan(reproducibility, r);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
    }
}
