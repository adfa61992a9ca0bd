using CsCheck;
using Evengrist.Milling.Clock;
using MathNet.Numerics.Distributions;

namespace Evengrist.Tests.Milling.Clock;

public sealed class ArrivalCurveTests
{
    private static readonly Gen<ClockStage[]> Any = Gen.Select(Gen.Double[0, 5], Gen.Double[0, 8], Gen.Int[1, 6]).Select((delay, stirred, tanks) => new ClockStage("stage", delay, stirred) { Tanks = tanks }).Array[1, 5];

    /// <summary>Textbooks of reaction engineering: one stirred tank gives 1 − e^(−t/T) [from memory], by hand 63.212 % after one mean time.</summary>
    [Fact]
    public void At_OneTank_IsTheExponential()
    {
        var curve = new ArrivalCurve([new("tank", 2, 4)]);
        Assert.Equal(0, curve.At(2));
        Assert.Equal(0.632120558829, curve.At(6), 1e-11);
        Assert.Equal(2 + (4 * Math.Log(2)), curve.When(0.5), 1e-8);
    }

    /// <summary>Tanks of one size are an Erlang distribution: against the gamma distribution of another library.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(20)]
    public void At_TanksOfOneSize_IsTheErlangDistribution(int tanks)
    {
        var curve = new ArrivalCurve([new("tanks", 0, 3) { Tanks = tanks }]);
        Assert.All(Enumerable.Range(1, 40).Select(i => 0.25 * i), t => Assert.Equal(Gamma.CDF(tanks, tanks / 3.0, t), curve.At(t), 1e-9));
    }

    /// <summary>Two tanks of other sizes, in closed form: 1 − (T₁e^(−t/T₁) − T₂e^(−t/T₂))/(T₁ − T₂).</summary>
    [Fact]
    public void At_TwoTanks_IsTheClosedForm() => Gen.Select(Gen.Double[0.2, 3], Gen.Double[3.5, 9], Gen.Double[0, 40]).Sample((one, two, t) =>
        Math.Abs(new ArrivalCurve([new("a", 0, one), new("b", 0, two)]).At(t) - (1 - (((one * Math.Exp(-t / one)) - (two * Math.Exp(-t / two))) / (one - two)))) < 1e-9);

    [Fact]
    public void At_AnyWay_RisesFromNothingToAll() => Any.Sample(stages =>
    {
        var curve = new ArrivalCurve(stages);
        double[] at = [.. Enumerable.Range(0, 60).Select(i => curve.At(i * 0.1 * (curve.MeanHours + 1)))];
        return at[0] is >= 0 and <= 1 && at.Zip(at.Skip(1)).All(p => p.Second >= p.First - 1e-12) && at[^1] <= 1 && curve.At(200 * (curve.MeanHours + 1)) > 1 - 1e-9;
    });

    /// <summary>What went in comes out: the area over the curve is the mean time on the way.</summary>
    [Fact]
    public void At_AnyWay_HasItsMeanTime() => Any.Sample(stages =>
    {
        var curve = new ArrivalCurve(stages);
        var (end, n) = (curve.DelayHours + (25 * (curve.MeanHours - curve.DelayHours)) + 1, 4000);
        var area = curve.DelayHours + (Enumerable.Range(0, n).Sum(i => 1 - curve.At(curve.DelayHours + ((i + 0.5) * (end - curve.DelayHours) / n))) * (end - curve.DelayHours) / n);
        Assert.Equal(curve.MeanHours, area, 2e-3 * (1 + curve.MeanHours));
    }, iter: 25);

    [Fact]
    public void At_StagesInAnyOrder_IsTheSame() => Gen.Select(Any, Gen.Double[0, 60]).Sample((stages, t) =>
        Math.Abs(new ArrivalCurve(stages).At(t) - new ArrivalCurve([.. stages.Reverse()]).At(t)) < 1e-9);

    [Fact]
    public void When_OfAt_IsTheTime() => Gen.Select(Any, Gen.Double[0.01, 0.99]).Sample((stages, share) =>
    {
        var curve = new ArrivalCurve(stages);
        return curve.MeanHours - curve.DelayHours < 1e-3 || Math.Abs(curve.At(curve.When(share)) - share) < 1e-6;
    });

    /// <summary>Nothing stirred is a pure dead time; ever more tanks come near it: the spread of n tanks is T/√n.</summary>
    [Fact]
    public void At_NothingStirred_IsAStep()
    {
        var pure = new ArrivalCurve([new("belt", 3, 0), new("belt", 1, 0)]);
        Assert.Equal([0, 1, 1], new[] { 3.999, 4.0, 9 }.Select(pure.At));
        Assert.Equal(4, pure.When(0.95));
        double Width(int tanks) => new ArrivalCurve([new("tanks", 0, 4) { Tanks = tanks }]) is var curve ? curve.When(0.95) - curve.When(0.05) : 0;
        Assert.Equal(4 * (Normal.InvCDF(0, 1, 0.95) - Normal.InvCDF(0, 1, 0.05)) / Math.Sqrt(20), Width(20), 0.05);
        Assert.True(Width(1) > Width(5) && Width(5) > Width(20));
    }

    /// <summary>A tank tiny beside the rest may stand for a dead time: nothing that matters changes, and a wide range of sizes is answered.</summary>
    [Fact]
    public void At_ATinyTank_HardlyMatters()
    {
        var (with, without) = (new ArrivalCurve([new("a", 0, 10), new("b", 0, 1e-6)]), new ArrivalCurve([new("a", 0, 10)]));
        Assert.Equal(without.At(7), with.At(7), 1e-6);
        Assert.InRange(new ArrivalCurve([new("a", 0, 900), new("b", 0, 1)]).When(0.95), 2690, 2710); // 900·ln 20 + 1
    }

    [Fact]
    public void Faults_OfStagesThatCannotBe_NameEach()
    {
        Assert.Equal(5, ClockStage.Faults([new(" ", -1, 1001) { Tanks = 0, DelayUncertainty = double.NaN }]).Count);
        Assert.Single(ClockStage.Faults([]));
        Assert.Throws<ArgumentException>(() => new ArrivalCurve([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ArrivalCurve([new("a", 1, 1)]).When(1));
    }
}
