using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Quantities;

namespace Evengrist.Tests.Intake;

public sealed class ContractScaleTests
{
    private static readonly ContractScale Fifths = ReferenceScales.SpringFifths;

    // Federal notice AMS_3419 (September 2021), read off the printed scales; values between steps by the step rule.
    [Theory]
    [InlineData("12.0", "0")]
    [InlineData("12.6", "0.15")]
    [InlineData("13.1", "0.25")]
    [InlineData("13.15", "0.27")]
    [InlineData("14.0", "0.35")]
    [InlineData("15.1", "0.35")]
    [InlineData("16.0", "0.35")]
    public void Ask_SpringFifths_GivesThePrintedPremium(string protein, string premium) => Same(Fifths, protein, premium);

    [Theory]
    [InlineData("12.0", "0")]
    [InlineData("12.24", "0")]
    [InlineData("12.3", "0.06")]
    [InlineData("14.0", "0.48")]
    [InlineData("14.2", "0.48")]
    [InlineData("14.3", "0.52")]
    [InlineData("15.0", "0.64")]
    public void Ask_SpringQuarters_GivesThePrintedPremiumAndGoesOn(string protein, string premium) => Same(ReferenceScales.SpringQuarters, protein, premium);

    [Theory]
    [InlineData("9.5", "-0.03")]
    [InlineData("10.94", "-0.03")]
    [InlineData("10.95", "0")]
    [InlineData("11.3", "0.05")]
    [InlineData("11.6", "0.16")]
    [InlineData("12.3", "0.25")]
    [InlineData("12.4", "0.44")]
    [InlineData("13.1", "0.64")]
    [InlineData("13.4", "0.64")]
    public void Ask_KansasCity_GivesThePrintedPremium(string protein, string premium) => Same(ReferenceScales.KansasCityHardWinter, protein, premium);

    [Theory]
    [InlineData("12.1", "0.05")]
    [InlineData("12.09", "0.05")]
    [InlineData("12.04", "0")]
    public void Ask_Nearest_HalfWayCountsAsTheUpperStep(string protein, string premium) => Same(Fifths with { Rounding = StepRounding.Nearest }, protein, premium);

    [Fact]
    public void Ask_CapAndFloor_HoldTheEffect()
    {
        Same(Fifths with { Cap = 0.30m }, "14.0", "0.30");
        Same(ReferenceScales.KansasCityHardWinter with { Floor = -0.01m }, "9.5", "-0.01");
    }

    [Fact]
    public void Ask_OutsideTheTable_SilentUnlessSomethingIsAgreed()
    {
        Assert.Equal(new ScaleSilent(11.9m, 12.0m), Fifths.Ask(11.94m));
        Assert.Equal(new ScaleSilent(16.2m, 16.1m), Fifths.Ask(16.15m));
        Same(Fifths with { Below = Beyond.Holds }, "11.0", "0");
    }

    [Fact]
    public void Ask_BeyondARejectLimit_Rejects()
    {
        var falling = Fifths with { Tiers = null, Factor = Property.FallingNumber, Unit = "s", Basis = default, RecordedDecimals = 0, End = null, RejectBelow = 250m, RejectAbove = 900m, Steps = [new(250m, -0.25m), new(300m, 0m)], Above = Beyond.Holds };
        Assert.Equal(new ScaleRejects(249m, 250m), falling.Ask(249.4m));
        Assert.Equal(new ScaleEffectOf(250m, 250m, -0.25m), falling.Ask(249.5m));
        Assert.Equal(new ScaleRejects(901m, 900m), falling.Ask(901m));
    }

    [Fact]
    public void InForceOn_Dates_IncludeBothEnds()
    {
        var scale = Fifths with { From = Loads.Day, Until = Loads.Day.PlusDays(2) };
        Assert.True(scale.InForceOn(Loads.Day) && scale.InForceOn(Loads.Day.PlusDays(2)));
        Assert.False(scale.InForceOn(Loads.Day.PlusDays(-1)) || scale.InForceOn(Loads.Day.PlusDays(3)));
    }

    public static TheoryData<ContractScale, string> Broken() => new()
    {
        { Fifths with { Basis = default }, "needs a moisture basis" },
        { Fifths with { Unit = "s" }, "is not read in" },
        { Fifths with { Steps = [] }, "no steps" },
        { Fifths with { Steps = [new(13m, 0m), new(12m, 0m)], Tiers = null }, "rising order" },
        { Fifths with { Currency = null }, "names a currency" },
        { Fifths with { Effect = ScaleEffect.None }, "say what a step does" },
        { Fifths with { Cap = 0m, Floor = 1m }, "below its floor" },
        { Fifths with { Floor = decimal.MaxValue }, "cap or floor goes beyond" },
        { Fifths with { RecordedDecimals = 9 }, "0 to 6 decimals" },
        { Fifths with { Above = new Beyond(BeyondRule.PerStep) }, "a step size lies" },
        { Fifths with { Below = new Beyond((BeyondRule)9) }, "NotCovered, Hold or PerStep" },
        { Fifths with { From = Loads.Day, Until = Loads.Day.PlusDays(-1) }, "before it begins" },
        { Fifths with { End = 13m }, "before its last step" },
        { Fifths with { Effect = ScaleEffect.MultipliesMass, Currency = null, Per = PriceUnit.None, Steps = [new(0m, -100m)], Tiers = null, End = null }, "less than the whole mass" },
    };

    [Theory]
    [MemberData(nameof(Broken))]
    public void Faults_BrokenData_SaysWhat(ContractScale scale, string reason) =>
        Assert.Contains(scale.Faults(), f => f.Contains(reason, StringComparison.Ordinal));

    [Fact]
    public void Faults_ReferenceScales_None() =>
        Assert.Empty(new[] { Fifths, ReferenceScales.SpringQuarters, ReferenceScales.KansasCityHardWinter }.SelectMany(s => s.Faults()));

    private static void Same(ContractScale scale, string value, string effect) =>
        Assert.Equal(Num.Of(effect), Assert.IsType<ScaleEffectOf>(scale.Ask(Num.Of(value))).Effect);
}
