using Evengrist.Ledger;
using Evengrist.Tests.Ledger;
using Evengrist.Tests.Tracing.Bounds;
using Evengrist.Tracing;
using Evengrist.Tracing.Bounds;
using Evengrist.Tracing.Recall;

namespace Evengrist.Tests.Tracing.Recall;

/// <summary>Hours of a place, reckoned on from a checkpoint, beside the whole ledger reckoned anew with the mark. The plants are invented.</summary>
public sealed class OnwardTests
{
    private static readonly string[] Marked = ["B1", "B2", "B3", "MX", "TA", "MU", "FB1", "FB2", "PL"];

    [Fact]
    public void Plants_ReckonedOnFromACheckpoint_AreAsReckonedFromTheBeginning()
    {
        var (touched, later) = (0, 0);
        foreach (var seed in Enumerable.Range(0, 41))
        {
            var book = new RandomPlant(seed, false).Mill.Book;
            var random = new Random(seed);
            var tracer = new Tracer(book, Enum.GetValues<Outflow>().Select(o => new Reckoning(book, o) { StretchesBetweenCheckpoints = 5 }));
            var (place, from) = (book.Named(Marked[random.Next(Marked.Length)]), random.Next(4, 30));
            var start = new Suspicion(place, PosedMill.Hour(from), PosedMill.Hour(from + random.Next(2, 9)));
            var truck = seed % 3 == 0 ? new[] { new Suspicion(book.Named("T6")) } : [];
            foreach (var asOf in new[] { PosedMill.Hour(RandomPlant.End), PosedMill.Hour(from + 9.3) })
            {
                var recall = tracer.Recall(new RecallQuestion([start, .. truck]) { AsOf = asOf });
                if (recall.Nothing is not null)
                {
                    continue;
                }

                Assert.All(recall.AccountedFor, a => Assert.Equal(1, a, 6));
                for (var h = 0; h < recall.Beliefs.Count; h++)
                {
                    var (packed, traced) = Whole(book, recall.Beliefs[h].Outflow, start, truck, asOf);
                    Assert.Equal(traced, recall.Traced.Each[h], 1.0);
                    foreach (var package in recall.Packages)
                    {
                        Assert.True(Math.Abs(package.Grams.Each[h] - packed.GetValueOrDefault(package.Place.Id)) <= 1, $"seed {seed}, {recall.Beliefs[h].Outflow}, {package.Place.Code}: {package.Grams.Each[h]} and {packed.GetValueOrDefault(package.Place.Id)}");
                        touched += package.Grams.Each[h] > 1 ? 1 : 0;
                    }

                    Assert.Empty(packed.Where(p => p.Value > 1).Select(p => p.Key).Except(recall.Packages.Select(p => p.Place.Id)));
                    later += Begins(book, recall.Beliefs[h].Outflow, start) ? 1 : 0;
                }
            }
        }

        // Were nothing reached, or no checkpoint ever used, the test would say nothing.
        Assert.True(touched > 300, $"{touched} packages touched");
        Assert.True(later > 100, $"{later} reckoned on from a checkpoint");
    }

    [Fact]
    public void Moment_BeforeTheEndOfTheLedger_IsSnappedWithTheMark()
    {
        // Derived: 12 t leave B1 evenly from hour 3 to 5; what left in the first hour is marked. At 4:30 the 6 t marked have gone to the unit.
        var mill = new PosedMill().Open(PlaceKind.Field, "F").Open(PlaceKind.Truck, "T").Open(PlaceKind.Bin, "B1").Open(PlaceKind.Bin, "B2").Connect("B1", "B2");
        mill.Move("F", "T", 30, 0).Move("T", "B1", 30, 1).Move("B1", "B2", 12, 3, 5);
        var reckoning = new Reckoning(mill.Book, Outflow.FirstInFirstOut, new Mark(mill.Id("B1"), PosedMill.Hour(3), PosedMill.Hour(4)));
        reckoning.CatchUp();
        var strand = new Strand(reckoning);
        strand.CatchUp();
        strand.Sweep.Forward([.. reckoning.Marked.Select(l => l.Parcel)], [.. reckoning.Marked.Select(_ => 1.0)]);
        var lying = reckoning.At(PosedMill.Hour(4.5)).ContentOf(mill.Id("B2"));
        Assert.Equal(9e6, lying.Sum(l => l.Grams), 1.0);
        Assert.Equal(6e6, lying.Sum(l => l.Grams * strand.Sweep.ShareOf(l.Parcel)), 1.0);
    }

    // Grams of the marked in each package, and all of it, with the whole ledger reckoned anew.
    private static (Dictionary<PlaceId, double> Packed, double Traced) Whole(Book book, Outflow outflow, Suspicion start, Suspicion[] loads, NodaTime.Instant asOf)
    {
        var reckoning = new Reckoning(book, outflow, new Mark(start.Place.Id, start.From!.Value, NodaTime.Instant.Min(asOf, start.Until!.Value)));
        reckoning.CatchUp();
        var strand = new Strand(reckoning);
        strand.CatchUp();
        var of = loads.SelectMany(l => book.MovementsOf(l.Place.Id).Where(m => book.Movements[m].To == l.Place.Id && book.Movements[m].At <= asOf)).Select(reckoning.LoadOf).OfType<int>()
            .Concat(reckoning.Marked.Select(l => l.Parcel)).Distinct().ToArray();
        strand.Sweep.Forward(of, [.. of.Select(_ => 1.0)], Strand.Least);
        var (graph, packed) = (reckoning.Parcels, new Dictionary<PlaceId, double>());
        foreach (var parcel in strand.Sweep.Reached)
        {
            if (graph.MovementOf(parcel) >= 0 && graph.UntilOf(parcel) <= asOf.ToMicros() && book[graph.PlaceOf(parcel)].Kind is PlaceKind.Pallet or PlaceKind.BulkLoad or PlaceKind.ReworkTote)
            {
                packed[graph.PlaceOf(parcel)] = packed.GetValueOrDefault(graph.PlaceOf(parcel)) + graph.GramsOf(parcel) * strand.Sweep.ShareOf(parcel);
            }
        }

        return (packed, of.Sum(p => graph.GramsOf(p) * (1 - Known(strand, p))));
    }

    private static double Known(Strand strand, int parcel)
    {
        var known = 0.0;
        var parents = strand.Parcels.Rows.ParentsOf(parcel);
        var shares = strand.Parcels.Rows.SharesOf(parcel);
        for (var i = 0; i < parents.Length; i++)
        {
            known += shares[i] * strand.Sweep.ShareOf(parents[i]);
        }

        return known;
    }

    private static bool Begins(Book book, Outflow outflow, Suspicion start)
    {
        var whole = new Reckoning(book, outflow) { StretchesBetweenCheckpoints = 5 };
        whole.CatchUp();
        return whole.Onward([new Mark(start.Place.Id, start.From!.Value, start.Until!.Value)], start.From.Value, start.Until.Value).Parcels.Count < whole.Parcels.Count;
    }
}
