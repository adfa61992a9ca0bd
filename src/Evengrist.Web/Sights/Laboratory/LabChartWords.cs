using Evengrist.Laboratory.Charts;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Signals of a chart in words.</summary>
internal static class LabChartWords
{
    /// <summary>Everything that signals at a point.</summary>
    public static string Of(ChartPoint point) => string.Join("; ",
    [
        .. point.Rules.Select(Of),
        .. point.IsSpreadBeyond ? ["the step from the reading before is too large"] : Array.Empty<string>(),
        .. point.Moving is { IsBeyond: true } ? ["the moving mean is beyond its limits"] : Array.Empty<string>(),
        .. point.Sums is { IsBeyond: true } ? ["the cumulative sum is beyond its limit"] : Array.Empty<string>(),
    ]);

    /// <summary>A rule.</summary>
    public static string Of(RunRule rule) => rule switch
    {
        RunRule.BeyondThree => "beyond three standard deviations",
        RunRule.TwoOfThreeBeyondTwo => "two of three beyond two standard deviations on one side",
        RunRule.FourOfFiveBeyondOne => "four of five beyond one standard deviation on one side",
        RunRule.EightOnOneSide => "eight in a row on one side of the centre",
        RunRule.NineOnOneSide => "nine in a row on one side of the centre",
        RunRule.SixInOneDirection => "six in a row in one direction",
        RunRule.FourteenByTurns => "fourteen in a row up and down by turns",
        RunRule.FifteenWithinOne => "fifteen in a row within one standard deviation",
        RunRule.EightBeyondOne => "eight in a row beyond one standard deviation on both sides",
        _ => "no rule",
    };
}
