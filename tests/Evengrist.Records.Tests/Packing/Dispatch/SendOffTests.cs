using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Orders;
using Evengrist.Quantities;
using Evengrist.Records.Packing;
using Evengrist.Records.Packing.Dispatch;
using Evengrist.Records.Tests.Stores;
using Evengrist.Records.Tracing;
using NodaTime;
using static Evengrist.Records.Tests.Packing.Dispatch.Ramp;

namespace Evengrist.Records.Tests.Packing.Dispatch;

public sealed class SendOffTests
{
    [Theory, OnSqlite, OnPostgres]
    public async Task SendOff_SentTwiceAtOnce_WritesOnce(Store store)
    {
        using var site = new TestSite(store);
        using Mill mill = Loaded(site), other = site.Open();
        var before = mill.Ask(v => v.Book.Movements.Count);
        var both = await Task.WhenAll(Task.Run(() => Send(mill, 1)), Task.Run(() => Send(other, 2)));
        Assert.Contains(both, a => a.Load is not null);
        var left = DispatchShelf.Find(mill, "D-1")!.Departed!;
        Stopped(Send(mill, 3), $"Load D-1 left on {left.At}");
        Assert.Equal(before + 2, mill.Ask(v => v.Book.Movements.Count));
        Assert.Equal((Mass.FromTonnes(2m), Mass.Zero), mill.Ask(v => (v.Book.StockOf(v.Book.Named("BAKERY").Id), v.Book.StockOf(v.Book.Named("P1").Id))));
        Assert.Equal([left.At, left.At], mill.Ask(v => v.Book.Movements.Skip(before).Select(m => m.At).ToArray()));
        Plan(mill, "D-2");
        Stopped(new ScanPackage("D-2", "P1").In(mill, By("Ben", "", 4)), "P1 went to BAKERY on");
    }

    [Theory, OnSqlite]
    public void SendOff_WhoseWriteStoodButWhosePaperDidNot_IsFinishedNotWrittenAgain(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Loaded(site);
        var earlier = Noon + Duration.FromMinutes(30);
        mill.Record([new Move("D-1 P1", "P1", "BAKERY", Mass.FromTonnes(1m), earlier) { Note = "load D-1" }, new Move("D-1 P2", "P2", "BAKERY", Mass.FromTonnes(1m), earlier) { Note = "load D-1" }], "Ben", SendOff.Source);
        var before = mill.Ask(v => v.Book.Last);
        // Looked at now, the packages are gone already; the paper follows the ledger.
        var answer = Send(mill, 1);
        Assert.Equal(before, mill.Ask(v => v.Book.Last));
        Assert.Equal(earlier, Done(answer).Departed!.At);
        Assert.Equal(LoadStage.Departed, DispatchShelf.Find(mill, "D-1")!.Stage);
    }

    [Theory, OnSqlite]
    public void SendOff_WithAHoldLaidMeanwhile_Stays_EvenForAnEarlierMoment(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Loaded(site);
        new HoldAll(["P2"], "treated seed reported", Noon + Duration.FromHours(2)).In(mill, "Cleo");
        var before = mill.Ask(v => v.Book.Last);
        Stopped(Send(mill, 3), "P2 is on HOLD since");
        Stopped(Send(mill, 1), "treated seed reported"); // entered for a moment before the hold: the write looks again
        Assert.Equal(before, mill.Ask(v => v.Book.Last)); // P1 stayed with P2: all or none
        Assert.True(DispatchShelf.Find(mill, "D-1")!.IsOpen);
    }

    [Theory, OnSqlite]
    public void SendOff_WithATrailerNotInOrder_IsStopped_UntilMendedOrTurnedAway(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        var rules = KeepDispatchRules.Newest(mill).Rules;
        Plan(mill);
        Stopped(Send(mill, 1), "Nothing stands on it.");
        Stopped(Send(mill, 1), "Floor, walls and doors are clean");
        Stopped(Send(mill, 1), "Ask what the trailer carried before");
        Done(Scan(mill, "P1"));
        Stopped(Send(mill, 1, "4711"), "No seal was put on");
        Done(Scan(mill, "P2"));
        Ready(mill);
        Done(Answer("pests", false, "live beetles at the door"));
        Stopped(Send(mill, 1), "“No insects, rodents, birds or their traces” failed: live beetles at the door (Ben");
        Stopped(Answer("pests", true, ""), "how it was mended");
        Stopped(Answer("colour", true, ""), "no point “colour”");
        Done(Answer("pests", true, "another trailer, T 8, looked through"));
        Stopped(Send(mill, 1, ""), "Read the seals at the gate: 4711");
        Stopped(Send(mill, 1, "4712"), "put on 4711 by Ben on 2026-07-01T12:00:00Z, read 4712");
        Stopped(new SendOff("D-1", ["4711"]).In(mill, By("", "", 1)), "Say who you are");
        Assert.Equal("4712", Done(Send(mill, 1, "4712", "seal broken by the gate guard, trailer looked through")).Departed!.Seals[0]);

        Plan(mill, "D-2");
        Done(Scan(mill, "P3", "D-2"));
        Stopped(DispatchShelf.Change(mill, "D-2", "Ben", l => LoadActs.TurnAway(l, By("Ben"))), "Say why");
        var away = Done(DispatchShelf.Change(mill, "D-2", "Ben", l => LoadActs.TurnAway(l, By("Ben", "smell of diesel"))));
        Assert.Equal((LoadStage.TurnedAway, 0, "P3"), (away.Stage, away.Packages.Count, away.Unloaded[0].Code));
        Stopped(Scan(mill, "P4", "D-2"), "was turned away on");

        LoadAnswer Answer(string point, bool good, string note) => DispatchShelf.Change(mill, "D-1", "Ben", l => LoadActs.Answer(l, point, good, rules, By("Ben", note)));
    }

    [Theory, OnSqlite]
    public void SendOff_OfATanker_HangsOnItsLastLoadAndWash(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        Plan(mill, "D-3", tanker: true);
        Stopped(Scan(mill, "P1", "D-3"), "P1 is a pallet, and load D-3 is a tanker");
        Done(Scan(mill, "B1", "D-3"));
        Ready(mill, "D-3");
        Last("feed", "");
        Stopped(Send(mill, 1, number: "D-3"), "flour may never follow");
        Last("sugar", "");
        Stopped(Send(mill, 1, number: "D-3"), "only after a wash");
        Last("cement", "W-12");
        Stopped(Send(mill, 1, number: "D-3"), "do not say whether flour may follow cement in a tanker");
        Last("Sugar", "W-12");
        Assert.Equal(Mass.FromTonnes(20m), mill.Ask(v => v.Book.StockOf(v.Book.Named("B1").Id)));
        Done(Send(mill, 1, number: "D-3"));
        Assert.Equal(Mass.FromTonnes(20m), mill.Ask(v => v.Book.StockOf(v.Book.Named("BAKERY").Id)));

        void Last(string what, string wash) => Done(DispatchShelf.Change(mill, "D-3", "Ben", l => LoadActs.Ask(l, what, wash, null, By("Ben"))));
    }

    [Theory, OnSqlite]
    public void TakeBack_AfterItLeft_IsAFurtherMovementAndAHold_Once(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Loaded(site);
        Stopped(Back("P1", "torn", 2), "has not left");
        Assert.Equal("D-1", Seen("P1", 0.5).OnLoad);
        Done(Send(mill, 1));
        Assert.Equal((UnitWhere.Sent, null, true), (Seen("P1", 1.5).Stand.Where, Seen("P1", 1.5).OnLoad, Seen("P1", 1.5).Standing.StartsWith("with BAKERY since", StringComparison.Ordinal)));
        Stopped(Back("P1", "", 2), "Say why it came back");
        Stopped(Back("P5", "torn", 2), "P5 did not leave on load D-1");
        Stopped(Back("P1", "torn", 0.5), "cannot be back before that");
        Done(Back("P1", "torn bags", 2));
        Stopped(Back("P1", "torn bags", 3), "P1 came back on");
        Assert.Equal((Mass.FromTonnes(1m), Mass.FromTonnes(1m)), mill.Ask(v => (v.Book.StockOf(v.Book.Named("BAKERY").Id), v.Book.StockOf(v.Book.Named("P1").Id))));
        // Scan, label and ramp tell the same: it is here again, and what came back is not packed anew.
        Assert.Equal((UnitWhere.CameBack, Mass.FromTonnes(1m)), (Seen("P1", 4).Stand.Where, Seen("P1", 4).Packed));
        Assert.Contains("back from BAKERY on 2026-07-01T14:00:00Z", Seen("P1", 4).Standing, StringComparison.Ordinal);
        Assert.Equal((UnitWhere.Sent, ""), (Seen("P2", 4).Stand.Where, RampPackages.Of(mill, ["P1"], Noon + Duration.FromHours(4))[0].GoneTo));
        Plan(mill, "D-2");
        Stopped(new ScanPackage("D-2", "P1").In(mill, By("Ben", "", 4)), "P1 is on HOLD since 2026-07-01T14:00:00Z, by Ben: came back from BAKERY: torn bags");

        ScannedUnit Seen(string code, double hours) => ScannedPlaces.Unit(mill, code, Noon + Duration.FromHours(hours))!;
        LoadAnswer Back(string code, string why, double hours) => new TakeBack("D-1", code).In(mill, By("Ben", why, hours));
    }

    [Theory, OnSqlite]
    public void SendOff_OfMoreThanOrdered_AsksForAReason(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        var order = new PackingOrder("SO-1", "BAKERY", "WB-25", 120, OrderUnit.Packs, Noon + Duration.FromHours(8), Packed);
        Assert.Empty(PackingOrders.Keep(mill, order, "Ada", 0).Faults);
        Assert.NotNull(DispatchShelf.Plan(mill, new DispatchLoad("D-1", Day, "BAKERY") { Trailer = "T 7", Orders = ["so-1"] }, "Ben").Load);
        Assert.NotNull(DispatchShelf.Plan(mill, new DispatchLoad("D-2", Day, "BAKERY") { Trailer = "T 8", Orders = ["SO-1"] }, "Ben").Load);
        Done(Scan(mill, "P1"));
        Done(Scan(mill, "P2"));
        Ready(mill);
        Done(Scan(mill, "P3", "D-2"));
        Done(Scan(mill, "P4", "D-2"));
        Ready(mill, "D-2");
        Assert.Equal((3m, 0m, 2m, 2m), Row("D-1", 0.5));
        Done(Send(mill, 1)); // two tonnes of three
        Assert.Equal((3m, 2m, 2m, 0m), Row("D-2", 1.5));
        Stopped(Send(mill, 2, number: "D-2"), "More than ordered: of 3 t of order SO-1 2 t went before and 2 t stand on this load, 1 t too much");
        // One of the first load comes back: nothing is too much any more.
        Done(new TakeBack("D-1", "P1").In(mill, By("Ben", "torn", 2)));
        Assert.Equal((3m, 1m, 2m, 0m), Row("D-2", 2.5));
        Assert.Equal((3m, 1m, 2m), SeenLoad.OfOrder(mill, "so-1", Noon + Duration.FromHours(2.5)) is var open ? (open.Ordered.Tonnes, open.Sent.Tonnes, open.Elsewhere.Tonnes) : default);
        Done(Send(mill, 3, number: "D-2"));
        Assert.Equal((3m, 3m, 0m), SeenLoad.OfOrder(mill, "SO-1", Noon + Duration.FromHours(4)) is var sent ? (sent.Ordered.Tonnes, sent.Sent.Tonnes, sent.Elsewhere.Tonnes) : default);
        Assert.Equal((3m, 1m, 2m, 0m), Row("D-2", 4));

        (decimal, decimal, decimal, decimal) Row(string number, double hours) => SeenLoad.Of(mill, number, Noon + Duration.FromHours(hours))!.Filled.Orders.Single() is var o ? (o.Ordered.Tonnes, o.Sent.Tonnes, o.Here.Tonnes, o.Elsewhere.Tonnes) : default;
    }

    private static Mill Loaded(TestSite site)
    {
        var mill = Open(site);
        Plan(mill);
        Done(Scan(mill, "P1"));
        Done(Scan(mill, "P2"));
        Ready(mill);
        return mill;
    }

    private static LoadAnswer Send(Mill mill, double hours, string seal = "4711", string reason = "", string number = "D-1") => new SendOff(number, seal.Split(' ')).In(mill, By("Ben", reason, hours));
}
