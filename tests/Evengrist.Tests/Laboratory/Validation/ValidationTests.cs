using Evengrist.Laboratory.Validation;

namespace Evengrist.Tests.Laboratory.Validation;

/// <summary>Bias, slope and error of an instrument, after ISO 12099 (formulas from memory); figures recomputed with R 4.2.2.</summary>
public sealed class ValidationTests
{
    // Protein of a wheat NIR set (R packages OHPL and fds), a model of nine factors by R's pls, rounded to two decimals.
    private static readonly double[] Reference = [10.8, 9.06, 11.35, 11.11, 10.74, 12.34, 11.43, 11.78, 14.28, 13.03, 10.63, 11.13, 10.86, 11.49, 11.97, 11.23, 11.07, 11.14, 10.98, 11.98, 11.77, 11.9, 10.76, 11.87, 9.81];
    private static readonly double[] Read = [10.88, 10.05, 11.37, 11.05, 10.33, 12.67, 11.39, 11.98, 13.34, 12.26, 10.99, 10.73, 11.26, 11.2, 11.82, 10.89, 11.05, 11.79, 10.95, 12.1, 12.24, 11.52, 11.02, 11.78, 10.4];

    // Invented input, answer by R.
    private static readonly double[] BiasedReference = [10.2, 11.4, 12.1, 9.8, 13.0, 10.9, 11.7, 12.6, 10.5, 11.1, 12.9, 9.5, 13.4, 11.9, 10.7, 12.3, 11.2, 10.1, 13.8, 12.0];
    private static readonly double[] Biased = [10.62, 11.45, 12.48, 9.93, 13.07, 11.31, 11.76, 12.87, 10.94, 11.18, 12.96, 9.88, 13.62, 12.31, 10.77, 12.41, 11.62, 10.22, 13.91, 12.35];

    [Fact]
    public void Validation_OfAModelInOrder_AsksForNothing()
    {
        var found = ValidationModel.Of(new(Reference, Read) { Calibration = (0.4321, 75, 9) });
        Assert.Equal((-0.022, 0.432883, 0.441239, 0.182134), (R(found.Bias), R(found.Rmsep), R(found.Sep), R(found.BiasLimit)));
        Assert.Equal((1.190871, -2.198393, 0.425599), (R(found.Slope), R(found.Intercept), R(found.Residual)));
        Assert.Equal((1.6722, 2.06866, 0.56106), (Math.Round(found.SlopeT, 5), Math.Round(found.SlopeLimit, 5), Math.Round(found.SepLimit!.Value, 5)));
        Assert.Equal((0.99755, 2.26079, 0.825558), (Math.Round(found.ReferenceDeviation, 5), Math.Round(found.Rpd!.Value, 5), R(found.RSquared)));
        Assert.Equal((false, false, false, ValidationDecision.None), (found.IsBiased, found.IsSloped, found.IsTooWide, found.Decision));
        Assert.Equal(found.Rmsep * found.Rmsep, (found.Bias * found.Bias) + (found.Sep * found.Sep * 24 / 25), 1e-12);
    }

    [Fact]
    public void Validation_OfAReadingThatIsHigh_AsksForTheBiasAlone()
    {
        var found = ValidationModel.Of(new(BiasedReference, Biased) { Calibration = (0.16, 120, 8) });
        Assert.Equal((-0.228, 0.155076, 0.273551, 0.072578), (R(found.Bias), R(found.Sep), R(found.Rmsep), R(found.BiasLimit)));
        Assert.Equal((1.021175, -0.477505, 0.157207, 0.698766), (R(found.Slope), R(found.Intercept), R(found.Residual), R(found.SlopeT)));
        Assert.Equal((0.207446, 7.89905, 27.7284), (R(found.SepLimit!.Value), Math.Round(found.Rpd!.Value, 5), Math.Round(found.Rer!.Value, 4)));
        Assert.Equal((true, false, ValidationDecision.BiasOnly), (found.IsBiased, found.IsSloped, found.Decision));
    }

    [Fact]
    public void Validation_OfASlopeOrAWideError_AsksForMore()
    {
        Assert.Equal(ValidationDecision.SlopeAndBias, ValidationModel.Of(new(BiasedReference, [.. Biased.Select(b => 11.5 + ((b - 11.5) * 1.2))])).Decision);
        Assert.Equal(ValidationDecision.Recalibrate, ValidationModel.Of(new(Reference, Read) { Calibration = (0.2, 75, 9) }).Decision);
    }

    [Fact]
    public void Validation_OfPairsThatAllDifferByTheSame_ShowsNoRatioToAnErrorOfNought()
    {
        var found = ValidationModel.Of(new([10.1, 11.3, 12.6, 13.4], [10.4, 11.6, 12.9, 13.7]));
        Assert.Null(found.Rpd);
        Assert.Null(found.Rer);
        Assert.Equal((-0.3, ValidationDecision.BiasOnly), (R(found.Bias), found.Decision));
    }

    [Theory]
    [InlineData(5, 1.241664)]
    [InlineData(10, 0.715357)]
    [InlineData(15, 0.553782)]
    [InlineData(20, 0.468014)]
    [InlineData(30, 0.373406)]
    [InlineData(50, 0.284197)]
    [InlineData(100, 0.198422)]
    public void BiasFactor_IsThatOfR(int count, double factor) => Assert.Equal(factor, R(ValidationModel.BiasFactor(count)));

    [Theory]
    [InlineData(10, 50, 1.4399)]
    [InlineData(20, 50, 1.3411)]
    [InlineData(40, 50, 1.2798)]
    [InlineData(10, 100, 1.4053)]
    [InlineData(20, 100, 1.3006)]
    [InlineData(40, 200, 1.2083)]
    public void ErrorFactor_IsThatOfR(int count, int freedom, double factor) => Assert.Equal(factor, Math.Round(ValidationModel.ErrorFactor(count, freedom), 4));

    [Fact]
    public void Faults_OfWhatCannotBeJudged_NameEach()
    {
        Assert.Contains("give both", Assert.Single(new ValidationSpec([1, 2, 3], [1, 2]).Faults()), StringComparison.Ordinal);
        Assert.Contains("3 to 10000", Assert.Single(new ValidationSpec([1, 2], [1, 2]).Faults()), StringComparison.Ordinal);
        Assert.Contains("the same of all", Assert.Single(new ValidationSpec([1, 2, 3], [2, 2, 2]).Faults()), StringComparison.Ordinal);
        Assert.Contains("more than its factors", Assert.Single(new ValidationSpec([1, 2, 3], [1, 2, 4]) { Calibration = (0.1, 9, 9) }.Faults()), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => ValidationModel.Of(new([1], [1])));
    }

    private static double R(double x) => Math.Round(x, 6);
}
