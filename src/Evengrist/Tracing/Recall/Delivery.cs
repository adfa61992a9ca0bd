using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>What of a recalled package went to a customer.</summary>
/// <param name="Package">The package.</param>
/// <param name="Customer">Who got it.</param>
/// <param name="Mass">How much of it went there.</param>
/// <param name="At">When.</param>
public sealed record Delivery(RecallPackage Package, Place Customer, Mass Mass, Instant At)
{
    /// <summary>Deliveries of packages up to a moment, by customer and by when they left.</summary>
    public static IReadOnlyList<Delivery> Of(Book book, IEnumerable<RecallPackage> packages, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(packages);
        return [.. packages.SelectMany(p => book.MovementsOf(p.Place.Id).Select(i => book.Movements[i])
                .Where(m => m.From == p.Place.Id && m.At <= asOf && m.Mass > Mass.Zero && book[m.To].Kind == PlaceKind.Customer)
                .Select(m => new Delivery(p, book[m.To], m.Mass, m.At)))
            .OrderBy(d => d.Customer.Code, StringComparer.Ordinal).ThenBy(d => d.At).ThenBy(d => d.Package.Place.Id)];
    }
}
