using Evengrist.Packing.Dispatch;
using Evengrist.Records.Packing.Dispatch;
using Evengrist.Records.Tests.Stores;
using Evengrist.Records.Tracing;
using NodaTime;
using static Evengrist.Records.Tests.Packing.Dispatch.Ramp;

namespace Evengrist.Records.Tests.Packing.Dispatch;

public sealed class ScanPackageTests
{
    [Theory, OnSqlite]
    public void Scan_OfWhatMayNotGo_IsStoppedInWords(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        Plan(mill);
        Plan(mill, "D-2");
        Done(Scan(mill, "p1"));
        Stopped(Scan(mill, "P1"), "P1 is on this load already, scanned by Ben on 2026-07-01");
        Stopped(Scan(mill, "P1", "D-2"), "P1 stands on load D-1, scanned by Ben");
        Stopped(Scan(mill, "P99"), "There is no package P99");
        Stopped(Scan(mill, "BAKERY"), "BAKERY is a customer");
        Stopped(Scan(mill, "EMPTY"), "Nothing was ever packed on EMPTY");
        Stopped(Scan(mill, "B1"), "loose in a tanker");
        Stopped(Scan(mill, " "), "Scan the pallet's label");
        Stopped(Scan(mill, "P2", by: " "), "Say who you are");
        Stopped(Scan(mill, "P2", "D-9"), "There is no load D-9");
        new HoldAll(["P2"], "specks in the flour", Noon).In(mill, "Cleo");
        Stopped(Scan(mill, "P2"), "P2 is on HOLD since 2026-07-01T12:00:00Z, by Cleo: specks in the flour.");
        Assert.Equal(["P1"], DispatchShelf.Find(mill, "d-1")!.Packages.Select(p => p.Code));
    }

    [Theory, OnSqlite]
    public void Scan_OfWhatIsAsked_GoesOnWithAReasonThatIsKept(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        Plan(mill);
        Stopped(Scan(mill, "SM1"), "SM1 is SM; planned are 2 × WB");
        Assert.Contains(Scan(mill, "SM1").Findings, f => f.Words.Contains("Nobody has released its lot SM-260701", StringComparison.Ordinal));
        Done(Scan(mill, "P1"));
        var loaded = Done(Scan(mill, "SM1", reason: "the bakery rang, order 7")).Packages[^1];
        Assert.Equal("the bakery rang, order 7", loaded.Reason);
        Assert.Contains(loaded.Said, s => s.Contains("It has soy; WB beside it has not", StringComparison.Ordinal)); // a caution is kept, and asks nothing
        Done(Scan(mill, "P2"));
        Stopped(Scan(mill, "P3"), "That is 3 of WB, and 2 are planned");
        var off = Done(DispatchShelf.Change(mill, "D-1", "Ben", l => LoadActs.TakeOff(l, "sm1", By("Ben", "wrong flour"))));
        Assert.Equal((2, "wrong flour"), (off.Packages.Count, Assert.Single(off.Unloaded).Reason));
        Stopped(DispatchShelf.Change(mill, "D-1", "Ben", l => LoadActs.TakeOff(l, "P1", By("Ben"))), "Say why");
        Stopped(DispatchShelf.Change(mill, "D-1", "Ben", l => LoadActs.TakeOff(l, "P6", By("Ben", "x"))), "is not on load D-1");
    }

    [Theory, OnSqlite]
    public void Scan_OfFlourNearItsEnd_IsAskedAbout_AndPastItStopped(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        Plan(mill);
        Act At(int year, int month, int day) => new("Ben", Instant.FromUtc(year, month, day, 12, 0)); // packed on 1 July 2026, keeps 12 months; the bakery wants 90 days
        Done(new ScanPackage("D-1", "P1").In(mill, At(2027, 4, 2)));
        Stopped(new ScanPackage("D-1", "P2").In(mill, At(2027, 4, 3)), "keeps until 2027-07-01, 89 days; Small bakery wants 90");
        Stopped(new ScanPackage("D-1", "P2").In(mill, At(2027, 7, 2)), "1 days past");
    }

    [Theory, OnSqlite, OnPostgres]
    public async Task Scan_OfTwoAtOnce_LosesNeither(Store store)
    {
        using var site = new TestSite(store);
        using Mill mill = Open(site), other = site.Open();
        Plan(mill);
        await Task.WhenAll(Task.Run(() => Done(Scan(mill, "P1"))), Task.Run(() => Done(Scan(other, "P2"))));
        Assert.Equal(["P1", "P2"], DispatchShelf.Find(mill, "D-1")!.Packages.Select(p => p.Code).Order());
    }
}
