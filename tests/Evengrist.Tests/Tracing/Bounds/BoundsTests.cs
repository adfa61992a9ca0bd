using Evengrist.Ledger;
using Evengrist.Tests.Ledger;
using Evengrist.Tracing;
using Evengrist.Tracing.Bounds;

namespace Evengrist.Tests.Tracing.Bounds;

public sealed class BoundsTests
{
    [Theory]
    [InlineData("A", 10, 50)]
    [InlineData("B", 0, 40)]
    public void SixtyTonnesUnderForty_FiftyDrawn_UnknownOutflow(string code, double least, double most)
    {
        // Tracing notes, bounds when the mixing is unknown: A in 10..50 t, B in 0..40 t. Derived.
        var mill = Posed();
        var bounds = Ask(mill, code);
        Close(least, most, bounds.Packages[mill.Id("LOAD")]);
        var whole = code == "A" ? 60 : 40;
        Close(whole - most, whole - least, bounds.Where.Single(w => w.Place?.Code == "B1").Grams);
        Close(whole, whole, bounds.Traced);
    }

    [Fact]
    public void TheSameDraw_CutByOtherMovements_KeepsItsBounds()
    {
        var mill = new PosedMill().Open(PlaceKind.Field, "A", "B").Open(PlaceKind.Truck, "TA", "TB").Open(PlaceKind.Bin, "B1", "B9").Open(PlaceKind.BulkLoad, "LOAD");
        mill.Move("A", "TA", 60, 0).Move("B", "TB", 40, 0).Move("TA", "B1", 60, 1).Move("TB", "B1", 40, 2).Move("B1", "LOAD", 50, 3, 13);
        for (var hour = 4; hour < 12; hour++)
        {
            // Elsewhere things begin and end: stretches are cut, bounds are not.
            mill.Open(PlaceKind.Truck, $"X{hour}").Move("B", $"X{hour}", 1, hour).Move($"X{hour}", "B9", 1, hour, hour + 0.5);
        }

        Close(10, 50, Ask(mill, "A").Packages[mill.Id("LOAD")]);
    }

    [Fact]
    public void JunctionsAlone_NothingIsUnknown_LeastIsMost()
    {
        var mill = new PosedMill().Open(PlaceKind.Field, "A", "B").Open(PlaceKind.Truck, "TA", "TB").Open(PlaceKind.Pit, "PIT").Open(PlaceKind.Leg, "LEG").Open(PlaceKind.Cleaner, "CL").Open(PlaceKind.MillUnit, "MILL")
            .Open(PlaceKind.Water, "W").Open(PlaceKind.Loss, "L").Open(PlaceKind.ReworkTote, "P", "Q").Connect("PIT", "LEG").Connect("LEG", "CL").Connect("CL", "MILL");
        mill.Move("A", "TA", 10, 0).Move("B", "TB", 30, 0).Move("TA", "PIT", 10, 1, 3).Move("TB", "PIT", 30, 1, 3).Move("PIT", "LEG", 40, 1, 3).Move("LEG", "CL", 40, 1, 3)
            .Move("W", "CL", 2, 1, 3).Move("CL", "MILL", 42, 1, 3).Move("MILL", "P", 28, 1, 3).Move("MILL", "Q", 13, 1, 3).Move("MILL", "L", 1, 1, 3);
        var bounds = Ask(mill, "A");
        Close(10 * 28.0 / 42, 10 * 28.0 / 42, bounds.Packages[mill.Id("P")]);
        Close(10 * 13.0 / 42, 10 * 13.0 / 42, bounds.Packages[mill.Id("Q")]);
        Close(10.0 / 42, 10.0 / 42, bounds.Where.Single(w => w.Place?.Code == "L").Grams);
    }

    [Fact]
    public void BinProvenEmpty_HoldsNothingAfter()
    {
        var mill = Posed();
        mill.Move("B1", "LAST", 50, 4);
        mill.Record(new Happen(mill.Key(), "B1", PosedMill.Hour(5), HappeningKind.ProvenEmpty, ""));
        mill.Move("B", "T3", 20, 5).Move("T3", "B1", 20, 6).Move("B1", "AFTER", 5, 7);
        var bounds = Ask(mill, "A");
        Close(10, 50, bounds.Packages[mill.Id("LAST")]);
        Assert.False(bounds.Packages.ContainsKey(mill.Id("AFTER")));
    }

    [Fact]
    public void SeveralStarts_JoinedWithoutDoubleCounting()
    {
        var mill = Posed();
        var tracer = Tracer.Over(mill.Book);
        var bin = new Suspicion(mill.Book.Named("B1"), PosedMill.Hour(2.5), PosedMill.Hour(9));
        var both = tracer.Bounds([new Suspicion(mill.Book.Named("A")), new Suspicion(mill.Book.Named("TA")), bin]);

        // All 60 t of A, by field and by truck the same; with the bin's hour the whole 50 t drawn, of which 10 to 50 were A already.
        Close(60, 100, both.Traced);
        Close(50, 50, both.Packages[mill.Id("LOAD")]);
        Close(60, 60, tracer.Bounds([new Suspicion(mill.Book.Named("A")), new Suspicion(mill.Book.Named("TA"))]).Traced);
    }

    [Fact]
    public void Circle_OfConnections_IsCutAndStaysTrue()
    {
        // Ten tonnes suspect go round between two flour bins while one ships: nothing is known but that it is no more than ten.
        var mill = new PosedMill().Open(PlaceKind.Opening, "S", "O").Open(PlaceKind.FlourBin, "F1", "F2").Open(PlaceKind.BulkLoad, "LOAD").Connect("F1", "F2").Connect("F2", "F1");
        mill.Move("S", "F1", 10, 0).Move("O", "F2", 10, 0).Move("F1", "F2", 5, 1, 2).Move("F2", "F1", 5, 1, 2).Move("F2", "LOAD", 4, 1.5, 2);
        Close(0, 4, Ask(mill, "S").Packages[mill.Id("LOAD")]);
    }

    [Fact]
    public void RecallCase_EveryHypothesis_LiesWithin()
    {
        var mill = RecallCase.Posed(hours: 90);
        var tracer = Tracer.Over(mill.Book);
        foreach (var unknown in new[] { false, true })
        {
            var bounds = tracer.Bounds([new Suspicion(mill.Book.Named("SUSPECT"))], options: new BoundsOptions { ThroughIsUnknown = unknown });
            var reach = tracer.Reach(new TraceQuestion("SUSPECT"));
            Assert.NotEmpty(reach.Packages);
            Assert.All(reach.Packages, p => Assert.All(p.Grams.Each, grams => Assert.True(bounds.Packages.GetValueOrDefault(p.Place.Id, Bound.None).Holds(grams, 5), $"{p.Place.Code}: {grams} outside {bounds.Packages.GetValueOrDefault(p.Place.Id, Bound.None)}")));

            // A tonne holds at most the share of B14 in the mix, 7.0 of 17.5.
            Assert.All(bounds.Packages.Values, b => Assert.InRange(b.Most, 0, 400_000.5));
        }
    }

    private static PosedMill Posed()
    {
        var mill = new PosedMill().Open(PlaceKind.Field, "A", "B").Open(PlaceKind.Truck, "TA", "TB", "T3").Open(PlaceKind.Bin, "B1").Open(PlaceKind.BulkLoad, "LOAD", "LAST", "AFTER");
        return mill.Move("A", "TA", 60, 0).Move("B", "TB", 40, 0).Move("TA", "B1", 60, 1).Move("TB", "B1", 40, 2).Move("B1", "LOAD", 50, 3);
    }

    private static BoundsOutcome Ask(PosedMill mill, string code) => Tracer.Over(mill.Book).Bounds([new Suspicion(mill.Book.Named(code))]);

    private static void Close(double leastTonnes, double mostTonnes, Bound bound)
    {
        Assert.Equal(leastTonnes * 1e6, bound.Least, 1.0);
        Assert.Equal(mostTonnes * 1e6, bound.Most, 1.0);
    }
}
