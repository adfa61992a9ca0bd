using Evengrist.Ledger;
using Evengrist.Records.Streams;
using Evengrist.Records.Tests.Stores;
using Evengrist.Streams.Additions;
using NodaTime;

namespace Evengrist.Records.Tests.Streams;

public sealed class CountLotTests
{
    private static readonly Instant At = SmallMill.Morning + Duration.FromHours(1);

    [Theory, OnSqlite, OnPostgres]
    public void In_DeliveriesOfANewAdditive_OpenLotsOfIt(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        var first = new CountLot("a", "MALT-1", At, 500m, "maker's note") { Additive = "malt", StandardUncertainty = 2m };
        Assert.Equal((2, 1), (first.In(mill, "Ada").Added, first.In(mill, "Ada").AlreadyKnown));
        Assert.Equal(2, new CountLot("b", "MALT-2", At, 400.5m, "maker's note") { Additive = "Malt" }.In(mill, "Ada").Added);
        Assert.Equal(1, new CountLot("c", "malt-1", At + Duration.FromHours(1), 80m, "bags counted").In(mill, "Ben").Added);
        mill.Ask(view =>
        {
            var malt = Assert.Single(AdditiveStock.Of(view.Book, At + Duration.FromHours(2)));
            Assert.Equal(("malt", 480.5), (malt.Additive, Math.Round(malt.LeftKilograms!.Value, 6)));
            return 0;
        });
    }

    [Theory, OnSqlite]
    public void In_WhatCannotBe_IsRefusedAndNothingRecorded(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        string Refused(CountLot entry) => Assert.Throws<LedgerRefusal>(() => entry.In(mill, "Ada")).Message;
        Assert.Contains("which additive it is of", Refused(new("a", "MALT-1", At, 5m, "weighed")), StringComparison.Ordinal);
        Assert.Contains("is no lot of an additive", Refused(new("c", "B1", At, 5m, "weighed")), StringComparison.Ordinal);
        Assert.Contains("how it was found", Refused(new("d", "MALT-1", At, 5m, " ") { Additive = "malt" }), StringComparison.Ordinal);
        Refused(new("f", "MALT-1", At, -5m, "weighed") { Additive = "malt" });
        Assert.Empty(mill.Ask(view => AdditiveStock.Of(view.Book, At)));
    }

    private static Mill Open(TestSite site)
    {
        var mill = site.Open();
        mill.Record([.. SmallMill.Places], "Ada", "test");
        return mill;
    }
}
