using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Laboratory.Lots;

/// <summary>Where a package of a lot is at a moment.</summary>
/// <param name="Package">The package.</param>
/// <param name="IsHere">Whether anything of it is still in the mill.</param>
/// <param name="Hold">The hold on it; null where there is none.</param>
/// <param name="GoneTo">The customer that has some of it; null where none has, as after it came back.</param>
/// <param name="GoneAt">When it left; null where it did not.</param>
/// <param name="Gone">What customers have.</param>
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
        var stand = UnitStand.Of(book, package.Place.Id, asOf);
        return new PackageStand(package, stand.Here > Mass.Zero, book.HoldOn(package.Place.Id, asOf), stand.Customer, stand.Customer is null ? null : stand.LeftAt, stand.Gone);
    }
}
