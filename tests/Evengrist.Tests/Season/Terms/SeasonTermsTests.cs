using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Tests.Season.Terms;

/// <summary>Terms and what a plan is made from. Values are counted by hand.</summary>
public sealed class SeasonTermsTests
{
    private static readonly LocalDate Wednesday = new(2026, 1, 14);

    private static SeasonTerms Terms { get; } = new()
    {
        End = new(2026, 6, 30),
        Currency = "USD",
        Units = [new("A", 17.5, 24) { DaysOff = [IsoDayOfWeek.Sunday], Closed = [new(2026, 1, 16)] }],
        Flours = [new("WB", "White bread", "A", 700, 0.7, 900) { Peaks = [new(new(2026, 1, 19), new(2026, 1, 20), 1400)], Limits = [new(Property.Protein, 60) { Least = 13.1, Most = 13.7, Basis = Basis.At12 }] }],
        Offers = [new("E1", "HW", new(2026, 1, 10), new(2026, 2, 3), 12, [new(Property.Protein, 13.6) { Basis = Basis.At12 }], [new(700, 250), new(700, 260)]) { TotalTonnes = 2100 }],
        Arrivals = [new("Rim", "Scarrow Rim", "HW", new(2026, 1, 12), new(2026, 1, 17), 600, 90, 10, [new(Property.Protein, 14, 0.8) { Basis = Basis.At12 }])],
        EndWorths = [new("HW", 222)],
        Extraction = new ExtractionRule(78, 0.5),
    };

    private static SeasonSpec Spec(LocalDate start) => SpecFromTerms.Of(
        Terms, start, [new SeasonWheat("B05", "HW", 6900, 9.8, SeasonQuality.Unknown.With(Property.TestWeight, new SeasonValue(75))) { Home = "B05" }], [new SeasonHome("B05", 10_000)]);

    [Fact]
    public void Spec_OfAWednesday_HasTwoWeeksOfDaysThenWeeks()
    {
        var spec = Spec(Wednesday);
        Assert.Equal(14, spec.Periods.Count(p => p.Days == 1));
        Assert.Equal(new LocalDate(2026, 1, 28), spec.Periods[14].Start);
        Assert.Equal(new LocalDate(2026, 7, 1), spec.End);
        Assert.Equal(Period.DaysBetween(Wednesday, new LocalDate(2026, 7, 1)), spec.Periods.Sum(p => p.Days));
    }

    [Fact]
    public void Hours_DaysOffAndClosed_AreNone()
    {
        var hours = Spec(Wednesday).Units[0].Hours;
        Assert.Equal([24.0, 24, 0, 24, 0, 24], hours.Take(6)); // Wednesday, Thursday, closed, Saturday, Sunday, Monday
        Assert.Equal(144, hours[14]);
    }

    [Fact]
    public void Demand_InAPeak_IsThePeaks()
    {
        var demand = Spec(Wednesday).Flours[0].Demand;
        Assert.Equal([100.0, 100, 100, 100, 100, 200, 200, 100], demand.Take(8));
        Assert.Equal(700, demand[14]);
        Assert.Equal(700.0 / 7 * Days(), demand.Sum(), 6);

        static double Days() => Period.DaysBetween(Wednesday, new LocalDate(2026, 7, 1)) + 2; // the two days of the peak count twice
    }

    [Fact]
    public void Arrivals_BegunBefore_CountWhatIsStillToCome()
    {
        var rim = Spec(Wednesday).Wheats.Single(w => w.Code == "Rim");
        Assert.Equal(0, rim.OpeningTonnes);
        Assert.Equal([0, 1, 2, 3], rim.Deliveries.Select(d => d.Period));
        Assert.All(rim.Deliveries, d => Assert.Equal(100, d.Tonnes, 9)); // four of the six days are left
        Assert.All(rim.Deliveries, d => Assert.Equal("Scarrow Rim", d.District));
    }

    [Fact]
    public void Offers_OverDaysAndWeeks_HaveTheSameCurveByTheWeek()
    {
        var offers = Spec(Wednesday).Offers;
        Assert.Equal(["E1", "E1 from 28 Jan"], offers.Select(o => o.Code));
        Assert.Equal(100, offers[0].Tiers[0].TonnesPerPeriod, 9);
        Assert.Equal(700, offers[1].Tiers[0].TonnesPerPeriod, 9);
        Assert.Equal((0, 13, 14, 14), (offers[0].First, offers[0].Last, offers[1].First, offers[1].Last));
        Assert.Equal(2100, offers.Sum(o => o.TotalTonnes!.Value), 6);
    }

    [Fact]
    public void Wheats_OfTheTerms_CarryEndWorthAndExtraction()
    {
        var wheat = Spec(Wednesday).Wheats.Single(w => w.Code == "B05");
        Assert.Equal((222, -1.5), (wheat.EndValuePerTonne, wheat.ExtractionPoints));
    }

    [Fact]
    public void Usual_OfAClass_StandsInForWhatWasNotRead()
    {
        IReadOnlyList<UsualTerms> usual = [new("HW", [new(Property.FallingNumber, 385, 25), new(Property.Protein, 12)])];
        var read = new SeasonWheat("B01", "HW", 100, 12, SeasonQuality.Unknown.With(Property.Protein, new SeasonValue(13.1, 0.1, Basis.At12)));
        var filled = UsualTerms.Fill(read, usual);
        Assert.Equal((13.1, 385), (filled.Quality.Values[Property.Protein].Value, filled.Quality.Values[Property.FallingNumber].Value));
        Assert.Equal(Property.FallingNumber, Assert.Single(UsualTerms.Missing(read, usual)).What);
        Assert.Same(read, UsualTerms.Fill(read, [new("HS", usual[0].Quality)]));
    }

    [Fact]
    public void Flour_InStore_OpensTheYear()
    {
        var flour = SpecFromTerms.Of(Terms, Wednesday, [], [], new Dictionary<string, double> { ["WB"] = 120 }).Flours[0];
        Assert.Equal((120, 120), (flour.OpeningTonnes, flour.StockMost)); // the store holds at least what lies in it
    }

    [Fact]
    public void Spec_AfterTheCropYear_IsRefused() =>
        Assert.Contains("ended on 2026-06-30", Assert.Throws<ArgumentException>(() => Spec(new(2026, 7, 1))).Message, StringComparison.Ordinal);

    [Fact]
    public void Json_ThereAndBack_IsTheSame()
    {
        Assert.True(SeasonTerms.TryRead(Terms.ToJson(), out var read, out var faults), string.Join(" ", faults));
        Assert.Equal(Terms.ToJson(), read!.ToJson());
    }

    [Theory]
    [InlineData("\"currency\": \"USD\"", "\"currency\": \"usd\"", "three capital letters")]
    [InlineData("\"tonnesPerWeek\": 700,", "\"tonnesPerWeek\": -1,", "0 t a week or more")]
    [InlineData("\"yield\": 0.7", "\"yield\": 1.2", "is at most 1")]
    [InlineData("\"least\": 13.1", "\"least\": 14", "least above its most")]
    [InlineData("\"unit\": \"A\"", "\"unit\": \"Z\"", "there is none of that code")]
    [InlineData("\"pricePerTonne\": 250", "\"pricePerTonne\": 300", "cheapest first")]
    [InlineData("\"end\": \"2026-06-30\"", "\"end\": \"soon\"", "A date is written like")]
    public void TryRead_WhatCannotBe_IsSaid(string part, string instead, string says)
    {
        var json = Terms.ToJson();
        Assert.Contains(part, json, StringComparison.Ordinal);
        Assert.False(SeasonTerms.TryRead(json.Replace(part, instead, StringComparison.Ordinal), out _, out var faults));
        Assert.Contains(faults, f => f.Contains(says, StringComparison.Ordinal));
    }
}
