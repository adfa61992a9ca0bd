using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Ledger;
using Evengrist.Tracing;

namespace Evengrist.Tests.Tracing;

/// <summary>The worked trace of our own notes: two trucks in one bin, one in another, a mix, water, a mill, one bag.</summary>
public sealed class TracerTests
{
    [Fact]
    public void Roots_WorkedTrace_SharesWithAndWithoutWater()
    {
        var (mill, tracer) = Worked();
        var roots = tracer.Roots(new TraceQuestion("BAG"), [new Belief(Outflow.Stirred, 1)]);

        // Expected: T1 25/49·0.6, T2 24/49·0.6, T3 0.4 of the wheat; wheat 50 t in 52.071006 t.
        Assert.Null(roots.Nothing);
        Assert.Equal(0.306122, Grain("F1"), 0.0000005);
        Assert.Equal(0.293878, Grain("F2"), 0.0000005);
        Assert.Equal(0.400000, Grain("F3"), 0.0000005);
        Assert.Equal(0.039773, roots.Roots.Single(r => r.Origin.Code == "WATER").Share.Expected, 0.0000005);
        Assert.Equal(0.960227, roots.Roots.Where(r => r.IsGrain).Sum(r => r.Share.Expected), 0.0000005);
        Assert.Equal(1, roots.Roots.Sum(r => r.Share.Expected), 9);
        Assert.Equal("T1", roots.Roots.Single(r => r.Origin.Code == "F1").Truck!.Code);
        var split = Mass.FromGrams(25_000).Split(roots.Roots.Where(r => r.IsGrain).OrderBy(r => r.Origin.Id).Select(r => r.GrainShare.Expected).ToArray());
        Assert.Equal([7653, 7347, 10_000], split.Select(m => m.Grams));
        Assert.Equal(0, mill.Book.Places.Sum(p => mill.Book.StockOf(p.Id).Grams));

        double Grain(string code) => roots.Roots.Single(r => r.Origin.Code == code).GrainShare.Expected;
    }

    [Fact]
    public void Reach_WorkedTrace_WhatIsLeftInTheBinAndWhatIsInTheFlour()
    {
        var (mill, tracer) = Worked();
        var reach = tracer.Reach(new TraceQuestion("T1"), [new Belief(Outflow.Stirred, 1)]);

        // 19 t left in E1 hold 25/49 of T1's share; everything T1 brought is accounted for.
        Assert.Equal(19e6 * 25 / 49, reach.Where.Single(w => w.Place?.Code == "E1").Grams.Expected, 0.5);
        Assert.Equal(25e6, reach.Where.Sum(w => w.Grams.Expected), 0.5);
        Assert.Equal(1, reach.AccountedFor[0], 9);
        Assert.Equal(25_000 * 0.306122, reach.Packages.Single(p => p.Place.Code == "BAG").Grams.Expected, 0.05);
        Assert.Equal(mill.Id("BAG"), reach.Packages.Single().Place.Id);
    }

    [Fact]
    public void RecallCase_AllHypotheses_BeliefsAndUnion()
    {
        var mill = RecallCase.Posed();
        var tracer = Tracer.Over(mill.Book);
        var reach = tracer.Reach(new TraceQuestion("SUSPECT") { Threshold = Mass.FromKilograms(50) });

        // Counts and masses: worked out by hand for a stirred tank of 60 t behind 18 h of rest (trade notes of our own).
        Assert.InRange(reach.Counts[0], 108, 110);
        Assert.Equal(18.17, reach.Packages.Where(p => p.Grams.Each[0] > 0).Sum(p => p.Grams.Each[0]) / 1e6 / 0.878, 0.1);
        Assert.Equal(0.2665, reach.Passages.Single(p => p.Place.Code == "TA").Share, 0.0005);
        Assert.True(reach.UnionCount >= reach.Counts.Max());
        Assert.All(reach.AccountedFor, a => Assert.Equal(1, a, 6));

        // Belief 0.7 / 0.2 / 0.1: flour of bin-hour 60 (18 h later, after the rest) holds 81.9 kg a tonne, of bin-hour 45 holds 38.6.
        Assert.Equal(81.9, At(60).Grams.Expected / 1000, 2.0);
        Assert.Equal(0.70, At(60).ChanceOverThreshold, 9);
        Assert.Equal(38.6, At(45).Grams.Expected / 1000, 2.0);
        Assert.Equal(0.20, At(45).ChanceOverThreshold, 9);

        Reached At(double binHour) => reach.Packages.MinBy(p => Math.Abs((p.Made - PosedMill.Hour(binHour + 18)).TotalHours - 1 / 24.15))!;
    }

    [Fact]
    public void Reach_AndRoots_AgreeForEveryPair()
    {
        // The share of x in t is the share of t from x: identity of the lot graph.
        var mill = RecallCase.Posed(hours: 90);
        var tracer = Tracer.Over(mill.Book);
        foreach (var belief in Belief.Usual)
        {
            var reach = tracer.Reach(new TraceQuestion("SUSPECT"), [belief]);
            foreach (var package in reach.Packages.Where((_, i) => i % 37 == 0))
            {
                var roots = tracer.Roots(new TraceQuestion(package.Place.Code), [belief]);
                Assert.Equal(1, roots.Roots.Sum(r => r.Share.Expected), 1e-6);
                Assert.Equal(package.Grams.Expected / 1e6, roots.Roots.Where(r => r.Origin.Code == "SUSPECT").Sum(r => r.Share.Expected), 1e-6);
            }
        }
    }

    [Fact]
    public void Span_OfABin_FollowsOnlyWhatLeftInIt()
    {
        var mill = RecallCase.Posed();
        var tracer = Tracer.Over(mill.Book);
        var span = new TraceQuestion("B14") { From = PosedMill.Hour(58.8571), Until = PosedMill.Hour(62.6201) };
        var roots = tracer.Roots(span, [new Belief(Outflow.FirstInFirstOut, 1)]);
        Assert.Equal("SUSPECT", roots.Roots[0].Origin.Code);
        Assert.Equal(0.999, roots.Roots[0].Share.Expected, 0.001);
        var reach = tracer.Reach(span, [new Belief(Outflow.FirstInFirstOut, 1)]);
        Assert.Equal(26.34e6, reach.Grams.Expected, 2e4);
        Assert.Equal(1, reach.AccountedFor[0], 6);
    }

    [Fact]
    public void Ask_NothingThere_SaysWhyAndWhatToDo()
    {
        var (_, tracer) = Worked();
        Assert.Equal(LedgerRule.UnknownPlace, Assert.Throws<LedgerRefusal>(() => tracer.Roots(new TraceQuestion("NOWHERE"))).Rule);
        Assert.Contains("from when to when", tracer.Reach(new TraceQuestion("E1")).Nothing, StringComparison.Ordinal);
        Assert.Contains("ask for its roots", tracer.Reach(new TraceQuestion("LOSS")).Nothing, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("empty", tracer.Roots(new TraceQuestion("GRIST")).Nothing, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => tracer.Roots(new TraceQuestion("BAG"), []));
        Assert.Throws<ArgumentException>(() => tracer.Roots(new TraceQuestion("BAG"), [new Belief(Outflow.Stirred, 0)]));
    }

    private static (PosedMill Mill, Tracer Tracer) Worked()
    {
        var mill = new PosedMill().Open(PlaceKind.Field, "F1", "F2", "F3").Open(PlaceKind.Truck, "T1", "T2", "T3").Open(PlaceKind.Bin, "E1", "E2")
            .Open(PlaceKind.Water, "WATER").Open(PlaceKind.MixLine, "GRIST").Open(PlaceKind.MillUnit, "MILL").Open(PlaceKind.FlourBin, "FLOUR", "FEED")
            .Open(PlaceKind.Loss, "LOSS").Open(PlaceKind.Pallet, "BAG")
            .Connect("E1", "GRIST").Connect("E2", "GRIST").Connect("GRIST", "MILL").Connect("MILL", "FLOUR").Connect("MILL", "FEED");
        mill.Move("F1", "T1", 25, 0).Move("F2", "T2", 24, 0).Move("F3", "T3", 40, 0)
            .Move("T1", "E1", 25, 1).Move("T2", "E1", 24, 1).Move("T3", "E2", 40, 1)
            .Move("E1", "GRIST", 30, 2, 4).Move("E2", "GRIST", 20, 2, 4).Move("WATER", "GRIST", 2.071006m, 2, 4)
            .Move("GRIST", "MILL", 52.071006m, 2, 4)
            .Move("MILL", "FLOUR", 39.5m, 2, 4).Move("MILL", "FEED", 12, 2, 4).Move("MILL", "LOSS", 0.571006m, 2, 4)
            .Move("FLOUR", "BAG", 0.025m, 5);
        return (mill, Tracer.Over(mill.Book));
    }
}
