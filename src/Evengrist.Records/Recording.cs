using Evengrist.Ledger;
using Evengrist.Records.Engines;
using Evengrist.Records.Tables;
using NodaTime;

namespace Evengrist.Records;

/// <summary>Takes one batch in: what is known already drops out, the rules are checked, the rest is written, and only then kept.</summary>
internal sealed class Recording(Engine engine, Book book, string by, string source, Instant recorded)
{
    public Receipt Record(IReadOnlyList<Draft> drafts, Action provided)
    {
        Storable.Demand(drafts, by, source);
        var news = new KnownKeys(engine, book, source).NewAmong(drafts);
        var fresh = news.Count == drafts.Count ? drafts : [.. news.Select(i => drafts[i])];
        if (fresh.Count == 0)
        {
            return new Receipt(0, drafts.Count, null, null);
        }

        provided();
        try
        {
            var facts = book.ToFacts(fresh, by, source, recorded);
            book.Append(facts, keep: () => Write(facts));
            return new Receipt(facts.Count, drafts.Count - facts.Count, facts[0].Id, facts[^1].Id);
        }
        catch (LedgerRefusal refusal) when (refusal.Index >= 0 && news[refusal.Index] != refusal.Index)
        {
            // The sender counts in its own batch, known ones included.
            throw new LedgerRefusal(refusal.Rule, refusal.Message) { Place = refusal.Place, At = refusal.At, By = refusal.By, Index = news[refusal.Index] };
        }
    }

    private void Write(IReadOnlyList<Fact> facts)
    {
        foreach (var table in FactTable.All)
        {
            var ours = facts.Where(table.Takes).ToList();
            if (ours.Count > 0)
            {
                engine.Insert(table, ours);
            }
        }

        engine.Commit();
    }
}
