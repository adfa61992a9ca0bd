using System.Globalization;
using Evengrist.Intake.Trade;
using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>Release records of everything that went to customers in a span: from loads, cards, parties and lots. What no load names is a record too, with what it lacks.</summary>
public static class ReleaseRecords
{
    /// <summary>Most days looked at together [ours].</summary>
    public const int MostDays = 92;

    /// <summary>Records of what left at or after a moment and before another, the first first.</summary>
    public static IReadOnlyList<ReleaseRecord> Of(Mill mill, Instant from, Instant until)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (settings, trade) = (mill.Settings, TradeShelf.Of(mill).Papers);
        var cards = Consignees.All(mill).ToDictionary(c => c.Code, StringComparer.OrdinalIgnoreCase);
        Product[] products = [.. Products.Newest(mill).Select(p => p.Product)];
        var loads = DispatchShelf.All(mill).Where(l => l.Departed is not null).SelectMany(l => l.Packages.Select(p => (p.Code, Load: l))).ToLookup(l => l.Code, l => l.Load, StringComparer.OrdinalIgnoreCase);
        var lots = new FlourLots(KeepReleaseRules.Newest(mill).Rules, settings.Zone, settings.DayStart);
        return mill.Ask(view =>
        {
            var book = view.Book;
            return Gone(book, from, until).GroupBy(m => (Load: loads[book[m.From].Code].FirstOrDefault(l => l.Departed!.At == m.At), m.To, m.At)).OrderBy(g => g.Key.At).ThenBy(g => g.Key.To).Select(g =>
            {
                var (load, place) = (g.Key.Load, book[g.Key.To]);
                ReleasedLot[] released = [.. g.Select(m => (Place: book[m.From], m.Mass, Lot: lots.CodeOf(book, book[m.From]))).GroupBy(p => (p.Place.Material, p.Place.Name, p.Place.Kind, p.Lot)).Select(l => Lot(l.Key.Lot, [.. l.Select(p => (p.Place, p.Mass))], products))];
                return ReleaseRecord.Of(load?.Number ?? (g.Count() == 1 ? book[g.First().From].Code : string.Create(CultureInfo.InvariantCulture, $"{g.Count()} pallets to {place.Code}")), g.Key.At, g.Key.At.InZone(settings.Zone).Date,
                    place.Code, Firm(cards.GetValueOrDefault(place.Code), place), released, Hauler(trade, load), load?.Trailer ?? "");
            }).ToArray();
        });
    }

    private static IEnumerable<Movement> Gone(Book book, Instant from, Instant until) => book.Movements.Where((m, i) =>
        m.At >= from && m.At < until && m.Mass > Mass.Zero && book.Counts(i) && book[m.To].Kind == PlaceKind.Customer && book[m.From].Kind is PlaceKind.Pallet or PlaceKind.BulkLoad);

    private static ReleasedLot Lot(string lot, (Place Place, Mass Mass)[] packages, Product[] products)
    {
        var (place, count) = (packages[0].Place, packages.Length);
        var name = Product.On(products, place)?.Name ?? "";
        var food = name.Length > 0 ? $"{name} ({place.Material})" : place.Material;
        return new(food, lot.Length > 0 ? lot : string.Join(", ", packages.Select(p => p.Place.Code)), place.Kind == PlaceKind.BulkLoad ? "loose, in a tanker" : $"{count} {(count == 1 ? "pallet" : "pallets")} of {place.Name}".TrimEnd(),
            packages.Aggregate(Mass.Zero, (sum, p) => sum + p.Mass), [.. packages.Select(p => p.Place.Code)]);
    }

    // Without a card the ledger still knows what the place is called.
    private static Party? Firm(ConsigneeCard? card, Place place) => card is not null
        ? new Party { Code = card.Code, Name = card.Name, Address = card.Address, Phone = card.Phone, Fax = card.Fax, Email = card.Email }
        : place.Name.Length > 0 ? new Party { Code = place.Code, Name = place.Name } : null;

    private static Party? Hauler(TradePapers trade, DispatchLoad? load) => load is null || load.Carrier.Length == 0 ? null : trade.PartyNamed(load.Carrier) ?? new Party { Code = load.Carrier, Name = load.Carrier };
}
