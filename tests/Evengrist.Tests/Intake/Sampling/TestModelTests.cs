using CsCheck;
using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Tests.Intake.Sampling;

public sealed class TestModelTests
{
    private static readonly TestSpec Falling = new(new LoadPrior(PriorScale.Liquefaction, 26, 6), 300, 26) { WrongBinPerTonne = 12, DivertedGoodPerTonne = 6, RelativeError = 0.05 };

    private static readonly TestSpec Toxin = new(new LoadPrior(PriorScale.Lognormal, 0.7, 0.5), 1, 26) { WrongBinPerTonne = 15, Claim = 200, DivertedGoodPerTonne = 5 };

    // Derived: an independent two-dimensional integration that decides by Bayes at every reading (1,500 × 1,200 cells). One level cannot beat it.
    [Theory]
    [InlineData(0, 0.63056, 57.6328, 43.247)]
    [InlineData(4, 0.63056, 57.6328, 107.419)]
    public void Ask_FallingNumber_AgreesWithAnIndependentIntegration(double discount, double bad, double untested, double value)
    {
        var outcome = TestModel.Ask(Falling with { DiscountPerTonne = discount });
        Assert.Equal(bad, outcome.ChanceBad, 4);
        Assert.Equal(untested, outcome.LossUntested, 0.02);
        Assert.InRange(outcome.Value, value - 0.25, value + 0.02);
        Assert.False(outcome.AcceptUntested);
    }

    [Fact]
    public void Ask_Toxin_AgreesWithAnIndependentIntegration()
    {
        var outcome = TestModel.Ask(Toxin);
        Assert.Equal(0.19037, outcome.ChanceBad, 4);
        Assert.Equal(105.252, outcome.LossUntested, 0.05);
        Assert.InRange(outcome.Value, 73.606 - 0.4, 73.606 + 0.05);
    }

    // Closed form: knowing is worth min(p·a, (1−p)·d), and a test without error is worth as much.
    [Fact]
    public void Ask_TestWithoutError_IsWorthKnowing()
    {
        var outcome = TestModel.Ask(Falling with { RelativeError = 1e-5 });
        var p = 0.6305587;
        Assert.Equal(Math.Min(p * 26 * 12, (1 - p) * 26 * 6), outcome.ValueOfKnowing, 3);
        Assert.Equal(outcome.ValueOfKnowing, outcome.Value, 0.05);
        Assert.Equal(300, outcome.AcceptAt!.Value, 1.5);
    }

    [Fact]
    public void Ask_QueueTooDear_GoesWithoutAndSaysWhereItTurns()
    {
        var outcome = Assert.IsType<TestNow>(TestModel.Ask(Falling with { Minutes = 8, CostPerMinute = 1.33, TrucksWaiting = 2, OwnCost = 4 }));
        Assert.Equal(8 * 1.33 * 2, outcome.QueueCost, 9);
        Assert.Equal(outcome.Value - outcome.QueueCost - 4, outcome.Net, 9);
        var turns = outcome.TurnsAtTrucks!.Value;
        Assert.InRange(turns, 3, 4);
        Assert.IsType<GoWithout>(TestModel.Ask(Falling with { Minutes = 8, CostPerMinute = 1.33, TrucksWaiting = (int)Math.Ceiling(turns), OwnCost = 4 }));
    }

    [Fact]
    public void Ask_NobodyDoubts_IsWorthNothing()
    {
        var outcome = Assert.IsType<GoWithout>(TestModel.Ask(Falling with { Prior = new LoadPrior(PriorScale.Liquefaction, 17, 1) }));
        Assert.True(outcome.AcceptUntested && outcome.ChanceBad < 1e-9 && outcome.Value < 1e-6);
    }

    [Fact]
    public void Ask_Law_WorthBetweenNothingAndKnowingAndFallsWithTheError() =>
        Gen.Select(Gen.Double[14, 40], Gen.Double[1, 12], Gen.Double[0, 30], Gen.Double[0, 30], Gen.Double[0, 10], Gen.Double[0.01, 0.2]).Sample((mean, sd, wrong, diverted, discount, error) =>
        {
            var spec = Falling with { Prior = new LoadPrior(PriorScale.Liquefaction, mean, sd), WrongBinPerTonne = wrong, DivertedGoodPerTonne = diverted, DiscountPerTonne = discount, RelativeError = error };
            var outcome = TestModel.Ask(spec);
            Assert.InRange(outcome.Value, 0, outcome.ValueOfKnowing + 1e-9);
            Assert.InRange(outcome.ChanceBad, 0, 1);
            Assert.True(TestModel.Ask(spec with { RelativeError = error * 2 }).Value <= outcome.Value + 0.02 * (1 + outcome.Value));
            Assert.Equal(outcome, TestModel.Ask(spec));
        }, iter: 60);

    [Fact]
    public void Ask_WhatCannotBe_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => TestModel.Ask(Falling with { Limit = 50 }));
        Assert.Throws<ArgumentException>(() => TestModel.Ask(Falling with { Tonnes = 0 }));
        Assert.Throws<ArgumentException>(() => TestModel.Ask(Falling with { TrucksWaiting = 0 }));
        Assert.Throws<ArgumentException>(() => TestModel.Ask(Falling with { Claim = -1 }));
        Assert.Throws<ArgumentException>(() => TestModel.Ask(Falling with { Prior = new LoadPrior(PriorScale.None, 1, 1) }));
    }

    // By hand: 350 s is 20, 250 s is 30, 290 s is 25 on the liquefaction number; five loads 20, 20, 25, 30, 30 have mean 25 and variance 25.
    [Fact]
    public void Prior_FallingNumbers_TakesTheTestErrorOut()
    {
        var plain = Assert.IsType<PriorFound>(PriorModel.FromFallingNumbers([(350m, 0), (350m, 0), (290m, 0), (250m, 0), (250m, 0)]));
        Assert.Equal(25, plain.Prior.Mean, 9);
        Assert.Equal(Math.Sqrt(25 + 5), plain.Prior.StandardDeviation, 9);
        var tested = Assert.IsType<PriorFound>(PriorModel.FromFallingNumbers([(350m, 15m), (350m, 15m), (290m, 12m), (250m, 10m), (250m, 10m)]));
        Assert.Equal((1.0 + 1 + 1.25 * 1.25 + 1.5 * 1.5 * 2) / 5, tested.TestError * tested.TestError, 6);
        Assert.True(tested.Prior.StandardDeviation < plain.Prior.StandardDeviation);
    }

    [Fact]
    public void Prior_FewLoads_SaysSo()
    {
        Assert.Equal(new TooFewLoads(4, PriorModel.LeastLoads), PriorModel.FromConcentrations([(0.1m, 0), (0.2m, 0), (0.3m, 0), (0m, 0)]));
        Assert.IsType<TooFewLoads>(PriorModel.FromConcentrations([.. Enumerable.Repeat((0m, 0m), 9)]));
        var found = Assert.IsType<PriorFound>(PriorModel.FromConcentrations([(0m, 0), (0.2m, 0), (0.3m, 0), (0.1m, 0), (0.9m, 0.1m)]));
        Assert.Equal((PriorScale.Lognormal, 0.3, 5), (found.Prior.Scale, Math.Round(found.Prior.Mean, 9), found.Prior.Loads));
    }

    [Fact]
    public void Costs_ThroughJson_AreTheSameAndFaultsAreNamed()
    {
        var costs = new TestCosts
        {
            Currency = "USD", CostPerMinute = 1.33, Source = "posed",
            Tests = [new TestCost(Property.FallingNumber, default, 300, 8, 4) { WrongBinPerTonne = 12 }, new TestCost(Property.Don, Basis.At12, 1, 12, 9)],
        };
        Assert.True(TestCosts.TryRead(costs.ToJson(), out var read, out var faults), string.Join(" ", faults));
        Assert.Equal(costs.ToJson(), read.ToJson());
        Assert.False(TestCosts.TryRead(costs.ToJson().Replace("12mb", "none", StringComparison.Ordinal), out _, out faults));
        Assert.Contains("needs a basis", faults.Single(), StringComparison.Ordinal);
        Assert.False(TestCosts.TryRead("{}", out _, out faults));
    }
}
