namespace Evengrist.Mix;

/// <summary>What a tonne of a mix costs.</summary>
/// <param name="Today">By today's cost of each bin, money/t as it lies.</param>
/// <param name="Year">With what each bin is worth to the rest of the year besides; the same as today's where no bin has a value.</param>
public sealed record MixCost(double Today, double Year)
{
    /// <summary>Σ share · cost.</summary>
    public static MixCost Of(IReadOnlyList<(MixBin Bin, double Share)> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return new MixCost(parts.Sum(p => p.Share * p.Bin.CostPerTonne), parts.Sum(p => p.Share * p.Bin.YearCostPerTonne));
    }
}
