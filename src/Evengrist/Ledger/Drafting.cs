using NodaTime;

namespace Evengrist.Ledger;

/// <summary>Turns drafts into facts: codes into places, numbers given in order.</summary>
public static class Drafting
{
    /// <summary>Facts from drafts, numbered from the book's last fact on; places opened earlier in the same batch are known to later drafts.</summary>
    /// <param name="book">The book they are meant for; not changed.</param>
    /// <param name="drafts">In the order of recording.</param>
    /// <param name="by">Who records them.</param>
    /// <param name="source">Where they come from.</param>
    /// <param name="recorded">When they are recorded.</param>
    /// <exception cref="LedgerRefusal">A code names no place; nothing else is checked here.</exception>
    public static IReadOnlyList<Fact> ToFacts(this Book book, IReadOnlyList<Draft> drafts, string by, string source, Instant recorded)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(drafts);
        var opened = new Dictionary<string, PlaceId>(StringComparer.OrdinalIgnoreCase);
        var facts = new List<Fact>(drafts.Count);
        var number = book.Last.Value;
        var place = book.Places.Count;
        for (var i = 0; i < drafts.Count; i++)
        {
            var draft = drafts[i];
            var id = new FactId(++number);
            var attribution = new Attribution(recorded.Cut(), by, source, draft.Key, draft.Corrects, draft.Note);
            PlaceId At(string code) => Resolve(book, opened, code, i);
            switch (draft)
            {
                case OpenPlace open:
                    var placeId = new PlaceId(++place);
                    opened.TryAdd(open.Code, placeId);
                    facts.Add(new PlaceOpened(id, new Place(placeId, open.Code, open.Kind, open.Name, open.Material)
                    {
                        Capacity = open.Capacity, Of = open.Of, CoreShare = open.CoreShare, Stirred = open.Stirred,
                    }, attribution));
                    break;
                case Connect connect:
                    facts.Add(new Connected(id, At(connect.From), At(connect.To), attribution));
                    break;
                case Move move:
                    facts.Add(new Moved(new Movement(id, At(move.From), At(move.To), move.Mass, move.At.Cut(), (move.Until ?? move.At).Cut()), attribution));
                    break;
                case Measure m:
                    facts.Add(new Measured(new Reading(id, At(m.On), m.At.Cut(), m.What, m.Value, m.Unit, m.Basis, m.Method, m.Instrument, m.StandardUncertainty), attribution));
                    break;
                case Happen happen:
                    facts.Add(new Happened(new Happening(id, At(happen.On), happen.At.Cut(), happen.Kind, happen.Text), attribution));
                    break;
            }
        }

        return facts;
    }

    private static PlaceId Resolve(Book book, Dictionary<string, PlaceId> opened, string code, int index) =>
        opened.TryGetValue(code, out var id) ? id
        : book.Find(code)?.Id ?? throw new LedgerRefusal(LedgerRule.UnknownPlace,
            $"There is no place with the code \"{code}\". Open it first, or look for a typing error.") { Place = code, Index = index };
}
