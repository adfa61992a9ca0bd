using System.Data.Common;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Tests.Stores;
using Npgsql;

namespace Evengrist.Records.Tests;

public sealed class FailureTests
{
    // What the database does when it meets the key "boom": fails in the midst of the batch, at the commit, or by cutting the line.
    private const string InTheMidst = "BEGIN RAISE EXCEPTION 'disk on fire'; END", CutsTheLine = "BEGIN PERFORM pg_terminate_backend(pg_backend_pid()); RETURN NEW; END";

    [Theory, OnSqlite]
    public void Record_WriteFailsInTheMidst_BookIsAsBeforeOnSqlite(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        site.Execute("CREATE TRIGGER boom BEFORE INSERT ON movement WHEN NEW.source_key = 'boom' BEGIN SELECT RAISE(ABORT, 'disk on fire'); END");
        AssertFailsAndGoesOn(site, mill, () => site.Execute("DROP TRIGGER boom"));
    }

    [Theory, OnPostgres]
    public void Record_WriteFailsInTheMidst_BookIsAsBefore(Store store) => FailOnPostgres(store, "CREATE TRIGGER", InTheMidst);

    [Theory, OnPostgres]
    public void Record_CommitFails_BookIsAsBefore(Store store) => FailOnPostgres(store, "CREATE CONSTRAINT TRIGGER", InTheMidst);

    [Theory, OnPostgres]
    public void Record_LineIsCut_BookIsAsBeforeAndTheNextFindsANewLine(Store store) => FailOnPostgres(store, "CREATE TRIGGER", CutsTheLine);

    [Theory, OnPostgres]
    public void Ask_LineWasCutMeanwhile_FindsANewLine(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        CutEveryLine(site);
        Assert.Equal(Mass.Zero, mill.SumOfStocks());
        mill.Record(SmallMill.Truck("T2", 20m, SmallMill.Morning), "Ada", "test");
        CutEveryLine(site);
        Assert.Empty(mill.Papers("certificate").All());
        CutEveryLine(site);
        Assert.NotNull(mill.Settings.Name);
    }

    private static void CutEveryLine(TestSite site)
    {
        using var other = site.Connect();
        using var command = other.CreateCommand();
        command.CommandText = "SELECT count(pg_terminate_backend(pid)) FROM pg_stat_activity WHERE datname = current_database() AND pid <> pg_backend_pid()";
        command.ExecuteNonQuery();
    }

    private static void FailOnPostgres(Store store, string create, string body)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        site.Execute($"CREATE FUNCTION boom() RETURNS trigger LANGUAGE plpgsql AS $$ {body} $$");
        var timing = create == "CREATE TRIGGER" ? "BEFORE INSERT ON movement" : "AFTER INSERT ON movement DEFERRABLE INITIALLY DEFERRED";
        site.Execute($"{create} boom {timing} FOR EACH ROW WHEN (NEW.source_key = 'boom') EXECUTE FUNCTION boom()");
        AssertFailsAndGoesOn(site, mill, () => site.Execute("DROP TRIGGER boom ON movement"));
    }

    private static void AssertFailsAndGoesOn(TestSite site, Mill mill, Action repair)
    {
        var before = mill.Ask(v => (v.Book.Last, v.Book.Places.Count, v.Book.Movements.Count, v.Book.Newest));
        IReadOnlyList<Draft> batch = [.. SmallMill.Truck("T2", 20m, SmallMill.Morning), new Move("boom", "GAIN", "B2", Mass.FromGrams(5), SmallMill.Morning)];
        var fault = Assert.ThrowsAny<DbException>(() => mill.Record(batch, "Ada", "test"));
        Assert.True(fault is NpgsqlException || fault.Message.Contains("disk on fire", StringComparison.Ordinal), fault.Message);
        Assert.Equal(before, mill.Ask(v => (v.Book.Last, v.Book.Places.Count, v.Book.Movements.Count, v.Book.Newest)));
        Assert.Equal(Mass.FromTonnes(26m), mill.Stock("B1"));
        repair();
        Assert.Equal(new FactId(before.Last.Value + 1), mill.Record(batch, "Ada", "test").First);
        using var again = site.Open();
        Assert.Equal(Mass.FromTonnes(46m), again.Stock("B1"));
        Assert.Equal(Mass.Zero, again.SumOfStocks());
    }

    private static Mill Filled(TestSite site)
    {
        var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        mill.Record(SmallMill.Truck("T1", 26m, SmallMill.Morning), "Ada", "test");
        return mill;
    }
}
