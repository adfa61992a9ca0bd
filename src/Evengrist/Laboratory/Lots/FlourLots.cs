using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Laboratory.Lots;

/// <summary>The lots of a mill, reckoned from its ledger by the mill's own rule. Model: docs/model/lots.md.</summary>
/// <param name="Rules">The rule.</param>
/// <param name="Zone">The mill's time zone.</param>
/// <param name="DayStart">When its milling day begins.</param>
public sealed record FlourLots(ReleaseRules Rules, DateTimeZone Zone, LocalTime DayStart)
{
    /// <summary>The lots of milling days, by day, flour and part.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="first">First milling day.</param>
    /// <param name="last">Last milling day.</param>
    public IReadOnlyList<FlourLot> Of(Book book, LocalDate first, LocalDate last)
    {
        ArgumentNullException.ThrowIfNull(book);
        var (begin, end) = (MillingDay.Begin(first, Zone, DayStart), MillingDay.Begin(last.PlusDays(1), Zone, DayStart));
        return [.. Packages(book, begin, end).GroupBy(p => (Day: MillingDay.Of(p.PackedAt, Zone, DayStart), p.Place.Material, Part: PartOf(p.PackedAt)))
            .OrderBy(g => g.Key.Day).ThenBy(g => g.Key.Material, StringComparer.Ordinal).ThenBy(g => g.Key.Part)
            .Select(g => Lot(g.Key.Day, g.Key.Material, g.Key.Part, [.. g.OrderBy(p => p.PackedAt).ThenBy(p => p.Place.Code, StringComparer.Ordinal)]))];
    }

    /// <summary>The lot of a code; null where there is none.</summary>
    public FlourLot? Find(Book book, string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        var parts = code.Trim().Split('-');
        return parts.Length >= 2 && parts.Select(p => DayPattern.Parse(p)).FirstOrDefault(p => p.Success) is { Success: true, Value: var day }
            ? Of(book, day, day).FirstOrDefault(l => l.Code.Equals(code.Trim(), StringComparison.OrdinalIgnoreCase)) : null;
    }

    /// <summary>Code of the lot that a package belongs to; empty where it belongs to none.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="package">A pallet or bulk load.</param>
    /// <param name="packedAt">When it was packed: what was first packed on another milling day belongs to none here.</param>
    public string CodeOf(Book book, Place package, Instant packedAt)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(package);
        var day = MillingDay.Of(packedAt, Zone, DayStart);
        return MakesLots(package) && FirstInto(book, package.Id) is { } first && MillingDay.Of(first.Until, Zone, DayStart) == day ? Code(package.Material, day, PartOf(first.Until)) : "";
    }

    /// <summary>The same, of the milling day on which it was packed, whichever that is; empty too where nothing came onto it.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="package">A pallet or bulk load.</param>
    public string CodeOf(Book book, Place package)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(package);
        return FirstInto(book, package.Id) is { } first ? CodeOf(book, package, first.Until) : "";
    }

    /// <summary>The beginning of the part of the milling day in which a moment lies.</summary>
    public Instant PartBegin(Instant at) => MillingDay.Begin(MillingDay.Of(at, Zone, DayStart), Zone, DayStart) + (Duration.FromHours(24.0 / Rules.PartsOfDay) * (PartOf(at) - 1));

    private static NodaTime.Text.LocalDatePattern DayPattern { get; } = NodaTime.Text.LocalDatePattern.CreateWithInvariantCulture("yyMMdd");

    private IEnumerable<LotPackage> Packages(Book book, Instant begin, Instant end)
    {
        foreach (var (i, movement) in book.Movements.Index())
        {
            if (movement.Until >= begin && movement.Until < end && book.Counts(i) && MakesLots(book[movement.To]) && FirstInto(book, movement.To) is { } first && first.Id == movement.Id)
            {
                yield return new LotPackage(book[movement.To], movement.Until, movement.From, movement.Mass);
            }
        }
    }

    private bool MakesLots(Place place) =>
        place.Kind is PlaceKind.Pallet or PlaceKind.BulkLoad && (Rules.Products.Count == 0 || Rules.Products.Contains(place.Material, StringComparer.OrdinalIgnoreCase));

    // What is added to a package later belongs to the lot it was begun in.
    private static Movement? FirstInto(Book book, PlaceId package) =>
        book.MovementsOf(package).Select(m => book.Movements[m]).Where(m => m.To == package).OrderBy(m => m.Until).ThenBy(m => m.Id).Select(m => (Movement?)m).FirstOrDefault();

    // Parts are counted on the clock of elapsed hours since the day began: a day of 23 or 25 hours has its last part shorter or longer.
    private int PartOf(Instant at)
    {
        var since = (at - MillingDay.Begin(MillingDay.Of(at, Zone, DayStart), Zone, DayStart)).TotalHours;
        return Math.Min(Rules.PartsOfDay, 1 + (int)(since * Rules.PartsOfDay / 24));
    }

    private FlourLot Lot(LocalDate day, string flour, int part, IReadOnlyList<LotPackage> packages)
    {
        var begin = MillingDay.Begin(day, Zone, DayStart);
        var length = Duration.FromHours(24.0 / Rules.PartsOfDay);
        var until = part == Rules.PartsOfDay ? MillingDay.Begin(day.PlusDays(1), Zone, DayStart) : begin + (length * part);
        return new FlourLot(Code(flour, day, part), flour, day, begin + (length * (part - 1)), until, packages);
    }

    private string Code(string flour, LocalDate day, int part)
    {
        var word = new string([.. flour.Where(char.IsLetterOrDigit)]);
        return string.Create(CultureInfo.InvariantCulture, $"{(word.Length > 0 ? word : "FLOUR")}-{DayPattern.Format(day)}{(Rules.PartsOfDay == 1 ? "" : $"-{part}")}");
    }
}
