using CsCheck;
using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Quantities;

namespace Evengrist.Tests.Intake;

public sealed class ScaleTierTests
{
    // Federal notice AMS_3419 (September 2021), spring wheat in fifths: every printed step.
    [Fact]
    public void Table_TwoTiers_IsThePrintedTable() =>
        Assert.Equal(
            [(12.0m, 0m), (12.2m, 0.05m), (12.4m, 0.10m), (12.6m, 0.15m), (12.8m, 0.20m), (13.0m, 0.25m), (13.2m, 0.27m), (13.4m, 0.29m), (13.6m, 0.31m), (13.8m, 0.33m), (14.0m, 0.35m)],
            ReferenceScales.SpringFifths.Table.Select(s => (s.From, s.Effect)));

    public static TheoryData<ContractScale, string> Broken() => new()
    {
        { ReferenceScales.SpringFifths with { Tiers = [new(12.5m, 0.2m, 0.05m)], End = null }, "whole steps" },
        { ReferenceScales.SpringFifths with { Tiers = [new(11.0m, 0.2m, 0.05m)], End = null }, "upward" },
        { ReferenceScales.SpringFifths with { Tiers = [new(13.0m, 0m, 0.05m)], End = null }, "at least" },
        { ReferenceScales.SpringFifths with { Tiers = [new(90.0m, 0.001m, 0.05m)], End = null }, "not above 2000" },
        { ReferenceScales.SpringFifths with { Steps = [new(12m, 0m), new(12m, 0.05m)] }, "they overlap" },
        { ReferenceScales.LocalSmut with { NotReadCountsAs = -1m }, "where nothing was read" },
    };

    [Theory]
    [MemberData(nameof(Broken))]
    public void Faults_BrokenTiers_SayWhat(ContractScale scale, string reason) => Assert.Contains(scale.Faults(), f => f.Contains(reason, StringComparison.Ordinal));

    [Fact]
    public void Json_TiersChargesAndLines_ComeBackTheSame()
    {
        var terms = Loads.Plain with { Scales = [.. ReferenceScales.LocalSchedule, ReferenceScales.SpringFifths], Observed = ReferenceScales.LocalObserved };
        Assert.True(TermsJson.TryRead(TermsJson.Write(terms), out var read, out var faults), string.Join(' ', faults));
        Assert.Equal(TermsJson.Write(terms), TermsJson.Write(read!));
        Assert.Equal(ReferenceScales.LocalHeat.Table, read!.Scales.Single(s => s.Code == "LOCAL-HEAT").Table);
        Assert.True(read.Observed![0].IsAbout("MUSTY"));
    }

    [Fact]
    public void Faults_TwoChargesForOneWord_SaySo() =>
        Assert.Contains((Loads.Plain with { Observed = [new("musty", -0.1m), new("Musty", -0.2m)] }).Faults(), f => f.Contains("a word of its own", StringComparison.Ordinal));

    // One begun never costs less than one not credited, and both agree on the steps themselves.
    [Fact]
    public void Ask_BegunAndFloor_AgreeOnTheStepsAndNeverCross() =>
        Gen.Int[0, 400].Sample(tenths =>
        {
            var value = 12m + tenths / 100m;
            var floor = ReferenceScales.SpringFifths with { RecordedDecimals = 2 };
            decimal Of(StepRounding rounding) => Assert.IsType<ScaleEffectOf>((floor with { Rounding = rounding }).Ask(value)).Effect;
            Assert.True(Of(StepRounding.Begun) >= Of(StepRounding.Nearest) && Of(StepRounding.Nearest) >= Of(StepRounding.Floor));
            Assert.True(value % 0.2m != 0m || Of(StepRounding.Begun) == Of(StepRounding.Floor));
        });

    [Fact]
    public void Moves_AnyLoad_SumFromTheBasePriceToThePay() =>
        Gen.Select(Gen.Decimal[13, 60], Gen.Decimal[0, 5], Gen.Decimal[9, 18], Gen.Decimal[12, 14], Gen.Decimal[53, 64]).Sample((gross, dockage, moisture, protein, weight) =>
        {
            var load = Loads.Of(gross * 1000m, 12_000m, new(Property.Dockage, dockage, "%"), new(Property.Moisture, moisture, "%"), new(Property.Protein, protein, "%", Basis.At12), new(Property.TestWeight, weight, "lb/bu"));
            var settled = Loads.Settled(load, Loads.Plain with { Scales = [ReferenceScales.SpringFifths with { Below = Beyond.Holds }, .. ReferenceScales.LocalSchedule] });
            var sum = settled.Moves.Aggregate(settled.AtBase, (a, m) => a + m.Money);
            Num.Near(settled.Pay.Amount, sum.Amount, 0.005000001m);
        });
}
