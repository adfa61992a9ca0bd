using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Tests.Stores;
using Evengrist.Records.Tracing;
using NodaTime;

namespace Evengrist.Records.Tests;

public sealed class HoldAllTests
{
    [Theory, OnSqlite, OnPostgres]
    public void HoldAll_SomeGoneToACustomer_HoldsTheRestAndNamesThem(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        var (at, later) = (SmallMill.Morning, SmallMill.Morning + Duration.FromHours(1));
        mill.Record(
            [
                .. SmallMill.Places,
                new OpenPlace("fb", "FB1", PlaceKind.FlourBin), new OpenPlace("cu", "BAKERY", PlaceKind.Customer),
                new OpenPlace("l1", "L1", PlaceKind.BulkLoad), new OpenPlace("l2", "L2", PlaceKind.BulkLoad),
                new Move("g", "GAIN", "FB1", Mass.FromTonnes(60m), at),
                new Move("m1", "FB1", "L1", Mass.FromTonnes(20m), at), new Move("m2", "FB1", "L2", Mass.FromTonnes(20m), at),
                new Move("m3", "L1", "BAKERY", Mass.FromTonnes(20m), at),
            ],
            "Ada", "test");
        var outcome = new HoldAll(["fb1", "L1", "L2", "FB1"], "treated seed", later).In(mill, "Cid");
        Assert.Equal(["FB1", "L2"], outcome.Held);
        Assert.Equal([new GoneToCustomer("L1", "BAKERY", Mass.FromTonnes(20m), at)], outcome.Gone);
        Assert.Empty(outcome.AlreadyHeld);
        Assert.Equal(LedgerRule.OnHold, Assert.Throws<LedgerRefusal>(() => mill.Record([new Move("m4", "L2", "BAKERY", Mass.FromTonnes(1m), later)], "Ada", "test")).Rule);
        outcome = new HoldAll(["FB1"], "treated seed", later).In(mill, "Cid");
        Assert.Equal((0, "FB1"), (outcome.Receipt.Added, Assert.Single(outcome.AlreadyHeld)));
        Assert.Equal(LedgerRule.UnknownPlace, Assert.Throws<LedgerRefusal>(() => new HoldAll(["FB9"], "treated seed", later).In(mill, "Cid")).Rule);
    }
}
