using Evengrist.Laboratory.Conformity;

namespace Evengrist.Tests.Laboratory.Conformity;

public sealed class ConformityModelTests
{
    private static readonly Tolerance White = new(11.7, 12.1);

    // Φ by tables: protein at least 12.0, y 12.10, u 0.10: Φ(1); moisture at most 15.5, y 15.35: Φ(1.5); ash 0.47 to 0.53, y 0.52, u 0.012. Posed by us, formula of JCGM 106:2012 from memory; R 4.2.2 pnorm.
    [Theory]
    [InlineData(12.10, 0.10, 12.0, null, 0.8413447)]
    [InlineData(15.35, 0.10, null, 15.5, 0.9331928)]
    [InlineData(0.52, 0.012, 0.47, 0.53, 0.7976562)]
    [InlineData(294, 3.65, 300.0, null, 0.0501051)] // a truck's falling number of 294 s tested again: under 5 % reach 300 s [abstract of a study of trucks at the first point of sale]
    public void Chance_OneResult_IsThatOfTheNormal(double result, double u, double? lower, double? upper, double chance)
    {
        var found = ConformityModel.Of(new ConformitySpec([result], new ResultSpread(u), new Tolerance(lower, upper)));
        Assert.Equal(chance, found.Chance, 1e-7);
        Assert.Equal(chance, found.ChanceByResult, 1e-7);
    }

    // A guard band of 5 %: 15.5 − 1.645 × 0.10 [derived from Φ⁻¹(0.95) = 1.644854].
    [Fact]
    public void Acceptance_GuardedAtFivePercent_EndsBeforeTheLimit()
    {
        var found = ConformityModel.Of(new ConformitySpec([15.35], new ResultSpread(0.10), new Tolerance(null, 15.5)) { IsGuarded = true });
        Assert.Equal(15.3355, found.Acceptance.Upper!.Value, 5e-5);
        Assert.Null(found.Acceptance.Lower);
        Assert.False(found.IsAccepted);
        Assert.True(ConformityModel.Of(new ConformitySpec([15.33], new ResultSpread(0.10), new Tolerance(null, 15.5)) { IsGuarded = true }).IsAccepted);
    }

    // White bread flour 11.7 to 12.1: common practice of a mill with a policy of 0.95; figures by pnorm of R 4.2.2.
    [Theory]
    [InlineData(11.74, 1, 0.597)]
    [InlineData(11.74, 4, 0.703)]
    [InlineData(11.82, 4, 0.945)]
    public void Chance_ByOneAndByFour_DoesNotReachThePolicy(double mean, int results, double chance)
    {
        var found = ConformityModel.Of(new ConformitySpec([.. Enumerable.Repeat(mean, results)], new ResultSpread(0.15), White));
        Assert.Equal(chance, found.Chance, 0.0005);
        Assert.IsNotType<ReleaseAdvice.Release>(found.Advice);
        Assert.Equal(0.15 / Math.Sqrt(results), found.Uncertainty, 1e-12);
    }

    [Fact]
    public void Advice_JustBelowThePolicy_SaysHowManyMore()
    {
        var spec = new ConformitySpec([11.82, 11.82, 11.82, 11.82], new ResultSpread(0.15), White);
        var more = Assert.IsType<ReleaseAdvice.Retest>(ConformityModel.Of(spec).Advice).More;
        ConformityOutcome With(int further) => ConformityModel.Of(spec with { Results = [.. Enumerable.Repeat(11.82, 4 + further)] });
        Assert.IsType<ReleaseAdvice.Release>(With(more).Advice);
        Assert.All(Enumerable.Range(0, more), few => Assert.IsNotType<ReleaseAdvice.Release>(With(few).Advice));
    }

    [Fact]
    public void Advice_OutsideTheLimits_IsHoldHoweverManyMore() =>
        Assert.IsType<ReleaseAdvice.Hold>(ConformityModel.Of(new ConformitySpec([11.6], new ResultSpread(0.15), White)).Advice);

    [Fact]
    public void Mean_OfOneInstrument_DoesNotAverageItsBiasAway()
    {
        // (0.15² − 0.12²)/4 + 0.12² by hand: 0.0081/4 + 0.0144 = 0.016425.
        var shared = new ResultSpread(0.15) { Bias = 0.12 };
        Assert.Equal(Math.Sqrt(0.016425), shared.OfMean(4, 4), 1e-12);
        Assert.Equal(0.15, shared.OfMean(1, 1), 1e-12);
        Assert.True(shared.OfMean(1_000_000, 1_000_000) > 0.12);
        Assert.Equal(0.075, new ResultSpread(0.15).OfMean(4, 4), 1e-12);
    }

    [Fact]
    public void Mean_OfRepeatsOnOneSample_DoesNotAverageSamplingAway() =>
        Assert.Equal(Math.Sqrt((0.01 / 4) + 0.04), new ResultSpread(0.1) { Sampling = 0.2 }.OfMean(4, 1), 1e-12);

    // Lots N(12.3, 0.25), u 0.15, at least 12.0, reading 12.10: posed by us, computed in R 4.2.2; formulas of JCGM 106:2012 from memory.
    [Fact]
    public void Known_WithTheMillsLots_IsTheirPosterior()
    {
        var found = ConformityModel.Of(new ConformitySpec([12.10], new ResultSpread(0.15), new Tolerance(12.0, null)) { Lots = new NormalBelief(12.3, 0.25) });
        Assert.Equal(12.152941, found.Known.Mean, 1e-6);
        Assert.Equal(0.1286239, found.Known.Deviation, 1e-7);
        Assert.Equal(0.8827914, found.Chance, 1e-7);
        Assert.Equal(0.0295194, found.Risk!.AcceptedOutside, 1e-7);
    }

    [Fact]
    public void Rules_Differ_AsTheySay()
    {
        var spec = new ConformitySpec([11.75, 11.95], new ResultSpread(0.05) { Lot = 0.08 }, White);
        var (single, mean, range) = (ConformityModel.Of(spec with { Rule = ResultRule.Single }), ConformityModel.Of(spec), ConformityModel.Of(spec with { Rule = ResultRule.LotRange }));
        Assert.Equal(11.75, single.Judged);
        Assert.Equal(11.85, mean.Judged, 1e-12);
        Assert.True(range.Chance < mean.Chance);
        Assert.Equal(new NormalBelief(11.85, double.Hypot(mean.Uncertainty, 0.08)).Inside(White), range.Chance, 1e-12);
        Assert.Equal(2, ConformityModel.Of(spec with { Needed = 4 }).Missing);
        Assert.Equal(new ReleaseAdvice.Retest(2), ConformityModel.Of(spec with { Needed = 4 }).Advice);
    }

    [Fact]
    public void Customer_WithItsOwnErrorAndBias_RejectsMoreThanTheLotIsOutside()
    {
        ConformityOutcome By(CustomerLaboratory customer) => ConformityModel.Of(new ConformitySpec([11.85], new ResultSpread(0.10), White) { Customer = customer });
        var perfect = By(new CustomerLaboratory(0));
        Assert.Equal(1 - perfect.Chance, perfect.CustomerRejects!.Value, 1e-12);
        Assert.True(By(new CustomerLaboratory(0.2)).CustomerRejects > perfect.CustomerRejects);
        Assert.True(By(new CustomerLaboratory(0.2, -0.2)).CustomerRejects > By(new CustomerLaboratory(0.2)).CustomerRejects);
        // 11.85 − 0.2 = 11.65 read with √(0.1² + 0.2²): 1 − Φ(2.012461) + Φ(0.223607) = 1 − 0.977914 + 0.588468, by the normal of Python's statistics module.
        Assert.Equal(0.6105540, By(new CustomerLaboratory(0.2, -0.2)).CustomerRejects!.Value, 1e-6);
    }

    [Theory]
    [InlineData(double.NaN, 0.1, 11.7, 12.1, "finite")]
    [InlineData(11.8, -0.1, 11.7, 12.1, "standard deviation")]
    [InlineData(11.8, 0.1, 12.1, 11.7, "lies below the upper")]
    [InlineData(11.8, 0.1, null, null, "Give a lower limit")]
    public void Faults_OfWhatCannotBe_SayWhatToDo(double result, double u, double? lower, double? upper, string says)
    {
        var spec = new ConformitySpec([result], new ResultSpread(u), new Tolerance(lower, upper));
        Assert.Contains(spec.Faults(), f => f.Contains(says, StringComparison.Ordinal));
        Assert.Throws<ArgumentException>(() => ConformityModel.Of(spec));
    }

    [Fact]
    public void Faults_OfEverySetting_AreNamed()
    {
        var spec = new ConformitySpec([11.8], new ResultSpread(0.1), White);
        Assert.Empty(spec.Faults());
        ConformitySpec[] wrong =
        [
            spec with { Results = [] }, spec with { Samples = 2 }, spec with { Rule = ResultRule.None }, spec with { Needed = 0 }, spec with { BuyersRisk = 0.6 }, spec with { Guard = -1 }, spec with { Lots = new NormalBelief(0, 0) },
            spec with { Customer = new CustomerLaboratory(-1) }, spec with { Policy = 1 }, spec with { Spread = new ResultSpread(0.1) { Bias = 0.2 } },
        ];
        Assert.All(wrong, w => Assert.Single(w.Faults()));
    }
}
