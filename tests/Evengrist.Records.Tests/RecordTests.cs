using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Tests.Stores;

namespace Evengrist.Records.Tests;

public sealed class RecordTests
{
    [Theory, OnSqlite, OnPostgres]
    public void Record_Batch_IsThereAfterReopening(Store store)
    {
        using var site = new TestSite(store);
        using (var mill = site.Open())
        {
            var receipt = mill.Record(SmallMill.Places, "Ada", "test");
            Assert.Equal(new Receipt(10, 0, new FactId(1), new FactId(10)), receipt);
            mill.Record(SmallMill.Truck("T1", 26.34m, SmallMill.Morning), "Ada", "test");
        }

        using var again = site.Open();
        Assert.Equal(Mass.FromTonnes(26.34m), again.Stock("B1"));
        Assert.Equal(Mass.Zero, again.SumOfStocks());
        again.Ask(v =>
        {
            Assert.Equal(new FactId(17), v.Book.Last);
            var bin = v.Book.Named("b1");
            Assert.Equal(("B1", PlaceKind.Bin, "HRW", Mass.FromTonnes(500m), 0.15), (bin.Code, bin.Kind, bin.Material, bin.Capacity!.Value, bin.CoreShare));
            Assert.Equal("Grower One", v.Book.Named("F1").Of);
            var reading = Assert.Single(v.Book.ReadingsOn(v.Book.Named("T1").Id));
            Assert.Equal("12.10", reading.Value.ToString(System.Globalization.CultureInfo.InvariantCulture));
            Assert.Equal((Basis.At12, 0.15m, "NIR", "N1", "%"), (reading.Basis, reading.StandardUncertainty!.Value, reading.Method, reading.Instrument, reading.Unit));
            return 0;
        });
    }

    [Theory, OnSqlite, OnPostgres]
    public void Record_SameKeysSameContent_AddsNothing(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        var truck = SmallMill.Truck("T1", 26.34m, SmallMill.Morning);
        mill.Record(truck, "Ada", "test");
        Assert.Equal(new Receipt(0, 7, null, null), mill.Record(truck, "Bert", "test"));
        Assert.Equal(new Receipt(7, 7, new FactId(18), new FactId(24)), mill.Record([.. truck, .. SmallMill.Truck("T2", 20m, SmallMill.Morning)], "Bert", "test"));
        Assert.Equal(Mass.FromTonnes(46.34m), mill.Stock("B1"));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Record_SameKeyOtherContent_IsRefusedAndSaysWhatDiffers(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        mill.Record(SmallMill.Truck("T1", 26.34m, SmallMill.Morning), "Ada", "test");
        var changed = SmallMill.Truck("T1", 26.34m, SmallMill.Morning).ToArray();
        changed[1] = ((Move)changed[1]) with { Mass = Mass.FromTonnes(26.43m) };
        var refusal = Assert.Throws<LedgerRefusal>(() => mill.Record(changed, "Ada", "test"));
        Assert.Equal((LedgerRule.KeyTaken, 1), (refusal.Rule, refusal.Index));
        Assert.Contains("test has used the key \"T1/net\" before, for fact 12", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("mass was 26,340 kg and is now 26,430 kg", refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("beginning was", refusal.Message, StringComparison.Ordinal);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Record_OneOfABatchBreaksARule_NothingIsThere(Store store)
    {
        using var site = new TestSite(store);
        using (var mill = site.Open())
        {
            mill.Record(SmallMill.Places, "Ada", "test");
            var batch = SmallMill.Truck("T1", 26.34m, SmallMill.Morning).Append(new Move("x", "B2", "NOWHERE", Mass.FromGrams(1), SmallMill.Morning)).ToArray();
            Assert.Equal(7, Assert.Throws<LedgerRefusal>(() => mill.Record(batch, "Ada", "test")).Index);
            Assert.Equal(Mass.Zero, mill.Stock("B1"));
        }

        using var again = site.Open();
        Assert.Equal(new FactId(10), again.Ask(v => v.Book.Last));
    }
}
