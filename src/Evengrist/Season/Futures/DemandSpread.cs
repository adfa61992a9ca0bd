namespace Evengrist.Season.Futures;

/// <summary>By how much the demand of a flour may differ from what is planned.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="YearShare">Standard deviation of the whole year's, all periods together, as a share, 0 or more.</param>
/// <param name="PeriodShare">Standard deviation of a single period's on top of it, as a share, 0 or more.</param>
public sealed record DemandSpread(string Flour, double YearShare, double PeriodShare)
{
    /// <summary>How much of a period's difference is still there in the next one, 0 to below 1: busy weeks come in runs, and it is runs that empty a store.</summary>
    public double Hold { get; init; }
}
