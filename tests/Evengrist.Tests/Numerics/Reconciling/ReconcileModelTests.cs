using Evengrist.Numerics.Reconciling;

namespace Evengrist.Tests.Numerics.Reconciling;

public sealed class ReconcileModelTests
{
    [Fact]
    public void Of_Bypass_HasTheKnownSolutionAndTests()
    {
        var answer = Of(Networks.Bypass);
        Assert.Equal([100.22, 64.50, 35.72, 64.50, 35.72, 100.22], answer.Values.Select(v => Math.Round(v.Value, 2)));
        Assert.Equal(6.4075, answer.Squares, 1e-4);
        Assert.Equal(4, answer.Freedom);
        Assert.Equal(9.488, answer.Critical(0.05), 1e-3); // Tables of χ².
        Assert.False(answer.Fails(0.05));
        Assert.Equal([2.070, -0.061, -1.310, -0.367, 0.882, -1.641], answer.Values.Select(v => Math.Round(v.Z!.Value, 3)));
    }

    [Fact]
    public void Of_ThreeUnits_HasTheKnownSolution()
    {
        var answer = Of(Networks.ThreeUnits);
        Assert.Equal([11.0293, 9.9571, 20.9864, 11.0293, 7.1780, 3.8513], answer.Values.Select(v => Math.Round(v.Value, 4)));
        Assert.Equal(1.6675, answer.Squares, 1e-4);
    }

    [Fact]
    public void Of_MillWithAsh_ClosesMassAndAsh()
    {
        var answer = Of(Networks.Mill);
        Assert.Equal([9.95408, 7.58965, 1.31024, 0.98402, 0.07016], answer.Values.Take(5).Select(v => Math.Round(v.Value, 5)));
        Assert.Equal([1.69541, 0.56208, 6.43596, 3.91729, 4.60193], answer.Values.Skip(5).Select(v => Math.Round(v.Value, 5)));
        Assert.Equal((1.1777, 2), (Math.Round(answer.Squares, 4), answer.Freedom));
        Assert.All(Networks.Mill.Constraints, c => Assert.Equal(0, Miss(c, answer), 1e-9));
        Assert.Equal(0.3828, Networks.Mill.Constraints[1].Terms.Sum(t => t.Factor * Networks.Mill.Unknowns[t.First].Value * Networks.Mill.Unknowns[t.Second!.Value].Value), 1e-9);
    }

    [Fact]
    public void Of_Column_FindsTheKnownSolutionAndThatItCannotBe()
    {
        var answer = Of(Networks.Column);
        Assert.Equal([1043.7336, 514.7988, 528.9349], answer.Values.Take(3).Select(v => Math.Round(v.Value, 4)));
        Assert.Equal([0.4785, 0.9499, 0.0197, 0.5215, 0.0501, 0.9803], answer.Values.Skip(3).Select(v => Math.Round(v.Value, 4)));
        Assert.Equal(291, answer.Squares, 1.0);
        Assert.True(answer.Fails(0.001));
    }

    /// <summary>A meter beside another, by hand: the weighted mean, its variance, and z of the difference.</summary>
    [Fact]
    public void Of_TwoMetersOnOneFlow_GivesTheWeightedMean()
    {
        var answer = Of(Networks.Linear([10, 11], [1, 4], [1, -1]));
        Assert.All(answer.Values, v => Assert.Equal((10.2, Math.Sqrt(0.8)), (v.Value, v.StandardUncertainty!.Value), Near));
        Assert.Equal(0.8, answer.Covariance[0, 1], 1e-12);
        Assert.Equal(-1 / Math.Sqrt(5), answer.Values[0].Z!.Value, 1e-12);
        Assert.Equal(0.2, answer.Squares, 1e-12);
    }

    /// <summary>By hand: a + b = c with c not weighed is a sum, d + e of an unweighed pair is unknown, and f stands alone.</summary>
    [Fact]
    public void Of_Unmeasured_TellsFoundFromUnknown()
    {
        var spec = new ReconcileSpec(
            [new("a", 3, 0.3), new("b", 4, 0.4), Unknown.Sought("c"), Unknown.Sought("d"), Unknown.Sought("e"), new("f", 5, 0.1)],
            [new("sum", [new(1, 0), new(1, 1), new(-1, 2)]), new("pair", [new(1, 3), new(1, 4), new(-1, 5)])]);
        var answer = Assert.IsType<NothingToAdjust>(ReconcileModel.Of(spec));
        Assert.Equal([Standing.NotRedundant, Standing.NotRedundant, Standing.Observable, Standing.NotObservable, Standing.NotObservable, Standing.NotRedundant], answer.Values.Select(v => v.Standing));
        Assert.Equal((7, 0.5), (answer["c"].Value, answer["c"].StandardUncertainty!.Value), Near);
        Assert.Null(answer["d"].StandardUncertainty);
        Assert.Equal(5, answer["d"].Value + answer["e"].Value, 1e-12);
    }

    [Fact]
    public void Of_ConstraintsThatContradictOneAnother_NamesThem()
    {
        var spec = new ReconcileSpec([new("a", 3, 1), new("b", 3, 1)], [new("ten", [new(1, 0)], 10), new("eleven", [new(2, 0)], 22), new("b is 3", [new(1, 1)], 3)]);
        Assert.Equal(["ten", "eleven"], Assert.IsType<ConstraintsClash>(ReconcileModel.Of(spec)).Names);
        var exact = new ReconcileSpec([new("a", 3, 0)], [new("four", [new(1, 0)], 4)]);
        Assert.Equal(["four"], Assert.IsType<ConstraintsClash>(ReconcileModel.Of(exact)).Names);
    }

    /// <summary>x² = −1 has no root: linearising jumps about for ever.</summary>
    [Fact]
    public void Of_EquationWithoutASolution_DoesNotConverge() =>
        Assert.IsType<NotConverged>(ReconcileModel.Of(new ReconcileSpec([Unknown.Sought("x", 0.7)], [new("root", [new(1, 0, 0)], -1)])));

    [Fact]
    public void Of_QuestionsThatCannotBe_AreRefusedWithEveryFault()
    {
        var spec = new ReconcileSpec([new("a", double.NaN, 1), new("a", 1, -1), new(" ", 1, 1)], [new("none", []), new("beyond", [new(double.NaN, 7)])]);
        Assert.Equal(7, Assert.IsType<ReconcileRefused>(ReconcileModel.Of(spec)).Faults.Count);
        Assert.Single(Assert.IsType<ReconcileRefused>(ReconcileModel.Of(new ReconcileSpec([], []))).Faults);
    }

    internal static Reconciled Of(ReconcileSpec spec) => Assert.IsType<Reconciled>(ReconcileModel.Of(spec));

    internal static double Miss(Constraint constraint, Balanced answer) =>
        constraint.Terms.Sum(t => t.Factor * answer.Values[t.First].Value * (t.Second is { } s ? answer.Values[s].Value : 1)) - constraint.Constant;

    private static bool Near((double A, double B) one, (double A, double B) other) => Math.Abs(one.A - other.A) < 1e-12 && Math.Abs(one.B - other.B) < 1e-12;
}
