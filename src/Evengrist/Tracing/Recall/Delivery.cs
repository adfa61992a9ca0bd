using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>What of a package went to a customer.</summary>
/// <param name="Package">The package.</param>
/// <param name="Customer">Who got it.</param>
/// <param name="Mass">How much of it went there.</param>
/// <param name="Made">When it was filled.</param>
/// <param name="Left">When it went.</param>
public sealed record Delivery(Place Package, Place Customer, Mass Mass, Instant Made, Instant Left)
{
    /// <summary>Deliveries of packages up to a moment, by customer and by when they left.</summary>
    public static IReadOnlyList<Delivery> Of(Book book, IEnumerable<PlaceId> packages, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(packages);
        return [.. packages.SelectMany(id =>
            {
                Movement[] all = [.. book.MovementsOf(id).Select(i => book.Movements[i]).Where(m => m.Mass > Mass.Zero)];
                var made = all.FirstOrDefault(m => m.To == id).Until;
                return all.Where(m => m.From == id && m.At <= asOf && book[m.To].Kind == PlaceKind.Customer).Select(m => new Delivery(book[id], book[m.To], m.Mass, made, m.At));
            })
            .OrderBy(d => d.Customer.Code, StringComparer.Ordinal).ThenBy(d => d.Left).ThenBy(d => d.Package.Id)];
    }
}
