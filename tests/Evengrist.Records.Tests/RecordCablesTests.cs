using Evengrist.Bins;
using Evengrist.Bins.Shape;
using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using Evengrist.Records.Bins;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests;

public sealed class RecordCablesTests
{
    private static readonly RecordCables Round = new("B2", SmallMill.Morning, [(new("C1", 4.0m), 18.5m), (new("C1", 8.0m), 21m)]);

    [Theory, OnSqlite, OnPostgres]
    public void RecordCables_Round_IsReadBackByPointAndTwiceIsOnce(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        Assert.Equal(2, Round.In(mill, "Ada").Added);
        Assert.Equal(2, Round.In(mill, "Ada").AlreadyKnown);
        var read = mill.Ask(v => CableReading.Of(v.Book, v.Book.Named("B2").Id, SmallMill.Morning));
        Assert.Equal([("C1 at 4.0 m", 18.5), ("C1 at 8.0 m", 21.0)], read.Select(r => (r.Point.ToString(), r.Celsius)));
        Assert.Empty(mill.Ask(v => CableReading.Of(v.Book, v.Book.Named("B2").Id, SmallMill.Morning - Duration.FromHours(1))));
    }

    [Theory, OnSqlite]
    public void RecordCables_WhatCannotBe_IsRefusedAndNothingIsThere(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var before = mill.Ask(v => v.Book.Last);
        Assert.Contains("at least one point", Refused(Round with { Points = [] }), StringComparison.Ordinal);
        Assert.Contains("C1 at 4.0 m stands twice", Refused(Round with { Points = [(new("C1", 4.0m), 18m), (new("C1", 4.00m), 19m)] }), StringComparison.Ordinal);
        Assert.Contains("cannot be", Refused(Round with { Points = [(new("C1", 4.0m), 999m)] }), StringComparison.Ordinal);
        Assert.Contains("only wheat bins", Refused(Round with { Bin = "LEG" }), StringComparison.Ordinal);
        Assert.Contains("no place", Refused(Round with { Bin = "B99" }), StringComparison.Ordinal);
        mill.Papers(BinPapers.Shape).KeepNext("B2", BinPapers.Write(new BinShape { DiameterMetres = 4, WallMetres = 6, HopperDegrees = 45, OutletMetres = 1 }), "Ada");
        Assert.Contains("C1 at 8.0 m lies above its eave, 7.5 m up", Refused(Round), StringComparison.Ordinal);
        Assert.Equal(before, mill.Ask(v => v.Book.Last));

        string Refused(RecordCables round) => Assert.Throws<LedgerRefusal>(() => round.In(mill, "Ada")).Message;
    }

    [Theory, OnSqlite, OnPostgres]
    public void KeepEmcConstants_ChangedTable_IsANewVersionAndTheSameIsNot(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        Assert.Equal((EmcTable.Start, 0, ""), KeepEmcConstants.Newest(mill));
        var own = EmcTable.Start with { Constants = [EmcTable.Start.Constants[0] with { A = 2.3e-5, Mark = ConstantMark.Read, Source = "the standard, looked up" }, .. EmcTable.Start.Constants.Skip(1)] };
        Assert.Equal(1, KeepEmcConstants.Keep(mill, own, "Ada"));
        Assert.Equal(1, KeepEmcConstants.Keep(mill, own, "Ada"));
        Assert.Equal(2, KeepEmcConstants.Keep(mill, EmcTable.Start, "Ben"));
        var (table, version, by) = KeepEmcConstants.Newest(mill);
        Assert.Equal((2, "Ben"), (version, by));
        Assert.Equal(EmcTable.Start.Constants, table.Constants);
        Assert.Contains("above 0", Assert.Throws<ArgumentException>(() => KeepEmcConstants.Keep(mill, own with { Constants = [own.Constants[0] with { A = -1 }] }, "Ada")).Message, StringComparison.Ordinal);
    }

    private static Mill Filled(TestSite site)
    {
        var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        return mill;
    }
}
