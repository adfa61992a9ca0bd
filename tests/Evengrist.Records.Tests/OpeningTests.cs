using Evengrist.Records.Model;
using Evengrist.Records.Tests.Stores;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Evengrist.Records.Tests;

public sealed class OpeningTests
{
    [Theory, OnSqlite]
    public void Open_OlderTables_KeepsABackupFirst(Store store)
    {
        using var site = new TestSite(store);
        MakeOld(site.Options.Path!);
        site.Execute("INSERT INTO setting VALUES ('name', 'Old mill')");
        site.Execute("INSERT INTO contract (code, version, json, \"by\", recorded_us) VALUES ('SPOT', 3, '{}', 'Ada', 1000000)");
        using (var mill = site.Open())
        {
            Assert.Equal("Old mill", mill.Settings.Name);
            Assert.Equal(new Paper("SPOT", 3, "{}", "Ada", NodaTime.Instant.FromUnixTimeSeconds(1)), mill.Contracts.Newest("SPOT"));
        }

        var backup = Assert.Single(Directory.GetFiles(site.Folder, "mill.backup-*.db"));
        Assert.Equal("mill.backup-20261125074308_Tables.db", Path.GetFileName(backup));
        using var old = SqliteContext.On($"Data Source={backup};Pooling=false");
        Assert.Equal(["20261125074308_Tables"], old.Database.GetAppliedMigrations());
        Assert.Equal("Old mill", old.Set<SettingRow>().Single().Value);
        site.Open().Dispose();
        Assert.Single(Directory.GetFiles(site.Folder, "mill.backup-*.db"));
    }

    [Theory, OnSqlite]
    public void Open_MigrationLockLeftByAKilledProcess_OpensAllTheSame(Store store)
    {
        using var site = new TestSite(store);
        MakeOld(site.Options.Path!);
        site.Execute("CREATE TABLE IF NOT EXISTS \"__EFMigrationsLock\" (\"Id\" INTEGER NOT NULL CONSTRAINT \"PK___EFMigrationsLock\" PRIMARY KEY, \"Timestamp\" TEXT NOT NULL)");
        site.Execute("INSERT INTO \"__EFMigrationsLock\" VALUES (1, '2026-01-01')");
        site.Open().Dispose();
    }

    [Theory, OnSqlite, OnPostgres]
    public void Open_NewerTables_SaysSo(Store store)
    {
        using var site = Filled(store);
        site.Execute("INSERT INTO \"__EFMigrationsHistory\" VALUES ('29990101000000_Later', '99.0')");
        var refusal = Assert.Throws<MillCannotOpen>(() => site.Open());
        Assert.Contains("was written by a newer Evengrist (tables of 29990101000000_Later", refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("Username", refusal.Message, StringComparison.Ordinal);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Open_FactLost_NamesIt(Store store)
    {
        using var site = Filled(store);
        site.Execute(store == Store.Sqlite ? "DROP TRIGGER reading_no_delete" : "DROP TRIGGER reading_append_only ON reading");
        Assert.Equal(1, site.Execute("DELETE FROM reading"));
        Assert.StartsWith("Fact 13 is missing", Assert.Throws<MillCannotOpen>(() => site.Open()).Message, StringComparison.Ordinal);
    }

    [Theory, OnSqlite]
    public void Open_OtherFile_SaysSoAndTouchesNothing(Store store)
    {
        using var site = new TestSite(store);
        File.WriteAllText(site.Options.Path!, "ticket;gross;tare\n1;40;14\n");
        AssertUntouched(site, "is not a database of facts");
    }

    [Theory, OnSqlite]
    public void Open_DatabaseOfAnotherProgram_SaysSoAndTouchesNothing(Store store)
    {
        using var site = new TestSite(store);
        site.Execute("CREATE TABLE song (title TEXT)");
        AssertUntouched(site, "is a database of another program");
    }

    [Theory, OnSqlite]
    public void Open_PagesOverwritten_SaysSoAndTouchesNothing(Store store)
    {
        using var site = Filled(store);
        var bytes = File.ReadAllBytes(site.Options.Path!);
        new Random(1).NextBytes(bytes.AsSpan(4096));
        File.WriteAllBytes(site.Options.Path!, bytes);
        AssertUntouched(site, "is damaged");
    }

    [Theory, OnSqlite]
    public void Open_FileCutShort_SaysSoAndTouchesNothing(Store store)
    {
        using var site = Filled(store);
        File.WriteAllBytes(site.Options.Path!, File.ReadAllBytes(site.Options.Path!)[..10_000]);
        AssertUntouched(site, "is damaged");
    }

    [Theory, OnSqlite]
    public void Open_ReadOnlyFile_SaysSo(Store store)
    {
        using var site = Filled(store);
        File.SetAttributes(site.Options.Path!, FileAttributes.ReadOnly);
        AssertUntouched(site, "is read-only");
    }

    [Theory, OnSqlite]
    public void Open_Folder_SaysSo(Store store)
    {
        using var site = new TestSite(store);
        Directory.CreateDirectory(site.Options.Path!);
        Assert.Contains("is a folder", Assert.Throws<MillCannotOpen>(() => site.Open()).Message, StringComparison.Ordinal);
    }

    [Theory, OnSqlite]
    public void Open_HeldByAnotherProgram_SaysSo(Store store)
    {
        using var site = Filled(store);
        using var other = site.Connect();
        using var command = other.CreateCommand();
        command.CommandText = "PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE; INSERT INTO setting VALUES ('a', 'b')";
        command.ExecuteNonQuery();
        Assert.Contains("is held by another program", Assert.Throws<MillCannotOpen>(() => site.Open()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_NoServer_SaysSoWithoutThePassword()
    {
        var options = MillOptions.Shared("Host=127.0.0.1;Port=1;Username=miller;Password=flour;Database=mill;Timeout=2");
        var refusal = Assert.Throws<MillCannotOpen>(() => Mill.Open(options, NodaTime.SystemClock.Instance));
        Assert.StartsWith("The database \"mill\" on 127.0.0.1:1 cannot be used", refusal.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("flour", refusal.Message, StringComparison.Ordinal);
    }

    [Theory, OnSqlite]
    public void Open_Progress_EndsWithAllFactsRead(Store store)
    {
        using var site = Filled(store);
        var steps = new List<MillProgress>();
        site.Open(steps.Add).Dispose();
        Assert.Equal(new MillProgress("Reading the facts", 17, 17), steps[^1]);
    }

    private static void AssertUntouched(TestSite site, string says)
    {
        var before = File.ReadAllBytes(site.Options.Path!);
        Assert.Contains(says, Assert.Throws<MillCannotOpen>(() => site.Open()).Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(site.Options.Path!));
    }

    private static TestSite Filled(Store store)
    {
        var site = new TestSite(store);
        using var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        mill.Record(SmallMill.Truck("T1", 26m, SmallMill.Morning), "Ada", "test");
        return site;
    }

    private static void MakeOld(string path)
    {
        using var context = SqliteContext.On($"Data Source={path};Pooling=false");
        context.GetService<IMigrator>().Migrate("20261125074308_Tables");
    }
}
