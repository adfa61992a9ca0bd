using System.Data.Common;
using Evengrist.Bench.Genealogy.Graph;
using Npgsql;
using NpgsqlTypes;

namespace Evengrist.Bench.Genealogy;

/// <summary>PostgreSQL in a cluster of its own.</summary>
internal sealed class PostgresEngine : SqlEngine
{
    private readonly NpgsqlConnection connection;

    public PostgresEngine(string connectionString, int budgetSeconds)
        : this(new NpgsqlConnection(connectionString), budgetSeconds)
    {
    }

    private PostgresEngine(NpgsqlConnection connection, int budgetSeconds)
        : base(connection, budgetSeconds)
    {
        this.connection = connection;
        connection.Open();
    }

    protected override string Name => $"PostgreSQL {connection.PostgreSqlVersion}, recursive query over paths";

    protected override void Load(GenealogyGraph graph)
    {
        Execute("CREATE TABLE edge (child integer NOT NULL, parent integer NOT NULL, share double precision NOT NULL)");
        using (var writer = connection.BeginBinaryImport("COPY edge FROM STDIN (FORMAT BINARY)"))
        {
            for (var parcel = 0; parcel < graph.Rows.Count; parcel++)
            {
                for (var i = 0; i < graph.Rows.ParentsOf(parcel).Length; i++)
                {
                    writer.StartRow();
                    writer.Write(parcel, NpgsqlDbType.Integer);
                    writer.Write(graph.Rows.ParentsOf(parcel)[i], NpgsqlDbType.Integer);
                    writer.Write(graph.Rows.SharesOf(parcel)[i], NpgsqlDbType.Double);
                }

                if (parcel % 1024 == 0 && Left <= TimeSpan.Zero)
                {
                    throw new TimeoutException();
                }
            }

            writer.Complete();
        }

        Execute("CREATE INDEX edge_by_child ON edge (child) INCLUDE (parent, share)");
        Execute("CREATE INDEX edge_by_parent ON edge (parent) INCLUDE (child, share)");
        Execute("VACUUM ANALYZE edge");
    }

    protected override double Megabytes()
    {
        using var command = new NpgsqlCommand("SELECT pg_total_relation_size('edge')", connection);
        return (long)command.ExecuteScalar()! / 1e6;
    }

    protected override bool IsTimeout(Exception e) =>
        e is TimeoutException or PostgresException { SqlState: PostgresErrorCodes.QueryCanceled } or NpgsqlException { InnerException: TimeoutException };

    protected override IDisposable? Limit(DbCommand command)
    {
        command.CommandTimeout = Math.Max(1, (int)Math.Ceiling(Left.TotalSeconds));
        return null;
    }
}
