using Evengrist.Ledger;
using Evengrist.Planning.Season;
using Evengrist.Season;

namespace Evengrist.Planning.Tests.Season;

/// <summary>What comes of seasons that cannot be, and of small ones reckoned by hand.</summary>
public sealed class SeasonExitTests
{
    private static readonly SeasonSpec Good = Years.Weeks(4, 12.5, Years.Wheat("S", 300, 14) with { Home = "B1" }, Years.Wheat("W", 300, 11)) with { Homes = [new("B1", 500)] };

    [Fact]
    public void Linear_TwoWheats_MixesAsTheSquareSays()
    {
        // Half of 14 % and half of 11 % is 12.5 %: 200 t of each over four weeks of 100 t [derived].
        var plan = Years.Linear(Good with { Wheats = [Good.Wheats[0] with { EndValuePerTonne = 50 }, Good.Wheats[1]] });
        Assert.True(plan.IsOnSpec);
        Assert.Equal(200, plan.Uses.Where(u => u.Wheat == "S").Sum(u => u.Tonnes), 1e-6);
        Assert.Equal(200, plan.Uses.Where(u => u.Wheat == "W").Sum(u => u.Tonnes), 1e-6);
        Assert.Null(SeasonCoverModel.Of(plan).Single().StarveDate);
    }

    [Fact]
    public void Linear_TooLittleStrongWheat_NamesTheMissByFlourPeriodAndProperty()
    {
        // 150 t of strong wheat mix 300 t; the fourth week is all weak wheat, 1.5 points below [derived].
        var plan = Years.Linear(Good with { Wheats = [Years.Wheat("S", 150, 14), Years.Wheat("W", 500, 11)] });
        Assert.False(plan.IsOnSpec);
        var miss = Assert.Single(plan.Misses);
        Assert.Equal(("WB", 3, Property.Protein, true), (miss.Flour, miss.Period, miss.What, miss.IsBelow));
        Assert.Equal(1.5, miss.Amount, 1e-6);
        Assert.Equal(100, miss.Tonnes, 1e-6);
        Assert.Equal(1.5 * 100 * 400 * (1 - SeasonPrices.Fall), miss.Cost, 1e-3);
        Assert.Equal(Years.Start.PlusWeeks(3), SeasonCoverModel.Of(plan).Single().StarveDate);
    }

    [Fact]
    public void Linear_Relief_IsBoughtBeforeAMiss()
    {
        var limit = Years.ProteinLeast(12.5) with { Relief = [new(0.5, 5)] };
        var spec = Good with { Wheats = [Years.Wheat("S", 150, 14), Years.Wheat("W", 500, 11)], Flours = [Good.Flours[0] with { Limits = [limit] }] };
        var plan = Years.Linear(spec);
        // Short by 0.5·300 points·t in all (mean 12.125 of 400 t against 12.5): 150 points·t of relief at 5/0.5 money each [derived].
        Assert.Empty(plan.Misses);
        Assert.False(plan.IsOnSpec);
        Assert.Equal(150 * 10, plan.Costs.Relief, 1e-3);
    }

    [Fact]
    public void Linear_CarryOutAboveStock_IsInfeasibleAndSaysByHowMuch()
    {
        var clash = Assert.IsType<SeasonInfeasible>(SeasonPlanner.Linear(Good with { CarryOut = [new("HW", 700), new("", 100)] }));
        Assert.Equal(["at least 700 t of HW left at the end"], clash.Clash);
        Assert.Equal(["at least 700 t of HW left at the end: short by 100"], clash.Ways);
    }

    [Fact]
    public void Linear_TwoChoicesThatClash_NamesBothAndNothingElse()
    {
        SeasonChoice[] choices = [new UseChoice("S", "WB", 0, 60, 200), new UseChoice("W", "WB", 0, 50, 200), new UseChoice("W", "WB", 1, 10, 200)];
        var clash = Assert.IsType<SeasonInfeasible>(SeasonPlanner.Linear(Good with { Choices = choices }));
        Assert.Equal(["50 to 200 t of W into WB, from 2025-09-15", "60 to 200 t of S into WB, from 2025-09-15"], clash.Clash.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Linear_DeliveriesAboveABin_NamesTheBin()
    {
        var full = Good with { Wheats = [Good.Wheats[0] with { Deliveries = [new(0, 400)] }, Good.Wheats[1]] };
        Assert.Equal(["no more than 500 t in B1"], Assert.IsType<SeasonInfeasible>(SeasonPlanner.Linear(full)).Clash);
    }

    [Fact]
    public void Linear_EndValueThatGrowsWithoutEnd_IsUnbounded()
    {
        // Cheaper than its end value, without limit, in a bin whose room is not the bound the fault check looks at.
        var offer = new SeasonOffer(Years.Wheat("P", 0, 13) with { EndValuePerTonne = 300 }, [new(double.PositiveInfinity, 200)], 0, 3);
        var fault = Assert.Single(Assert.IsType<SeasonBadInput>(SeasonPlanner.Linear(Good with { Offers = [offer] })).Faults);
        Assert.Equal("offer P", fault.Where);
        Assert.Contains("without end", fault.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Linear_PaidToTakeWheatWithoutLimit_NamesTheOffer()
    {
        var offer = new SeasonOffer(Years.Wheat("P", 0, 13), [new(double.PositiveInfinity, -10)], 0, 3);
        Assert.Equal("offer P", Assert.Single(Assert.IsType<SeasonBadInput>(SeasonPlanner.Linear(Good with { Offers = [offer] })).Faults).Where);
    }

    /// <summary>No fault by the rules, but no engine reckons with it: said to be the solver's failure, with the number to look at.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Plan_NumberBeyondMeasure_IsASolverFailureThatNamesIt(bool millable)
    {
        var spec = Good with { Wheats = [Good.Wheats[0], Good.Wheats[1] with { OpeningTonnes = 1e300 }] };
        var failed = Assert.IsType<SeasonFailed>(millable ? SeasonPlanner.Millable(spec) : SeasonPlanner.Linear(spec));
        Assert.Equal(SeasonExit.SolverFailed, failed.Exit);
        Assert.Contains("1E+300 (wheat.W.0)", failed.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Linear_Stopped_SaysSo()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Equal(SeasonExit.Cancelled, Assert.IsType<SeasonFailed>(SeasonPlanner.Linear(Good, stop: stop.Token)).Exit);
    }

    [Fact]
    public void Linear_Layers_LeaveInTheirOrderAndTheDifferenceIsSaid()
    {
        // 100 t of 14 % lie under 100 t of 12 %: two weeks at 13 % from the first need none of the weak wheat's partner later [derived].
        var spec = Years.Weeks(2, 12, new SeasonWheat("L", "HW", 200, 12, Years.Protein(13)) { Layers = [new(100, 12, Years.Protein(14)), new(100, 12, Years.Protein(12))] });
        var plan = Years.Linear(spec);
        Assert.True(plan.IsOnSpec);
        Assert.InRange(plan.LayerDifference, 0, 0.005);
        Assert.Equal([14.0, 12.0], plan.Qualities.OrderBy(q => q.Period).Select(q => Math.Round(q.Quality.Values[Property.Protein].Value, 6)));
    }
}
