using System.Data.Common;
using System.Text.Json;
using Evengrist.Ledger;
using Evengrist.Records.Tables;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Evengrist.Records.Engines;

/// <summary>A file of facts: write-ahead log, flushed to disk at every commit, one writer at a time.</summary>
internal sealed class SqliteEngine : Engine
{
    /// <summary>How long a writer waits for another one.</summary>
    private const int PatienceInSeconds = 10;

    static SqliteEngine()
    {
        // Each connection is used by one thread at a time, so that the engine need not take a lock for every column it hands over.
        // A refusal is harmless: it means that the engine was used before and keeps its locks.
        Batteries_V2.Init();
        _ = raw.sqlite3_config(raw.SQLITE_CONFIG_MULTITHREAD);
    }

    private readonly SqliteConnection connection;
    private readonly Dictionary<FactTable, SqliteInsert> inserts = [];
    private long version = -1;

    public SqliteEngine(string path)
    {
        connection = new SqliteConnection(ConnectionString(path));
        try
        {
            connection.Open();
            Execute($"PRAGMA busy_timeout = {PatienceInSeconds * 1000}");
            Execute("PRAGMA journal_mode = WAL");
            Execute("PRAGMA synchronous = FULL");
            Execute("PRAGMA foreign_keys = ON");
            Execute("PRAGMA cache_size = -32000");
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    public override DbConnection Connection => connection;

    public override DbConnection Aside()
    {
        var aside = new SqliteConnection(ConnectionString(connection.DataSource));
        aside.Open();
        return aside;
    }

    public override string AnyOfKeys => "IN (SELECT value FROM json_each(@keys))";

    public static string ConnectionString(string path, SqliteOpenMode mode = SqliteOpenMode.ReadWriteCreate) => new SqliteConnectionStringBuilder
    {
        DataSource = path, Mode = mode, Cache = SqliteCacheMode.Private, Pooling = false, ForeignKeys = true, DefaultTimeout = PatienceInSeconds,
    }.ConnectionString;

    public override void Begin()
    {
        Execute("BEGIN IMMEDIATE");
    }

    public override void Commit()
    {
        Execute("COMMIT");
    }

    public override void Rollback()
    {
        // Some faults (a full disk) have ended the transaction already.
        if (raw.sqlite3_get_autocommit(connection.Handle) == 0)
        {
            version = -1;
            Execute("ROLLBACK");
        }
    }

    public override bool MayBeBehind()
    {
        var now = Number("PRAGMA data_version");
        (var changed, version) = (now != version, now);
        return changed;
    }

    public override void Insert(FactTable table, IEnumerable<Fact> facts)
    {
        if (!inserts.TryGetValue(table, out var insert))
        {
            inserts.Add(table, insert = new SqliteInsert(connection, Sql.Insert(table)));
        }

        var row = new object?[table.Columns.Count];
        foreach (var fact in facts)
        {
            table.ToRow(fact, row);
            insert.Insert(row);
        }
    }

    public override void Read(DbConnection on, FactTable table, long after, long upto, Action<Row> take)
    {
        using var rows = new SqliteRows((SqliteConnection)on, Sql.Span(table, "?", "?"), after, upto);
        while (rows.Next())
        {
            take(rows);
        }
    }

    public override object Keys(IReadOnlyCollection<string> keys) => JsonSerializer.Serialize(keys);

    public override void Dispose()
    {
        foreach (var insert in inserts.Values)
        {
            insert.Dispose();
        }

        // The last connection to close writes the log back into the file and removes it.
        connection.Dispose();
    }
}
