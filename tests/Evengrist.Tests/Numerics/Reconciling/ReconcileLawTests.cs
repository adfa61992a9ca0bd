using CsCheck;
using Evengrist.Numerics.Reconciling;

namespace Evengrist.Tests.Numerics.Reconciling;

/// <summary>What holds of any reconciliation, on mill networks drawn at random.</summary>
public sealed class ReconcileLawTests
{
    private const double Near = 1e-8;

    /// <summary>A flow divided into three, two of which join again, and a component in it; measured with any errors, some of it not.</summary>
    private static readonly Gen<ReconcileSpec> Any = Gen.Select(Gen.Double[1, 100], Gen.Double[0.1, 0.9].Array[3], Gen.Double[0.1, 0.9].Array[6], Gen.Double[-3, 3].Array[12], Gen.Double[0.01, 0.3].Array[12], Gen.Bool.Array[12])
        .Select((feed, cuts, shares, errors, spreads, seen) => Network(feed, cuts, shares, errors, spreads, seen));

    [Fact]
    public void Of_AnyNetwork_KeepsEveryConstraint() => Any.Sample(spec =>
        ReconcileModel.Of(spec) is Balanced answer && spec.Constraints.All(c => Math.Abs(ReconcileModelTests.Miss(c, answer)) < 1e-7));

    [Fact]
    public void Of_AnyOrderOfRowsAndColumns_IsTheSame() => Any.Sample(spec =>
    {
        int Turned(int i) => spec.Unknowns.Count - 1 - i;
        var turned = new ReconcileSpec([.. spec.Unknowns.Reverse()], [.. spec.Constraints.Reverse().Select(c => c with { Terms = [.. c.Terms.Reverse().Select(t => new Term(t.Factor, Turned(t.First), t.Second is { } s ? Turned(s) : null))] })]);
        Same(Balance(spec), Balance(turned));
    });

    [Fact]
    public void Of_ARowThatFollowsFromOthers_ChangesNothing() => Any.Sample(spec =>
        Same(Balance(spec), Balance(spec with { Constraints = [.. spec.Constraints, new Constraint("both", [.. spec.Constraints[0].Terms, .. spec.Constraints[1].Terms.Select(t => t with { Factor = -2 * t.Factor })])] })));

    [Fact]
    public void Of_VariancesAllTimesK_LeavesValuesAndDividesSquaresByK() => Gen.Select(Any, Gen.Double[0.1, 10]).Sample((spec, k) =>
    {
        var wider = spec with { Unknowns = [.. spec.Unknowns.Select(u => u with { StandardUncertainty = u.StandardUncertainty * Math.Sqrt(k) })] };
        var (one, other) = (Balance(spec), Balance(wider));
        Assert.Equal(one.Squares / k, other.Squares, Near * (1 + one.Squares));
        Assert.All(one.Values.Zip(other.Values).Where(p => p.First.Standing != Standing.NotObservable), p => Assert.Equal(p.First.Value, p.Second.Value, 1e-6 * (1 + Math.Abs(p.First.Value))));
    });

    [Fact]
    public void Of_DataWithoutError_FindsWhatWasNotMeasuredAndAdjustsNothing() => Gen.Select(Gen.Double[1, 100], Gen.Double[0.1, 0.9].Array[3], Gen.Double[0.1, 0.9].Array[6], Gen.Bool.Array[12]).Sample((feed, cuts, shares, seen) =>
    {
        var truth = Network(feed, cuts, shares, new double[12], [.. Enumerable.Repeat(0.1, 12)], [.. Enumerable.Repeat(true, 12)]);
        var partly = truth with { Unknowns = [.. truth.Unknowns.Select((u, i) => seen[i] ? u : Unknown.Sought(u.Name, u.Value * 1.05))] };
        var answer = Balance(partly);
        Assert.Equal(0, answer.Squares, 1e-9);
        Assert.All(answer.Values.Zip(truth.Unknowns).Where(p => p.First.Standing != Standing.NotObservable), p => Assert.Equal(p.Second.Value, p.First.Value, 1e-6 * (1 + Math.Abs(p.Second.Value))));
    });

    [Fact]
    public void Of_Adjusting_NeverMakesAnUncertaintyGreater() => Any.Sample(spec => ReconcileModel.Of(spec) is Balanced answer
        && answer.Values.Where(v => v.Unknown.IsMeasured).All(v => v.StandardUncertainty <= v.Unknown.StandardUncertainty * (1 + 1e-9)));

    /// <summary>Over many draws from normal errors J is χ² with its freedom: its mean is the freedom, its variance twice that; and the spread of the adjusted values is the one that was stated.</summary>
    [Fact]
    public void Of_ManyDraws_HasTheStatedSpreads()
    {
        var random = new Random(11);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        double[] truth = [100, 65, 35, 65, 35, 100];
        Reconciled[] draws = [.. Enumerable.Range(0, 20_000).Select(_ => ReconcileModelTests.Of(Networks.Bypass with { Unknowns = [.. Networks.Bypass.Unknowns.Select((u, i) => u with { Value = truth[i] + Normal() })] }))];
        Assert.Equal(4, draws.Average(d => d.Squares), 0.1);
        Assert.Equal(0.05, draws.Count(d => d.Fails(0.05)) / 20_000.0, 0.006);
        for (var i = 0; i < 6; i++)
        {
            Assert.Equal(draws[0].Values[i].StandardUncertainty!.Value, Math.Sqrt(draws.Average(d => Math.Pow(d.Values[i].Value - truth[i], 2))), 0.01);
            Assert.Equal(1, Math.Sqrt(draws.Average(d => Math.Pow(d.Values[i].Z!.Value, 2))), 0.03);
        }
    }

    private static ReconcileSpec Network(double feed, double[] cuts, double[] shares, double[] errors, double[] spreads, bool[] seen)
    {
        // Flows 0 = 1 + 2 + 3, 4 = 2 + 3; component likewise, shares 6 to 10; 5 is a meter beside 0, 11 a reading beside share 6.
        double[] f = [feed, feed * cuts[0] / (cuts[0] + cuts[1] + cuts[2]), feed * cuts[1] / (cuts[0] + cuts[1] + cuts[2]), feed * cuts[2] / (cuts[0] + cuts[1] + cuts[2]), 0, feed];
        f[4] = f[2] + f[3];
        double[] x = [((f[1] * shares[1]) + (f[2] * shares[2]) + (f[3] * shares[3])) / feed, shares[1], shares[2], shares[3], ((f[2] * shares[2]) + (f[3] * shares[3])) / f[4], 0];
        x[5] = x[0];
        double[] all = [.. f, .. x];
        Unknown[] unknowns = [.. all.Select((v, i) => new { v, u = v * spreads[i] * 0.1, i }).Select(p => seen[p.i] ? new Unknown($"{p.i}", p.v + (errors[p.i] * p.u), p.u) : Unknown.Sought($"{p.i}", p.v))];
        return new ReconcileSpec(unknowns,
        [
            new("divide", [new(1, 0), new(-1, 1), new(-1, 2), new(-1, 3)]), new("join", [new(1, 4), new(-1, 2), new(-1, 3)]), new("meter", [new(1, 0), new(-1, 5)]), new("reading", [new(1, 6), new(-1, 11)]),
            new("component divided", [new(1, 0, 6), new(-1, 1, 7), new(-1, 2, 8), new(-1, 3, 9)]), new("component joined", [new(1, 4, 10), new(-1, 2, 8), new(-1, 3, 9)]),
        ]);
    }

    private static Balanced Balance(ReconcileSpec spec) => Assert.IsType<Balanced>(ReconcileModel.Of(spec), exactMatch: false);

    private static void Same(Balanced a, Balanced b)
    {
        Assert.Equal(a.Freedom, b.Freedom);
        Assert.Equal(a.Squares, b.Squares, Near * (1 + a.Squares));
        foreach (var value in a.Values)
        {
            var its = b[value.Unknown.Name];
            Assert.Equal(value.Standing, its.Standing);
            if (value.Standing != Standing.NotObservable)
            {
                Assert.Equal(value.Value, its.Value, 1e-6 * (1 + Math.Abs(value.Value)));
                Assert.Equal(value.StandardUncertainty!.Value, its.StandardUncertainty!.Value, 1e-6 * (1 + value.StandardUncertainty.Value));
            }
        }
    }
}
