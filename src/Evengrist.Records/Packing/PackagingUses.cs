using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Packing.Lines;
using Evengrist.Packing.Products;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>Which lot of bags, film, labels or cases was on which line when.</summary>
public static class PackagingUses
{
    /// <summary>All of them, in the newest version of each, by when they were loaded.</summary>
    public static IReadOnlyList<PackagingUse> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(PackagingUse.PaperKind).NewestOfEach().Select(p => PackagingUse.TryRead(p.Json, out var use, out _) ? use : null).OfType<PackagingUse>().OrderBy(u => u.From).ThenBy(u => u.Line, StringComparer.Ordinal)];
    }

    /// <summary>The packaging that was on a line at a moment.</summary>
    public static IReadOnlyList<PackagingUse> PackagingOf(Mill mill, string line, Instant at) => [.. All(mill).Where(u => u.Line.Equals(line, StringComparison.OrdinalIgnoreCase) && u.IsOnAt(at))];

    /// <summary>Where and when a lot was used; case does not matter.</summary>
    public static IReadOnlyList<PackagingUse> UsesOf(Mill mill, string lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        return [.. All(mill).Where(u => u.Lot.Equals(lot.Trim(), StringComparison.OrdinalIgnoreCase))];
    }

    /// <summary>The pallets that were being filled on a lot's lines while it was on them, by when they were packed; where it was loaded for one product, those that are for certain of another are left out.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="lot">The lot.</param>
    /// <param name="at">The moment looked at: later pallets are left out.</param>
    public static IReadOnlyList<(Place Pallet, Instant PackedAt, PackagingUse Use)> PalletsOf(Mill mill, string lot, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var uses = UsesOf(mill, lot);
        var products = uses.Any(u => u.Product.Length > 0) ? Products.Newest(mill).Select(k => k.Product).ToArray() : [];
        bool IsFor(PackagingUse use, Place pallet) => use.Product.Length == 0 || Product.On(products, pallet) is not { } product || product.Code.Equals(use.Product, StringComparison.OrdinalIgnoreCase);
        return mill.Ask(view => uses.Where(u => view.Book.Find(u.Line) is not null)
            .SelectMany(u => view.Book.MovementsOf(view.Book.Named(u.Line).Id).Select(m => view.Book.Movements[m])
                .Where(m => m.From == view.Book.Named(u.Line).Id && view.Book[m.To].Kind == PlaceKind.Pallet && m.Until <= at && m.Until >= u.From && !(u.Until <= m.At) && IsFor(u, view.Book[m.To])).Select(m => (view.Book[m.To], m.Until, u)))
            .OrderBy(p => p.Until).ThenBy(p => p.Item1.Code, StringComparer.Ordinal).ToArray());
    }

    /// <summary>Says that a lot was loaded; every fault where it cannot be, and then nothing is kept.</summary>
    public static (PackagingUse? Use, IReadOnlyList<string> Faults) Load(Mill mill, PackagingUse use, string? by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(use);
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(),
            .. use.Faults(),
            .. mill.Ask(view => view.Book.Find(use.Line) is { Kind: PlaceKind.PackingLine }) ? Array.Empty<string>() : [$"There is no packing line {use.Line} in the ledger."],
            .. use.Product.Length > 0 && Products.Find(mill, use.Product) is null ? [$"There is no product {use.Product}."] : Array.Empty<string>(),
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        mill.Papers(PackagingUse.PaperKind).KeepNext(Code(use), use.ToJson(), by!.Trim());
        return (use, []);
    }

    /// <summary>Says that what was loaded came off the line; null where it was not on it.</summary>
    public static PackagingUse? TakeOff(Mill mill, string line, string lot, Instant until, string by)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(by);
        if (UsesOf(mill, lot).LastOrDefault(u => u.Line.Equals(line, StringComparison.OrdinalIgnoreCase) && u.Until is null && u.From < until) is not { } on)
        {
            return null;
        }

        var off = on with { Until = until };
        mill.Papers(PackagingUse.PaperKind).KeepNext(Code(on), off.ToJson(), by.Trim());
        return off;
    }

    private static string Code(PackagingUse use) => string.Create(CultureInfo.InvariantCulture, $"{use.Line} {use.Lot} {use.From.ToUnixTimeSeconds()}");
}
