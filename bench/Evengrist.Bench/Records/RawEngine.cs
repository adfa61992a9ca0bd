using System.Data.Common;

namespace Evengrist.Bench.Records;

/// <summary>The measure to be held against: the same movement rows by plain prepared inserts, no rules, no look-up of keys, no triggers.</summary>
internal sealed class RawEngine(DbConnection connection) : IDisposable
{
    private readonly DbCommand insert = Prepare(connection);
    private bool prepared;
    private long next;

    /// <summary>Inserts so many rows in one transaction, each batch flushed to disk.</summary>
    public void Insert(int rows)
    {
        using var transaction = connection.BeginTransaction();
        insert.Transaction = transaction;
        for (var i = 0; i < rows; i++)
        {
            next++;
            Fill([next, DBNull.Value, 1, 2, 38_000_000L, 1_760_000_000_000_000 + next, 1_760_000_000_000_000 + next, "bench", "bench", $"K{next}/net", 1_790_000_000_000_000, DBNull.Value]);
            if (!prepared)
            {
                insert.Prepare();
                prepared = true;
            }

            insert.ExecuteNonQuery();
        }

        transaction.Commit();
    }

    public void Dispose()
    {
        insert.Dispose();
        connection.Dispose();
    }

    private static DbCommand Prepare(DbConnection connection)
    {
        using var create = connection.CreateCommand();
        create.CommandText = "CREATE TABLE raw_movement (id bigint PRIMARY KEY, corrects bigint, from_place int NOT NULL, to_place int NOT NULL, mass_g bigint NOT NULL, at_us bigint NOT NULL, until_us bigint NOT NULL, \"by\" text NOT NULL, source text NOT NULL, source_key text NOT NULL, recorded_us bigint NOT NULL, note text, UNIQUE (source, source_key))";
        create.ExecuteNonQuery();
        var insert = connection.CreateCommand();
        insert.CommandText = "INSERT INTO raw_movement VALUES (@a, @b, @c, @d, @e, @f, @g, @h, @i, @j, @k, @l)";
        foreach (var name in "abcdefghijkl")
        {
            var parameter = insert.CreateParameter();
            parameter.ParameterName = "@" + name;
            insert.Parameters.Add(parameter);
        }

        return insert;
    }

    private void Fill(ReadOnlySpan<object> values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            insert.Parameters[i].Value = values[i];
        }
    }
}
