using System.Data.Common;
using Evengrist.Ledger;
using Evengrist.Records.Tables;

namespace Evengrist.Records.Engines;

/// <summary>One connection to the database that holds the facts, used under the mill's lock by one caller at a time.</summary>
internal abstract class Engine : IDisposable
{
    public abstract DbConnection Connection { get; }

    /// <summary>A second connection, open, that only reads what is committed; the caller closes it.</summary>
    public abstract DbConnection Aside();

    /// <summary>What follows a column so that it means "is one of @keys".</summary>
    public abstract string AnyOfKeys { get; }

    /// <summary>Begins a transaction that alone may write, across all processes, until it ends.</summary>
    public abstract void Begin();

    /// <summary>Ends the transaction; when this returns, what was written survives a loss of power.</summary>
    public abstract void Commit();

    /// <summary>Ends the transaction, nothing written; harmless when there is none.</summary>
    public abstract void Rollback();

    /// <summary>Whether another process may have recorded something since this was last asked; never false when it has.</summary>
    public abstract bool MayBeBehind();

    /// <summary>Number of the newest fact in the database; 0 where there is none.</summary>
    public long Last() => Asking(() => Number(Sql.Last));

    /// <summary>Asks a question that changes nothing: once more over a new line where the line was lost meanwhile.</summary>
    public virtual T Asking<T>(Func<T> question) => question();

    public abstract void Insert(FactTable table, IEnumerable<Fact> facts);

    /// <summary>Reads the facts of one sort whose numbers lie above one and up to another, in order, over a connection of this engine.</summary>
    public virtual void Read(DbConnection on, FactTable table, long after, long upto, Action<Row> take)
    {
        using var command = Command(on, Sql.Span(table, "@after", "@upto"), ("@after", after), ("@upto", upto));
        using var reader = command.ExecuteReader();
        var row = new ReaderRow(reader);
        while (reader.Read())
        {
            take(row);
        }
    }

    public abstract object Keys(IReadOnlyCollection<string> keys);

    public abstract void Dispose();

    public DbCommand Command(string sql, params ReadOnlySpan<(string Name, object? Value)> parameters) => Command(Connection, sql, parameters);

    public static DbCommand Command(DbConnection on, string sql, params ReadOnlySpan<(string Name, object? Value)> parameters)
    {
        var command = on.CreateCommand();
#pragma warning disable CA2100 // every statement is made of our own table and column names; values go as parameters
        command.CommandText = sql;
#pragma warning restore CA2100
        foreach (var (name, value) in parameters)
        {
            var parameter = command.CreateParameter();
            parameter.ParameterName = name;
            parameter.Value = value ?? DBNull.Value;
            command.Parameters.Add(parameter);
        }

        return command;
    }

    public void Execute(string sql, params ReadOnlySpan<(string Name, object? Value)> parameters)
    {
        using var command = Command(sql, parameters);
        command.ExecuteNonQuery();
    }

    public long Number(string sql)
    {
        using var command = Command(sql);
        return command.ExecuteScalar() is { } value and not DBNull ? Convert.ToInt64(value, System.Globalization.CultureInfo.InvariantCulture) : 0;
    }
}
