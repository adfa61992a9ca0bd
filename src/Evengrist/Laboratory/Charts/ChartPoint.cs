namespace Evengrist.Laboratory.Charts;

/// <summary>One place of a chart.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Value">The value, or the mean of the group.</param>
/// <param name="Spread">Range or standard deviation of the group; of single values the moving range; null at the first of them.</param>
/// <param name="IsSpreadBeyond">Whether that lies beyond its limits.</param>
/// <param name="Rules">The rules that fire here.</param>
/// <param name="Moving">The moving mean and whether it lies beyond its limits; null without one.</param>
/// <param name="Sums">The cumulative sums above and below, in standard deviations, and whether one is beyond; null without them.</param>
public sealed record ChartPoint(int Number, double Value, double? Spread, bool IsSpreadBeyond, IReadOnlyList<RunRule> Rules, (double Mean, bool IsBeyond)? Moving, (double Above, double Below, bool IsBeyond)? Sums)
{
    /// <summary>Whether anything signals here.</summary>
    public bool Signals => IsSpreadBeyond || Rules.Count > 0 || Moving is { IsBeyond: true } || Sums is { IsBeyond: true };
}
