using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Planning.Mix;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Tests.Mix;

/// <summary>Every way in which a question for a mix can end, but a mix.</summary>
public sealed class MixExitTests
{
    [Fact]
    public void Solve_LimitsThatClash_NamesTheFewestAndWhatWouldHaveToGive()
    {
        var spec = Mixes.Daily with { Limits = [Mixes.Least(Property.Protein, 14.3), Mixes.Least(Property.FallingNumber, 320), Mixes.Least(Property.TestWeight, 75), Mixes.Most(Property.Don, 0.45)], Bins = [.. Mixes.Daily.Bins.Select(b => b.Code == "B11" ? b with { MostShare = 0.3 } : b)], Habit = null };
        var clash = Assert.IsType<MixClash>(MixSolver.Solve(spec));
        Assert.Equal(2, clash.Clash.Count);
        Assert.Contains(clash.Clash, c => c.Contains("protein", StringComparison.Ordinal));
        Assert.Contains(clash.Clash, c => c.Contains("B11", StringComparison.Ordinal));
        // 30 % of 14.6 and the rest of 13.9: 14.11 is the most there is.
        var alone = Assert.Single(clash.Alone, r => r.What.Contains("protein", StringComparison.Ordinal));
        Assert.Contains("14.11 %", alone.To, StringComparison.Ordinal);
        Assert.Equal(1.9, alone.Steps, 6);
        Assert.Contains(clash.Alone, r => r.To == "left out");
        Assert.NotEmpty(clash.Together);
    }

    [Fact]
    public void Solve_Clash_EachMemberIsNeededAndRelaxingHelps()
    {
        var spec = Mixes.Daily with { Limits = [Mixes.Least(Property.Protein, 13.5), Mixes.Most(Property.Don, 0.105), Mixes.Least(Property.TestWeight, 80)], Habit = null };
        var clash = Assert.IsType<MixClash>(MixSolver.Solve(spec));
        foreach (var words in clash.Clash)
        {
            var others = spec with { Limits = [.. spec.Limits.Where(l => clash.Clash.Contains(l.Ends[0].Words) && l.Ends[0].Words != words)] };
            Assert.IsType<MixSolved>(MixSolver.Solve(others));
        }

        Assert.IsType<MixClash>(MixSolver.Solve(spec with { Limits = [.. spec.Limits.Where(l => clash.Clash.Contains(l.Ends[0].Words))] }));
        Assert.All(clash.Together, r => Assert.True(r.Steps > 0));
    }

    [Fact]
    public void Solve_StepsTooCoarse_SaysThatTheStepsClash()
    {
        var spec = Mixes.Daily with { Limits = [new MixLimit(Property.Protein) { Least = 13.19, Most = 13.21, Basis = Mixes.BasisOf(Property.Protein) }], Gates = new GateRules { StepPercent = 50 }, Habit = null };
        Assert.Contains(Assert.IsType<MixClash>(MixSolver.Solve(spec)).Clash, c => c.Contains("steps", StringComparison.Ordinal));
    }

    [Fact]
    public void Solve_TooFewGates_SaysSoAndHowManyWouldDo()
    {
        var spec = Mixes.Daily with { Limits = [.. Mixes.Daily.Limits], Bins = [.. Mixes.Daily.Bins.Select(b => b with { MostShare = 0.4 })], Gates = new GateRules { MostGates = 2 }, Habit = null };
        var clash = Assert.IsType<MixClash>(MixSolver.Solve(spec));
        Assert.Contains("at most 2 gates open", clash.Clash);
    }

    [Fact]
    public void Solve_Stopped_SaysSo()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.Contains("stopped", Assert.IsType<MixNotSolved>(MixSolver.Solve(Mixes.Daily, stop: stopped.Token)).Reason, StringComparison.Ordinal);
    }

    /// <summary>A hard question (19 bins, 15 ends, steps of 1 %) stopped at no gap, at a wide one, and at once: what was found, and why no more was looked for.</summary>
    [Theory]
    [InlineData(0.0, null, ExitReason.Optimal)]
    [InlineData(0.01, null, ExitReason.GapReached)]
    [InlineData(0.0, 0, ExitReason.TimeReached)]
    public void Best_HardQuestion_SaysWhyItStopped(double gap, int? seconds, ExitReason exit)
    {
        var spec = MadeMix.Of(10, new GateRules { StepPercent = 1 }, null);
        var found = new MixSearch(spec, new MixSearchOptions { RelativeGap = gap, Longest = seconds is { } s ? TimeSpan.FromSeconds(s) : null }).Best(gates: true);
        Assert.Equal(exit, found.Exit);
        Assert.Empty(MixCheck.Broken(spec, found.Shares));
        Assert.Equal(exit == ExitReason.Optimal, found.Gap == 0);
    }

    /// <summary>Every end is linear in the shares and the shares sum to one: no cost can fall without end. Numbers beyond all measure are what makes a solver fail; its answer is not shown.</summary>
    [Fact]
    public void Solve_NumbersBeyondMeasure_ShowsNoMix() =>
        Assert.Contains("is not shown", Assert.IsType<MixNotSolved>(MixSolver.Solve(Mixes.Daily with { Limits = [Mixes.Least(Property.Protein, double.MaxValue)] })).Reason, StringComparison.Ordinal);

    [Fact]
    public void Solve_EngineThatCannot_IsAFaultOfTheCaller() =>
        Assert.Throws<ArgumentException>(() => MixSolver.Solve(Mixes.Daily with { Gates = new GateRules { StepPercent = 1 } }, new MixSearchOptions { Engine = LinearEngine.Glop }));

    public static TheoryData<MixSpec, string> Bad => new()
    {
        { Mixes.Daily with { Bins = [] }, "No bin is offered" },
        { Mixes.Daily with { Limits = [new MixLimit(Property.Protein) { Least = 13.5, Most = 13, Basis = Mixes.BasisOf(Property.Protein) }] }, "cross" },
        { Mixes.Daily with { Limits = [Mixes.Least(Property.LiveWeevils, 0)] }, "no rule" },
        { Mixes.Daily with { Limits = [Mixes.Least((Property)999, 0)] }, "no property" },
        { Mixes.Daily with { RateTonnesPerHour = -17.5 }, "rate" },
        { Mixes.Daily with { RateTonnesPerHour = double.NaN }, "rate" },
        { Mixes.Daily with { Limits = [Mixes.Least(Property.Protein, double.NaN)] }, "cannot be NaN" },
        { Mixes.Daily with { Limits = [Mixes.Least(Property.Protein, 13, 0.4)] }, "50 %" },
        { Mixes.Daily with { Limits = [Mixes.Least(Property.Protein, 13, 1)] }, "confidence" },
        { Mixes.Daily with { Limits = [new MixLimit(Property.Protein) { Least = 13 }] }, "basis" },
        { Mixes.Daily with { Limits = [Mixes.Least(Property.Moisture, 10)] }, "B02 has no moisture" },
        { Mixes.Daily with { Limits = [Mixes.Least(Property.FallingNumber, 50)] }, "cannot be 50" },
        { Mixes.Daily with { Bins = [Mixes.Wheat("B02", 12, 45, 79, 0, 231)], Habit = null }, "cannot be blended" },
        { Mixes.Daily with { Bins = [.. Mixes.Daily.Bins, Mixes.Daily.Bins[0]] }, "offered 2 times" },
        { Mixes.Daily with { Bins = [Mixes.Daily.Bins[0] with { LeastShare = 0.5, MostShare = 0.2 }], Habit = null }, "from a least to a most" },
        { Mixes.Daily with { Bins = [Mixes.Daily.Bins[0] with { CostPerTonne = double.NaN }], Habit = null }, "no number" },
        { Mixes.Daily with { Gates = new GateRules { StepPercent = 0 } }, "above 0" },
        { Mixes.Daily with { Gates = new GateRules { StepPercent = 7 } }, "without a rest" },
        { Mixes.Daily with { Gates = new GateRules { StepTonnesPerHour = 0.5 } }, "need the rate" },
        { Mixes.Daily with { Habit = new Dictionary<string, double> { ["B02"] = 0.6 } }, "60 %" },
        { Mixes.Daily with { Limits = [new MixLimit(Property.Ash) { Most = 0.5, Basis = Mixes.BasisOf(Property.Ash), On = LimitOn.Flour }] }, "relation" },
    };

    [Theory]
    [MemberData(nameof(Bad), DisableDiscoveryEnumeration = true)]
    public void Solve_BadQuestion_NamesTheFault(MixSpec spec, string named) =>
        Assert.Contains(Assert.IsType<MixRefused>(MixSolver.Solve(spec)).Faults, f => f.Contains(named, StringComparison.Ordinal));

    [Fact]
    public void Solve_SeveralFaults_NamesThemAll()
    {
        var spec = Mixes.Daily with { RateTonnesPerHour = -1, Limits = [Mixes.Least(Property.Glass, 0), Mixes.Least(Property.Protein, double.PositiveInfinity)] };
        Assert.True(Assert.IsType<MixRefused>(MixSolver.Solve(spec)).Faults.Count >= 3);
    }

    [Fact]
    public void Solve_SproutedBin_IsWarnedOf()
    {
        var spec = new MixSpec { Bins = [Mixes.Wheat("B02", 12, 55, 79, 0, 231)], Limits = [Mixes.Least(Property.Protein, 11)] };
        Assert.Contains(Mixes.Solved(spec).Remarks, r => r.Contains("not to be trusted", StringComparison.Ordinal));
    }
}
