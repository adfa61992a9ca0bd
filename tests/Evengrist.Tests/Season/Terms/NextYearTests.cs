using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Tests.Season.Terms;

/// <summary>The crop year after that of the terms.</summary>
public sealed class NextYearTests
{
    private static SeasonTerms Terms { get; } = new()
    {
        End = new(2024, 6, 30),
        Currency = "USD",
        Units = [new("A", 17.5, 24) { Closed = [new(2024, 2, 29)] }],
        Flours = [new("WB", "White bread", "A", 700, 0.7, 900) { Peaks = [new(new(2023, 10, 20), new(2023, 12, 6), 1400)] }],
        Offers = [new("E1", "HW", new(2023, 7, 21), new(2024, 6, 30), 12, [new(Property.Protein, 13.6) { Basis = Basis.At12 }], [new(700, 250)])],
        Arrivals = [new("Rim", "Scarrow Rim", "HW", new(2023, 7, 12), new(2023, 7, 26), 600, 90, 10, [new(Property.Protein, 14, 0.8) { Basis = Basis.At12 }])],
    };

    [Fact]
    public void Of_Terms_HasEveryDateAYearLaterAndNothingElseChanged()
    {
        var next = NextYear.Of(Terms);
        Assert.Empty(next.Faults());
        Assert.Equal(new LocalDate(2025, 6, 30), next.End);
        Assert.Equal(new LocalDate(2025, 2, 28), next.Units[0].Closed[0]); // there is no 29 February
        Assert.Equal((new LocalDate(2024, 10, 20), new LocalDate(2024, 12, 6), 1400), (next.Flours[0].Peaks[0].From, next.Flours[0].Peaks[0].To, next.Flours[0].Peaks[0].TonnesPerWeek));
        Assert.Equal((new LocalDate(2024, 7, 21), new LocalDate(2025, 6, 30)), (next.Offers[0].First, next.Offers[0].Last));
        Assert.Equal((new LocalDate(2024, 7, 12), new LocalDate(2024, 7, 26), 600), (next.Arrivals[0].First, next.Arrivals[0].Last, next.Arrivals[0].Tonnes));
    }

    [Fact]
    public void Stocks_OfAPlan_AreWhatItLeaves()
    {
        var spec = SpecFromTerms.Of(Terms, new(2024, 6, 29), [new SeasonWheat("B05", "HW", 6900, 12, SeasonQuality.Unknown) { Home = "B05", Layers = [new(6900, 12, SeasonQuality.Unknown)] }], [new SeasonHome("B05", 10_000)]);
        var plan = new SeasonPlan(spec, "")
        {
            Uses = [], Purchases = [], Flours = [], Misses = [], Reliefs = [], Costs = new SeasonCosts(0, 0, 0, 0, 0, 0, 0), Bound = 0, Exit = SeasonExit.Optimal, Took = TimeSpan.Zero, IsMillable = false,
            Stocks = [new("B05", 0, 6800), new("B05", 1, 6700), new("E1", 1, 40), new("E1", 0, 90)],
        };
        var stocks = NextYear.Stocks(plan);
        Assert.Equal([("B05", 6700, "B05"), ("E1, old crop", 40, "")], stocks.Select(s => (s.Code, s.OpeningTonnes, s.Home)));
        Assert.All(stocks, s => Assert.Empty(s.Layers));
    }
}
