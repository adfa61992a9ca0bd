using System.Data.Common;
using Microsoft.Data.Sqlite;
using NodaTime;
using Npgsql;

namespace Evengrist.Records.Tests.Stores;

/// <summary>Somewhere to keep one mill's facts during a test, on either engine; gone afterwards.</summary>
public sealed class TestSite : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("evengrist-records-").FullName;

    public TestSite(Store store) =>
        Options = store == Store.Sqlite ? MillOptions.InFile(Path.Combine(folder, "mill.db")) : MillOptions.Shared(PostgresCluster.NewDatabase());

    public MillOptions Options { get; }

    public string Folder => folder;

    public Mill Open(Action<MillProgress>? progress = null) => Mill.Open(Options, new StoppedClock(), progress);

    /// <summary>A connection of some other program to the same database.</summary>
    public DbConnection Connect()
    {
        DbConnection connection = Options.Path is { } path
            ? new SqliteConnection($"Data Source={path};Pooling=false")
            : new NpgsqlConnection(Options.Postgres);
        connection.Open();
        return connection;
    }

    public int Execute(string sql)
    {
        using var connection = Connect();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteNonQuery();
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>Stands at noon, 1 August 2026.</summary>
    private sealed class StoppedClock : IClock
    {
        public Instant GetCurrentInstant() => Instant.FromUtc(2026, 8, 1, 12, 0);
    }
}
