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

        Fact[] ReadOn(long after) => Read(engine, after, Math.Min(after + Span, last));
        for (var ahead = Task.Run(() => ReadOn(book.Last.Value)); book.Last.Value < last;)
        {
            // While one span of facts goes into the book the next is read already.
            var facts = ahead.GetAwaiter().GetResult();
            var after = facts[^1].Id.Value;
            ahead = after < last ? Task.Run(() => ReadOn(after)) : ahead;
            try
            {
                book.Append(facts, trusted: true);
            }
            finally
            {
                Task.WaitAny(ahead);
            }

            progress?.Invoke(new("Reading the facts", after, last));
        }
    }

    private static Fact[] Read(Engine engine, long after, long upto)
    {
        var facts = new Fact[upto - after];
        try
        {
            foreach (var table in FactTable.All)
            {
                Read(engine, table, facts, after);
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

    private static void Read(Engine engine, FactTable table, Fact[] facts, long after)
    {
        using var command = engine.Command(Sql.Span(table), ("@after", after), ("@upto", after + facts.Length));
        using var row = command.ExecuteReader();
        while (row.Read())
        {
            // The book keeps what happened; who recorded it stays in the database and is looked up when asked for.
            facts[row.GetInt64(0) - after - 1] = table.FromRow(row, default(Attribution) with { Corrects = row.Corrects() });
        }
    }
}
