using System.Data.Common;
using Evengrist.Ledger;
using Evengrist.Records.Tables;
using Npgsql;
using NpgsqlTypes;

namespace Evengrist.Records.Engines;

/// <summary>A shared PostgreSQL database: one advisory lock round every write, rows copied in binary.</summary>
internal sealed class PostgresEngine : Engine
{
    private const long WriteLock = 0x4576656E67726973;
    private readonly NpgsqlConnection connection;
    private readonly string text;
    private NpgsqlTransaction? transaction;

    public PostgresEngine(string connectionString)
    {
        // The same few statements run all day: the server plans each once.
        var parts = new NpgsqlConnectionStringBuilder(connectionString);
        parts.MaxAutoPrepare = Math.Max(parts.MaxAutoPrepare, 40);
        parts.AutoPrepareMinUsages = 2;
        text = parts.ConnectionString;
        connection = new NpgsqlConnection(text);
        try
        {
            connection.Open();
            Execute("SET synchronous_commit = on");
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
        var aside = new NpgsqlConnection(text);
        aside.Open();
        return aside;
    }

    // Not = ANY(@keys): that walks all the rows of a source and compares each with every key.
    public override string AnyOfKeys => "IN (SELECT unnest(@keys))";

    public override void Begin() => Again(() =>
    {
        transaction = connection.BeginTransaction();
        Execute($"SELECT pg_advisory_xact_lock({WriteLock})");

        // Plans of key look-ups and foreign keys are kept for the session; made while a table is still small they would read it
        // through from then on, however large it grows.
        Execute("SET LOCAL enable_seqscan = off");
        return 0;
    });

    public override void Commit()
    {
        transaction!.Commit();
        transaction.Dispose();
        transaction = null;
    }

    public override void Rollback()
    {
        try
        {
            transaction?.Dispose();
        }
        catch (NpgsqlException)
        {
            // The connection broke, and its transaction is gone with it.
        }

        transaction = null;
    }

    public override bool MayBeBehind() => true;

    public override T Asking<T>(Func<T> question) => transaction is null ? Again(question) : question();

    public override void Insert(FactTable table, IEnumerable<Fact> facts)
    {
        var row = new object?[table.Columns.Count];
        using var writer = connection.BeginBinaryImport($"COPY {table.Name} ({Sql.Names(table.Columns)}) FROM STDIN (FORMAT BINARY)");
        foreach (var fact in facts)
        {
            table.ToRow(fact, row);
            writer.StartRow();
            foreach (var value in row)
            {
                Write(writer, value);
            }
        }

        writer.Complete();
    }

    public override object Keys(IReadOnlyCollection<string> keys) => keys.ToArray();

    public override void Dispose()
    {
        Rollback();
        connection.Dispose();
    }

    private static void Write(NpgsqlBinaryImporter writer, object? value)
    {
        switch (value)
        {
            case null: writer.WriteNull(); break;
            case long number: writer.Write(number, NpgsqlDbType.Bigint); break;
            case int number: writer.Write(number, NpgsqlDbType.Integer); break;
            case double number: writer.Write(number, NpgsqlDbType.Double); break;
            case string text: writer.Write(text, NpgsqlDbType.Text); break;
            default: throw new ArgumentException($"No column takes a {value.GetType().Name}.", nameof(value));
        }
    }

    // A server that was started anew, or a line that broke, is met once with a new connection: nothing has been written at this point.
    private T Again<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception fault) when (fault is NpgsqlException and not PostgresException { SqlState: "57014" } or InvalidOperationException)
        {
            Rollback();
            connection.Close();
            connection.Open();
            Execute("SET synchronous_commit = on");
            return work();
        }
    }
}
