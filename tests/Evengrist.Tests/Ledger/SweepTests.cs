using CsCheck;
using Evengrist.Ledger;

namespace Evengrist.Tests.Ledger;

/// <summary>Equations and identities: genealogy of lots, f(p) = Σ w f(c), g(c) = Σ w g(p), f_x(t) = g_t(x); by definition.</summary>
public class SweepTests
{
    [Fact]
    public void Back_AnyParcel_OriginsSumToOne() => SweepGraphs.Rough.Sample(rough =>
    {
        var rows = SweepGraphs.Of(rough);
        var sweep = new Sweep(rows);
        for (var parcel = 0; parcel < rows.Count; parcel++)
        {
            sweep.Back(parcel);
            Assert.Equal(1, Sum(sweep.Origins, sweep), 1e-9);
            Assert.Equal(0, sweep.LeftOut);
        }
    }, iter: 60);

    [Fact]
    public void BackAndForward_AnyPair_AreTheSameShare() => SweepGraphs.Rough.Sample(rough =>
    {
        var rows = SweepGraphs.Of(rough);
        var back = new Sweep(rows);
        var forward = new Sweep(rows, new ForwardRows(rows));
        for (var ancestor = 0; ancestor < rows.Count; ancestor += 7)
        {
            forward.Forward(ancestor);
            for (var parcel = 0; parcel < rows.Count; parcel++)
            {
                back.Back(parcel);
                Assert.Equal(back.ShareOf(ancestor), forward.ShareOf(parcel), 1e-12);
            }
        }
    }, iter: 40);

    [Fact]
    public void BackAndForward_SmallGraph_AgreeWithTheSumOverPaths() => SweepGraphs.Rough.Sample(rough =>
    {
        var rows = SweepGraphs.Of(rough.Take(14));
        var sweep = new Sweep(rows, new ForwardRows(rows));
        for (var ancestor = 0; ancestor < rows.Count; ancestor++)
        {
            sweep.Forward(ancestor);
            for (var parcel = 0; parcel < rows.Count; parcel++)
            {
                Assert.Equal(SweepGraphs.ShareByPaths(rows, ancestor, parcel), sweep.ShareOf(parcel), 1e-12);
            }
        }
    }, iter: 60);

    [Fact]
    public void Reached_BackAndForward_AreOrderedAndWhole() => SweepGraphs.Rough.Sample(rough =>
    {
        var rows = SweepGraphs.Of(rough);
        var sweep = new Sweep(rows, new ForwardRows(rows));
        var descending = sweep.Back(rows.Count - 1).ToArray();
        Assert.Equal(descending.Distinct().OrderDescending(), descending);
        Assert.Equal(descending.Reverse(), Enumerable.Range(0, rows.Count).Where(parcel => sweep.ShareOf(parcel) > 0));
        var ascending = sweep.Forward(0).ToArray();
        Assert.Equal(ascending.Distinct().Order(), ascending);
        Assert.Equal(ascending, Enumerable.Range(0, rows.Count).Where(parcel => sweep.ShareOf(parcel) > 0));
        Assert.True(sweep.Origins.IsEmpty);
    }, iter: 60);

    [Fact]
    public void Back_ParentsInAnotherOrder_SameShares() => SweepGraphs.Rough.Sample(rough =>
    {
        var one = new Sweep(SweepGraphs.Of(rough));
        var other = new Sweep(SweepGraphs.Of(rough, reversed: true));
        var last = rough.Length - 1;
        Assert.Equal(one.Back(last).ToArray(), other.Back(last).ToArray());
        foreach (var parcel in one.Reached)
        {
            Assert.Equal(one.ShareOf(parcel), other.ShareOf(parcel), 1e-12);
        }
    }, iter: 60);

    [Fact]
    public void Back_WeightedStarts_IsTheWeightedSumOfTheSingleAnswersInAnyOrder() => SweepGraphs.Rough.Sample(rough =>
    {
        var rows = SweepGraphs.Of(rough);
        int[] starts = [rows.Count - 1, rows.Count / 2, rows.Count / 3];
        double[] grams = [250, 30.5, 4];
        var together = new Sweep(rows);
        var turned = new Sweep(rows);
        together.Back(starts, grams);
        turned.Back(starts.Reverse().ToArray(), grams.Reverse().ToArray());
        Assert.Equal(grams.Sum(), Sum(together.Origins, together), 1e-9);
        var single = new Sweep(rows);
        var sum = new double[rows.Count];
        for (var i = 0; i < starts.Length; i++)
        {
            foreach (var parcel in single.Back(starts[i]))
            {
                sum[parcel] += grams[i] * single.ShareOf(parcel);
            }
        }

        for (var parcel = 0; parcel < rows.Count; parcel++)
        {
            Assert.Equal(sum[parcel], together.ShareOf(parcel), 1e-9);
            Assert.Equal(sum[parcel], turned.ShareOf(parcel), 1e-9);
        }
    }, iter: 60);

    [Fact]
    public void Forward_StartsMadeOfEachOther_NothingCountsTwice()
    {
        var rows = new ParentRows();
        rows.Add([], []);
        rows.Add([], []);
        rows.Add([0, 1], [0.5, 0.5]);
        rows.Add([2, 1], [0.8, 0.2]);
        var sweep = new Sweep(rows, new ForwardRows(rows));
        sweep.Forward([0, 2], [1.0, 1.0]);
        Assert.Equal(1, sweep.ShareOf(2), 1e-15);
        Assert.Equal(0.8, sweep.ShareOf(3), 1e-15);

        // A quarter of parcel 2 counts by itself; of the rest half stems from parcel 0: 0.25 + 0.75 · 0.5.
        sweep.Forward([0, 2], [1.0, 0.25]);
        Assert.Equal(0.625, sweep.ShareOf(2), 1e-15);
        Assert.Equal(0.5, sweep.ShareOf(3), 1e-15);
    }

    [Fact]
    public void Forward_SameStartTwice_IsAtMostWhole()
    {
        var rows = SweepGraphs.Of([[], [(0, 1)]]);
        var sweep = new Sweep(rows);
        sweep.Forward([0, 0], [0.75, 0.75]);
        Assert.Equal(1, sweep.ShareOf(0));
        sweep.Forward([0, 0], [0.25, 0.5]);
        Assert.Equal(0.75, sweep.ShareOf(1));
    }

    [Fact]
    public void Back_LeastTotal_LeavesOutWholeParcelsAndSaysHowMuch()
    {
        // Parcel 2 holds one part in a million of parcel 0, by a thousand paths of one in a thousand million each.
        var rows = new ParentRows();
        rows.Add([], []);
        rows.Add([], []);
        rows.Add(Enumerable.Repeat(0, 1000).Append(1).ToArray(), Enumerable.Repeat(1e-9, 1000).Append(1 - 1e-6).ToArray());
        var sweep = new Sweep(rows);
        sweep.Back(2, least: 1e-7);
        Assert.Equal(1e-6, sweep.ShareOf(0), 1e-15);
        Assert.Equal(0, sweep.LeftOut);
        Assert.Equal([2, 1], sweep.Back(2, least: 1e-5).ToArray());
        Assert.Equal(1e-6, sweep.LeftOut, 1e-15);
        Assert.Equal(1, Sum(sweep.Origins, sweep) + sweep.LeftOut, 1e-12);
        Assert.Equal([2, 1, 0], sweep.Back(2).ToArray());
    }

    [Fact]
    public void BackAndForward_EmptyAndSingle_AreAnswered()
    {
        var rows = new ParentRows();
        var sweep = new Sweep(rows, new ForwardRows(rows));
        Assert.True(sweep.Back([], []).IsEmpty);
        Assert.True(sweep.Forward([], []).IsEmpty);
        Assert.Throws<ArgumentOutOfRangeException>(() => sweep.Back(0).Length);
        rows.Add([], []);
        Assert.Equal([0], sweep.Back(0).ToArray());
        Assert.Equal([0], sweep.Origins.ToArray());
        Assert.Equal([0], sweep.Forward(0).ToArray());
        Assert.Equal(1, sweep.ShareOf(0));
        Assert.True(sweep.Back([0], [0.0]).IsEmpty);
        Assert.Equal(0, sweep.ShareOf(0));
        Assert.Equal(0, sweep.ShareOf(99));
    }

    [Fact]
    public void BackAndForward_BadStarts_AreRefusedAndLeaveTheSweepUsable()
    {
        var rows = SweepGraphs.Of([[], [(0, 1)]]);
        var sweep = new Sweep(rows, new ForwardRows(rows));
        Assert.Throws<ArgumentException>(() => sweep.Back([0, 1], [1.0]).Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => sweep.Back([1, 2], [1.0, 1.0]).Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => sweep.Back([1, -1], [1.0, 1.0]).Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => sweep.Back([1], [double.NaN]).Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => sweep.Back([1], [-0.1]).Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => sweep.Back(1, double.NaN).Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => sweep.Forward([1], [1.1]).Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => sweep.ShareOf(-1));
        Assert.Equal([0, 1], sweep.Forward(0).ToArray());
        Assert.Equal(1, sweep.ShareOf(1));
    }

    private static double Sum(ReadOnlySpan<int> parcels, Sweep sweep)
    {
        var sum = 0.0;
        foreach (var parcel in parcels)
        {
            sum += sweep.ShareOf(parcel);
        }

        return sum;
    }
}
