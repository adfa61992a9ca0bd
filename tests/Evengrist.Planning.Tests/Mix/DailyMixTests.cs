using Evengrist.Intake.Deciding;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Mix;

namespace Evengrist.Planning.Tests.Mix;

/// <summary>The day's mix of four bins: values invented, answers reckoned by hand.</summary>
public sealed class DailyMixTests
{
    /// <summary>The case was posed and reckoned with test weight as a mean by mass; on a property that does average by mass (hardness stands in) it is as it was posed. By volume, as volumes add up, B11 has to give a little more: three equations in three shares, by hand.</summary>
    [Theory]
    [InlineData(Property.Hardness, 244.965, 0.4042, 0.3103, 0.2855, 0.292)]
    [InlineData(Property.TestWeight, 244.999, 0.3932, 0.3124, 0.2944, 0.293)]
    public void Solve_Daily_IsTheCheapestAndNamesWhatBinds(Property weight, double cost, double b05, double b07, double b11, double don)
    {
        var solved = Mixes.Solved(Mixes.DailyWith(weight));
        Assert.Equal(cost, solved.Cost.Today, 0.001);
        Assert.Equal(0, solved.Share("B02"));
        Assert.Equal(b05, solved.Share("B05"), 0.0001);
        Assert.Equal(b07, solved.Share("B07"), 0.0001);
        Assert.Equal(b11, solved.Share("B11"), 0.0001);
        Assert.Equal(345, solved.Of(Property.FallingNumber).Value, 0);
        Assert.Equal(don, solved.Of(Property.Don).Value, 3);
        Assert.Equal(new[] { Property.Protein, weight }.Order(), solved.Limits.Where(l => l.IsTight).Select(l => l.Limit.End.Limit.What).Order());
        Assert.Equal(new[] { Property.Protein, weight }.Order(), solved.Savings.Select(s => s.End!.Limit.What).Order());
        Assert.All(solved.Savings, s => Assert.True(s.PerTonne > 0));
        Assert.False(solved.ByYear);
    }

    [Fact]
    public void Solve_Daily_TheOldHabitStandsBeside()
    {
        var habit = Mixes.Solved(Mixes.Daily).Habit!;
        Assert.Equal(247.28, habit.Cost.Today, 2);
        Assert.All(habit.Limits, l => Assert.True(l.IsKept));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Solve_BinAboveTheMarketsLimit_IsRefusedByNameUnlessTheSwitchIsOn(bool blendDown)
    {
        var limit = new MarketLimit(Property.Don, LimitStage.AsReceived, 0.6m, "mg/kg", "a market of this test", SourceMark.House, blendDown);
        var solved = Mixes.Solved(Mixes.Daily with { Market = [limit] });
        Assert.Equal(blendDown, solved.Share("B07") > 0);
        Assert.Equal(blendDown ? [] : ["B07"], solved.LeftOut.Select(l => l.Bin));
        Assert.Equal(blendDown, solved.Remarks.Any(r => r.Contains("B07", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(10)]
    [InlineData(25)]
    [InlineData(60)]
    public void Solve_ByTheYear_NeverTakesMoreOfWhatIsWorthMoreLater(double value)
    {
        var (day, year) = (Mixes.Solved(Mixes.Daily), Mixes.Solved(Mixes.Daily with { Bins = [.. Mixes.Daily.Bins.Select(b => b.Code == "B11" ? b with { YearValuePerTonne = value } : b)] }));
        Assert.True(year.ByYear);
        Assert.True(year.Share("B11") <= day.Share("B11") + 1e-9);
        Assert.True(year.Cost.Today >= day.Cost.Today - 1e-9);
        Assert.Equal(year.Cost.Today + (value * year.Share("B11")), year.Cost.Year, 6);
        Assert.Contains(year.Remarks, r => r.Contains("B02", StringComparison.Ordinal));
    }

    /// <summary>400 s and 220 s half and half give 279 s, not 310 (a published pair); 320 t at 410, 60 at 210, 120 at 365 give 354 s by the same rule.</summary>
    [Fact]
    public void Blend_FallingNumbers_GoByTheirLiquefactionNumbers()
    {
        double Of(params (double Share, double Seconds)[] parts) =>
            MixBlend.WheatOf([.. parts.Select((p, i) => (Mixes.Bin($"{i}", 0, (Property.FallingNumber, p.Seconds, 0)), p.Share))], Property.FallingNumber, default)!.Value;
        Assert.Equal(279, Of((0.5, 400), (0.5, 220)), 0);
        Assert.Equal(354, Of((0.64, 410), (0.12, 210), (0.24, 365)), 0);
    }

    [Fact]
    public void Solve_InSteps_KeepsEveryLimitAndIsDearer()
    {
        var free = Mixes.Solved(Mixes.Daily);
        var stepped = Mixes.Solved(Mixes.Daily with { Gates = new GateRules { StepPercent = 5, MostGates = 3 } });
        Assert.All(stepped.Gates, g => Assert.Equal(Math.Round(g.Share * 20), g.Share * 20, 9));
        Assert.All(stepped.Limits, l => Assert.True(l.IsKept));
        Assert.True(stepped.Cost.Today > free.Cost.Today);
        Assert.Equal(stepped.Cost.Today - free.Cost.Today, stepped.PriceOfGates!.Value, 6);
        Assert.InRange(stepped.Gates.Count, 1, 3);
    }

    [Fact]
    public void Solve_LockedGateAndFeeders_AreKept()
    {
        var spec = Mixes.Daily with
        {
            Bins = [.. Mixes.Daily.Bins.Select(b => b.Code == "B02" ? b with { LockedShare = 0.10 } : b)], RateTonnesPerHour = 17.5,
            Gates = new GateRules { StepTonnesPerHour = 0.25, LeastTonnesPerHour = 1, MostTonnesPerHour = 7 },
        };
        var solved = Mixes.Solved(spec);
        Assert.Equal(0.10, solved.Share("B02"), 9);
        Assert.All(solved.Gates, g => Assert.InRange(g.TonnesPerHour!.Value, 1, 7));
        Assert.All(solved.Gates, g => Assert.Equal(Math.Round(g.TonnesPerHour!.Value * 4), g.TonnesPerHour!.Value * 4, 6));
        Assert.Contains(solved.Savings, s => s.What.Contains("locked", StringComparison.Ordinal) && s.PerTonne > 0);
    }

    [Fact]
    public void Solve_LimitOfTheFlour_IsThatOfTheWheatByTheRelation()
    {
        var relation = new FlourRelation(Property.Protein, Evengrist.Quantities.Basis.At12, Evengrist.Quantities.Basis.At14, -1.3, 1, 0.15, false, "a test");
        var flour = Mixes.Daily with
        {
            Relations = [relation],
            Limits = [.. Mixes.Daily.Limits.Skip(1), new MixLimit(Property.Protein) { Least = 11.9, Basis = Evengrist.Quantities.Basis.At14, On = LimitOn.Flour }],
        };
        var solved = Mixes.Solved(flour);
        Assert.Equal(Mixes.Solved(Mixes.Daily).Cost.Today, solved.Cost.Today, 6);
        var predicted = Assert.Single(solved.Flour);
        Assert.Equal(11.9, predicted.Value, 6);
        Assert.Equal(0.15, predicted.StandardUncertainty, 9);
        Assert.Contains(solved.Remarks, r => r.Contains("not fitted", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Flour 11.9 with 95 % under a relation that is ± 0.15 (1 s): wheat has to lie 1.6449 · 0.15 above 13.2, by hand.</summary>
    [Fact]
    public void Solve_FlourWithConfidence_CarriesTheRelationsUncertainty()
    {
        var relation = new FlourRelation(Property.Protein, Evengrist.Quantities.Basis.At12, Evengrist.Quantities.Basis.At14, -1.3, 1, 0.15, false, "a test");
        var solved = Mixes.Solved(new MixSpec
        {
            Bins = [Mixes.Bin("A", 300, (Property.Protein, 14, 0)), Mixes.Bin("B", 200, (Property.Protein, 12, 0))], Relations = [relation],
            Limits = [new MixLimit(Property.Protein) { Least = 11.9, Basis = Evengrist.Quantities.Basis.At14, On = LimitOn.Flour, Confidence = 0.95 }],
        });
        Assert.Equal(13.2 + (1.644854 * 0.15), solved.Of(Property.Protein).Value, 5);
    }

    /// <summary>Errors of one instrument do not lessen by mixing: two alike bins read by it stay ± 0.2, read by two they come down to 0.2/√2.</summary>
    [Theory]
    [InlineData("NIR", 0.2)]
    [InlineData("other", 0.141421356)]
    public void Blend_InstrumentError_IsShared(string second, double expected)
    {
        MixBin Read(string code, string by) => new(code, "", 0) { Values = new Dictionary<Property, MixValue> { [Property.Protein] = new(13, Evengrist.Quantities.Basis.At12) { Instrument = by, InstrumentUncertainty = 0.2 } } };
        var mixed = MixBlend.WheatOf([(Read("A", "NIR"), 0.5), (Read("B", second), 0.5)], Property.Protein, Evengrist.Quantities.Basis.At12)!;
        Assert.Equal(expected, mixed.StandardUncertainty, 8);
        Assert.Equal(0, mixed.OwnPart);
    }

    /// <summary>13 % at 12mb of wheat at 10 % moisture and 11 % at 12mb of wheat at 15 %, half and half: (0.90·13 + 0.85·11)/1.75, by dry matter.</summary>
    [Fact]
    public void Blend_Protein_GoesByDryMatter()
    {
        var mixed = MixBlend.WheatOf(
            [(Mixes.Bin("A", 0, (Property.Protein, 13, 0)) with { MoisturePercent = 10 }, 0.5), (Mixes.Bin("B", 0, (Property.Protein, 11, 0)) with { MoisturePercent = 15 }, 0.5)], Property.Protein, Evengrist.Quantities.Basis.At12)!;
        Assert.Equal(((0.90 * 13) + (0.85 * 11)) / 1.75, mixed.Value, 12);
    }
}
