using System.Data.Common;
using Evengrist.Bench.Genealogy.Graph;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Evengrist.Bench.Genealogy;

/// <summary>SQLite on a file of its own, all of it in its cache.</summary>
internal sealed class SqliteEngine : SqlEngine
{
    private readonly SqliteConnection connection;
    private readonly string file;

    public SqliteEngine(string folder, int budgetSeconds)
        : this(new SqliteConnection($"Data Source={Path.Combine(folder, "genealogy.db")};Pooling=False"), budgetSeconds)
    {
    }

    private SqliteEngine(SqliteConnection connection, int budgetSeconds)
        : base(connection, budgetSeconds)
    {
        this.connection = connection;
        file = connection.DataSource;
        connection.Open();
        Execute("PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA cache_size = -600000; PRAGMA temp_store = MEMORY");
    }

    protected override string Name => $"SQLite {connection.ServerVersion}, recursive query over paths";

    protected override void Load(GenealogyGraph graph)
    {
        Execute("CREATE TABLE edge (child INTEGER NOT NULL, parent INTEGER NOT NULL, share REAL NOT NULL, PRIMARY KEY (child, parent)) WITHOUT ROWID");
        using (var transaction = connection.BeginTransaction())
        using (var insert = connection.CreateCommand())
        {
            insert.CommandText = "INSERT INTO edge VALUES (@child, @parent, @share)";
            var child = insert.Parameters.Add("child", SqliteType.Integer);
            var parent = insert.Parameters.Add("parent", SqliteType.Integer);
            var share = insert.Parameters.Add("share", SqliteType.Real);
            for (var parcel = 0; parcel < graph.Rows.Count; parcel++)
            {
                child.Value = parcel;
                for (var i = 0; i < graph.Rows.ParentsOf(parcel).Length; i++)
                {
                    parent.Value = graph.Rows.ParentsOf(parcel)[i];
                    share.Value = graph.Rows.SharesOf(parcel)[i];
                    insert.ExecuteNonQuery();
                }

                if (parcel % 1024 == 0 && Left <= TimeSpan.Zero)
                {
                    throw new TimeoutException();
                }
            }

            transaction.Commit();
        }

        Execute("CREATE INDEX edge_by_parent ON edge (parent, child, share)");
        Execute("ANALYZE");
    }

    protected override double Megabytes() => new FileInfo(file).Length / 1e6;

    protected override bool IsTimeout(Exception e) => e is TimeoutException or SqliteException { SqliteErrorCode: raw.SQLITE_INTERRUPT };

    protected override IDisposable? Limit(DbCommand command)
    {
        var left = Left > TimeSpan.Zero ? Left : TimeSpan.FromMilliseconds(1);
        return new Timer(_ => raw.sqlite3_interrupt(connection.Handle), null, left, Timeout.InfiniteTimeSpan);
    }
}
