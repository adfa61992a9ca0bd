using Evengrist.Laboratory;
using Evengrist.Laboratory.Methods;

namespace Evengrist.Tests.Laboratory.Methods;

public sealed class PrecisionTests
{
    private static readonly PrecisionLimit Twelve = new(FigureMark.Memory, "test", 0.12m);

    [Fact] // LS-33, ours, the formulas of ISO 5725-6 from memory: r 0.12, R 0.35.
    public void CriticalDifference_OfThePosedLimits_IsAsWorked()
    {
        Assert.Equal(0.3395585, CriticalDifference.OfTwoLaboratories(0.12, 0.35, 2, 2), 7);
        Assert.Equal(0.2401041, CriticalDifference.FromReference(0.12, 0.35, 2), 7);
        Assert.Equal(0.1542857, (double)(DuplicatesModel.FourFactor * Twelve.StandardDeviationAt(13m)), 7);
    }

    [Fact] // One result each differ by R itself, as R is defined.
    public void CriticalDifference_OfSingleResults_IsR()
    {
        Assert.Equal(0.35, CriticalDifference.OfTwoLaboratories(0.12, 0.35, 1, 1), 12);
        Assert.Equal(0.35 / Math.Sqrt(2), CriticalDifference.FromReference(0.12, 0.35, 1), 12);
        Assert.Throws<ArgumentOutOfRangeException>(() => CriticalDifference.FromReference(0.4, 0.35, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => CriticalDifference.OfTwoLaboratories(0.12, 0.35, 1, 0));
    }

    [Theory] // LS-36: Horwitz and Thompson, formulas from memory, computed with R.
    [InlineData(0.12, 2.751777, 0.330213)]
    [InlineData(0.005, 4.439510, 0.0221975)]
    [InlineData(1e-6, 15.996685, 1.5996685e-5)]
    public void Horwitz_AtAMassFraction_IsAsWorked(double fraction, double percent, double standardDeviationPercent)
    {
        Assert.Equal(percent, Horwitz.FormulaPercent(fraction), 6);
        Assert.Equal(1, 100 * Horwitz.StandardDeviation(fraction) / standardDeviationPercent, 5);
    }

    [Fact] // LS-36.
    public void Horwitz_AtBothEnds_FollowsTheOtherRules()
    {
        Assert.Equal(2.688671, Horwitz.FormulaPercent(0.14), 6);
        Assert.Equal(0.374166, 100 * Horwitz.StandardDeviation(0.14), 6);
        Assert.Equal(45.24, Horwitz.FormulaPercent(1e-9), 2);
        Assert.Equal(0.22e-9, Horwitz.StandardDeviation(1e-9), 15);
        Assert.Equal(1, Horwitz.Ratio(22, 1e-9), 9);
        Assert.Throws<ArgumentOutOfRangeException>(() => Horwitz.FormulaPercent(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Horwitz.StandardDeviation(1.1));
    }

    // LS-30, the glucose data of ASTM E 691: pooled within-laboratory standard deviation of 8 laboratories and 3 results each, as the standard prints it.
    [OpenDataTheory]
    [InlineData("1", 1.0632243)]
    [InlineData("2", 1.4948537)]
    [InlineData("3", 2.7482722)]
    [InlineData("4", 2.6250651)]
    [InlineData("5", 3.9349741)]
    public void OwnRepeatability_OfGroupsMadeAlike_IsThePooledOne(string material, double standardDeviation)
    {
        var own = OwnRepeatability.Of(OpenData.Csv("nist-e691-glucose.csv").Where(r => r["material"] == material).GroupBy(r => r["lab"]).Select(g => (IReadOnlyList<decimal>)[.. g.Select(r => decimal.Parse(r["glucose"], System.Globalization.CultureInfo.InvariantCulture))]))!;
        Assert.Equal(standardDeviation, own.StandardDeviation, 7);
        Assert.Equal((8, 16), (own.Groups, own.Freedom));
        Assert.Equal(2.8 * standardDeviation, own.Limit, 6); // r = 2.8 s_r
    }

    [Fact] // By hand: Σd² = 0.04 + 0.16 + 0.04 = 0.24 of three pairs, s_r = √(Σd²/2n) = 0.2; single results say nothing.
    public void OwnRepeatability_OfPairs_IsTheRootOfTheSumOfSquaresOverTwiceTheirNumber()
    {
        var own = OwnRepeatability.Of([[12.0m, 12.2m], [11.5m], [11.9m, 11.5m], [12.4m, 12.6m]])!;
        Assert.Equal((3, 3), (own.Groups, own.Freedom));
        Assert.Equal(0.2, own.StandardDeviation, 12);
        Assert.Equal(0.56, own.Limit, 12);
        Assert.Null(OwnRepeatability.Of([[12.0m], []]));
        Assert.Equal(0, OwnRepeatability.Of([[12.0m, 12.0m]])!.Limit);
    }

    [Fact] // LS-33: duplicates 13.42 and 13.56 with r 0.12 are rejected.
    public void Judge_TwoBeyondR_AsksForTwoMore()
    {
        var more = Assert.IsType<MoreNeeded>(DuplicatesModel.Judge([13.42m, 13.56m], Twelve));
        Assert.Equal((2, 0.14m, 0.12m), (more.More, more.Range, more.Limit));
        Assert.Equal(1, Assert.IsType<MoreNeeded>(DuplicatesModel.Judge([13.42m, 13.56m, 13.5m], Twelve)).More);
    }

    [Fact] // ISO 5725-6 from memory: on the limit is inside; f(4)·s_r = 0.154.
    public void Judge_EachWayOut_IsReached()
    {
        Assert.Equal(13.48m, Assert.IsType<ResultsAgree>(DuplicatesModel.Judge([13.42m, 13.54m], Twelve)).Mean);
        Assert.Equal(13.4875m, Assert.IsType<ResultsAgree>(DuplicatesModel.Judge([13.42m, 13.56m, 13.48m, 13.49m], Twelve)).Mean);
        Assert.Equal(13.50m, Assert.IsType<MedianTaken>(DuplicatesModel.Judge([13.42m, 13.58m, 13.49m, 13.51m], Twelve)).Median);
        Assert.Equal(13.4m, Assert.IsType<SingleResult>(DuplicatesModel.Judge([13.4m], Twelve)).Value);
        Assert.Contains("not filled in", Assert.IsType<NotJudged>(DuplicatesModel.Judge([1m, 2m], null)).Words, StringComparison.Ordinal);
        Assert.Contains("ends at four", Assert.IsType<NotJudged>(DuplicatesModel.Judge([1m, 2m, 3m, 4m, 5m], Twelve)).Words, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => DuplicatesModel.Judge([], Twelve));
    }
}
