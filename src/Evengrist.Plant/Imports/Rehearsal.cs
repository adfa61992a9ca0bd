using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Plant.Imports;

/// <summary>Finds everything the ledger would refuse of a batch, without touching the ledger.</summary>
/// <remarks>
/// Works on a scratch book that holds the places and connections of the real one, and the movements and holds of the places the batch
/// names. What is refused is noted, the row taken out, and the rest tried again, so each row is blamed once at most; a fault that only
/// follows from another row being taken out is not told apart from one of its own. A balance is blamed on the last row before the moment
/// at which it fails that draws from (or fills) the place.
/// </remarks>
public static class Rehearsal
{
    /// <summary>Drafts tried in all, each time anew: keeps a large file full of faults within seconds.</summary>
    private const int MostTried = 600_000;

    /// <summary>Every fault of the batch against the book; empty when the whole batch would be taken.</summary>
    /// <param name="book">The book as it stands; not changed.</param>
    /// <param name="batch">What is to be recorded.</param>
    /// <param name="by">Who would record it.</param>
    /// <param name="recorded">When it would be recorded.</param>
    /// <param name="newAmong">Positions of the drafts that are not known already; throws for one whose key was used for other content. Null to take all for new.</param>
    /// <param name="mostFaults">Faults listed at most; a last one says so.</param>
    public static IReadOnlyList<Fault> Of(
        Book book, Batch batch, string by, Instant recorded, Func<IReadOnlyList<Draft>, IReadOnlyList<int>>? newAmong = null, int mostFaults = 200)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(batch);
        var faults = new List<Fault>();
        if (newAmong is not null)
        {
            IReadOnlyList<int> fresh = [];
            batch = WithoutRefused(batch, faults, mostFaults, b => fresh = newAmong(b.Drafts));
            batch = batch.Only(fresh);
        }

        var scratch = Scratch(book, batch, recorded);
        WithoutRefused(batch, faults, mostFaults, b => scratch.Append(scratch.ToFacts(b.Drafts, by, b.Source, recorded)));
        return faults.OrderBy(f => f.Line ?? int.MaxValue).ThenBy(f => f.Column).ToArray();
    }

    /// <summary>Tries again and again, each time without the row that was refused, until nothing is.</summary>
    private static Batch WithoutRefused(Batch batch, List<Fault> faults, int mostFaults, Action<Batch> attempt)
    {
        long tried = 0;
        while (batch.Drafts.Count > 0)
        {
            try
            {
                tried += batch.Drafts.Count;
                attempt(batch);
                break;
            }
            catch (LedgerRefusal refusal)
            {
                faults.Add(batch.Explain(refusal));
                var blamed = batch.BlameOf(refusal);
                if (blamed < 0 || faults.Count > mostFaults || tried > MostTried)
                {
                    faults.Add(Fault.OfFile("more", "these faults mended first; the rest of the file was not tried against the ledger"));
                    return batch.Only([]);
                }

                batch = batch.Without(batch.Rows[blamed].Line);
            }
        }

        return batch;
    }

    private static Book Scratch(Book book, Batch batch, Instant recorded)
    {
        var named = batch.Drafts.SelectMany(Codes).Distinct(StringComparer.OrdinalIgnoreCase).Select(book.Find).OfType<Place>().Select(p => p.Id).ToHashSet();
        var attribution = new Attribution(recorded, "scratch", "scratch", "scratch");
        var facts = new List<Fact>();
        FactId Next() => new(facts.Count + 1);
        foreach (var place in book.Places)
        {
            facts.Add(new PlaceOpened(Next(), place, attribution));
        }

        foreach (var (from, to) in book.Connections)
        {
            facts.Add(new Connected(Next(), from, to, attribution));
        }

        foreach (var index in named.SelectMany(book.MovementsOf).Distinct().Order())
        {
            facts.Add(new Moved(book.Movements[index] with { Id = Next() }, attribution));
        }

        foreach (var happening in named.SelectMany(book.HappeningsOn))
        {
            facts.Add(new Happened(happening with { Id = Next() }, attribution));
        }

        var scratch = new Book();
        scratch.Append(facts, trusted: true);
        return scratch;
    }

    private static string[] Codes(Draft draft) => draft switch
    {
        OpenPlace open => [open.Code],
        Connect connect => [connect.From, connect.To],
        Move move => [move.From, move.To],
        Measure measure => [measure.On],
        Happen happen => [happen.On],
        _ => [],
    };
}
