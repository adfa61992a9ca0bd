using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.Futures;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Tests.Season.Terms;

/// <summary>What a promise is reckoned from, out of terms. Values are counted by hand.</summary>
public sealed class FuturesFromTermsTests
{
    private static readonly LocalDate Monday = new(2026, 1, 12);

    private static SeasonTerms Terms { get; } = new()
    {
        End = new(2026, 3, 1),
        Currency = "USD",
        Units = [new("A", 17.5, 24)],
        Flours = [new("WB", "White bread", "A", 700, 0.7, 900) { YearShare = 0.02, WeekShare = 0.05, Hold = 0.4, StockLeast = 300, StockMost = 500, Limits = [new(Property.Protein, 60) { Least = 13.1, Basis = Basis.At12 }] }],
        Arrivals =
        [
            new("North red", "North", "HW", Monday, Monday.PlusDays(13), 3000, 300, 12, [new(Property.Protein, 12, 0.1) { TruckSpread = 0.6, YearSpread = 0.3, Basis = Basis.At12 }, new(Property.Ash, 1.6) { TruckSpread = 0.1 }]) { TruckTonnes = 24, WeekShare = 0.2 },
            new("North white", "North", "HWW", Monday, Monday.PlusDays(13), 1000, 200, 12, [new(Property.Protein, 13, 0.1) { YearSpread = 0.1, Basis = Basis.At12 }]),
            new("Gone", "South", "HW", Monday.PlusDays(-20), Monday.PlusDays(-1), 500, 50, 12, []),
        ],
        Instruments = [new(Property.Protein, 0.06, 0.05), new(Property.Ash, 0.02, 0.02)],
        Tolerances = [new(Property.Protein, 0.2), new(Property.Don, 0.1)],
        Stated = 0.9,
    };

    private static FuturesSpec Asked(SeasonTerms terms) => FuturesFromTerms.Of(
        new SeasonPlan(SpecFromTerms.Of(terms, Monday, [], [], new Dictionary<string, double> { ["WB"] = 120 }), "")
        {
            Uses = [], Purchases = [], Stocks = [], Flours = [], Misses = [], Reliefs = [], Costs = new SeasonCosts(0, 0, 0, 0, 0, 0, 0), Bound = 0, Exit = SeasonExit.Optimal, Took = TimeSpan.Zero, IsMillable = false,
            Duals = new SeasonDuals([], [], [], [], []),
        },
        terms, 100, 7);

    [Fact]
    public void Spreads_OfTerms_AreThoseThatBearOnThePlan()
    {
        var asked = Asked(Terms);
        Assert.Empty(FuturesFaults.Of(asked));
        var north = Assert.Single(asked.Districts);
        Assert.Equal(("North", 0.125), (north.District, north.TonnesShare)); // 500 t of 4,000
        Assert.Equal(new PropertySpread(Property.Protein, 0.25), Assert.Single(north.Quality)); // (3·0.3 + 0.1)/4
        var trucks = Assert.Single(asked.Trucks);
        Assert.Equal(("North red", 24, 0.6), (trucks.Wheat, trucks.TruckTonnes, Assert.Single(trucks.Quality).Spread));
        Assert.Equal(new DemandSpread("WB", 0.02, 0.05) { Hold = 0.4 }, Assert.Single(asked.Demands));
        Assert.Equal((Property.Protein, Property.Protein, 0.9), (Assert.Single(asked.Instruments).What, Assert.Single(asked.Tolerances).What, asked.Stated));
    }

    [Theory]
    [InlineData(24, 0.60828)] // √(0.1² + 0.6²)
    [InlineData(5, 0.60828)] // less than a truck is one
    [InlineData(216, 0.22361)] // √(0.1² + 0.6²/9)
    [InlineData(1e9, 0.1)]
    public void Lot_OfFewTrucks_LiesFurtherOff(double tonnes, double expected) => Assert.Equal(expected, new TruckSpread("W", 24).Of(0.1, 0.6, tonnes), 5);

    [Fact]
    public void Tonnes_OfADay_DifferMoreForTheirSizeThanThoseOfAWeek()
    {
        var wheats = SpecFromTerms.Of(Terms, Monday, [], [], days: 7).Wheats;
        var (day, week) = (wheats[0].Deliveries[0], wheats[0].Deliveries[^1]);
        Assert.Equal((3000.0 / 14, 1500), (day.Tonnes, week.Tonnes));
        Assert.Equal(Math.Sqrt((300.0 * 300 / 7) + (24.0 * 24 / 12)), day.TonnesSpread, 9);
        Assert.Equal(Math.Sqrt((300.0 * 300) + (24.0 * 24 / 12)), week.TonnesSpread, 9);
        Assert.All(wheats[1].Deliveries, d => Assert.Equal(0, d.TonnesSpread));
    }

    [Fact]
    public void FlourToStay_IsNoMoreThanLiesThereAtTheStart() => Assert.Equal(120, Asked(Terms).Plan.Spec.Flours[0].StockLeast);

    [Fact]
    public void Faults_OfSpreadsThatCannotBe_AreSentences()
    {
        string[] Said(SeasonTerms terms) => [.. terms.Faults()];
        Assert.Empty(Said(Terms));
        var north = Terms.Arrivals[0];
        Assert.Contains("Arrival North red: a spread of quality is 0 or more.", Said(Terms with { Arrivals = [north with { Quality = [new(Property.Protein, 12) { TruckSpread = -0.1 }] }] }));
        Assert.Contains("Arrival North red says how far trucks differ; say too what a truck usually carries, in t.", Said(Terms with { Arrivals = [north with { TruckTonnes = 0 }] }));
        Assert.Contains("A promise is stated at a probability above 0 and below 1, such as 0.85.", Said(Terms with { Stated = 85 }));
        Assert.Contains("What is left of a busy week of WB a week later lies from 0 to below 1.", Said(Terms with { Flours = [Terms.Flours[0] with { Hold = 1 }] }));
        Assert.Contains("The demand for WB differs by a share of 0 or more.", Said(Terms with { Flours = [Terms.Flours[0] with { WeekShare = double.NaN }] }));
        Assert.Contains("The least of WB in store is 0 t or more, and not above the most.", Said(Terms with { Flours = [Terms.Flours[0] with { StockLeast = 600 }] }));
        Assert.Contains("Errors of readings are 0 or more.", Said(Terms with { Instruments = [new(Property.Protein, -1, 0)] }));
        Assert.Contains("The tolerance of a property is given once.", Said(Terms with { Tolerances = [new(Property.Protein, 0.1), new(Property.Protein, 0.2)] }));
    }
}
