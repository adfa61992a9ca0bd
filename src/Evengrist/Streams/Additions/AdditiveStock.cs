using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Streams.Additions;

/// <summary>What is left of an additive over all its lots, and how long that lasts. Page: docs/model/additions.md.</summary>
/// <param name="Additive">The additive.</param>
/// <param name="Lots">Its lots that are not used up, the first opened first; all of which nothing was found.</param>
/// <param name="KilogramsPerDay">What was fed of it a day over the span, kg; 0 where none was.</param>
/// <param name="At">The moment.</param>
public sealed record AdditiveStock(string Additive, IReadOnlyList<LotStock> Lots, double KilogramsPerDay, Instant At)
{
    /// <summary>Days over which its use is reckoned [ours].</summary>
    public const int SpanDays = 14;

    private const double UsedUpKilograms = 0.0005;

    /// <summary>What is left where it is known, kg; null where no lot was ever delivered or counted.</summary>
    public double? LeftKilograms => Lots.Any(l => l.Found is not null) ? Lots.Sum(l => Math.Max(0, l.LeftKilograms ?? 0)) : null;

    /// <summary>Until when it lasts at the use of the span; null where nothing is used, or what is left is not known.</summary>
    public Instant? LastsUntil => LeftKilograms is { } left && KilogramsPerDay > 0 ? At + Duration.FromDays(Math.Min(left / KilogramsPerDay, 3650)) : null;

    /// <summary>Every additive there is a lot of, by name.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="at">The moment; later facts do not count.</param>
    public static IReadOnlyList<AdditiveStock> Of(Book book, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        var since = at - Duration.FromDays(SpanDays);
        return
        [
            .. from additive in book.OfKind(PlaceKind.AdditiveLot).GroupBy(p => p.Material, StringComparer.OrdinalIgnoreCase)
               orderby additive.Key
               let lots = additive.Select(p => Lot(book, p, at)).ToArray()
               let used = additive.Sum(p => Fed(book, p, since, at)) / SpanDays
               select new AdditiveStock(additive.Key, [.. lots.Where(l => l.Found is not null ? Math.Abs(l.LeftKilograms!.Value) > UsedUpKilograms : l.LastFed > since)], used, at),
        ];
    }

    private static LotStock Lot(Book book, Place lot, Instant at)
    {
        var found = book.ReadingsOn(lot.Id).LastOrDefault(r => r.What == Property.SoundedStock && r.At <= at);
        var last = Flows(book, lot, at).Select(m => Instant.Min(m.Until, at)).DefaultIfEmpty(Instant.MinValue).Max();
        return new LotStock(lot, found, Fed(book, lot, found?.At ?? Instant.MinValue, at), last == Instant.MinValue ? null : last);
    }

    private static IEnumerable<Movement> Flows(Book book, Place lot, Instant at) => book.MovementsOf(lot.Id).Select(i => book.Movements[i]).Where(m => m.From == lot.Id && m.At < at);

    // Kilograms that left a lot in a span.
    private static double Fed(Book book, Place lot, Instant since, Instant until) => 1000 * Flows(book, lot, until).Sum(m => m.TonnesWithin(since, until));
}
