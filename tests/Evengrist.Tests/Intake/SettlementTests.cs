using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Quantities;

namespace Evengrist.Tests.Intake;

public sealed class SettlementTests
{
    // The worked case of docs/model/settlement.md, reckoned by hand: scale of a federal notice, water shrink by dry matter.
    [Fact]
    public void Settle_HardWinterTruck_ComesOutToTheCent()
    {
        var settled = Loads.Settled(Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, Loads.Protein), Loads.HardWinter);
        Assert.Equal(Mass.FromKilograms(26_340m), settled.Net);
        Num.Near(26_023.9m, settled.Clean.Kilograms, 0.1m);
        Num.Near(25_813.3m, settled.Settled.Kilograms, 0.1m);
        Num.Near(948.48m, settled.Bushels, 0.01m);
        Assert.Equal("6.84 USD/bu", settled.Price.ToString());
        Num.Near(6_487.58m, settled.Pay.Amount, 0.02m);
        Assert.Equal(Money.Of(6_487.58m, "USD"), settled.Pay);
        Assert.Equal("HRW-25 v1, HRW-FIFTHS v1", settled.Under);
    }

    [Fact]
    public void Lines_HardWinterTruck_ShowEveryStepWithItsReason()
    {
        var lines = Loads.Settled(Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, Loads.Protein), Loads.HardWinter).Lines;
        Assert.Equal(
            [
                "gross: 38,460 kg (seen)", "tare: 12,120 kg (seen)", "net: 26,340 kg (reckoned)", "dockage: 1.2 % (seen)",
                "after dockage: 26,023.9 kg (reckoned)", "moisture: 14.2 % (seen)", "at base moisture: 25,813.3 kg (reckoned)",
                "bushels: 948.48 bu (reckoned)", "base price: 6.20 USD/bu (seen)", "protein scale: 0.64 USD/bu (reckoned)",
                "price: 6.84 USD/bu (reckoned)", "pay: 6,487.58 USD (reckoned)",
            ],
            lines.Select(l => $"{l.What}: {l}"));
        Assert.All(lines.Where(l => l.Origin == Origin.Reckoned), l => Assert.NotNull(l.Because));
        var scale = lines.Single(l => l.What == "protein scale").Because!;
        Assert.Equal("step downward to 13.0 % 12mb", scale.Formula);
        Assert.Equal("13.1 % 12mb (reckoned)", scale.Inputs.Single().ToString());
    }

    // Net, clean mass and bushels of a lorry in pounds; derived by hand.
    [Fact]
    public void Settle_PoundsAndDockage_GivesCleanBushels()
    {
        var weighing = Weighing.Of(Mass.FromPounds(79_480m), Mass.FromPounds(27_360m));
        var terms = Loads.Plain with { DryMatterShrink = false };
        var settled = Loads.Settled(new Delivery(weighing, Loads.Day, [Loads.Dockage with { Value = 1.3m }]), terms);
        Num.Near(52_120m, settled.Net.Pounds, 0.01m);
        Num.Near(51_442.44m, settled.Clean.Pounds, 0.01m);
        Num.Near(857.37m, settled.Bushels, 0.005m);
        Num.Near(23.334m, settled.Settled.Tonnes, 0.0005m);
    }

    // A farm-press article on wheat discounts: 60,000 lb at 1.5 % dockage is 59,100 lb, 985 bushels.
    [Fact]
    public void Settle_PublishedDockageExample_Gives985Bushels()
    {
        var weighing = Weighing.Of(Mass.FromPounds(80_000m), Mass.FromPounds(20_000m));
        var settled = Loads.Settled(new Delivery(weighing, Loads.Day, [Loads.Dockage with { Value = 1.5m }]), Loads.Plain with { DryMatterShrink = false });
        Num.Near(59_100m, settled.Clean.Pounds, 0.01m);
        Num.Near(985m, settled.Bushels, 0.0005m);
    }

    [Fact]
    public void Settle_DrierThanBase_GainsNothing()
    {
        var settled = Loads.Settled(Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist with { Value = 11.0m }, Loads.Protein), Loads.HardWinter);
        Assert.Equal(settled.Clean, settled.Settled);
    }

    [Fact]
    public void Settle_ProteinOnAnotherBasis_IsCarriedToTheScalesBasisFirst()
    {
        var dry = Loads.Protein with { Value = 14.89m, Basis = Basis.Dry }; // 13.10 on 12 % moisture
        var settled = Loads.Settled(Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, dry), Loads.HardWinter);
        Assert.Equal(Money.Of(6_487.58m, "USD"), settled.Pay);
    }

    [Fact]
    public void Settle_PriceByTheTonne_PaysTheSameToTheCent()
    {
        var byTonne = Loads.HardWinter with { Base = Loads.HardWinter.Base.In(PriceUnit.Tonne) };
        var settled = Loads.Settled(Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, Loads.Protein), byTonne);
        Assert.Equal(Money.Of(6_487.58m, "USD"), settled.Pay);
        Assert.Equal("t", settled.Lines.Single(l => l.What == "tonnes").Unit);
    }

    [Fact]
    public void Settle_NothingMeasured_SaysEverythingThatIsMissing()
    {
        var reasons = Loads.Reasons(Loads.Of(38_460m, 12_120m), Loads.HardWinter);
        Assert.Equal(3, reasons.Count);
        Assert.Contains(reasons, r => r.StartsWith("No protein is recorded", StringComparison.Ordinal));
    }

    [Fact]
    public void Settle_ProteinWithoutBasis_Refused() =>
        Assert.Contains("needs a moisture basis", Assert.Single(Loads.Reasons(
            Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, new Finding(Property.Protein, 13.1m, "%")), Loads.HardWinter)), StringComparison.Ordinal);

    [Fact]
    public void Settle_SamePropertyTwice_Refused() =>
        Assert.Contains("given 2 times", Assert.Single(Loads.Reasons(
            Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, Loads.Moist, Loads.Protein), Loads.HardWinter)), StringComparison.Ordinal);

    [Fact]
    public void Settle_BeyondThePrintedTable_SaysSoAndPricesNothing() =>
        Assert.Contains("beyond the end of scale HRW-FIFTHS v1 at 13.5 % 12mb", Assert.Single(Loads.Reasons(
            Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, Loads.Protein with { Value = 14.4m }), Loads.HardWinter)), StringComparison.Ordinal);

    [Fact]
    public void Settle_ContractNotInForce_Refused() =>
        Assert.Contains("not in force", Assert.Single(Loads.Reasons(
            Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, Loads.Protein), Loads.HardWinter with { From = Loads.Day.PlusDays(1) })), StringComparison.Ordinal);

    // Each is 12.65 on 12 % moisture without a rest: a half must stay a half.
    [Theory]
    [InlineData("12.434375", "13.5", "12.7")]
    [InlineData("12.3625", "14", "12.7")]
    [InlineData("12.434374", "13.5", "12.6")]
    public void Scale_CarriedToAHalf_IsRecordedUp(string value, string basis, string recorded)
    {
        var found = new Finding(Property.Protein, Num.Of(value), "%", Basis.At(Num.Of(basis)));
        var line = Loads.Settled(Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, found), Loads.HardWinter).Lines.Single(l => l.What == "protein scale");
        Assert.Equal(Num.Of(recorded), line.Because!.Inputs.Single().Value);
    }
}
