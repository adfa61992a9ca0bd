using Evengrist.Ledger;
using Evengrist.Records.Tempering;
using Evengrist.Records.Tests.Stores;
using Evengrist.Tempering;
using NodaTime;

namespace Evengrist.Records.Tests.Tempering;

public sealed class EnterTemperTests
{
    [Theory, OnSqlite, OnPostgres]
    public void In_StartTrimStopAndANote_AreReadBackNewestFirstAndOnce(Store store)
    {
        using var site = new TestSite(store);
        using (var mill = Open(site))
        {
            Assert.Equal(1, Enter("a", TemperAct.FillingBegun, 1, 17.5, 1000).In(mill, "Ada").Added);
            Assert.Equal((0, 1), (Enter("a", TemperAct.FillingBegun, 1, 17.5, 1000).In(mill, "Ada") is var again ? (again.Added, again.AlreadyKnown) : default));
            Enter("b", TemperAct.FillingEnded, 6).In(mill, "Ben");
            Enter("c", TemperAct.WaterSet, 3, null, 1040, "drier wheat").In(mill, "Ada"); // Recorded after the end, of a time before it.
            mill.Record([new Happen("n", "TA", Hour(4), HappeningKind.Note, "wheat warm to the hand")], "Ben", "test");
        }

        using var reopened = site.Open();
        Assert.Equal(
            ["filling ended Ben", "wheat warm to the hand Ben", "water set to 1,040 L/h: drier wheat Ada", "filling begun at 17.5 t/h, water 1,000 L/h Ada"],
            TemperLog.Of(reopened, "TA", Hour(9), 10).Select(l => $"{l.Happening.Words} {l.By}"));
        Assert.Equal(2, TemperLog.Of(reopened, "TA", Hour(3), 10).Count);
        Assert.Single(TemperLog.Of(reopened, "TA", Hour(9), 1));
        Assert.Equal(2000 + 2080, reopened.Ask(v => TemperRun.Of(v.Book, v.Book.Named("TA").Id, Hour(5))).LitresByNow);
    }

    [Theory, OnSqlite]
    public void In_WhatCannotBe_IsRefusedAndNothingRecorded(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        string Refused(EnterTemper entry) => Assert.Throws<LedgerRefusal>(() => entry.In(mill, "Ada")).Message;
        Assert.Contains("no beginning is recorded before that moment", Refused(Enter("a", TemperAct.FillingEnded, 1)), StringComparison.Ordinal);
        Enter("b", TemperAct.DrawingBegun, 2).In(mill, "Ada");
        Assert.Contains("drawing begun is recorded already", Refused(Enter("c", TemperAct.DrawingBegun, 3)), StringComparison.Ordinal);
        Assert.Contains("no beginning is recorded", Refused(Enter("d", TemperAct.DrawingEnded, 1)), StringComparison.Ordinal);
        Assert.Contains("litres an hour", Refused(Enter("e", TemperAct.WaterSet, 3)), StringComparison.Ordinal);
        Assert.Contains("on a temper bin", Refused(Enter("f", TemperAct.WaterSet, 3, null, 10) with { Bin = "B1" }), StringComparison.Ordinal);
        Assert.Equal(LedgerRule.UnknownPlace, Assert.Throws<LedgerRefusal>(() => (Enter("g", TemperAct.WaterSet, 3, null, 10) with { Bin = "T9" }).In(mill, "Ada")).Rule);
        Assert.Equal(LedgerRule.InTheFuture, Assert.Throws<LedgerRefusal>(() => Enter("h", TemperAct.WaterSet, 3, null, 10).In(mill, "Ada", Hour(2))).Rule);
        Assert.Single(TemperLog.Of(mill, "TA", Hour(99), 10));
    }

    private static EnterTemper Enter(string key, TemperAct act, int hour, double? wheat = null, double? water = null, string why = "") => new(key, "TA", new TemperEntry(act, wheat, water), Hour(hour), why);

    private static Mill Open(TestSite site)
    {
        var mill = site.Open();
        mill.Record([.. SmallMill.Places, new OpenPlace("ta", "TA", PlaceKind.TemperBin)], "Ada", "test");
        return mill;
    }

    private static Instant Hour(int hours) => SmallMill.Morning + Duration.FromHours(hours);
}
