using CsCheck;
using Evengrist.Ledger;

namespace Evengrist.Tests.Ledger;

/// <summary>The forward rows lag behind a graph that grows and is cut back; the answers must not.</summary>
public class ForwardRowsTests
{
    [Fact]
    public void ChildrenOf_WholeGraph_IsTheParentsTurnedRound() => SweepGraphs.Rough.Sample(rough =>
    {
        var rows = SweepGraphs.Of(rough);
        var forward = new ForwardRows(rows);
        Assert.Equal(rows.Count, forward.Covered);
        AssertTurnedRound(rows, forward);
    }, iter: 60);

    [Fact]
    public void Forward_GrownAndCutBackAnyHow_SameAsFreshRows()
    {
        var step = Gen.Select(Gen.Int[0, 9], Gen.Int[0, 1_000_000], SweepGraphs.Rough);
        step.Array[1, 8].Sample(steps =>
        {
            var rows = new ParentRows();
            var forward = new ForwardRows(rows);
            var sweep = new Sweep(rows, forward);
            foreach (var (kind, at, rough) in steps)
            {
                if (kind < 3)
                {
                    rows.CutBackTo(at % (rows.Count + 1));
                }
                else if (kind == 3)
                {
                    forward.Rebuild();
                }

                foreach (var parcel in rough.Take(kind > 4 ? rough.Length : 3))
                {
                    SweepGraphs.Grow(rows, parcel);
                }

                AssertSame(rows, sweep, at % rows.Count);
                AssertTurnedRound(rows, forward);
            }
        }, iter: 150);
    }

    [Fact]
    public void Covered_CutBackAndGrownAgain_EndsAtTheCut()
    {
        var rows = SweepGraphs.Of(Enumerable.Range(0, 10).Select(_ => new[] { (0, 1.0) }));
        var forward = new ForwardRows(rows);
        rows.CutBackTo(6);
        rows.Add([1], [1.0]);
        rows.Add([1], [1.0]);
        Assert.Equal(6, forward.Covered);
        rows.CutBackTo(7);
        Assert.Equal(6, forward.Covered);
        Assert.Equal([1, 2, 3, 4, 5], forward.ChildrenOf(0).ToArray());
        Assert.True(forward.ChildrenOf(6).IsEmpty);
        Assert.Throws<ArgumentOutOfRangeException>(() => forward.ChildrenOf(7).Length);
        Assert.Equal([1, 6], new Sweep(rows, forward).Forward(1).ToArray());
        forward.Rebuild();
        Assert.Equal(7, forward.Covered);
    }

    [Fact]
    public void CatchUp_FewAndManyNewEdges_RebuildsOnlyForMany()
    {
        var rows = new ParentRows();
        rows.Add([], []);
        var forward = new ForwardRows(rows);
        for (var i = 0; i < 4096; i++)
        {
            rows.Add([0], [1.0]);
        }

        Assert.False(forward.CatchUp());
        Assert.Equal(1, forward.Covered);
        rows.Add([0], [1.0]);
        Assert.True(forward.CatchUp());
        Assert.Equal(rows.Count, forward.Covered);
        Assert.False(forward.CatchUp());
        rows.CutBackTo(1);
        Assert.False(forward.CatchUp());
        Assert.True(forward.ChildrenOf(0).IsEmpty);
    }

    [Fact]
    public void Trim_ThenGrow_KeepsEverything()
    {
        var rows = SweepGraphs.Of([[], [(0, 1)], [(0, 1), (1, 3)]]);
        var roomy = rows.Bytes;
        rows.Trim();
        Assert.True(rows.Bytes < roomy);
        Assert.Equal(3, rows.Add([2, 0], [0.5, 0.5]));
        Assert.Equal([0, 1], rows.ParentsOf(2).ToArray());
        Assert.Equal([0.25, 0.75], rows.SharesOf(2).ToArray());
        Assert.Equal([2, 0], rows.ParentsOf(3).ToArray());
        Assert.Equal(5, rows.Edges);
    }

    [Fact]
    public void Add_ParentNotMadeYet_IsRefusedAndNothingAdded()
    {
        var rows = SweepGraphs.Of([[]]);
        Assert.Throws<ArgumentException>(() => rows.Add([1], [1.0]));
        Assert.Throws<ArgumentException>(() => rows.Add([-1], [1.0]));
        Assert.Throws<ArgumentException>(() => rows.Add([0], [0.5, 0.5]));
        Assert.Equal((1, 0), (rows.Count, rows.Edges));
    }

    private static void AssertTurnedRound(ParentRows rows, ForwardRows forward)
    {
        var children = Enumerable.Range(0, rows.Count).Select(_ => new List<int>()).ToArray();
        for (var child = 0; child < forward.Covered; child++)
        {
            foreach (var parent in rows.ParentsOf(child))
            {
                children[parent].Add(child);
            }
        }

        for (var parent = 0; parent < rows.Count; parent++)
        {
            Assert.Equal(children[parent], forward.ChildrenOf(parent).ToArray());
        }
    }

    private static void AssertSame(ParentRows rows, Sweep sweep, int start)
    {
        int[] starts = [start, rows.Count - 1];
        double[] fractions = [1, 0.5];
        var fresh = new Sweep(rows, new ForwardRows(rows));
        Assert.Equal(fresh.Forward(starts, fractions).ToArray(), sweep.Forward(starts, fractions).ToArray());
        for (var parcel = 0; parcel < rows.Count; parcel++)
        {
            Assert.Equal(fresh.ShareOf(parcel), sweep.ShareOf(parcel));
        }

        Assert.Equal(fresh.Forward(start, 0.3).ToArray(), sweep.Forward(start, 0.3).ToArray());
    }
}
