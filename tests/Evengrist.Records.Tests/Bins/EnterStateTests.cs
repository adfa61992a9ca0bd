using Evengrist.Bins.States;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Bins;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Bins;

public sealed class EnterStateTests
{
    private static readonly GasClearance Cleared = new("R. Voss", "4711", "0.05 ppm at hatch and outlet");

    [Theory, OnSqlite, OnPostgres]
    public void In_GasOverAlready_RecordsBothEndsAndReadsBack(Store store)
    {
        using var site = new TestSite(store);
        using (var mill = Open(site))
        {
            var entry = new EnterState("k1", "B1", HappeningKind.UnderGas, Hour(2), "placards up, R. Voss") { Until = Hour(50), Clearance = Cleared };
            Assert.Equal(2, entry.In(mill, "Ada").Added);
            Assert.Equal((0, 2), (entry.In(mill, "Ada").Added, entry.In(mill, "Ada").AlreadyKnown));
        }

        using var again = site.Open();
        Assert.NotNull(again.Ask(v => v.Book.BarsOn(v.Book.Named("B1").Id, Hour(49))).UnderGas);
        Assert.False(again.Ask(v => v.Book.BarsOn(v.Book.Named("B1").Id, Hour(50))).IsAny);
        var clearance = again.Ask(v => v.Book.HappeningsOn(v.Book.Named("B1").Id).Single(h => h.Kind == HappeningKind.GasCleared));
        Assert.Equal(Cleared, GasClearance.Read(clearance.Particulars));
        Assert.Equal(LedgerRule.UnderGas, Assert.Throws<LedgerRefusal>(() => again.Record(SmallMill.Truck("T9", 20m, Hour(3)), "Ada", "test")).Rule);
        again.Record(SmallMill.Truck("T9", 20m, Hour(51)), "Ada", "test");
    }

    [Theory, OnSqlite]
    public void In_WhatCannotBe_IsRefusedAndNothingRecorded(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        string Refused(EnterState entry) => Assert.Throws<LedgerRefusal>(() => entry.In(mill, "Ada")).Message;
        Assert.Contains("not under gas at that moment: there is nothing to clear", Refused(new("z", "B1", HappeningKind.GasCleared, Hour(1), "") { Clearance = Cleared }), StringComparison.Ordinal);
        Assert.Contains("not on hold", Refused(new("y", "B1", HappeningKind.Released, Hour(1), "sound")), StringComparison.Ordinal);
        new EnterState("g", "B1", HappeningKind.UnderGas, Hour(1), "placards up").In(mill, "Ada");
        Assert.Contains("licence number", Refused(new("a", "B1", HappeningKind.GasCleared, Hour(2), "") { Clearance = Cleared with { Licence = " " } }), StringComparison.Ordinal);
        Assert.Contains("licensed person", Refused(new("b", "B1", HappeningKind.UnderGas, Hour(1), "gas") { Until = Hour(5) }), StringComparison.Ordinal);
        Assert.Contains("ends before it begins", Refused(new("c", "B1", HappeningKind.PersonInside, Hour(5), "sweeping") { Until = Hour(4) }), StringComparison.Ordinal);
        Assert.Contains("have an end", Refused(new("d", "B1", HappeningKind.Note, Hour(5), "note") { Until = Hour(6) }), StringComparison.Ordinal);
        Assert.Contains("in words", Refused(new("e", "B1", HappeningKind.Shut, Hour(5), "")), StringComparison.Ordinal);
        var end = new EnterState("f", "B1", HappeningKind.GasCleared, Hour(6), "") { Clearance = Cleared };
        Assert.Equal((1, 1), (end.In(mill, "Ada").Added, end.In(mill, "Ada").AlreadyKnown));
        Assert.False(mill.Ask(v => v.Book.BarsOn(v.Book.Named("B1").Id, Hour(99))).IsAny);
    }

    [Theory, OnSqlite, OnPostgres]
    public void CorrectStock_SoundedLess_BooksAShortageToTheGram(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        var (difference, receipt) = new CorrectStock("b1", Hour(4), Mass.FromTonnes(95.5m), "sounded twice, 95.5 ± 1.2 t").In(mill, "Ada");
        Assert.Equal((Mass.FromTonnes(-4.5m), 1), (difference, receipt.Added));
        Assert.Equal(Mass.FromTonnes(95.5m), mill.Stock("B1"));
        Assert.Equal(Mass.FromTonnes(4.5m), mill.Stock("SHORT"));
        Assert.Equal("sounded twice, 95.5 ± 1.2 t", mill.Facts(new Browsing.FactFilter()).Lines[0].Fact.Attribution.Note);
        Assert.Equal(0, new CorrectStock("B1", Hour(5), Mass.FromTonnes(95.5m), "again").In(mill, "Ada").Receipt.Added);
        new CorrectStock("B1", Hour(6), Mass.FromTonnes(97m), "tape hung wrong").In(mill, "Ada");
        Assert.Equal((Mass.FromTonnes(97m), Mass.Zero), (mill.Stock("B1"), mill.SumOfStocks()));
        Assert.Contains("Say why", Assert.Throws<LedgerRefusal>(() => new CorrectStock("B1", Hour(7), Mass.Zero, " ").In(mill, "Ada")).Message, StringComparison.Ordinal);
        Assert.Contains("no bin", Assert.Throws<LedgerRefusal>(() => new CorrectStock("PIT", Hour(7), Mass.Zero, "x").In(mill, "Ada")).Message, StringComparison.Ordinal);
        new EnterState("h", "B1", HappeningKind.Held, Hour(8), "odour").In(mill, "Ada");
        Assert.Equal(LedgerRule.OnHold, Assert.Throws<LedgerRefusal>(() => new CorrectStock("B1", Hour(9), Mass.FromTonnes(1m), "less").In(mill, "Ada")).Rule);
    }

    [Theory, OnSqlite, OnPostgres]
    public void CorrectStock_WithTheSoundingThatFoundIt_IsTakenWholeOrNotAtAll(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        CorrectStock Booked(string key, decimal found, decimal ullage) => new("B1", Hour(4), Mass.FromTonnes(found), "taped")
        {
            Key = key, Beside = [new Measure(key + "/tape", "B1", Hour(4), Property.Ullage, ullage, "m", default, "tape in the middle, heaped")],
        };

        // A heap above the eave reads below zero, which no tape is kept as: the difference is not booked either.
        Assert.Contains("cannot be", Assert.Throws<LedgerRefusal>(() => Booked("a", 90m, -1m).In(mill, "Ada")).Message, StringComparison.Ordinal);
        Assert.Equal(Mass.FromTonnes(100m), mill.Stock("B1"));

        // The same entry once more is one; another of the same moment stands beside it.
        Assert.Equal((2, 0), (Booked("b", 90m, 3m).In(mill, "Ada").Receipt.Added, Booked("b", 90m, 3m).In(mill, "Ada").Receipt.Added));
        Booked("c", 95m, 2.8m).In(mill, "Ada");
        Assert.Equal((Mass.FromTonnes(95m), Mass.Zero), (mill.Stock("B1"), mill.SumOfStocks()));
    }

    private static Mill Open(TestSite site)
    {
        var mill = site.Open();
        mill.Record([.. SmallMill.Places, .. SmallMill.Truck("T1", 100m, SmallMill.Morning)], "Ada", "test");
        return mill;
    }

    private static Instant Hour(int hours) => SmallMill.Morning + Duration.FromHours(hours);
}
