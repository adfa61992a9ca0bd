using System.Data.Common;
using Evengrist.Records.Tests.Stores;

namespace Evengrist.Records.Tests;

public sealed class AppendOnlyTests
{
    private static readonly string[] Tables = ["place", "connection", "movement", "reading", "happening", "paper"];

    [Theory, OnSqlite, OnPostgres]
    public void Database_UpdateOrDeleteOfAFact_IsRefusedByTheDatabaseItself(Store store)
    {
        using var site = Filled(store);
        foreach (var table in Tables)
        {
            foreach (var sql in new[] { $"UPDATE {table} SET \"by\" = 'Eve'", $"DELETE FROM {table}" })
            {
                Assert.Contains($"{table} is append only", Assert.ThrowsAny<DbException>(() => site.Execute(sql)).Message, StringComparison.Ordinal);
            }
        }
    }

    [Theory, OnSqlite]
    public void Database_InsertOrReplace_IsRefused(Store store)
    {
        using var site = Filled(store);
        var fault = Assert.ThrowsAny<DbException>(() => site.Execute(
            "INSERT OR REPLACE INTO happening SELECT id, place, at_us, kind, 'nothing happened', \"by\", source, source_key, recorded_us, corrects, note FROM happening"));
        Assert.Contains("happening is append only", fault.Message, StringComparison.Ordinal);
        fault = Assert.ThrowsAny<DbException>(() => site.Execute("REPLACE INTO paper SELECT kind, code, version, '{}', \"by\", recorded_us FROM paper"));
        Assert.Contains("paper is append only", fault.Message, StringComparison.Ordinal);
    }

    [Theory, OnPostgres]
    public void Database_Truncate_IsRefused(Store store)
    {
        using var site = Filled(store);
        Assert.Contains("reading is append only", Assert.ThrowsAny<DbException>(() => site.Execute("TRUNCATE reading")).Message, StringComparison.Ordinal);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Database_MovementThatCannotBe_IsRefused(Store store)
    {
        using var site = Filled(store);
        const string Insert = "INSERT INTO movement (id, from_place, to_place, mass_g, at_us, until_us, \"by\", source, source_key, recorded_us, corrects) VALUES ";
        foreach (var row in new[]
        {
            "(900, 1, 2, -1, 5, 5, 'x', 'x', 'a', 9, NULL)", "(900, 1, 2, 1, 5, 4, 'x', 'x', 'a', 9, NULL)", "(900, 1, 1, 1, 5, 5, 'x', 'x', 'a', 9, NULL)",
            "(0, 1, 2, 1, 5, 5, 'x', 'x', 'a', 9, NULL)", "(900, 1, 2, 1, 5, 5, 'x', 'x', '', 9, NULL)", "(900, 1, 2, 1, 5, 5, 'x', 'test', 'T1/net', 9, NULL)", "(900, 1, 2, 1, 5, 5, 'x', 'x', 'a', 9, 901)",
        })
        {
            Assert.ThrowsAny<DbException>(() => site.Execute(Insert + row));
        }

        Assert.Equal(1, site.Execute(Insert + "(900, 1, 2, 1, 5, 5, 'x', 'x', 'a', 9, NULL)"));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Database_FactOfAPlaceThatIsNotThere_IsRefused(Store store)
    {
        using var site = Filled(store);
        foreach (var row in new[]
        {
            "movement (id, from_place, to_place, mass_g, at_us, until_us, \"by\", source, source_key, recorded_us) VALUES (900, 1, 99, 1, 5, 5, 'x', 'x', 'a', 9)",
            "movement (id, from_place, to_place, mass_g, at_us, until_us, \"by\", source, source_key, recorded_us) VALUES (900, 99, 1, 1, 5, 5, 'x', 'x', 'a', 9)",
            "happening (id, place, at_us, kind, text, \"by\", source, source_key, recorded_us) VALUES (900, 99, 5, 1, '', 'x', 'x', 'a', 9)",
            "connection (id, from_place, to_place, \"by\", source, source_key, recorded_us) VALUES (900, 1, 99, 'x', 'x', 'a', 9)",
        })
        {
            var fault = Assert.ThrowsAny<DbException>(() => site.Execute("INSERT INTO " + row));
            Assert.True(fault.SqlState == "23503" || fault.Message.Contains("FOREIGN KEY", StringComparison.Ordinal), fault.Message);
        }
    }

    private static TestSite Filled(Store store)
    {
        var site = new TestSite(store);
        using var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        mill.Record(SmallMill.Truck("T1", 26m, SmallMill.Morning), "Ada", "test");
        mill.Contracts.Keep("SPOT", 1, "{}", "Ada");
        return site;
    }
}
