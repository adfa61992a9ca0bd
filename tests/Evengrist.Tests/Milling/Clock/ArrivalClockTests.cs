using Evengrist.Milling.Clock;

namespace Evengrist.Tests.Milling.Clock;

public sealed class ArrivalClockTests
{
    private static readonly ClockStage[] Way =
        [new("into the temper bin", 0.1, 0) { DelayUncertainty = 0.02 }, new("first break", 18, 3.4) { DelayUncertainty = 0.4, StirredUncertainty = 0.7 }, new("flour spout", 0.1, 0.1) { StirredUncertainty = 0.05 }, new("packer", 5, 1)];

    [Fact]
    public void Of_AWay_ArrivesLaterAtEachStageAndForEachShare()
    {
        var clock = ArrivalClock.Of(Way);
        Assert.Equal(Way.Select(s => s.Name), clock.Stages.Select(s => s.Name));
        Assert.All(clock.Stages, s => Assert.Equal(s.Arrivals.Select(a => a.Hours).Order(), s.Arrivals.Select(a => a.Hours)));
        Assert.All(Enumerable.Range(0, 3), share => Assert.Equal(clock.Stages.Select(s => s.Arrivals[share].Hours).Order(), clock.Stages.Select(s => s.Arrivals[share].Hours)));
        Assert.Equal(18.1 - (3.4 * Math.Log(0.5)), clock.Stages[1].Arrivals[1].Hours, 1e-6);
    }

    /// <summary>By hand: a dead time shifts every share; of one stirred tank the time of a share is −T ln(1 − share), so that its slope is −ln(1 − share).</summary>
    [Fact]
    public void Of_OneTank_HasTheUncertaintyReckonedByHand()
    {
        var arrivals = ArrivalClock.Of([new("bin", 18, 3.4) { DelayUncertainty = 0.4, StirredUncertainty = 0.7 }]).Stages[0].Arrivals;
        Assert.All(arrivals, a => Assert.Equal(Math.Sqrt(0.16 + Math.Pow(0.7 * Math.Log(1 - a.Share), 2)), a.StandardUncertainty, 1e-4));
    }

    /// <summary>Against drawing the stages 2000 times from normal spreads.</summary>
    [Fact]
    public void Of_AWay_HasTheSpreadOfManyDraws()
    {
        var random = new Random(3);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        double[] draws = [.. Enumerable.Range(0, 2000).Select(_ => new ArrivalCurve([.. Way.Select(s => s with { DelayHours = Math.Max(0, s.DelayHours + (s.DelayUncertainty * Normal())), StirredHours = Math.Max(0, s.StirredHours + (s.StirredUncertainty * Normal())) })]).When(0.95))];
        var stated = ArrivalClock.Of(Way).Stages[3].Arrivals[2];
        Assert.Equal(stated.Hours, draws.Average(), 0.2);
        Assert.Equal(stated.StandardUncertainty, Math.Sqrt(draws.Average(d => Math.Pow(d - draws.Average(), 2))), 0.12);
    }
}
