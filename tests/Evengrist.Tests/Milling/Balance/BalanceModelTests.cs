using CsCheck;
using Evengrist.Milling.Balance;
using Evengrist.Numerics.Reconciling;
using Evengrist.Quantities;
using Evengrist.Tempering;
using static Evengrist.Tests.Milling.Balance.MillDays;

namespace Evengrist.Tests.Milling.Balance;

public sealed class BalanceModelTests
{
    [Fact]
    public void Of_ADay_GivesTheYieldsAndTheUnexplainedOfCommonPractice()
    {
        var day = Made(Day(462));
        Assert.Equal(622.6, day.Spec.FirstBreakTonnes, 0.05);
        Assert.Equal([74.2, 77.0, 78.1], day.Extractions.Take(3).Select(e => Math.Round(e.Percent, 1)));
        Assert.Equal([ExtractionBasis.FirstBreak, ExtractionBasis.DirtyWheat, ExtractionBasis.CleanWheat], day.Extractions.Take(3).Select(e => e.Basis));
        Assert.Equal(2.16m, Math.Round(FlourYield.BushelsPerHundredweight((decimal)day.Extractions[1].Percent), 2));
        Assert.Equal((9.4, 1.5), (Math.Round(day.Unexplained.Tonnes, 1), Math.Round(day.UnexplainedPercent, 1)));
        Assert.True(day.IsUsual);
        Assert.False(Made(Day(452)).IsUsual); // Ten tonnes of flour fewer: a flag.
        Assert.False(Made(Day(472)).IsUsual); // Ten more: less goes missing than evaporates anywhere.
        Assert.Contains(Made(Day(472)).Remarks, r => r.StartsWith("More came out weighed than went in", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_DayWithWaterByBalance_HasTheWaterOfThatDay() =>
        Assert.Equal(30.99, 591.6 * TemperWaterModel.Share(11.6, 16), 0.005);

    /// <summary>Derived by hand: 100 t of wheat, 1.5 t of screenings, from 12 to 16 %, 76.5 % of what reaches first break is flour.</summary>
    [Fact]
    public void Of_HundredTonnes_GivesEveryExtraction()
    {
        var water = 98.5 * TemperWaterModel.Share(12, 16);
        var flour = 0.765 * (98.5 + water);
        var day = Made(new BalanceSpec(new(100, 0), [new("flour", WeighedKind.Flour, new(flour, 0)), new("feed", WeighedKind.ByProduct, new(20, 0))]) { Screenings = new(1.5, 0), Water = new(water, 0) });
        Assert.Equal((103.190, 78.941), (Math.Round(day.Spec.FirstBreakTonnes, 3), Math.Round(day.FlourTonnes, 3)));
        Assert.Equal([76.5, 78.941, 80.143], day.Extractions.Take(3).Select(e => Math.Round(e.Percent, 3)));
        Assert.Equal(80.143, Extraction.OnClean(76.5, 12, 16), 0.001);
        Assert.Equal(100 * flour / (flour + 20), day.Extractions[3].Percent, 1e-9);
    }

    /// <summary>By hand: relative ± of a ratio of two weighers is the root of their squares; 0.25 % each.</summary>
    [Fact]
    public void Of_Extraction_CarriesTheWeighersErrors()
    {
        var day = Made(new BalanceSpec(Weighed.Of(100, 0.25), [new("flour", WeighedKind.Flour, Weighed.Of(75, 0.25))]));
        Assert.Equal(75 * 0.0025 * Math.Sqrt(2), day.Extractions.Single(e => e.Basis == ExtractionBasis.DirtyWheat).StandardUncertainty, 1e-6);
        Assert.Equal(0, day.Extractions.Single(e => e.Basis == ExtractionBasis.Products).StandardUncertainty, 1e-6); // All products are flour.
    }

    [Fact]
    public void Of_DayWithoutMoistures_SaysThatNothingChecksTheWeighers()
    {
        var day = Made(Day(462));
        Assert.IsType<NothingToAdjust>(day.Check.First);
        Assert.Equal(day.Unexplained.Tonnes, day.Losses.Single(l => l.Kind == LossKind.Evaporation).Tonnes, 1e-9);
        Assert.Contains(day.Remarks, r => r.StartsWith("Nothing checks the weighers", StringComparison.Ordinal));
        Assert.Null(day.DryClosure);
        Assert.Empty(day.ReconciledExtractions);
    }

    /// <summary>Data that agree are left as they are, whatever the day: evaporation comes out as put in and dry matter closes.</summary>
    [Fact]
    public void Of_DayWithoutError_FindsItsEvaporationAndClosesInDryMatter() => Gen.Select(Gen.Double[50, 2000], Gen.Double[9, 13], Gen.Double[14.5, 17], Gen.Double[0.3, 2.5], Gen.Double[0.6, 0.8]).Sample((wheat, moisture, firstBreak, air, flour) =>
    {
        var day = Made(Exact(wheat, moisture, firstBreak, air, flour));
        var reconciled = Assert.IsType<NoGrossError>(day.Check).Adjusted;
        Assert.Equal(3, reconciled.Freedom);
        Assert.Equal(0, reconciled.Squares, 1e-8);
        Assert.Equal(100, day.DryClosure!.Percent, 1e-6);
        Assert.Equal(air / 100 * day.Spec.FirstBreakTonnes, day.Losses[0].Tonnes, 1e-6 * wheat);
        Assert.All(day.Losses.Skip(1), l => Assert.Equal(0, l.Tonnes, 1e-6 * wheat));
    });

    /// <summary>Whatever is weighed, the parts add up to what is unexplained, and reconciled extractions are surer than weighed ones.</summary>
    [Fact]
    public void Of_AnyDay_PartsAddUpAndReconcilingMakesSurer() => Gen.Double[-3, 3].Array[5].Sample(off =>
    {
        var exact = Exact();
        Weighed Shift(Weighed w, double by) => w with { Tonnes = w.Tonnes + (by * w.StandardUncertainty) };
        var day = Made(exact with { Dirty = Shift(exact.Dirty, off[0]), Water = Shift(exact.Water, off[1]), FirstBreak = Shift(exact.FirstBreak!, off[2]), Products = [.. exact.Products.Select((p, i) => p with { Mass = Shift(p.Mass, off[3 + i]) })] });
        Assert.Equal(day.Unexplained.Tonnes, day.Losses.Sum(l => l.Tonnes), 1e-7);
        if (day.Check is NoGrossError)
        {
            Assert.All(day.ReconciledExtractions.Zip(day.Extractions), p => Assert.True(p.First.StandardUncertainty <= p.Second.StandardUncertainty * 1.01));
        }
    });

    /// <summary>Wheat and screenings are seen only as their difference: both are named, the likelier first, and its bias is right.</summary>
    [Theory]
    [InlineData(15)]
    [InlineData(-15)]
    public void Of_WheatScaleThatIsOff_NamesItWithItsBias(double off)
    {
        var exact = Exact();
        var day = Made(exact with { Dirty = exact.Dirty with { Tonnes = exact.Dirty.Tonnes + off } });
        var suspect = Assert.Single(Assert.IsType<GrossErrorsNamed>(day.Check).Suspects);
        Assert.Equal(("wheat", off, "screenings"), (suspect.Name, Math.Round(suspect.Bias!.Value, 3), Assert.Single(suspect.Alike)));
        Assert.Equal(off, day.Losses.Single(l => l.Name == "wheat").Tonnes, 0.01);
        Assert.Equal(0.012 * Exact().FirstBreakTonnes, day.Losses[0].Tonnes, 0.01);
        Assert.Contains(day.Remarks, r => r.Contains("whether it is “wheat” or “screenings”", StringComparison.Ordinal));
    }

    /// <summary>Over the rolls dry matter alone is a check: weights and moistures of the products are named together, none of those before first break.</summary>
    [Fact]
    public void Of_FlourScaleThatIsOff_NamesWhatCameOffTheRolls()
    {
        var (exact, flour) = (Exact(), Exact().Products[0]);
        var day = Made(exact with { Products = [flour with { Mass = flour.Mass with { Tonnes = flour.Mass.Tonnes - 12 } }, exact.Products[1]] });
        var suspect = Assert.Single(Assert.IsType<GrossErrorsNamed>(day.Check).Suspects);
        Assert.Equal(("flour", 12), (suspect.Name, Math.Round(day.Losses.Single(l => l.Name == "flour").Tonnes, 2)));
        Assert.Equal(["feed", "moisture of feed", "moisture of flour"], suspect.Alike.Order());
    }

    [Fact]
    public void Of_OneCheckAlone_DoesNotPretendToKnowWhichIsWrong()
    {
        var exact = Exact();
        var flour = exact.Products[0];
        var day = Made(exact with { FirstBreak = null, FirstBreakMoisture = null, Products = [flour with { Mass = flour.Mass with { Tonnes = flour.Mass.Tonnes - 40 } }, exact.Products[1]] });
        var suspect = Assert.Single(Assert.IsType<GrossErrorsNamed>(day.Check).Suspects);
        Assert.NotEmpty(suspect.Alike);
        Assert.Contains(day.Remarks, r => r.StartsWith("The measurements do not go together: a single check", StringComparison.Ordinal));
        Assert.Equal(day.Unexplained.Tonnes, day.Losses.Sum(l => l.Tonnes), 1e-7);
    }

    /// <summary>The table of docs/model/balance.md: each thing that is read or weighed besides the masses adds a check.</summary>
    [Fact]
    public void Of_MoreThatIsRead_HasMoreChecks()
    {
        var all = Exact();
        BalanceSpec[] specs = [all with { FirstBreak = null, FirstBreakMoisture = null, WheatMoisture = null }, all with { FirstBreak = null, FirstBreakMoisture = null }, all with { FirstBreak = null }, all, all with { Evaporation = new(1.2, 0.3) }];
        Assert.Equal([0, 1, 2, 3, 4], specs.Select(s => Assert.IsType<Balanced>(Made(s).Check.First, exactMatch: false).Freedom));
    }

    [Fact]
    public void Of_ProductsInAnotherOrder_IsTheSame()
    {
        var (one, other) = (Made(Exact()), Made(Exact() with { Products = [.. Exact().Products.Reverse()] }));
        Assert.Equal(one.Extractions.Select(e => Math.Round(e.Percent, 9)), other.Extractions.Select(e => Math.Round(e.Percent, 9)));
        Assert.Equal(one.Losses.Sum(l => l.Tonnes), other.Losses.Sum(l => l.Tonnes), 1e-9);
    }

    [Fact]
    public void Of_MoreFlour_RaisesEveryExtractionAndLowersTheUnexplained() => Gen.Select(Gen.Double[400, 470], Gen.Double[0.1, 5]).Sample((flour, more) =>
    {
        var (one, other) = (Made(Day(flour)), Made(Day(flour + more)));
        return one.Extractions.Zip(other.Extractions).All(p => p.Second.Percent > p.First.Percent) && other.Unexplained.Tonnes < one.Unexplained.Tonnes;
    });

    /// <summary>A flow of 10 t into the temper bins more than out of them: first break has that much less, and the remark says so.</summary>
    [Fact]
    public void Of_TemperBinsThatRose_TakesItFromFirstBreak()
    {
        var day = Made(Day(462) with { TemperRise = new(10, 0.5) });
        Assert.Equal(612.59, day.Spec.FirstBreakTonnes, 0.01);
        Assert.Contains(day.Remarks, r => r.StartsWith("The temper bins did not hold the same", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_Energy_IsForATonneAndComparesWithTheCensus()
    {
        var day = Made(Day(462) with { KilowattHours = 46_200 });
        Assert.Equal((77, 100), (day.Energy!.PerTonneWheat, day.Energy.PerTonneFlour));
        // 4 to 7 kWh for a hundredweight (World Grain, of the census 2005), a hundredweight of 45.359237 kg.
        Assert.Equal((88.18, 154.32), (Math.Round(EnergyUse.PerTonne(EnergyUse.LeastPerHundredweight), 2), Math.Round(EnergyUse.PerTonne(EnergyUse.MostPerHundredweight), 2)));
    }

    [Fact]
    public void Of_WhatCannotBe_IsRefusedWithReasons()
    {
        Assert.Contains("No wheat went to the mill", Assert.Single(Refused(Day(462) with { Dirty = new(0, 0) })), StringComparison.Ordinal);
        Assert.Contains("give 1 to", Assert.Single(Refused(Day(462) with { Products = [] })), StringComparison.Ordinal);
        Assert.Contains("as many screenings as wheat", Assert.Single(Refused(Day(462) with { Screenings = new(600, 1) })), StringComparison.Ordinal);
        Assert.Contains("Nothing reached first break", Assert.Single(Refused(Day(462) with { TemperRise = new(700, 1) })), StringComparison.Ordinal);
        var bad = Day(-1) with { WheatMoisture = new(100, 0.1), KilowattHours = -1, TemperRise = new(double.NaN, -1) };
        string[] begins = ["flour: it lies from 0", "Rise of the temper bins: its uncertainty", "Moisture of the wheat: it lies", "germ stands there 2 times", "Rise of the temper bins: a finite", "Electricity: it lies"];
        Assert.All(Refused(bad with { Products = [.. bad.Products, bad.Products[2]] }).Zip(begins), p => Assert.StartsWith(p.Second, p.First, StringComparison.Ordinal));
        Assert.Equal(begins.Length, Refused(bad with { Products = [.. bad.Products, bad.Products[2]] }).Count);
        Assert.Contains("wheat stands there 2 times", Assert.Single(Refused(Day(462) with { Products = [new("wheat", WeighedKind.Flour, new(1, 1))] })), StringComparison.Ordinal); // A name the balance has already.
    }

    private static IReadOnlyList<string> Refused(BalanceSpec spec) => Assert.IsType<NoMillBalance>(BalanceModel.Of(spec)).Reasons;
}
