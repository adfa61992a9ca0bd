using CsCheck;
using Evengrist.Streams.Additions;
using NodaTime;

namespace Evengrist.Tests.Streams.Additions;

/// <summary>Doses, rates and rework, against figures worked beside the code.</summary>
public sealed class AdditionsTests
{
    // Worked by hand from LN = 6000/(FN − 50): 410 s is 16.6667, 300 s 24; slope 7.3333/20; 250 s is 30.
    [Fact]
    public void Malt_OfTheWorkedTrial_HasItsSlopeAndDose()
    {
        var need = AdditionsModel.Of(new AdditionsSpec { Malt = new MaltAsk([new(0, 410), new(20, 300)], 250), FlourTonnesPerHour = 12.075 }, EnrichmentTables.Start).Malt!;
        Assert.Equal(0.36667, need.Line.Slope, 5);
        Assert.Equal(36.36, need.GramsPer100Kg, 2);
        Assert.Equal(410, need.Line.StartSeconds, 6);
        Assert.Equal(363.6 * 12.075 / 60, need.Rate.GramsPerMinute!.Value, 1);
        Assert.Contains(need.Remarks, r => r.Contains("beyond its trials", StringComparison.Ordinal));
        Assert.Contains(need.Remarks, r => r.Contains("take 3 or more", StringComparison.Ordinal));
    }

    [Fact]
    public void Malt_TrialsThatScatter_WidenTheUncertainty()
    {
        MaltTrial[] On(double off) => [new(0, 410), new(10, Fn(16.6667 + 3.6667 + off)), new(20, Fn(24 - off)), new(30, Fn(16.6667 + 11 + off)), new(40, Fn(16.6667 + 14.6667 - off))];
        var (still, off) = (MaltLine.Through(On(0), 0.01).Line!, MaltLine.Through(On(1), 0.01).Line!);
        Assert.Equal(0.36667, still.Slope, 3);
        Assert.True(off.SlopeUncertainty > 1.5 * still.SlopeUncertainty);
        Assert.Equal(0, still.DoseFor(450));

        static double Fn(double liquefaction) => 50 + (6000 / liquefaction);
    }

    [Theory]
    [InlineData(11.0, 12.5, 77, 2.2727, 2.3256)] // worked by hand: (t − b)/(g − b) and 100x/(1 − x)
    [InlineData(12.7, 14, 75, 2.0867, 2.1311)]
    public void Gluten_IsTheShareThatMixesToTheAim(double flour, double wanted, double gluten, double share, double kilograms)
    {
        var dose = GlutenDose.For(flour, wanted, gluten).Dose!;
        Assert.Equal(share, dose.Percent, 4);
        Assert.Equal(kilograms, dose.KilogramsPer100Kg, 4);
        Assert.Equal(wanted, ((100 * flour) + (dose.KilogramsPer100Kg * gluten)) / (100 + dose.KilogramsPer100Kg), 10); // the protein is conserved
    }

    // 21 CFR 137.165, mg in a pound, carried to the kilogram by 0.45359237; to two or three figures as the trade states them.
    [Fact]
    public void Enrichment_OfTheUnitedStates_IsTheRulesInMilligramsPerKilogram()
    {
        var table = EnrichmentTables.Start.Of("United States", new LocalDate(2026, 1, 14))!;
        double[] expected = [6.39, 3.97, 52.9, 1.54, 44.1];
        Assert.All(table.Nutrients.Zip(expected), n => Assert.InRange(n.First.MilligramsPerKg - n.Second, -0.05, 0.05));
        Assert.Null(EnrichmentTables.Start.Of("United States", new LocalDate(1990, 1, 1)));
        Assert.Null(EnrichmentTables.Start.Of("Elsewhere", new LocalDate(2026, 1, 1)));
    }

    // Worked by hand: iron 44.09 less 10 of its own, of which the premix is a quarter.
    [Fact]
    public void Premix_IsWhatTheNeediestNutrientNeeds()
    {
        Assert.Equal(136.36, Feeder.PremixGramsPerTonne(44.09 - 10, 25), 2);
        var content = new Dictionary<string, double> { ["thiamin"] = 2, ["riboflavin"] = 1, ["niacin"] = 16, ["folic acid"] = 0.5, ["iron"] = 25 };
        var dose = PremixDose.For(EnrichmentTables.Start.Tables[0], content, new Dictionary<string, double> { ["iron"] = 10 }).Dose!;
        Assert.Equal(396.8, dose.GramsPerTonne, 1); // riboflavin: 3.968 / 0.01
        Assert.Equal(0, dose.Nutrients[1].OverPercent, 9);
        Assert.All(dose.Nutrients, n => Assert.True(n.MilligramsPerKg >= n.Aim.MilligramsPerKg - 1e-9));
        Assert.Equal(10 + (396.832 * 0.25), dose.Nutrients[4].MilligramsPerKg, 2);
        Assert.Equal(1.1 * 396.832, PremixDose.For(EnrichmentTables.Start.Tables[0], content, new Dictionary<string, double>(), 10).Dose!.GramsPerTonne, 2);
    }

    // 25 minutes at 12.075 t/h, worked by hand.
    [Fact]
    public void Stopped_FeederLeavesSoMuchFlourWithout() =>
        Assert.InRange(AdditionsModel.Of(new AdditionsSpec { StoodMinutes = 25, FlourTonnesPerHour = 12.075 }, EnrichmentTables.Start).TonnesWithout!.Value, 5.03 - 0.005, 5.03 + 0.005);

    [Fact]
    public void LossInWeight_IsTheDoseWithTheScalesUncertainty()
    {
        // 18.1 kg over 12.075 t is 1499 g/t; scale 0.05 kg twice: 5.86 g/t; flour 0.5 %: 7.49 g/t.
        var found = new LossInWeight(40, 21.9, 12.075) { SetGramsPerTonne = 1500 }.Found();
        Assert.Equal(1498.96, found.GramsPerTonne, 2);
        Assert.Equal(Math.Sqrt((5.856 * 5.856) + (7.495 * 7.495)), found.StandardUncertainty, 2);
        Assert.False(found.IsOff);
        Assert.True(new LossInWeight(40, 24, 12.075) { SetGramsPerTonne = 1500 }.Found().IsOff);
        Assert.Equal(new LossInWeight(40, 30, 10).Found().GramsPerTonne, new LossInWeight(40, 55, 10) { FilledKilograms = 25 }.Found().GramsPerTonne, 9);
        Assert.Null(new LossInWeight(40, 30, 10).Found().IsOff);
    }

    // 5 % of 12.85 into 11.65 is 11.71; worked by hand.
    [Fact]
    public void Rework_IsTheMeanAndKeepsTheMillsRule()
    {
        var feed = new ReworkFeed("WB", "WB", 5) { Values = [new ReworkedValue("protein, % 14mb", 11.65, 12.85) { Least = 11.7, Most = 12.1 }] };
        var advice = AdditionsModel.Of(new AdditionsSpec { Rework = feed }, EnrichmentTables.Start).Rework!;
        Assert.Equal(11.71, advice.Values[0].With, 9);
        Assert.Empty(advice.Against);
        Assert.Equal(0, advice.MostPercent); // the run by itself is below its least: no share is safe to lean on
        Assert.Equal(5, (feed with { Values = [new ReworkedValue("ash", 0.45, 0.47) { Most = 0.46 }] }).MostThatKeeps());
        Assert.Equal(2, (feed with { Values = [new ReworkedValue("ash", 0.45, 0.95) { Most = 0.46 }] }).MostThatKeeps(), 9);
    }

    [Fact]
    public void Rework_WhatStandsAgainstIt_IsSaid()
    {
        var against = new ReworkFeed("WB", "AP", 8) { AgeDays = 40, Allergens = ["soy"], Values = [new ReworkedValue("ash", 0.45, 0.95) { Most = 0.46 }] }.Against();
        foreach (var says in new[] { "Like goes into like", "soy", "more than the most of 5 %", "40 days old", "ash would be 0.49" })
        {
            Assert.Contains(against, a => a.Contains(says, StringComparison.Ordinal));
        }

        Assert.DoesNotContain(new ReworkFeed("WB", "WB", 3) { Allergens = ["soy"], LabelAllergens = ["Soy"] }.Against(), a => a.Contains("soy", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Rework_TheMostThatKeeps_KeepsForAnyValues() => Gen.Select(Gen.Double[0.1, 2], Gen.Double[0.1, 2], Gen.Double[0.1, 2], Gen.Double[0.1, 2]).Sample((run, rework, least, most) =>
    {
        var value = new ReworkedValue("x", run, rework) { Least = Math.Min(least, most), Most = Math.Max(least, most) };
        var share = value.MostPercent();
        Assert.True(share is 0 || (value.With(share) >= value.Least - 1e-9 && value.With(share) <= value.Most + 1e-9));
        Assert.True(share is 0 or 100 || value.With(share + 1) < value.Least || value.With(share + 1) > value.Most);
    });

    // Derived by hand: 100 g of ash-free flour part at 0.45 with 0.04 % of a premix of 60 % ash: 0.45 + 0.024 − 0.00018.
    [Fact]
    public void Ash_BeforeEnrichment_IsWithoutWhatThePremixBrought()
    {
        var after = ((0.45 * 1) + (60 * 0.0004)) / 1.0004;
        Assert.Equal(0.45, AdditionLimits.AshBefore(after, 400, 60), 12);
    }

    public static TheoryData<AdditionsSpec, string> Bad => new()
    {
        { new AdditionsSpec { FlourTonnesPerHour = -1 }, "Flour: tonnes an hour" },
        { new AdditionsSpec { Malt = new MaltAsk([new(0, 410)], 250) }, "trials at two different doses" },
        { new AdditionsSpec { Malt = new MaltAsk([new(0, 300), new(20, 410)], 250) }, "the falling number does not fall" },
        { new AdditionsSpec { Malt = new MaltAsk([new(0, 410), new(-20, 300)], 250) }, "Malt lies from 0" },
        { new AdditionsSpec { Malt = new MaltAsk([new(0, 410), new(20, 30)], 250) }, "60 to 1000 s; got 30" },
        { new AdditionsSpec { Malt = new MaltAsk([new(0, 410), new(20, 300)], 20) }, "60 to 1000 s; got 20" },
        { new AdditionsSpec { Gluten = new GlutenAsk(13, 12, 77) }, "gluten cannot lower it" },
        { new AdditionsSpec { Gluten = new GlutenAsk(11, 80, 77) }, "cannot bring the flour" },
        { new AdditionsSpec { Ascorbic = new AscorbicAsk(-5, 100) }, "Ascorbic acid: a dose above 0" },
        { new AdditionsSpec { Enrichment = new EnrichmentAsk("Nowhere", new Dictionary<string, double>()) }, "no table of Nowhere" },
        { new AdditionsSpec { Enrichment = new EnrichmentAsk("United States", new Dictionary<string, double> { ["iron"] = 25 }) }, "thiamin: what of the premix it is must be said" },
        { new AdditionsSpec { Feeder = new LossInWeight(20, 40, 10) }, "say what was filled in" },
        { new AdditionsSpec { Feeder = new LossInWeight(40, 20, 0) }, "flour that ran is above 0 t" },
        { new AdditionsSpec { StoodMinutes = 25 }, "tonnes of flour an hour are needed" },
        { new AdditionsSpec { Ash = new AshAsk(-1, 400, 60) }, "Ash: an ash above 0" },
        { new AdditionsSpec { Rework = new ReworkFeed("WB", "WB", 0) }, "above 0 and below 100 % of a run; got 0" },
        { new AdditionsSpec { Rework = new ReworkFeed("", "WB", 5) }, "which flour is fed back" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Questions_ThatCannotBe_AreNamed(AdditionsSpec spec, string says) => Assert.Contains(says, string.Join(" ", AdditionsModel.Of(spec, EnrichmentTables.Start).Faults), StringComparison.Ordinal);

    [Fact]
    public void Tables_ThereAndBack_LoseNothingAndFaultsAreNamed()
    {
        Assert.True(EnrichmentTables.TryRead(EnrichmentTables.Write(EnrichmentTables.Start), out var read, out _));
        Assert.Equal(EnrichmentTables.Write(EnrichmentTables.Start), EnrichmentTables.Write(read));
        foreach (var (was, becomes, says) in new[] { ("\"iron\"", "\"niacin\"", "niacin stands there 2 times"), ("United States", "", "has no market"), ("\"mark\": \"Read\"", "\"mark\": \"None\"", "how well it is known") })
        {
            Assert.False(EnrichmentTables.TryRead(EnrichmentTables.Write(EnrichmentTables.Start).Replace(was, becomes, StringComparison.Ordinal), out _, out var faults));
            Assert.Contains(says, string.Join(" ", faults), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Doses_BeyondTheRule_AreSaid()
    {
        Assert.Contains("more than 200 ppm", AdditionsModel.Of(new AdditionsSpec { Ascorbic = new AscorbicAsk(250, 10) }, EnrichmentTables.Start).Ascorbic!.Remarks.Single(), StringComparison.Ordinal);
        Assert.Equal(2500, AdditionsModel.Of(new AdditionsSpec { Ascorbic = new AscorbicAsk(250, 10) }, EnrichmentTables.Start).Ascorbic!.Rate.GramsPerTonne, 9);
        var malt = AdditionsModel.Of(new AdditionsSpec { Malt = new MaltAsk([new(0, 410), new(100, 400)], 200) }, EnrichmentTables.Start).Malt!;
        Assert.Contains(malt.Remarks, r => r.Contains("more than 0.75 %", StringComparison.Ordinal));
    }
}
