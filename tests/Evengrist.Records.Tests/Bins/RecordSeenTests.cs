using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using Evengrist.Records.Bins;
using Evengrist.Records.Tests.Stores;

namespace Evengrist.Records.Tests.Bins;

public sealed class RecordSeenTests
{
    private static readonly RecordSeen Seen = new("s1", "b1", SmallMill.Morning)
    {
        CarbonDioxidePpm = 620m, Insects = (0, 1), Aeration = new AerationRun(40, 0.104), Words = "from the hatch",
    };

    [Theory, OnSqlite, OnPostgres]
    public void In_AllThatWasSeen_ReadsBackAndTwiceIsOnce(Store store)
    {
        using var site = new TestSite(store);
        using (var mill = Open(site))
        {
            Assert.Equal(4, Seen.In(mill, "Ada").Added);
            Assert.Equal((0, 4), (Seen.In(mill, "Ada").Added, Seen.In(mill, "Ada").AlreadyKnown));
        }

        using var again = site.Open();
        again.Ask(view =>
        {
            var bin = view.Book.Named("B1").Id;
            Assert.Equal(new InsectCheck(SmallMill.Morning, 0, 1), InsectCheck.Of(view.Book, bin, SmallMill.Morning));
            Assert.Equal(620, CarbonDioxideTrend.Of(view.Book, bin, SmallMill.Morning)!.Ppm);
            var aired = Assert.Single(view.Book.HappeningsOn(bin));
            Assert.Equal((new AerationRun(40, 0.104), "aerated 40 h at 0.104 m³/min t: from the hatch"), (AerationRun.Of(aired), aired.Words));
            return true;
        });
    }

    [Theory, OnSqlite]
    public void In_WhatCannotBe_IsRefusedAndNothingIsThere(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        var before = mill.Ask(v => v.Book.Last);
        Assert.Contains("nothing was seen", Refused(new RecordSeen("a", "B1", SmallMill.Morning)), StringComparison.Ordinal);
        Assert.Contains("wheat bins", Refused(Seen with { Bin = "LEG" }), StringComparison.Ordinal);
        Assert.Contains("cannot be", Refused(Seen with { CarbonDioxidePpm = -1m }), StringComparison.Ordinal);
        Assert.Equal(before, mill.Ask(v => v.Book.Last));

        string Refused(RecordSeen seen) => Assert.Throws<LedgerRefusal>(() => seen.In(mill, "Ada")).Message;
    }

    private static Mill Open(TestSite site)
    {
        var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        return mill;
    }
}
