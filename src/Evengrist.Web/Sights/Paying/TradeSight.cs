using Evengrist.Intake.Paying;
using Evengrist.Intake.Trade;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Web.Sights.Paying;

/// <summary>Loads, statements and reports of a mill as of a moment.</summary>
public sealed class TradeSight
{
    private readonly Mill mill;
    private readonly Instant at;
    private readonly TradeShelf shelf;

    private TradeSight(Mill mill, Instant at)
    {
        (this.mill, this.at, shelf) = (mill, at, TradeShelf.Of(mill));
        var settings = mill.Settings;
        (Day, Date) = (MillingDay.Of(at, settings.Zone, settings.DayStart), at.InZone(settings.Zone).Date);
    }

    /// <summary>The basis of shares of solids on statements and reports: that of wheat.</summary>
    public static Basis Basis => Basis.At12;

    /// <summary>The milling day looked at.</summary>
    public LocalDate Day { get; }

    /// <summary>The day of the site's calendar looked at.</summary>
    public LocalDate Date { get; }

    /// <summary>Parties, fields, vehicles, certificates.</summary>
    public TradePapers Papers => shelf.Papers;

    /// <summary>A mill at a moment.</summary>
    public static TradeSight Of(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return new(mill, at);
    }

    /// <summary>Every load that had come, oldest first.</summary>
    public IReadOnlyList<LoadFacts> Loads() => mill.Ask(view => shelf.Reader(view, at).All().ToList());

    /// <summary>Loads of a span.</summary>
    public IReadOnlyList<LoadFacts> Loads(SeasonSpan span) => [.. Loads().Where(l => span.Holds(l.Day))];

    /// <summary>One load; null where it had not come.</summary>
    public LoadFacts? Load(string ticket) => mill.Ask(view => view.Book.Find(ticket) is { Kind: PlaceKind.Truck } truck ? shelf.Reader(view, at).Look(truck) : null);

    /// <summary>Growers with loads in a span, by code, with how many and how much.</summary>
    public IReadOnlyList<(string Code, string Name, int Loads, Mass Net)> Growers(SeasonSpan span) =>
    [
        .. Loads(span).GroupBy(l => l.GrowerCode, StringComparer.OrdinalIgnoreCase).OrderBy(g => g.Key, StringComparer.OrdinalIgnoreCase)
            .Select(g => (g.Key, g.First().GrowerName, g.Count(), Mass.FromGrams(g.Where(l => l.Voided is null).Sum(l => l.Net.Grams)))),
    ];

    /// <summary>Statements of a grower, by code or name; none where nothing of the sort came.</summary>
    public IReadOnlyList<Statement> Statements(string grower, SeasonSpan span)
    {
        ArgumentNullException.ThrowIfNull(span);
        var asked = (grower ?? "").Trim();
        return Statement.Of(Loads(span).Where(l => l.GrowerCode.Equals(asked, StringComparison.OrdinalIgnoreCase) || l.GrowerName.Equals(asked, StringComparison.OrdinalIgnoreCase)), span.From, span.Until, Basis);
    }

    /// <summary>The season report, one for each currency.</summary>
    public IReadOnlyList<SeasonReport> Season(SeasonSpan span)
    {
        ArgumentNullException.ThrowIfNull(span);
        return SeasonReport.Of(Loads(span), span.From, span.Until, Basis);
    }

    /// <summary>Scales and meters with their certificates.</summary>
    public IReadOnlyList<InstrumentWatch> Instruments() => InstrumentWatch.Of(Papers, Loads(), Date);
}
