namespace Evengrist.Season.Futures;

/// <summary>By how much the demand of a flour may differ from what is planned.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="YearShare">Standard deviation of the whole year's, all periods together, as a share, 0 or more.</param>
/// <param name="PeriodShare">Standard deviation of a single period's on top of it, a week or a day of one, as a share, 0 or more.</param>
public sealed record DemandSpread(string Flour, double YearShare, double PeriodShare)
{
    /// <summary>How much of the difference is still there a week later, 0 to below 1, after days as far in proportion: busy weeks come in runs, and it is runs that empty a store.</summary>
    public double Hold { get; init; }
}
