using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>Finds the parcels a question is about, under one hypothesis.</summary>
internal sealed record Subject(Strand Strand, List<Layer> Parcels, string? Nothing)
{
    public double Grams => Parcels.Sum(p => p.Grams);

    public static Subject Find(Book book, Strand strand, Place place, TraceQuestion question, Instant asOf, bool forward)
    {
        var role = place.Kind.Role();
        var spanned = question.From is not null || question.Until is not null;
        return role switch
        {
            PlaceRole.Source => Given(book, strand, place, question, asOf),
            PlaceRole.Unit => Loaded(book, strand, place, question, asOf),
            PlaceRole.Sink when !forward => Loaded(book, strand, place, question, asOf),
            PlaceRole.Sink => None(strand, $"{place.Code} is where grain leaves the mill's hands: ask for its roots."),
            _ when spanned => Passing(book, strand, place, question, asOf, forward),
            _ when forward => None(strand, $"Say from when to when: what leaves {place.Code} is followed over a span of hours."),
            _ => Lying(strand, place, asOf),
        };
    }

    /// <summary>Several things at once, forward: spans of places are marked together and followed in one reckoning with the loads and sources.</summary>
    public static Subject Joined(Book book, Strand strand, IReadOnlyList<(Place Place, TraceQuestion Question)> asked, Instant asOf)
    {
        var marks = asked.Where(a => a.Place.Kind.IsFixed()).Select(a => MarkOf(a.Place, a.Question, asOf)).OfType<Mark>().ToArray();
        if (marks.Length > 0)
        {
            strand = Onward(book, strand, marks, asked, asOf);
        }

        var parcels = asked.Where(a => !a.Place.Kind.IsFixed())
            .SelectMany(a => a.Place.Kind.Role() == PlaceRole.Source ? Given(book, strand, a.Place, a.Question, asOf).Parcels : Loaded(book, strand, a.Place, a.Question, asOf).Parcels)
            .Concat(strand.Reckoning.Marked).DistinctBy(l => l.Parcel).ToList();
        return parcels.Count > 0 ? new(strand, parcels, null)
            : None(strand, $"Nothing has left, or come to, {string.Join(", ", asked.Select(a => a.Place.Code).Distinct())} by then, in the hours asked.");
    }

    private static Subject Given(Book book, Strand strand, Place place, TraceQuestion question, Instant asOf)
    {
        var parcels = book.MovementsOf(place.Id)
            .Where(i => book.Movements[i].From == place.Id && InSpan(book.Movements[i].At, question, asOf))
            .Select(strand.Reckoning.OriginOf).OfType<int>()
            .Select(p => new Layer(p, strand.Parcels.GramsOf(p))).ToList();
        return parcels.Count > 0 ? new(strand, parcels, null) : None(strand, $"Nothing has left {place.Code} by then.");
    }

    private static Subject Loaded(Book book, Strand strand, Place place, TraceQuestion question, Instant asOf)
    {
        var parcels = book.MovementsOf(place.Id)
            .Where(i => book.Movements[i].To == place.Id && InSpan(book.Movements[i].At, question, asOf))
            .Select(strand.Reckoning.LoadOf).OfType<int>()
            .Select(p => new Layer(p, strand.Parcels.GramsOf(p))).ToList();
        return parcels.Count > 0 ? new(strand, parcels, null) : None(strand, $"Nothing has come to {place.Code} by then.");
    }

    private static Subject Lying(Strand strand, Place place, Instant asOf)
    {
        var layers = strand.Reckoning.At(asOf).ContentOf(place.Id).ToList();
        return layers.Count > 0 ? new(strand, layers, null) : None(strand, $"{place.Code} is empty on {asOf}. Ask about another moment, or about a span of hours.");
    }

    // What leaves a bin, a machine or a line in a span is marked and followed in a reckoning of its own.
    private static Subject Passing(Book book, Strand strand, Place place, TraceQuestion question, Instant asOf, bool forward)
    {
        if (MarkOf(place, question, asOf) is not { } mark)
        {
            return None(strand, "The span ends before it begins, or lies after the moment looked back from.");
        }

        var marked = forward ? Onward(book, strand, [mark], [(place, question)], asOf) : new Strand(new Reckoning(book, strand.Reckoning.Outflow, mark));
        marked.CatchUp();
        var reckoning = marked.Reckoning;
        return reckoning.Marked.Count > 0 ? new(marked, [.. reckoning.Marked], null) : None(strand, $"Nothing left {place.Code} between {mark.From} and {mark.Until}.");
    }

    // Marked and reckoned on from before the first of all that is asked.
    private static Strand Onward(Book book, Strand strand, Mark[] marks, IReadOnlyList<(Place Place, TraceQuestion Question)> asked, Instant asOf)
    {
        var begins = asked.Where(a => !a.Place.Kind.IsFixed())
            .SelectMany(a => book.MovementsOf(a.Place.Id).Select(i => book.Movements[i]).Where(m => (a.Place.Kind.Role() == PlaceRole.Source ? m.From : m.To) == a.Place.Id && InSpan(m.At, a.Question, asOf)).Select(m => m.At))
            .Concat(marks.Select(m => m.From)).Min();
        return new Strand(strand.Reckoning.Onward(marks, begins, asOf));
    }

    // What is asked of a place of the plant over a span; null where the span is none.
    private static Mark? MarkOf(Place place, TraceQuestion question, Instant asOf)
    {
        var from = question.From ?? Instant.FromUnixTimeTicks(0);
        var until = question.Until is { } end && end < asOf ? end : asOf;
        return until > from ? new Mark(place.Id, from, until) : null;
    }

    private static bool InSpan(Instant at, TraceQuestion question, Instant asOf) =>
        at <= asOf && (question.From is not { } from || at >= from) && (question.Until is not { } until || at < until);

    private static Subject None(Strand strand, string why) => new(strand, [], why);
}
