using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Ledger;
using Evengrist.Tests.Tracing.Bounds;
using Evengrist.Tracing;
using Evengrist.Tracing.Bounds;
using Evengrist.Tracing.Drill;
using Evengrist.Tracing.Recall;

namespace Evengrist.Tests.Tracing.Drill;

public sealed class DrillTests
{
    [Fact]
    public void Recount_ByOtherCode_AgreesWithTheRecallCase()
    {
        // The list comes from the graph of parcels and a sweep, the recount from suspect grams carried through the movements.
        var mill = RecallCase.Posed();
        var tracer = Tracer.Over(mill.Book);
        var recall = tracer.Recall(new RecallQuestion([new Suspicion(mill.Book.Named("SUSPECT"))]) { Threshold = Mass.FromKilograms(50) });
        var score = tracer.Score(recall, NetKind.Union, 0.1, 0.2);
        Assert.Equal((1.0, 0.1, 0.2), (score.Completeness, score.SecondsBack, score.SecondsForward));
        Assert.Empty(score.Missed);
        Assert.Equal(recall.Net(NetKind.Union).Packages.Count, score.Recounted, 1.0);
        Assert.InRange(score.GreatestDifferenceGrams, 0, 12_000);
        Assert.InRange(score.Precision, 0.4, 0.99);

        // First in first out alone: what is listed is what holds some, all but what the slices blur.
        var alone = tracer.Recall(new RecallQuestion([new Suspicion(mill.Book.Named("SUSPECT"))]) { Threshold = Mass.FromKilograms(50) }, [new Belief(Outflow.FirstInFirstOut, 1)]);
        Assert.Equal(1, tracer.Score(alone, NetKind.Narrow, 0, 0).Precision);
    }

    [Fact]
    public void Score_OfAListThatMisses_SaysSo()
    {
        var mill = RecallCase.Posed(hours: 80);
        var tracer = Tracer.Over(mill.Book);
        var recall = tracer.Recall(new RecallQuestion([new Suspicion(mill.Book.Named("SUSPECT"))]) { Threshold = Mass.FromKilograms(50), Chance = 0.5 });

        // The narrow net at a chance of 0.5 leaves out what core first alone puts over 50 kg.
        var score = tracer.Score(recall, NetKind.Narrow, 0, 0);
        Assert.InRange(score.Completeness, 0.2, 0.8);
        Assert.NotEmpty(score.Missed);
    }

    [Fact]
    public void Subject_TheSameForTheSameSeed_AndNotAlwaysTheSame()
    {
        var mill = new RandomPlant(5, throughToo: false).Mill;
        Place? Pick(int seed) => DrillSubject.Pick(mill.Book, seed, PosedMill.Hour(0), PosedMill.Hour(RandomPlant.End));
        Assert.Equal(Pick(7), Pick(7));
        Assert.True(Enumerable.Range(0, 20).Select(Pick).Distinct().Count() > 5);
        Assert.All(Enumerable.Range(0, 20), seed => Assert.True(Pick(seed)!.Kind is PlaceKind.Truck or PlaceKind.Pallet));
        Assert.Null(DrillSubject.Pick(mill.Book, 1, PosedMill.Hour(900), PosedMill.Hour(901)));
    }

    [Fact]
    public void Kept_ComesBack_WithItsClock()
    {
        var score = new DrillScore(0.03, 0.7, 262, 1_150_000m, 262, [], 1, 0.27, 12, 8, 100m);
        var kept = new KeptDrill("D-2026-001", "25-0709-061", 50_000, NetKind.Union, PosedMill.Hour(0), "Ada Miller", PosedMill.Hour(1), 7, "Ada Miller", PosedMill.Hour(2.5), null, "went well", score);
        Assert.True(KeptDrill.TryRead(kept.ToJson(), out var read, out var faults), string.Join(" ", faults));
        Assert.Equal(kept.ToJson(), read.ToJson());
        Assert.Equal(NodaTime.Duration.FromHours(1.5), read.Clock);
        Assert.True(DrillScore.Within(read.Clock!.Value, DrillScore.CertificationHours));
        Assert.Null((kept with { Aborted = "alarm" }).Clock);

        // One that a person named and that still runs has neither seed nor end nor score.
        var open = kept with { Seed = null, EndedAt = null, EndedBy = null, Note = null, Score = null };
        Assert.True(KeptDrill.TryRead(open.ToJson(), out var again, out faults), string.Join(" ", faults));
        Assert.True(again.IsOpen);
        Assert.True(KeptDrill.TryRead((kept with { Score = score with { AccountedForPercent = null } }).ToJson(), out _, out _));
    }
}
