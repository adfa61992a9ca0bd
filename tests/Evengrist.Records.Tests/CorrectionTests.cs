using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Ledger;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests;

public sealed class CorrectionTests
{
    private static readonly Duration Hour = Duration.FromHours(1);

    [Theory, OnSqlite, OnPostgres]
    public void PutRight_Mass_EarlierNoLongerCountsNowAndAfterReopening(Store store)
    {
        using var site = new TestSite(store);
        using (var mill = Filled(site))
        {
            var gain = mill.Record([new Move("g", "GAIN", "B1", Mass.FromTonnes(3m), SmallMill.Morning, SmallMill.Morning + Hour)], "Ada", "test").First!.Value;
            var right = new PutRight(gain, "read the wrong line") { Mass = Mass.FromTonnes(2m), At = SmallMill.Morning + Hour };
            Assert.Equal(1, right.In(mill, "Bea").Added);
            Assert.Equal(Mass.FromTonnes(28m), mill.Stock("B1"));
            Assert.Equal((0, 1), (right.In(mill, "Bea") is var receipt ? receipt.Added : -1, receipt.AlreadyKnown));
            Assert.Equal(LedgerRule.KeyTaken, Assert.Throws<LedgerRefusal>(() => (right with { Mass = Mass.Zero }).In(mill, "Bea")).Rule);
        }

        using var again = site.Open();
        again.Ask(v =>
        {
            Assert.Equal(Mass.FromTonnes(28m), v.Book.StockOf(v.Book.Named("B1").Id));
            var (wrong, right) = (v.Book.IndexOf(new FactId(18)), v.Book.IndexOf(new FactId(19)));
            Assert.False(v.Book.Counts(wrong));
            Assert.True(v.Book.Counts(right));
            Assert.Equal(SmallMill.Morning + Hour + Hour, v.Book.Movements[right].Until);
            return 0;
        });
        Assert.Equal(Mass.Zero, again.SumOfStocks());
    }

    [Theory, OnSqlite, OnPostgres]
    public void PutRight_WouldOverdraw_IsRefused(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        mill.Record([new Move("s", "B1", "SHORT", Mass.FromTonnes(20m), SmallMill.Morning + Hour)], "Ada", "test");
        var toBin = mill.Ask(v => v.Book.Movements.Single(m => v.Book[m.To].Code == "B1").Id);
        Assert.Equal(LedgerRule.WouldOverdraw, Assert.Throws<LedgerRefusal>(() => new PutRight(toBin, "wrong") { Mass = Mass.FromTonnes(19m) }.In(mill, "Bea")).Rule);
        Assert.Equal(LedgerRule.BadCorrection, Assert.Throws<LedgerRefusal>(() => new PutRight(new FactId(1), "wrong").In(mill, "Bea")).Rule);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Record_LateFact_CountsFromWhenItHappened(Store store)
    {
        using var site = new TestSite(store);
        using (var mill = Filled(site))
        {
            mill.Record(SmallMill.Truck("T2", 20m, SmallMill.Morning - Hour), "Ada", "test");
        }

        using var again = site.Open();
        again.Ask(v =>
        {
            var bin = v.Book.Named("B1").Id;
            Assert.Equal(Mass.FromTonnes(20m), v.Book.StockOf(bin, SmallMill.Morning - Hour));
            Assert.Equal(Mass.FromTonnes(46m), v.Book.StockOf(bin, SmallMill.Morning));
            Assert.Equal(["T2", "T1"], v.Book.MovementsOf(v.Book.Named("F1").Id).Select(m => v.Book[v.Book.Movements[m].To].Code));
            return 0;
        });
    }

    [Theory, OnSqlite, OnPostgres]
    public void ProveEmpty_LedgerHoldsMore_BooksTheDifferenceAndIsKnownTheSecondTime(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        mill.Record([.. SmallMill.Places.Where(p => p.Key != "p7")], "Ada", "test");
        mill.Record(SmallMill.Truck("T1", 26m, SmallMill.Morning), "Ada", "test");
        var proof = new ProveEmpty("B1", SmallMill.Morning + Hour, "swept, seen by lamp");
        var (difference, receipt) = proof.In(mill, "Bea");
        Assert.Equal((Mass.FromTonnes(26m), 3), (difference, receipt.Added));
        Assert.Equal(Mass.Zero, mill.Stock("B1"));
        Assert.Equal(Mass.FromTonnes(26m), mill.Stock("SHORTAGE"));
        Assert.Equal(1, proof.In(mill, "Bea").Receipt.AlreadyKnown);
        Assert.Equal(HappeningKind.ProvenEmpty, mill.Ask(v => v.Book.HappeningsOn(v.Book.Named("B1").Id).Single().Kind));
    }

    private static Mill Filled(TestSite site)
    {
        var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        mill.Record(SmallMill.Truck("T1", 26m, SmallMill.Morning), "Ada", "test");
        return mill;
    }
}
