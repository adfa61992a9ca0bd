using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Quantities;

namespace Evengrist.Tests.Intake;

/// <summary>
/// A local elevator's wheat schedule effective 24 June 2013 (aghost.net/images/e0235302/discountw_DNK.htm): both ends of every printed band. Not read to its
/// end; rows marked "head" follow the rule printed over the table beyond its last read band.
/// </summary>
public sealed class LocalScheduleTests
{
    [Theory]
    [InlineData("58.0", "60.5", "0")]
    [InlineData("57.5", "57.9", "-0.02")]
    [InlineData("57.0", "57.4", "-0.04")]
    [InlineData("56.5", "56.9", "-0.06")]
    [InlineData("56.0", "56.4", "-0.08")]
    [InlineData("55.5", "55.9", "-0.12")]
    [InlineData("55.0", "55.4", "-0.16")]
    [InlineData("54.5", "54.9", "-0.20")]
    [InlineData("54.0", "54.4", "-0.24")]
    [InlineData("53.5", "53.9", "-0.28")]
    [InlineData("53.0", "53.4", "-0.32")]
    [InlineData("52.5", "52.9", "-0.36")] // head
    public void TestWeight_EveryBand(string from, string to, string cents) => Band(ReferenceScales.LocalTestWeight, from, to, cents);

    [Theory]
    [InlineData("9.0", "13.5", "0")]
    [InlineData("13.6", "14.0", "0")]
    [InlineData("14.1", "14.5", "0")]
    [InlineData("14.6", "15.0", "0")]
    [InlineData("15.1", "15.5", "-0.02")]
    [InlineData("15.6", "16.0", "-0.04")]
    [InlineData("16.1", "16.5", "-0.06")]
    [InlineData("16.6", "17.0", "-0.08")]
    [InlineData("17.1", "17.5", "-0.10")]
    [InlineData("17.6", "18.0", "-0.12")]
    [InlineData("18.1", "18.5", "-0.14")]
    [InlineData("18.6", "19.0", "-0.16")]
    [InlineData("19.1", "19.5", "-0.18")]
    [InlineData("19.6", "20.0", "-0.20")]
    [InlineData("20.1", "20.5", "-0.25")] // head
    public void Moisture_EveryBand(string from, string to, string cents) => Band(ReferenceScales.LocalMoisture, from, to, cents);

    [Theory]
    [InlineData("0", "4.0", "0")]
    [InlineData("4.1", "5.0", "-0.02")]
    [InlineData("5.1", "6.0", "-0.04")]
    [InlineData("6.1", "7.0", "-0.06")]
    [InlineData("7.1", "8.0", "-0.10")]
    [InlineData("8.1", "9.0", "-0.14")]
    [InlineData("9.1", "10.0", "-0.18")]
    [InlineData("10.1", "11.0", "-0.22")]
    [InlineData("11.1", "12.0", "-0.26")]
    [InlineData("12.1", "13.0", "-0.30")]
    [InlineData("13.1", "14.0", "-0.34")]
    [InlineData("14.1", "15.0", "-0.38")]
    [InlineData("15.1", "16.0", "-0.42")]
    public void Damage_EveryBand(string from, string to, string cents) => Band(ReferenceScales.LocalDamage, from, to, cents);

    // The table's first row prints ".02 or below"; its head says ".3-5%", so 0.2 is meant.
    [Theory]
    [InlineData("0", "0.2", "0")]
    [InlineData("0.3", "1.0", "-0.04")]
    [InlineData("1.1", "2.0", "-0.08")]
    [InlineData("2.1", "3.0", "-0.12")]
    [InlineData("3.1", "4.0", "-0.16")]
    [InlineData("4.1", "5.0", "-0.20")] // head
    public void Heat_EveryBand(string from, string to, string cents) => Band(ReferenceScales.LocalHeat, from, to, cents);

    [Theory]
    [InlineData("0", "5.0", "0")]
    [InlineData("5.1", "6.0", "-0.03")]
    [InlineData("6.1", "7.0", "-0.06")]
    [InlineData("7.1", "8.0", "-0.09")] // head
    public void OtherClasses_EveryBand(string from, string to, string cents) => Band(ReferenceScales.LocalOtherClasses, from, to, cents);

    [Theory]
    [InlineData("0", "4", "0")]
    [InlineData("5", "10", "-0.05")]
    [InlineData("11", "20", "-0.15")]
    [InlineData("21", "30", "-0.25")]
    [InlineData("31", "40", "-0.35")]
    [InlineData("41", "50", "-0.45")]
    [InlineData("51", "60", "-0.65")] // head: then 20 c each 10 balls
    public void Smut_EveryBand(string from, string to, string cents) => Band(ReferenceScales.LocalSmut, from, to, cents);

    [Fact]
    public void Heat_BeyondThePrintedRule_IsSilent() => Assert.Equal(new ScaleSilent(5.1m, 5.0m), ReferenceScales.LocalHeat.Ask(5.1m));

    [Fact]
    public void Faults_WholeSchedule_None() => Assert.Empty(ReferenceScales.LocalSchedule.SelectMany(s => s.Faults()));

    // By hand: 20,000 kg at 16.0 % moisture; shrink 2.5 points at 1.4 % = 3.5 %: 19,300 kg; 6.00 − 0.04 (moisture) − 0.02 (57.9 lb/bu) − 0.10 (musty) = 5.84 USD/bu.
    [Fact]
    public void Settle_WetMustyLoad_ShowsCommercialShrinkApartAndComesOutToTheCent()
    {
        var load = Loads.Of(32_000m, 12_000m, new(Property.Moisture, 16.0m, "%"), new(Property.TestWeight, 57.9m, "lb/bu")) with { Observed = ["Musty"] };
        var settled = Loads.Settled(load, Terms);
        Assert.Equal(19_300m, settled.Settled.Kilograms);
        Assert.Equal((Mass.Zero, Mass.FromKilograms(700m)), (settled.WaterShrink, settled.ContractShrink));
        Assert.Equal("5.84 USD/bu", settled.Price.ToString());
        Assert.Equal(Money.Of(Recorded.To(19_300m / 0.45359237m / 60m * 5.84m, 2), "USD"), settled.Pay);
        Assert.Contains(settled.Lines, l => l.What == "commercial shrink" && l.Value == -3.5m && l.Unit == "%");
        Assert.Contains(settled.Lines, l => l.What == "moisture discount" && l.Value == -0.04m);
        Assert.Contains(settled.Lines, l => l.What == "musty" && l.Value == -0.10m);
        Assert.Equal("not read: counts as this", settled.Lines.Single(l => l.What == "smut balls scale").Because!.Inputs.Single().Because!.Formula);
    }

    [Fact]
    public void Settle_WaterShrinkBesideCommercialShrink_AreTwoLines()
    {
        var load = Loads.Of(32_000m, 12_000m, new(Property.Moisture, 16.0m, "%"), new(Property.TestWeight, 60m, "lb/bu"));
        var settled = Loads.Settled(load, Terms with { DryMatterShrink = true });
        Num.Near(20_000m * 2.890m / 100m, settled.WaterShrink.Kilograms, 0.1m); // vector M6: 2.890 % from 16.0 to 13.5 %
        Num.Near(settled.Clean.Kilograms - settled.WaterShrink.Kilograms - settled.Settled.Kilograms, settled.ContractShrink.Kilograms, 0.01m);
        Assert.Equal(["at base moisture", "commercial shrink"], settled.Lines.Select(l => l.What).Where(w => w is "at base moisture" or "commercial shrink"));
    }

    [Fact]
    public void Settle_LiveWeevil_NotTaken() =>
        Assert.Contains("such a load is not taken", Assert.Single(Loads.Reasons(
            Loads.Of(32_000m, 12_000m, new(Property.Moisture, 12m, "%"), new(Property.TestWeight, 60m, "lb/bu"), new(Property.LiveWeevils, 1m, "/sample")), Terms)), StringComparison.Ordinal);

    // A charge for dockage above a threshold beside its deduction from the mass (a farm-press article on wheat discounts: mills commonly ask for less than 1.0 %).
    [Fact]
    public void Settle_DockageAboveAThreshold_IsChargedBesideTheDeduction()
    {
        var scale = ReferenceScales.LocalDamage with { Code = "DK", Factor = Property.Dockage, Line = "dockage charge", Steps = [new(1.0m, 0m)], Tiers = null, Above = new Beyond(BeyondRule.PerStep, -0.01m, 0.5m) };
        var settled = Loads.Settled(Loads.Of(32_000m, 12_000m, Loads.Dockage), Loads.Plain with { DryMatterShrink = false, Scales = [scale] });
        Assert.Equal(20_000m * 0.988m, settled.Settled.Kilograms);
        Assert.Equal("6.19 USD/bu", settled.Price.ToString());
    }

    [Fact]
    public void Settle_RefusedOdour_NotTaken() =>
        Assert.Contains("sour was observed", Assert.Single(Loads.Reasons(
            Loads.Of(32_000m, 12_000m, Loads.Dockage, Loads.Moist) with { Observed = ["sour"] }, Loads.Plain with { Observed = [new("sour", 0m, Refused: true)] })), StringComparison.Ordinal);

    private static ContractTerms Terms => Loads.Plain with
    {
        Base = Price.Of(Money.Of(6.00m, "USD"), PriceUnit.Bushel), DeductDockage = false, DryMatterShrink = false, Scales = ReferenceScales.LocalSchedule, Observed = ReferenceScales.LocalObserved,
    };

    private static void Band(ContractScale scale, string from, string to, string effect)
    {
        foreach (var edge in new[] { from, to })
        {
            Assert.Equal(Num.Of(effect), Assert.IsType<ScaleEffectOf>(scale.Ask(Num.Of(edge))).Effect);
        }
    }
}
