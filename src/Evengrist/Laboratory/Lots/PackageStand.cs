using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Laboratory.Lots;

/// <summary>Where a package of a lot is at a moment.</summary>
/// <param name="Package">The package.</param>
/// <param name="IsHere">Whether anything of it is still in the mill.</param>
/// <param name="Hold">The hold on it; null where there is none.</param>
/// <param name="GoneTo">The customer that got it; null where none did.</param>
/// <param name="GoneAt">When it left; null where it did not.</param>
/// <param name="Gone">What left.</param>
public sealed record PackageStand(LotPackage Package, bool IsHere, Happening? Hold, Place? GoneTo, Instant? GoneAt, Mass Gone)
{
    /// <summary>All packages of a lot.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="lot">The lot.</param>
    /// <param name="asOf">The moment.</param>
    public static IReadOnlyList<PackageStand> Of(Book book, FlourLot lot, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(lot);
        return [.. lot.Packages.Where(p => p.PackedAt <= asOf).Select(p => Of(book, p, asOf))];
    }

    private static PackageStand Of(Book book, LotPackage package, Instant asOf)
    {
        var id = package.Place.Id;
        Movement[] left = [.. book.MovementsOf(id).Select(m => book.Movements[m]).Where(m => m.From == id && m.At <= asOf && book[m.To].Kind == PlaceKind.Customer)];
        return new PackageStand(package, book.StockOf(id, asOf) > Mass.Zero, book.HoldOn(id, asOf), left.Length > 0 ? book[left[^1].To] : null, left.Length > 0 ? left[^1].At : null, left.Aggregate(Mass.Zero, (sum, m) => sum + m.Mass));
    }
}
