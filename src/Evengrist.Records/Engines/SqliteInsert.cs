using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Evengrist.Records.Engines;

/// <summary>One prepared insert, bound by position: half the time of the same through a command, which looks every parameter up by name.</summary>
internal sealed class SqliteInsert : IDisposable
{
    private readonly sqlite3 database;
    private readonly sqlite3_stmt statement;

    public SqliteInsert(SqliteConnection connection, string sql)
    {
        database = connection.Handle ?? throw new ArgumentException("The connection is not open.", nameof(connection));
        Check(raw.sqlite3_prepare_v2(database, sql, out statement));
    }

    public void Insert(ReadOnlySpan<object?> row)
    {
        for (var i = 0; i < row.Length; i++)
        {
            Check(Bind(i + 1, row[i]));
        }

        var result = raw.sqlite3_step(statement);
        if (result != raw.SQLITE_DONE)
        {
            var fault = Fault(result);
            _ = raw.sqlite3_reset(statement);
            throw fault;
        }

        Check(raw.sqlite3_reset(statement));
    }

    public void Dispose() => statement.Dispose();

    private int Bind(int position, object? value) => value switch
    {
        null => raw.sqlite3_bind_null(statement, position),
        long number => raw.sqlite3_bind_int64(statement, position, number),
        int number => raw.sqlite3_bind_int64(statement, position, number),
        double number => raw.sqlite3_bind_double(statement, position, number),
        string text => raw.sqlite3_bind_text(statement, position, text),
        _ => throw new ArgumentException($"No column takes a {value.GetType().Name}.", nameof(value)),
    };

    private void Check(int result)
    {
        if (result != raw.SQLITE_OK)
        {
            throw Fault(result);
        }
    }

    private SqliteException Fault(int result) =>
        new(raw.sqlite3_errmsg(database).utf8_to_string(), result, raw.sqlite3_extended_errcode(database));
}
