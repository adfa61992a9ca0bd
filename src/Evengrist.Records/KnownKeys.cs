using Evengrist.Ledger;
using Evengrist.Records.Engines;
using Evengrist.Records.Tables;

namespace Evengrist.Records;

/// <summary>Finds out which drafts of a batch were recorded before under the same key of the same source.</summary>
internal sealed class KnownKeys(Engine engine, Book book, string source)
{
    private const int MostAtOnce = 10_000;

    /// <summary>Positions of the drafts that are new, rising.</summary>
    /// <exception cref="LedgerRefusal">A key was used before for other content, or twice in the batch.</exception>
    public IReadOnlyList<int> NewAmong(IReadOnlyList<Draft> drafts)
    {
        var known = new bool[drafts.Count];
        foreach (var group in Enumerable.Range(0, drafts.Count).GroupBy(i => FactTable.Of(drafts[i])))
        {
            foreach (var some in group.Chunk(MostAtOnce))
            {
                Mark(known, drafts, group.Key, some);
            }

            MarkRepeated(known, drafts, group);
        }

        return [.. Enumerable.Range(0, drafts.Count).Where(i => !known[i])];
    }

    private void Mark(bool[] known, IReadOnlyList<Draft> drafts, FactTable table, int[] some)
    {
        var stored = Stored(table, [.. some.Select(i => drafts[i].Key).Distinct()]);
        foreach (var i in stored.Count == 0 ? [] : some)
        {
            if (stored.TryGetValue(drafts[i].Key, out var earlier))
            {
                Compare(earlier.Draft, drafts[i], earlier.Id.ToString(), i);
                known[i] = true;
            }
        }
    }

    private void MarkRepeated(bool[] known, IReadOnlyList<Draft> drafts, IEnumerable<int> group)
    {
        var first = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var i in group)
        {
            if (!known[i] && !first.TryAdd(drafts[i].Key, i))
            {
                var earlier = first[drafts[i].Key];
                Compare(book.AsStored(drafts[earlier]), drafts[i], $"the {earlier + 1}. of this batch", i);
                known[i] = true;
            }
        }
    }

    private Dictionary<string, (FactId Id, Draft Draft)> Stored(FactTable table, string[] keys)
    {
        var stored = new Dictionary<string, (FactId, Draft)>(StringComparer.Ordinal);
        using var command = engine.Command(Sql.Known(table, engine.AnyOfKeys), ("@source", source), ("@keys", engine.Keys(keys)));
        using var reader = command.ExecuteReader();
        var row = new ReaderRow(reader);
        while (reader.Read())
        {
            var key = row.Text(table.Read.Count);
            var attribution = default(Attribution) with { SourceKey = key, Corrects = row.Corrects(), Note = row.TextOrNone(table.Read.Count + 1) };
            stored.Add(key, (row.Number(), book.ToDraft(table.FromRow(row, attribution))));
        }

        return stored;
    }

    private void Compare(Draft earlier, Draft draft, string which, int index)
    {
        var now = book.AsStored(draft);
        if (now != earlier)
        {
            throw new LedgerRefusal(LedgerRule.KeyTaken,
                $"{source} has used the key \"{draft.Key}\" before, for {which}, with other content: {earlier.DifferenceFrom(now)}. Give a new fact a new key; put the earlier one right by a correction.") { Index = index };
        }
    }
}
