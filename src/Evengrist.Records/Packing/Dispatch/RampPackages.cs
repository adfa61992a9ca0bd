using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using Evengrist.Records.Browsing;
using NodaTime;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>Packages as they are known at the ramp: ledger, lots, holds, products and other loads together.</summary>
public static class RampPackages
{
    /// <summary>Looks at packages, in the order asked.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="codes">Codes of pallets and bulk loads; unknown ones are answered as such.</param>
    /// <param name="at">The moment.</param>
    /// <param name="load">The load they are looked at for, which does not count as another; null for none.</param>
    public static IReadOnlyList<RampPackage> Of(Mill mill, IReadOnlyList<string> codes, Instant at, string? load = null) => Of(mill, RampPapers.Of(mill), codes, at, load);

    /// <summary>Looks at packages with papers that were read before.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="papers">What the papers say.</param>
    /// <param name="codes">Codes of pallets and bulk loads; unknown ones are answered as such.</param>
    /// <param name="at">The moment.</param>
    /// <param name="load">The load they are looked at for, which does not count as another; null for none.</param>
    public static IReadOnlyList<RampPackage> Of(Mill mill, RampPapers papers, IReadOnlyList<string> codes, Instant at, string? load = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(papers);
        ArgumentNullException.ThrowIfNull(codes);
        if (codes.Count == 0)
        {
            return [];
        }

        var decided = papers.Decisions.Where(d => d.At <= at).GroupBy(d => d.Lot, StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.Last(), StringComparer.OrdinalIgnoreCase);
        var elsewhere = papers.Loads.Where(l => l.IsOpen && !l.Number.Equals(load, StringComparison.OrdinalIgnoreCase))
            .SelectMany(l => l.Packages.Select(p => (l.Number, Package: p))).GroupBy(p => p.Package.Code, StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.First(), StringComparer.OrdinalIgnoreCase);
        var lots = new FlourLots(papers.Release, papers.Settings.Zone, papers.Settings.DayStart);
        RampPackage[] seen = mill.Ask(view => codes.Select(code => Look(view.Book, lots, decided, code, at)).ToArray());
        return [.. seen.Select(p => Elsewhere(By(mill, p), elsewhere)).Select(p => Product(p, papers.Products, papers.Settings))];
    }

    private static RampPackage Look(Book book, FlourLots lots, Dictionary<string, LotDecision> decided, string code, Instant at)
    {
        if (book.Find(code) is not { } place)
        {
            return new RampPackage(code.Trim());
        }

        if (place.Kind is not (PlaceKind.Pallet or PlaceKind.BulkLoad))
        {
            return new RampPackage(place.Code) { Kind = place.Kind };
        }

        var stand = UnitStand.Of(book, place.Id, at);
        var hold = book.HoldOn(place.Id, at);
        Instant[] later = [.. book.MovementsOf(place.Id).Select(m => book.Movements[m]).Where(m => m.Mass > Mass.Zero && m.From == place.Id && m.At > at).Select(m => m.At)];
        var gone = stand.Where == UnitWhere.Sent;
        var lot = stand.PackedAt is { } then ? lots.CodeOf(book, place, then) : "";
        var verdict = lot.Length > 0 ? decided.GetValueOrDefault(lot) : null;
        return new RampPackage(place.Code)
        {
            Kind = place.Kind, Flour = place.Material, PackedAs = place.Name, Grams = stand.Here.Grams, PackedAt = stand.PackedAt, Lot = lot, As = verdict?.As ?? "", Stand = lot.Length == 0 ? LotStand.NoLot : Stand(verdict),
            Hold = hold?.Words ?? "", HeldSince = hold?.At, GoneTo = gone ? stand.To!.Code : "", GoneAt = gone ? stand.LeftAt : null, GoneGrams = gone ? stand.Gone.Grams : 0, LeavesLater = later.Length > 0 ? later.Min() : null,
        };
    }

    private static LotStand Stand(LotDecision? decision) => decision?.Verdict switch
    {
        LotVerdict.Release => LotStand.Released,
        LotVerdict.Downgrade => LotStand.Downgraded,
        LotVerdict.Hold => LotStand.Held,
        LotVerdict.Rework => LotStand.Rework,
        _ => LotStand.Undecided,
    };

    // Who laid a hold stands with the fact.
    private static RampPackage By(Mill mill, RampPackage package) => package.HeldSince is not { } since ? package : package with
    {
        HeldBy = mill.Facts(new FactFilter { Place = package.Code, Sort = FactSort.Happening, Size = 200 }).Lines.FirstOrDefault(l => l.Fact is Happened { Happening: var h } && h.Kind == HappeningKind.Held && h.At == since)?.Fact.Attribution.By ?? "",
    };

    private static RampPackage Elsewhere(RampPackage package, Dictionary<string, (string Number, LoadedPackage Package)> loads) =>
        loads.TryGetValue(package.Code, out var on) ? package with { OnLoad = on.Number, OnLoadSince = on.Package.At, OnLoadBy = on.Package.By } : package;

    private static RampPackage Product(RampPackage package, IReadOnlyList<Product> products, MillSettings settings) =>
        package.PackedAt is not { } packed || Evengrist.Packing.Products.Product.On(products, new Place(default, package.Code, package.Kind, package.PackedAs, package.Flour)) is not { } product ? package
            : package with { Product = product.Code, Allergens = product.AllergensBeyondWheat, BestBefore = PackDates.BestBefore(MillingDay.Of(packed, settings.Zone, settings.DayStart), product.ShelfMonths) };
}
