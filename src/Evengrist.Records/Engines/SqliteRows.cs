using System.Globalization;
using System.Text;
using Evengrist.Records.Tables;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Evengrist.Records.Engines;

/// <summary>The rows of one statement, read straight from the engine: half the calls of a reader, and a text that repeats from row to row is kept once.</summary>
internal sealed class SqliteRows : Row, IDisposable
{
    private readonly sqlite3 database;
    private readonly sqlite3_stmt statement;
    private readonly (byte[] Bytes, string Text)[] latest;

    public SqliteRows(SqliteConnection connection, string sql, params ReadOnlySpan<long> parameters)
    {
        database = connection.Handle ?? throw new ArgumentException("The connection is not open.", nameof(connection));
        Check(raw.sqlite3_prepare_v2(database, sql, out statement));
        foreach (var (i, parameter) in parameters.ToArray().Index())
        {
            Check(raw.sqlite3_bind_int64(statement, i + 1, parameter));
        }

        latest = new (byte[], string)[raw.sqlite3_column_count(statement)];
        Array.Fill(latest, ([], ""));
    }

    public bool Next() => raw.sqlite3_step(statement) switch
    {
        raw.SQLITE_ROW => true,
        raw.SQLITE_DONE => false,
        var fault => throw Fault(fault),
    };

    public override bool IsNone(int column) => raw.sqlite3_column_type(statement, column) == raw.SQLITE_NULL;

    public override long Long(int column) => raw.sqlite3_column_int64(statement, column);

    public override double Double(int column) => raw.sqlite3_column_double(statement, column);

    public override string Text(int column)
    {
        var bytes = raw.sqlite3_column_blob(statement, column);
        if (!bytes.SequenceEqual(latest[column].Bytes))
        {
            latest[column] = (bytes.ToArray(), Encoding.UTF8.GetString(bytes));
        }

        return latest[column].Text;
    }

    public override decimal Decimal(int column) =>
        decimal.Parse(raw.sqlite3_column_blob(statement, column), NumberStyles.Number, CultureInfo.InvariantCulture);

    public void Dispose() => statement.Dispose();

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
