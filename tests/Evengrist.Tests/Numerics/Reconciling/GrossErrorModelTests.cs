using CsCheck;
using Evengrist.Numerics.Reconciling;

namespace Evengrist.Tests.Numerics.Reconciling;

public sealed class GrossErrorModelTests
{
    [Fact]
    public void Of_SetWithGrossError_NamesTheFirstStream()
    {
        var named = Assert.IsType<GrossErrorsNamed>(GrossErrorModel.Of(Networks.WithGrossError));
        Assert.Equal(35.2327, named.Before.Squares, 1e-4);
        Assert.Equal([101.3391, 42.5291, 80.9000, 29.8256, 110.7256, 20.4390, 58.8099, 38.3709], named.Before.Values.Select(v => Math.Round(v.Value, 4)));
        var suspect = Assert.Single(named.Suspects);
        Assert.Equal(("1", 5.673), (suspect.Name, Math.Round(suspect.Z, 3)));
        Assert.Empty(suspect.Alike);
        // Without it, J falls by z² (an identity of least squares) and the rest go together.
        Assert.Equal(35.2327 - (suspect.Z * suspect.Z), named.Rest.Squares, 1e-3);
    }

    [Fact]
    public void Of_Bypass_HasNone() => Assert.IsType<NoGrossError>(GrossErrorModel.Of(Networks.Bypass));

    [Fact]
    public void Of_Column_NamesAFlow()
    {
        var named = Assert.IsType<GrossErrorsNamed>(GrossErrorModel.Of(Networks.Column));
        Assert.StartsWith("F", named.Suspects[0].Name, StringComparison.Ordinal);
    }

    /// <summary>Of two meters on one flow nothing tells which is wrong.</summary>
    [Fact]
    public void Of_TwoMetersThatDisagree_SaysThatEitherMayBeWrong()
    {
        var named = Assert.IsType<GrossErrorsNamed>(GrossErrorModel.Of(Networks.Linear([10, 20], [1, 1], [1, -1])));
        var suspect = Assert.Single(named.Suspects);
        Assert.Equal(["1", "2"], new[] { suspect.Name }.Concat(suspect.Alike).Order());
        Assert.IsType<NothingToAdjust>(named.Rest);
        Assert.Equal((10, Math.Sqrt(2)), (Math.Abs(suspect.Bias!.Value), suspect.BiasUncertainty!.Value));
    }

    /// <summary>A shift of one meter in the network is found at that meter with its size; drawn from no error otherwise.</summary>
    [Fact]
    public void Of_OneShiftedMeter_NamesItWithItsSize() => Gen.Select(Gen.Double[8, 50], Gen.Bool).Sample((size, isUp) =>
    {
        double[] truth = [100, 65, 35, 20, 15, 100];
        var shifted = truth.Select((v, i) => i == 2 ? v + (isUp ? size : -size) : v).ToArray();
        var named = Assert.IsType<GrossErrorsNamed>(GrossErrorModel.Of(Networks.Linear(shifted, [1, 1, 1, 1, 1, 1], [1, -1, -1, 0, 0, 0], [0, 0, 1, -1, -1, 0], [1, 0, 0, 0, 0, -1])));
        var suspect = Assert.Single(named.Suspects);
        Assert.Equal("3", suspect.Name);
        Assert.Equal(isUp ? size : -size, suspect.Bias!.Value, 1e-9);
    });

    /// <summary>Many small misfits of one size: none beyond its own bound, all together too much.</summary>
    [Fact]
    public void Of_ManySmallMisfits_NamesNone()
    {
        var rows = Enumerable.Range(0, 12).Select(n => Enumerable.Range(0, 24).Select(i => i == 2 * n ? 1.0 : i == (2 * n) + 1 ? -1 : 0).ToArray()).ToArray();
        var spec = Networks.Linear([.. Enumerable.Range(0, 24).Select(i => i % 2 == 0 ? 10.0 : 12.8)], [.. Enumerable.Repeat(1.0, 24)], rows);
        Assert.Empty(Assert.IsType<GrossErrorNotNamed>(GrossErrorModel.Of(spec)).Suspects);
    }

    /// <summary>Two of a flow that are seen as their sum: both are named; none where the values they would have cannot be.</summary>
    [Fact]
    public void Of_AValueThatCannotBe_IsNotTakenForTheMistake()
    {
        var spec = Networks.Linear([10, 16, 1, 10.01], [0.01, 1, 0.01, 0.01], [1, -1, -1, 0], [1, 0, 0, -1]);
        Assert.Equal(["2", "3"], Assert.IsType<GrossErrorsNamed>(GrossErrorModel.Of(spec)).Suspects.SelectMany(s => s.Alike.Append(s.Name)).Order());
        Assert.IsType<GrossErrorNotNamed>(GrossErrorModel.Of(spec, 0.05, (_, _) => false));
        var named = Assert.IsType<GrossErrorsNamed>(GrossErrorModel.Of(spec, 0.05, (name, _) => name != "2"));
        Assert.Equal("3", named.Suspects[0].Name);
    }

    [Fact]
    public void Of_NothingChecked_SaysWhy()
    {
        var spec = new ReconcileSpec([new("a", 1, 1), Unknown.Sought("b")], [new("same", [new(1, 0), new(-1, 1)])]);
        Assert.IsType<NothingToAdjust>(Assert.IsType<GrossErrorNotSought>(GrossErrorModel.Of(spec)).Why);
        Assert.Throws<ArgumentOutOfRangeException>(() => GrossErrorModel.Of(spec, 0));
    }
}
