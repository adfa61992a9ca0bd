using System.Globalization;
using Evengrist.Ledger;

namespace Evengrist.Records;

/// <summary>Facts as the drafts they were recorded from, so that what is sent again can be compared with what is there.</summary>
internal static class Restating
{
    /// <summary>The draft a fact was recorded from, times cut and codes as the places write them.</summary>
    public static Draft ToDraft(this Book book, Fact fact)
    {
        var (key, corrects, note) = (fact.Attribution.SourceKey, fact.Attribution.Corrects, fact.Attribution.Note);
        string Code(PlaceId id) => book[id].Code;
        return fact switch
        {
            PlaceOpened { Place: var p } => new OpenPlace(key, p.Code, p.Kind, p.Name, p.Material) { Capacity = p.Capacity, Of = p.Of, CoreShare = p.CoreShare, Stirred = p.Stirred, Corrects = corrects, Note = note },
            Connected c => new Connect(key, Code(c.From), Code(c.To)) { Corrects = corrects, Note = note },
            Moved { Movement: var m } => new Move(key, Code(m.From), Code(m.To), m.Mass, m.At, m.Until) { Corrects = corrects, Note = note },
            Measured { Reading: var r } => new Measure(key, Code(r.On), r.At, r.What, r.Value, r.Unit, r.Basis, r.Method, r.Instrument, r.StandardUncertainty) { Corrects = corrects, Note = note },
            Happened { Happening: var h } => new Happen(key, Code(h.On), h.At, h.Kind, h.Text) { Corrects = corrects, Note = note },
            _ => throw new ArgumentException($"A {fact.GetType().Name} has no draft.", nameof(fact)),
        };
    }

    /// <summary>The draft as it would read back: times cut to what is stored, codes as the places write them.</summary>
    public static Draft AsStored(this Book book, Draft draft)
    {
        string Code(string code) => book.Find(code)?.Code ?? code;
        return draft switch
        {
            Connect c => c with { From = Code(c.From), To = Code(c.To) },
            Move m => m with { From = Code(m.From), To = Code(m.To), At = m.At.Cut(), Until = (m.Until ?? m.At).Cut() },
            Measure m => m with { On = Code(m.On), At = m.At.Cut() },
            Happen h => h with { On = Code(h.On), At = h.At.Cut() },
            _ => draft,
        };
    }

    /// <summary>What differs, in words: <c>mass was 26,340 kg and is now 26,430 kg</c>.</summary>
    public static string DifferenceFrom(this Draft earlier, Draft now) => string.Join("; ",
        from pair in Content(earlier).Zip(Content(now))
        where !Equals(pair.First.Value, pair.Second.Value)
        select $"{pair.First.Name} was {Words(pair.First.Value)} and is now {Words(pair.Second.Value)}");

    private static IEnumerable<(string Name, object? Value)> Content(Draft draft) =>
        (draft switch
        {
            OpenPlace p => new (string, object?)[] { ("code", p.Code), ("kind", p.Kind), ("name", p.Name), ("material", p.Material), ("capacity", p.Capacity), ("of", p.Of), ("core share", p.CoreShare), ("stirred stage", p.Stirred) },
            Connect c => [("from", c.From), ("to", c.To)],
            Move m => [("from", m.From), ("to", m.To), ("mass", m.Mass), ("beginning", m.At), ("end", m.Until)],
            Measure m => [("place", m.On), ("time", m.At), ("property", m.What), ("value", m.Value), ("unit", m.Unit), ("basis", m.Basis), ("method", m.Method), ("instrument", m.Instrument), ("standard uncertainty", m.StandardUncertainty)],
            Happen h => [("place", h.On), ("time", h.At), ("kind", h.Kind), ("text", h.Text)],
            _ => throw new ArgumentException($"A {draft.GetType().Name} has no content.", nameof(draft)),
        }).Concat([("corrected fact", draft.Corrects), ("note", draft.Note)]);

    private static string Words(object? value) => value switch
    {
        null or "" => "empty",
        IFormattable f => f.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };
}
