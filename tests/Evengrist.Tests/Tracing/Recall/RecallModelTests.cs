using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Ledger;
using Evengrist.Tracing;
using Evengrist.Tracing.Bounds;
using Evengrist.Tracing.Recall;

namespace Evengrist.Tests.Tracing.Recall;

public sealed class RecallModelTests
{
    private static readonly PosedMill Case = RecallCase.Posed();
    private static readonly RecallOutcome Asked = Tracer.Over(Case.Book).Recall(new RecallQuestion([new Suspicion(Case.Book.Named("SUSPECT"))]) { Threshold = Mass.FromKilograms(50), Chance = 0.5 });

    [Fact]
    public void RecallCase_FiguresOfTheAcceptanceList()
    {
        // Acceptance list of our own: first in first out 109 ± 1 packages over 50 kg, 180 over 10 kg, 277 over 1 kg; 87.8 % of the suspect flour in the 109, 99.8 % in the 277; 18.17 t patent; union.
        Assert.InRange(Over(0, 50), 108, 110);
        Assert.InRange(Over(0, 10), 179, 181);
        Assert.InRange(Over(0, 1), 276, 278);
        var patent = Asked.Packages.Sum(p => p.Grams.Each[0]);
        Assert.Equal(18.17e6, patent, 0.05e6);
        Assert.Equal(0.878, Asked.Packages.Where(p => p.Grams.Each[0] > 50_000).Sum(p => p.Grams.Each[0]) / patent, 0.005);
        Assert.Equal(0.998, Asked.Packages.Where(p => p.Grams.Each[0] > 1_000).Sum(p => p.Grams.Each[0]) / patent, 0.001);
        Assert.Equal(26.34e6, Asked.Traced.Expected, 1.0);
        Assert.All(Asked.AccountedFor, a => Assert.Equal(1, a, 6));
        Assert.All(Asked.Packages, p => Assert.All(p.Grams.Each, g => Assert.True(p.Bound.Holds(g, 5), $"{p.Place.Code}: {g} outside {p.Bound}")));

        // Peak at the outlet of the stirred stage: 26.65 % of the mix (0.4·(1 − e^(−26.34/(7·3.4286)))); the tonne packed round it holds a little less.
        Assert.InRange(Asked.Packages.Max(p => p.Grams.Each[0]) / 1000, 264.5, 266.5);

        int Over(int h, double kilograms) => Asked.Packages.Count(p => p.Grams.Each[h] > kilograms * 1000);
    }

    [Fact]
    public void Nets_LieInsideEachOther_AndSayWhatTheyMiss()
    {
        var (wide, union, narrow) = (Asked.Net(NetKind.Wide), Asked.Net(NetKind.Union), Asked.Net(NetKind.Narrow));
        Assert.True(wide.Packages.Count > union.Packages.Count && union.Packages.Count > narrow.Packages.Count && narrow.Packages.Count > 100);
        Assert.Empty(narrow.Packages.Except(union.Packages));
        Assert.Empty(union.Packages.Except(wide.Packages));
        Assert.Equal((0, 0), (wide.ChanceOfMissing, wide.CanBeMissed));
        Assert.Equal(0, union.ChanceOfMissing);
        Assert.Equal(0, wide.ExpectedOutside);

        // At a chance of 0.5 only first in first out (0.7) is heeded; core first and stirred (0.3) put packages outside over 50 kg, where they do.
        Assert.InRange(narrow.Packages.Count, 108, 110);
        Assert.Equal(0.2, narrow.ChanceOfMissing, 1e-9);
        Assert.True(narrow.CanBeMissed > 0 && union.ExpectedOutside < narrow.ExpectedOutside);
        Assert.Equal(Asked.Packages.Sum(p => p.Grams.Expected), narrow.ExpectedInside + narrow.ExpectedOutside, 1.0);
        Assert.Equal(100m, wide.Balance.EffectivenessPercent);
    }

    [Fact]
    public void Curve_FallsInMassAndRisesInRisk()
    {
        Assert.True(Asked.Curve.Count >= 2);
        Assert.All(Asked.Curve.Zip(Asked.Curve.Skip(1)), pair =>
        {
            var (narrower, wider) = pair;
            Assert.True(narrower.Chance > wider.Chance && narrower.Packages <= wider.Packages && narrower.Mass <= wider.Mass);
            Assert.True(narrower.ChanceOfMissing >= wider.ChanceOfMissing && narrower.ExpectedOutside >= wider.ExpectedOutside);
        });
        Assert.Equal(0, Asked.Curve[^1].ChanceOfMissing, 1e-12);
        Assert.Equal(Asked.Net(NetKind.Union).Packages.Count, Asked.Curve[^1].Packages);
    }

    [Fact]
    public void SeveralStarts_CountEachGramOnce()
    {
        var (mill, tracer) = Small();
        var book = mill.Book;
        var alone = tracer.Recall(new RecallQuestion([new Suspicion(book.Named("T1"))]));
        var twice = tracer.Recall(new RecallQuestion([new Suspicion(book.Named("F1")), new Suspicion(book.Named("T1"))]));
        Assert.Equal(10e6, alone.Traced.Expected, 1.0);
        Assert.Equal(10e6, twice.Traced.Expected, 1.0);
        Assert.Equal(alone.Packages.Select(p => p.Grams.Expected), twice.Packages.Select(p => p.Grams.Expected));

        // With the hours of the bin: the whole draw of 12 t, of which 10 · 12/40 t were the truck's already when stirred; 10 t + 12 t − 3 t.
        var span = tracer.Recall(new RecallQuestion([new Suspicion(book.Named("T1")), new Suspicion(book.Named("B1"), PosedMill.Hour(2), PosedMill.Hour(6))]), [new Belief(Outflow.Stirred, 1)]);
        Assert.Equal(19e6, span.Traced.Expected, 5.0);
        Assert.All(span.AccountedFor, a => Assert.Equal(1, a, 6));
        Assert.True(span.Bound.Holds(19e6, 5));
    }

    [Fact]
    public void Unknown_NamesReworkPartsReturnsCustomersAndElevators()
    {
        var (mill, tracer) = Small();
        var recall = tracer.Recall(new RecallQuestion([new Suspicion(mill.Book.Named("E"))]));
        UnknownKind[] kinds = [.. recall.Unknown.Select(u => u.Kind).Distinct()];
        Assert.All([UnknownKind.FieldBehindElevator, UnknownKind.NeverProvenEmpty, UnknownKind.GoneAstray, UnknownKind.SecondaryUse, UnknownKind.PartLeft, UnknownKind.Rework, UnknownKind.Returned], k => Assert.Contains(k, kinds));
        Assert.Equal("FB", Assert.Single(recall.Unknown, u => u.Kind == UnknownKind.Rework && u.Place!.Code == "RT").Others.Single().Code);
        Assert.Equal("P1", Assert.Single(recall.Unknown, u => u.Kind == UnknownKind.PartLeft).Place!.Code);
        var deliveries = Delivery.Of(mill.Book, recall.Packages.Select(p => p.Place.Id), recall.AsOf);
        Assert.Equal([("P1", 400_000L)], deliveries.Select(d => (d.Package.Code, d.Mass.Grams)));
    }

    [Fact]
    public void SameQuestion_IsRememberedUntilAnythingIsRecorded()
    {
        var (mill, tracer) = Small();
        tracer.Warm();
        RecallQuestion Of(string code) => new([new Suspicion(mill.Book.Named(code))]);
        var first = tracer.Recall(Of("E"));
        Assert.Same(first, tracer.Recall(Of("E")));
        Assert.NotSame(first, tracer.Recall(Of("E") with { Threshold = Mass.FromKilograms(1) }));
        Assert.NotSame(first, tracer.Recall(Of("E"), [new Belief(Outflow.Stirred, 1)]));
        Assert.NotSame(first, tracer.Recall(Of("E") with { Bounds = new BoundsOptions { ThroughIsUnknown = true } }));
        Assert.Null(first.Packages.Single(p => p.Place.Code == "P1").Hold);
        mill.Record(new Happen(mill.Key(), "P1", mill.Book.Newest!.Value, HappeningKind.Held, "test"));
        Assert.NotNull(tracer.Recall(Of("E")).Packages.Single(p => p.Place.Code == "P1").Hold);
    }

    [Fact]
    public void Costs_FromPricesGiven_NothingInvented()
    {
        var (mill, tracer) = Small();
        var net = tracer.Recall(new RecallQuestion([new Suspicion(mill.Book.Named("E"))])).Net(NetKind.Wide);
        Assert.Equal((null, 0), (new RecallCosts(new Dictionary<string, decimal>()).Of(net).Cost, new RecallCosts(new Dictionary<string, decimal>()).Of(net).Unpriced.Count));

        // P1 1 t of AP at 0.50; destroying 40 a tonne, freight 60 a tonne. The tote has no product and no price. Made 1.2 t, the tote's 0.2 t used, 0.4 t shipped.
        var (cost, unpriced) = new RecallCosts(new Dictionary<string, decimal> { ["AP"] = 0.50m }, 40m, 60m).Of(net);
        Assert.Equal(500m + 40m * (net.Balance.Made - net.Balance.Used).Tonnes + 60m * 0.4m, cost);
        Assert.Equal(["no product named"], unpriced);
    }

    [Fact]
    public void Ask_NothingOrNonsense_IsRefusedOrSaid()
    {
        var (mill, tracer) = Small();
        Assert.Throws<ArgumentException>(() => tracer.Recall(new RecallQuestion([])));
        Assert.Throws<ArgumentException>(() => tracer.Recall(new RecallQuestion([new Suspicion(mill.Book.Named("C"))])));
        Assert.Throws<ArgumentException>(() => tracer.Recall(new RecallQuestion([new Suspicion(mill.Book.Named("T1"))]) { Chance = 1.5 }));
        Assert.Contains("Nothing has left", tracer.Recall(new RecallQuestion([new Suspicion(mill.Book.Named("B1"), PosedMill.Hour(40), PosedMill.Hour(41))])).Nothing, StringComparison.Ordinal);
    }

    [Fact]
    public void Kept_ComesBackAsItWas_AndNamesItselfInTheHold()
    {
        var kept = new KeptRecall("R-2026-004", "B14 2025-09-17T20:00", PosedMill.Hour(3), NetKind.Union, 50_000, 0.25, "Treated seed.", "Ada Miller", PosedMill.Hour(4), ["P1", "P2"], "");
        Assert.True(KeptRecall.TryRead(kept.ToJson(), out var read, out _));
        Assert.Equal(kept.ToJson(), read.ToJson());
        Assert.Equal("R-2026-004", KeptRecall.NumberIn(kept.HoldText));
        Assert.Null(KeptRecall.NumberIn("Recall of the month"));
        Assert.False(KeptRecall.TryRead(kept.ToJson().Replace("Treated seed.", "", StringComparison.Ordinal), out _, out var faults));
        Assert.NotEmpty(faults);
    }

    // Two trucks in one bin, a mill, a flour bin; one pallet partly gone and partly fed back by a tote, one return.
    private static (PosedMill Mill, Tracer Tracer) Small()
    {
        var mill = new PosedMill().Open(PlaceKind.Field, "F1").Open(PlaceKind.Elevator, "E").Open(PlaceKind.Truck, "T1", "T2").Open(PlaceKind.Bin, "B1").Open(PlaceKind.MixLine, "MX").Open(PlaceKind.MillUnit, "MU")
            .Open(PlaceKind.FlourBin, "FB").Open(PlaceKind.Loss, "LOSS").Open(PlaceKind.Customer, "C").Open(PlaceKind.ReworkTote, "RT", "BACK").Open(new OpenPlace("p1", "P1", PlaceKind.Pallet) { Material = "AP" })
            .Connect("B1", "MX").Connect("MX", "MU").Connect("MU", "FB");
        mill.Move("F1", "T1", 10, 0).Move("E", "T2", 30, 0).Move("T1", "B1", 10, 1).Move("T2", "B1", 30, 1).Move("B1", "MX", 12, 3, 5).Move("MX", "MU", 12, 3, 5).Move("MU", "FB", 11, 3, 5).Move("MU", "LOSS", 1, 3, 5)
            .Move("FB", "P1", 1, 6).Move("P1", "C", 0.4m, 7).Move("FB", "RT", 0.2m, 7).Move("RT", "FB", 0.2m, 8, 9).Move("C", "BACK", 0.1m, 10);
        return (mill, Tracer.Over(mill.Book));
    }
}
