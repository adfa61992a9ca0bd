using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using Evengrist.Records.Tests.Stores;

namespace Evengrist.Records.Tests;

public sealed class ReceiveTruckTests
{
    private static readonly ReceiveTruck Truck = new("26-0701-001", "F1", Mass.FromKilograms(40_220m), Mass.FromKilograms(13_880m), SmallMill.Morning)
    {
        Plate = "KS 482", Material = "HRW", Contract = ("SPOT", 2), Route = ["PIT", "LEG", "B2"],
        Readings = [new(Property.Protein, 12.10m, "%", Basis.At12, "NIR", "N1", 0.15m), new(Property.Moisture, 11.4m, "%", default, "NIR", "N1")],
    };

    [Theory, OnSqlite, OnPostgres]
    public void ReceiveTruck_WholeTicket_LiesInTheBin(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        Assert.Equal(10, Truck.In(mill, "Ada").Added);
        Assert.Equal(10, Truck.In(mill, "Ada").AlreadyKnown);
        mill.Ask(v =>
        {
            var place = v.Book.Named("26-0701-001");
            Assert.Equal((PlaceKind.Truck, "KS 482", "HRW", Mass.Zero), (place.Kind, place.Name, place.Material, v.Book.StockOf(place.Id)));
            Assert.Equal(Mass.FromKilograms(26_340m), v.Book.StockOf(v.Book.Named("B2").Id));
            Assert.Equal([Property.GrossWeight, Property.TareWeight, Property.Protein, Property.Moisture], v.Book.ReadingsOn(place.Id).Select(r => r.What));
            Assert.Equal("SPOT 2", v.Book.HappeningsOn(place.Id).Single(h => h.Kind == HappeningKind.Contract).Text);
            return 0;
        });
    }

    [Theory, OnSqlite, OnPostgres]
    public void ReceiveTruck_WhatCannotBe_IsRefusedAndNothingIsThere(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var before = mill.Ask(v => v.Book.Last);
        Assert.Contains("must lie above the tare", Assert.Throws<LedgerRefusal>(() => (Truck with { Tare = Mass.FromKilograms(40_220m) }).In(mill, "Ada")).Message, StringComparison.Ordinal);
        Assert.Contains("no version 3 of a contract SPOT", Assert.Throws<LedgerRefusal>(() => (Truck with { Contract = ("SPOT", 3) }).In(mill, "Ada")).Message, StringComparison.Ordinal);
        Assert.Equal(LedgerRule.UnknownPlace, Assert.Throws<LedgerRefusal>(() => (Truck with { Route = ["PIT", "LEG", "B9"] }).In(mill, "Ada")).Rule);
        Assert.Equal(LedgerRule.Malformed, Assert.Throws<LedgerRefusal>(() => (Truck with { Readings = [new(Property.Protein, 12.1m, "%", default, "NIR")] }).In(mill, "Ada")).Rule);
        Assert.Equal(before, mill.Ask(v => v.Book.Last));
    }

    private static Mill Filled(TestSite site)
    {
        var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        mill.Contracts.Keep("SPOT", 2, "{\"price\": 6.10}", "Ada");
        return mill;
    }
}
