using Evengrist.Milling.Clock;

namespace Evengrist.Tests.Milling.Clock;

public sealed class StepFitTests
{
    private static readonly ClockStage Truth = new("truth", 18.3, 3.1);

    [Fact]
    public void Of_ReadingsWithoutError_FindsWhatWasPutIn()
    {
        var fitted = Assert.IsType<StepFitted>(StepFit.Of(Readings(Truth, 12, 10, 0, null)));
        Assert.Equal((18.3, 3.1), (Math.Round(fitted.Stage.DelayHours, 2), Math.Round(fitted.Stage.StirredHours, 2)));
        Assert.Equal((12, 10), (Math.Round(fitted.Before, 3), Math.Round(fitted.After, 3)));
        Assert.False(fitted.IsSharp);
    }

    /// <summary>Over 200 draws with the errors stated, about 95 of a hundred lie within ± (k = 2).</summary>
    [Fact]
    public void Of_ReadingsWithError_HoldsTheTruthWithinItsUncertainty()
    {
        var random = new Random(5);
        StepFitted[] fits = [.. Enumerable.Range(0, 200).Select(_ => Assert.IsType<StepFitted>(StepFit.Of(Readings(Truth, 12.4, 11.2, 0.12, random))))];
        Assert.InRange(fits.Count(f => Math.Abs(f.Stage.DelayHours - 18.3) <= 2 * f.Stage.DelayUncertainty) / 200.0, 0.9, 1);
        Assert.InRange(fits.Count(f => Math.Abs(f.Stage.StirredHours - 3.1) <= 2 * f.Stage.StirredUncertainty) / 200.0, 0.9, 1);
        Assert.Equal(1, fits.Average(f => f.Scatter), 0.05);
        Assert.InRange(fits.Average(f => f.Stage.DelayUncertainty), 0.2, 1.5);
    }

    [Fact]
    public void Of_ABeltAlone_SaysThatItIsSharp()
    {
        var fitted = Assert.IsType<StepFitted>(StepFit.Of(Readings(new("belt", 10.4, 0), 12, 10, 0.1, new Random(2))));
        Assert.True(fitted.IsSharp);
        Assert.InRange(10.4 - fitted.Stage.DelayHours - fitted.Stage.StirredHours, -2 * fitted.Stage.DelayUncertainty, 2 * fitted.Stage.DelayUncertainty);
    }

    [Fact]
    public void Of_TanksParted_FindsTheSameMeanTime()
    {
        var fitted = Assert.IsType<StepFitted>(StepFit.Of(Readings(Truth with { Tanks = 4 }, 12, 9, 0.05, new Random(4)), 4));
        Assert.Equal(Truth.DelayHours + Truth.StirredHours, fitted.Stage.DelayHours + fitted.Stage.StirredHours, 0.5);
    }

    [Fact]
    public void Of_ReadingsInAnyOrderAndShifted_IsTheSame()
    {
        var points = Readings(Truth, 12.4, 11, 0.12, new Random(9));
        var (one, other) = (Assert.IsType<StepFitted>(StepFit.Of(points)), Assert.IsType<StepFitted>(StepFit.Of([.. points.Reverse().Select(p => p with { Value = p.Value + 100 })])));
        Assert.Equal(one.Stage.DelayHours, other.Stage.DelayHours, 1e-3);
        Assert.Equal(one.Before + 100, other.Before, 1e-6);
    }

    [Fact]
    public void Of_ReadingsThatDoNotTell_AreRefusedWithTheReason()
    {
        string Refused(IReadOnlyList<StepPoint> points, int tanks = 1) => string.Join(' ', Assert.IsType<StepNotFitted>(StepFit.Of(points, tanks)).Reasons);
        Assert.Contains("at least 8", Refused([.. Readings(Truth, 12, 10, 0, null).Take(5)]), StringComparison.Ordinal);
        Assert.Contains("No step stands out", Refused(Readings(Truth, 12, 12.02, 0.12, new Random(1))), StringComparison.Ordinal);
        Assert.Contains("not whole within the readings", Refused([.. Readings(Truth, 12, 10, 0.05, new Random(1)).Where(p => p.Hours < 20)]), StringComparison.Ordinal);
        Assert.Contains("an uncertainty above 0", Refused([.. Readings(Truth, 12, 10, 0, null).Select(p => p with { StandardUncertainty = 0 })]), StringComparison.Ordinal);
        Assert.Contains("some after it", Refused([.. Readings(Truth, 12, 10, 0, null).Select(p => p with { Hours = p.Hours - 200 })]), StringComparison.Ordinal);
        Assert.Contains("1 to 20 tanks", Refused(Readings(Truth, 12, 10, 0, null), 0), StringComparison.Ordinal);
    }

    // A reading an hour from 12 h before the change to 48 h after it.
    private static StepPoint[] Readings(ClockStage way, double before, double after, double error, Random? random)
    {
        double Normal() => random is null ? 0 : Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var curve = new ArrivalCurve([way]);
        return [.. Enumerable.Range(-12, 61).Select(h => new StepPoint(h + 0.5, before + ((after - before) * curve.At(h + 0.5)) + (error * Normal()), error > 0 ? error : 0.01))];
    }
}
