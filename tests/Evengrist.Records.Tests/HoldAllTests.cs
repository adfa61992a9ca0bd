using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Tests.Stores;
using Evengrist.Records.Tracing;
using Evengrist.Tracing.Recall;
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
        Assert.Empty(outcome.LeftSince);
        Assert.Equal(LedgerRule.OnHold, Assert.Throws<LedgerRefusal>(() => mill.Record([new Move("m4", "L2", "BAKERY", Mass.FromTonnes(1m), later)], "Ada", "test")).Rule);
        outcome = new HoldAll(["FB1"], "treated seed", later).In(mill, "Cid");
        Assert.Equal((0, "FB1"), (outcome.Receipt.Added, Assert.Single(outcome.AlreadyHeld)));
        Assert.Equal(LedgerRule.UnknownPlace, Assert.Throws<LedgerRefusal>(() => new HoldAll(["FB9"], "treated seed", later).In(mill, "Cid")).Rule);
    }

    [Fact]
    public void HoldAll_FromBeforeItLeft_SaysThatItHasLeftSince()
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = site.Open();
        var (at, left) = (SmallMill.Morning, SmallMill.Morning + Duration.FromHours(2));
        mill.Record(
            [
                .. SmallMill.Places, new OpenPlace("fb", "FB1", PlaceKind.FlourBin), new OpenPlace("cu", "BAKERY", PlaceKind.Customer), new OpenPlace("l1", "L1", PlaceKind.BulkLoad),
                new Move("g", "GAIN", "FB1", Mass.FromTonnes(60m), at), new Move("m1", "FB1", "L1", Mass.FromTonnes(20m), at), new Move("m2", "L1", "BAKERY", Mass.FromTonnes(20m), left),
            ],
            "Ada", "test");
        var outcome = new HoldAll(["L1"], "metal found", at + Duration.FromHours(1)).In(mill, "Cid");
        Assert.Equal(("L1", 0), (Assert.Single(outcome.Held), outcome.Gone.Count));
        Assert.Equal([new GoneToCustomer("L1", "BAKERY", Mass.FromTonnes(20m), left)], outcome.LeftSince);
    }

    [Theory]
    [InlineData(-30)] // before the earlier hold
    [InlineData(30)] // while it lasted
    [InlineData(90)] // after its release
    public void HoldAll_HeldAndReleasedBefore_IsOnHoldAgain(int minutes)
    {
        using var site = new TestSite(Store.Sqlite);
        using var mill = site.Open();
        var at = SmallMill.Morning;
        mill.Record(
            [
                .. SmallMill.Places, new OpenPlace("fb", "FB1", PlaceKind.FlourBin), new Move("g", "GAIN", "FB1", Mass.FromTonnes(60m), at - Duration.FromHours(2)),
                new Happen("h", "FB1", at, HappeningKind.Held, "one reading"), new Happen("r", "FB1", at + Duration.FromHours(1), HappeningKind.Released, "retested"),
            ],
            "Ada", "test");
        var asked = at + Duration.FromMinutes(minutes);
        var outcome = new HoldAll(["FB1"], "metal found", asked).In(mill, "Cid");
        Assert.Equal(["FB1"], outcome.Held);
        Assert.Empty(outcome.AlreadyHeld);
        Assert.NotNull(mill.Ask(v => v.Book.HoldOn(v.Book.Named("FB1").Id, asked)));
        Assert.Equal("metal found", mill.Ask(v => v.Book.HoldOn(v.Book.Named("FB1").Id, at + Duration.FromHours(2))!.Text));
        Assert.Equal("FB1", Assert.Single(new HoldAll(["FB1"], "metal found", asked).In(mill, "Cid").AlreadyHeld));
    }

    [Theory, OnSqlite, OnPostgres]
    public async Task Issue_ManyAtOnceFromTwoPrograms_EachGetsANumberOfItsOwn_AndEveryPackageIsHeldOnce(Store store)
    {
        using var site = new TestSite(store);
        using var one = site.Open();
        string[] loads = [.. Enumerable.Range(0, 12).Select(n => $"L{n}")];
        one.Record(
            [
                .. SmallMill.Places, new OpenPlace("fb", "FB1", PlaceKind.FlourBin), .. loads.Select(l => new OpenPlace(l, l, PlaceKind.BulkLoad)),
                new Move("g", "GAIN", "FB1", Mass.FromTonnes(60m), SmallMill.Morning), .. loads.Select(l => new Move(l + "/fill", "FB1", l, Mass.FromTonnes(1m), SmallMill.Morning)),
            ],
            "Ada", "test");
        using var other = site.Open();
        using var start = new Barrier(loads.Length / 2);
        var issued = await Task.WhenAll(Enumerable.Range(0, loads.Length / 2).Select(n => Task.Factory.StartNew(
            () =>
            {
                // Each also names a load that the next one names: both may hold it, and neither is refused.
                var draft = new KeptRecall("", "FB1", SmallMill.Morning, NetKind.Union, 0, 0, $"Metal found, {n}", n % 2 == 0 ? "Cid" : "Dee", SmallMill.Morning + Duration.FromHours(1), [loads[2 * n], loads[2 * n + 1], loads[(2 * n + 2) % loads.Length]], "");
                start.SignalAndWait();
                return Recalls.Issue(n % 2 == 0 ? one : other, draft);
            },
            TaskCreationOptions.LongRunning)));
        Assert.Equal(Enumerable.Range(1, issued.Length).Select(n => $"R-2026-{n:000}"), issued.Select(i => i.Recall.Number).Order(StringComparer.Ordinal));
        Assert.Equal(issued.Length, Recalls.All(one).Count);
        Assert.Equal(loads.Order(StringComparer.Ordinal), issued.SelectMany(i => i.Held.Held).Order(StringComparer.Ordinal));
        Assert.Equal(loads.Length / 2, issued.Sum(i => i.Held.AlreadyHeld.Count));
        Assert.All(issued, i => Assert.All(i.Held.Held, code => Assert.Equal(i.Recall.HoldText, one.Ask(v => v.Book.HoldOn(v.Book.Named(code).Id, SmallMill.Morning + Duration.FromHours(2))!.Text))));
    }
}
