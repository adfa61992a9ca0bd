namespace Evengrist.Tracing.Structure;

/// <summary>What a vessel that is never quite emptied carries on. Model: docs/model/lot-structure.md.</summary>
public static class Heel
{
    /// <summary>Share of a lot that came from the one so many lots before it, 0 being itself: (1 − h)·hᵏ, h = heel/(heel + fresh).</summary>
    /// <param name="heel">h, 0 to below 1.</param>
    /// <param name="before">k, at least 0.</param>
    public static double ShareOf(double heel, int before)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(heel);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(heel, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(before);
        return (1 - heel) * Math.Pow(heel, before);
    }

    /// <summary>Share of what was in a well stirred vessel that is left in it after so many of its contents have run through: e^−n.</summary>
    /// <param name="contents">n, at least 0.</param>
    public static double LeftAfter(double contents)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(contents);
        return Math.Exp(-contents);
    }
}
