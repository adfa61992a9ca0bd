using Evengrist.Laboratory.Charts;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>A control chart, in the unit of the values.</summary>
/// <param name="Limits">Of the values or the groups' means.</param>
/// <param name="Spreads">Of the ranges or standard deviations.</param>
/// <param name="Sigma">One standard deviation of single values.</param>
/// <param name="SigmaFrom">How it was found.</param>
/// <param name="Period">From how many of the first the limits were taken.</param>
/// <param name="Points">Every value or group.</param>
/// <param name="Within">Capability by that standard deviation (Cp, Cpk); null without limits of the flour.</param>
/// <param name="Overall">Capability by the standard deviation of all (often called Pp, Ppk).</param>
/// <param name="RunLengths">Values that pass on average until a signal, nothing moved and after a shift of one standard deviation of what is charted, by what signals.</param>
/// <param name="Remarks">What else has to be known.</param>
public sealed record LabChartAnswer(
    ControlLimits Limits, ControlLimits Spreads, double Sigma, string SigmaFrom, int Period, IReadOnlyList<ChartPointAnswer> Points, CapabilityAnswer? Within, CapabilityAnswer? Overall,
    IReadOnlyList<RunLengthAnswer> RunLengths, IReadOnlyList<string> Remarks)
{
    /// <summary>Answers a case, or says why there is no chart.</summary>
    public static Reply<LabChartAnswer> To(LabChartCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return ChartModel.Of(posed.Spec) is not { } chart ? new(null, ["The values of the period do not differ at all: no limits can be taken from them. Read them with more decimals, or take another period."]) : new(
            new LabChartAnswer(
                chart.Limits, chart.Spreads, chart.Sigma, chart.From.ToString(), chart.Period,
                [.. chart.Points.Select(p => new ChartPointAnswer(p.Number, p.Value, p.Spread, p.IsSpreadBeyond, [.. p.Rules.Select(r => r.ToString())], p.Moving?.Mean, p.Moving?.IsBeyond, p.Sums?.Above, p.Sums?.Below, p.Sums?.IsBeyond))],
                CapabilityAnswer.Of(chart.Within), CapabilityAnswer.Of(chart.Overall), [.. RunLengthAnswer.Of(posed)], chart.Remarks), []);
    }
}

/// <summary>One place of a chart.</summary>
public sealed record ChartPointAnswer(
    int Number, double Value, double? Spread, bool SpreadBeyond, IReadOnlyList<string> Rules, double? MovingMean, bool? MovingMeanBeyond, double? SumAbove, double? SumBelow, bool? SumBeyond);

/// <summary>Capability with confidence limits of 95 %.</summary>
public sealed record CapabilityAnswer(double? Cp, double? CpFrom, double? CpTo, double Cpk, double CpkFrom, double CpkTo, double? Cpm, double ShareAbove, double ShareBelow)
{
    internal static CapabilityAnswer? Of(Capability? c) => c is null ? null : new(c.Cp, c.CpBounds?.Lower, c.CpBounds?.Upper, c.Cpk, c.CpkBounds.Lower, c.CpkBounds.Upper, c.Cpm, c.ShareAbove, c.ShareBelow);
}

/// <summary>Mean run lengths of what can signal.</summary>
public sealed record RunLengthAnswer(string What, double NothingMoved, double AfterOneSigma)
{
    internal static IEnumerable<RunLengthAnswer> Of(LabChartCase posed)
    {
        yield return new("one value beyond three standard deviations", RunLength.OfIndividuals(0), RunLength.OfIndividuals(1));
        if (posed.MovingMean is { } mean)
        {
            yield return new("moving mean, steady limits", RunLength.OfEwma(0, mean.Weight, mean.Width), RunLength.OfEwma(1, mean.Weight, mean.Width));
        }

        if (posed.Sums is { } sums)
        {
            yield return new("cumulative sums", RunLength.OfCusum(0, sums.Allowance, sums.Limit), RunLength.OfCusum(1, sums.Allowance, sums.Limit));
        }
    }
}
