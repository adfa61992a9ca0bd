using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Browsing;
using NodaTime;

namespace Evengrist.Records.Lists;

/// <summary>Facts as lists, newest first: each with who recorded it, and what became of it. They are read a page at a time.</summary>
internal static class LedgerLists
{
    private const int PageSize = 1000;

    private static readonly ListOf<LedgerRow> Movements = Begun(new ListOf<LedgerRow>())
        .Moment("began", r => r.Moved?.At).Moment("ended", r => r.Moved?.Until)
        .Text("from", r => r.One?.Code).Text("from, kind of place", r => r.One?.Kind.Words()).Text("to", r => r.Other?.Code).Text("to, kind of place", r => r.Other?.Kind.Words())
        .Text("material", r => r.Other?.Material is { Length: > 0 } into ? into : r.One?.Material).Mass("mass as it lay", ListOrigin.Seen, r => r.Moved?.Mass);

    private static readonly ListOf<LedgerRow> Readings = Begun(new ListOf<LedgerRow>())
        .Moment("taken", r => r.Read?.At).Text("on", r => r.One?.Code).Text("kind of place", r => r.One?.Kind.Words()).Text("material", r => r.One?.Material)
        .Text("property", r => r.Read?.What.Words()).Number("value as reported", ListOrigin.Seen, null, r => r.Read?.Value).UnitAndBasis(r => r.Read?.Unit, r => r.Read?.Basis)
        .Number("one standard uncertainty", ListOrigin.Stated, null, r => r.Read?.StandardUncertainty).Text("method", r => r.Read?.Method).Text("instrument", r => r.Read?.Instrument);

    private static readonly ListOf<LedgerRow> Happenings = Begun(new ListOf<LedgerRow>())
        .Moment("happened", r => r.Happened?.At).Text("on", r => r.One?.Code).Text("kind of place", r => r.One?.Kind.Words())
        .Text("what", r => r.Happened?.Kind.ToString()).Text("words", r => r.Happened?.Words).Text("particulars as JSON", r => r.Happened?.Particulars);

    private static readonly ListOf<LedgerRow> Facts = Begun(new ListOf<LedgerRow>())
        .Text("sort", r => r.Line.Sort.ToString().ToLowerInvariant()).Moment("happened", r => r.Moved?.At ?? r.Read?.At ?? r.Happened?.At ?? r.Fact.Attribution.Recorded).Moment("ended", r => r.Moved?.Until)
        .Text("place", r => r.One?.Code).Text("to", r => r.Other?.Code).Mass("mass as it lay", ListOrigin.Seen, r => r.Moved?.Mass)
        .Text("property", r => r.Read?.What.Words()).Number("value as reported", ListOrigin.Seen, null, r => r.Read?.Value).UnitAndBasis(r => r.Read?.Unit, r => r.Read?.Basis)
        .Text("what happened", r => r.Happened?.Kind.ToString()).Text("words", r => r.Happened?.Words ?? (r.Fact is PlaceOpened ? r.One?.Name : null));

    public static IReadOnlyList<MillList> All { get; } =
    [
        Of("movements", "Movements: what went where, newest first", Movements, FactSort.Movement),
        Of("readings", "Readings: what was measured, newest first", Readings, FactSort.Reading),
        Of("happenings", "Happenings: holds, releases, states, notes, newest first", Happenings, FactSort.Happening),
        Of("facts", "Every fact of the ledger, newest first", Facts, null),
    ];

    // Who recorded it and what became of it ends every row, so that each list is finished in one place.
    private static MillList Of(string name, string title, ListOf<LedgerRow> columns, FactSort? sort)
    {
        columns.Text("recorded by", r => r.Fact.Attribution.By).Moment("recorded", r => r.Fact.Attribution.Recorded).Text("source", r => r.Fact.Attribution.Source).Text("key of the source", r => r.Fact.Attribution.SourceKey)
            .Whole("puts right no.", r => r.Fact.Attribution.Corrects?.Value).Whole("put right by no.", r => r.Line.CorrectedBy?.Value).Text("note", r => r.Fact.Attribution.Note);
        return MillList.Of(name, title, columns, (mill, ask) => Rows(mill, ask, sort));
    }

    private static ListOf<LedgerRow> Begun(ListOf<LedgerRow> list) => list.Whole("no.", r => r.Fact.Id.Value).YesNo("counts", r => r.Line.Counts);

    private static IEnumerable<LedgerRow> Rows(Mill mill, ListAsk ask, FactSort? sort)
    {
        var filter = new FactFilter
        {
            Place = ask.Of, Sort = sort ?? (Enum.TryParse<FactSort>(ask["sort"], ignoreCase: true, out var named) && Enum.IsDefined(named) ? named : null), By = ask["by"], Text = ask["text"],
            From = ask.From, Until = Earlier(ask.Until, Micros.ToInstant(ask.AsOf.ToMicros() + 1)), Size = PageSize,
        };
        FactPage page;
        do
        {
            page = mill.Facts(filter);
            var rows = mill.Ask(view => page.Lines.Select(line => Row(view.Book, line)).ToArray());
            foreach (var row in rows)
            {
                yield return row;
            }

            filter = filter with { Before = page.Next };
        }
        while (page.Next is not null);
    }

    private static LedgerRow Row(Book book, FactLine line) => line.Fact switch
    {
        Moved moved => new(line, book[moved.Movement.From], book[moved.Movement.To]),
        Measured measured => new(line, book[measured.Reading.On], null),
        Happened happened => new(line, book[happened.Happening.On], null),
        Connected connected => new(line, book[connected.From], book[connected.To]),
        PlaceOpened opened => new(line, opened.Place, null),
        _ => new(line, null, null),
    };

    private static Instant Earlier(Instant? one, Instant other) => one is { } until && until < other ? until : other;
}
