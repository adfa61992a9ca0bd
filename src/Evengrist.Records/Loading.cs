using System.Data.Common;
using Evengrist.Ledger;
using Evengrist.Records.Engines;
using Evengrist.Records.Tables;

namespace Evengrist.Records;

/// <summary>Brings the book level with the database.</summary>
internal static class Loading
{
    private const int Span = 20_000;

    /// <summary>Appends every fact the book does not have yet, in order. Called within a transaction, so that all tables are of one moment.</summary>
    /// <exception cref="MillCannotOpen">A number is missing among the facts: rows were lost.</exception>
    public static void CatchUp(Engine engine, Book book, Action<MillProgress>? progress = null)
    {
        var last = engine.Last();
        if (book.Last.Value >= last)
        {
            return;
        }

        using var undisturbed = Undisturbed.While(last - book.Last.Value);

        // Facts never change, so that a second connection may read part of a long stretch; the numbers up to the last are all committed.
        using var aside = last - book.Last.Value > 4 * Span ? engine.Aside() : null;
        DbConnection[] connections = aside is null ? [engine.Connection] : [engine.Connection, aside];
        var next = book.Last.Value;
        Task<Fact[]> ReadOn(DbConnection connection)
        {
            var (after, upto) = (next, next = Math.Min(next + Span, last));
            return Task.Run(() => Read(engine, connection, after, upto));
        }

        var ahead = new Queue<(DbConnection Connection, Task<Fact[]> Facts)>(connections.Select(c => (c, ReadOn(c))));
        try
        {
            while (ahead.TryDequeue(out var oldest))
            {
                // While one span of facts goes into the book the next are read already.
                var facts = oldest.Facts.GetAwaiter().GetResult();
                if (next < last)
                {
                    ahead.Enqueue((oldest.Connection, ReadOn(oldest.Connection)));
                }

                book.Append(facts, trusted: true);
                progress?.Invoke(new("Reading the facts", book.Last.Value, last));
            }
        }
        finally
        {
            foreach (var (_, facts) in ahead)
            {
                Task.WaitAny(facts);
            }
        }
    }

    private static Fact[] Read(Engine engine, DbConnection connection, long after, long upto)
    {
        var facts = new Fact[upto - after];
        try
        {
            foreach (var table in FactTable.All)
            {
                // The book keeps what happened; who recorded it stays in the database and is looked up when asked for.
                engine.Read(connection, table, after, upto, row =>
                    facts[row.Long(0) - after - 1] = table.FromRow(row, default(Attribution) with { Corrects = row.Corrects() }));
            }
        }
        catch (Exception fault) when (fault is FormatException or InvalidCastException or OverflowException or ArgumentException or InvalidOperationException)
        {
            throw new MillCannotOpen($"Among the facts {after + 1} to {upto} lies something that is no fact ({fault.Message}). The tables were changed by hand or damaged: restore the newest backup.", fault);
        }

        var lost = Array.IndexOf(facts, null);
        return lost < 0 ? facts : throw new MillCannotOpen(
            $"Fact {after + lost + 1} is missing: numbers run without gaps, so rows were lost or the file was changed by hand. Restore the newest backup, then record again what came after it.");
    }
}
