using Evengrist.Ledger;
using Evengrist.Packing.Lines;
using Evengrist.Quantities;
using Evengrist.Records.Tests.Stores;
using Evengrist.Records.Tracing;
using Evengrist.Tracing.Bounds;
using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Records.Tests;

public sealed class RecallGapsTests
{
    [Theory, OnSqlite]
    public void CleanDown_WhoseFlushWasMovedNowhere_IsToldUntilItIs(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        static Instant Hour(double hours) => SmallMill.Morning + Duration.FromHours(hours);
        mill.Record(
            [
                .. SmallMill.Places, new OpenPlace("fb", "FB1", PlaceKind.FlourBin), new OpenPlace("l", "L1", PlaceKind.PackingLine) { Stirred = Mass.FromKilograms(100) }, new Connect("fl", "FB1", "L1"), new OpenPlace("p", "P1", PlaceKind.Pallet),
                new OpenPlace("w", "WASTE", PlaceKind.Waste), new Move("g", "GAIN", "FB1", Mass.FromTonnes(60m), SmallMill.Morning), new Move("m1", "FB1", "L1", Mass.FromTonnes(1.1m), Hour(1), Hour(2)), new Move("m2", "L1", "P1", Mass.FromTonnes(1m), Hour(1), Hour(2)),
            ],
            "Ada", "test");
        StillUnknown[] Flushed() => [.. mill.Ask(view => RecallGaps.With(mill, view.Tracer().Recall(new RecallQuestion([new Suspicion(view.Book.Named("FB1"), Hour(1), Hour(2))]) { AsOf = Hour(48) })).Unknown.Where(u => u.Kind == UnknownKind.Flushed))];
        Assert.Empty(Flushed());

        // One while the suspect can be on the line, one long before it came there, one of another line.
        foreach (var (line, at) in new[] { ("l1", 4.0), ("L1", -30), ("L2", 4) })
        {
            mill.Papers(CleanDown.PaperKind).Keep($"{line} {at}", 1, new CleanDown(line, "SOY", ["soy"], Hour(at), "Cid", "flushed with wheat flour", 30).ToJson(), "Cid");
        }

        var told = Assert.Single(Flushed());
        Assert.Equal(("L1", Hour(3.5), Hour(4)), (told.Place!.Code, told.From!.Value, told.Until!.Value));
        mill.Record([new Move("m3", "L1", "WASTE", Mass.FromKilograms(50), Hour(5))], "Ada", "test");
        told = Assert.Single(Flushed());
        Assert.Equal((50_000.0, "WASTE"), (told.Grams!.Value, told.Others.Single().Code));
    }
}
