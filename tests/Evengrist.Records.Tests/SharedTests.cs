using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Tests.Stores;

namespace Evengrist.Records.Tests;

public sealed class SharedTests
{
    [Theory, OnSqlite, OnPostgres]
    public void Ask_AnotherProcessRecorded_SeesIt(Store store)
    {
        using var site = new TestSite(store);
        using var scale = site.Open();
        using var laboratory = site.Open();
        scale.Record(SmallMill.Places, "Ada", "scale");
        scale.Record(SmallMill.Truck("T1", 26m, SmallMill.Morning), "Ada", "scale");
        Assert.Equal(Mass.FromTonnes(26m), laboratory.Stock("B1"));
        Assert.Equal(new FactId(18), laboratory.Record([new Measure("m", "T1", SmallMill.Morning, Property.Moisture, 11.4m, "%", default, "oven")], "Bea", "laboratory").First);
        Assert.Equal(2, scale.Ask(v => v.Book.ReadingsOn(v.Book.Named("T1").Id).Count));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Record_AnotherProcessTookTheGrain_IsRefused(Store store)
    {
        using var site = new TestSite(store);
        using var one = site.Open();
        using var other = site.Open();
        one.Record(SmallMill.Places, "Ada", "scale");
        one.Record(SmallMill.Truck("T1", 26m, SmallMill.Morning), "Ada", "scale");
        Assert.Equal(Mass.FromTonnes(26m), other.Stock("B1"));
        one.Record([new Move("a", "B1", "SHORT", Mass.FromTonnes(20m), SmallMill.Morning)], "Ada", "scale");
        var refusal = Assert.Throws<LedgerRefusal>(() => other.Record([new Move("b", "B1", "SHORT", Mass.FromTonnes(20m), SmallMill.Morning)], "Bea", "scale"));
        Assert.Equal((LedgerRule.WouldOverdraw, "B1", Mass.FromTonnes(14m)), (refusal.Rule, refusal.Place, refusal.By));
    }

    [Theory, OnSqlite, OnPostgres]
    public async Task Record_FromManySidesAtOnce_EveryBatchIsThereOnce(Store store)
    {
        using var site = new TestSite(store);
        using var one = site.Open();
        one.Record(SmallMill.Places, "Ada", "scale");
        using var other = site.Open();
        await Task.WhenAll(Enumerable.Range(0, 24).Select(n => Task.Run(() =>
            (n % 2 == 0 ? one : other).Record(SmallMill.Truck($"T{n / 2}", 20m, SmallMill.Morning), "Ada", "scale"))));
        Assert.Equal(Mass.FromTonnes(240m), one.Stock("B1"));
        Assert.Equal(Mass.FromTonnes(240m), other.Stock("B1"));
        Assert.Equal(Mass.Zero, other.SumOfStocks());
    }
}
