using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>Where whole packages are: made = stock + shipped + used. What came back from a customer counts as made once more.</summary>
/// <param name="Packages">How many.</param>
/// <param name="Made">All that was packed in them (A).</param>
/// <param name="Stock">Still in stock (B).</param>
/// <param name="Held">Of the stock, what is on hold.</param>
/// <param name="Shipped">With customers (C).</param>
/// <param name="Used">Fed back, sampled, wasted (D).</param>
/// <param name="Returned">Of what was made, what came back from customers: it counts once more in A, and what was shipped has not all stayed with them.</param>
public sealed record PackageBalance(int Packages, Mass Made, Mass Stock, Mass Held, Mass Shipped, Mass Used, Mass Returned)
{
    /// <summary>The formula and where it stands.</summary>
    public const string Formula = "E = 100·(B + C + D)/A, A made, B in stock, C shipped, D used or wasted";

    /// <summary>Source of the formula.</summary>
    public const string Source = "food safety recall plan checklist, content.ces.ncsu.edu";

    /// <summary>Accounted for, per cent; null where nothing was made.</summary>
    public decimal? EffectivenessPercent => Made == Mass.Zero ? null : 100m * (Stock + Shipped + Used).Grams / Made.Grams;

    /// <summary>The balance of some packages at a moment.</summary>
    public static PackageBalance Of(Book book, IEnumerable<PlaceId> packages, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(packages);
        var count = 0;
        var (made, stock, held, shipped, used, returned) = (Mass.Zero, Mass.Zero, Mass.Zero, Mass.Zero, Mass.Zero, Mass.Zero);
        foreach (var package in packages)
        {
            count++;
            var lies = book.StockOf(package, asOf);
            stock += lies;
            held += lies > Mass.Zero && book.HoldOn(package, asOf) is not null ? lies : Mass.Zero;
            foreach (var movement in book.MovementsOf(package).Select(i => book.Movements[i]).Where(m => m.At <= asOf))
            {
                if (movement.To == package)
                {
                    made += movement.Mass;
                    returned += book[movement.From].Kind == PlaceKind.Customer ? movement.Mass : Mass.Zero;
                }
                else if (book[movement.To].Kind == PlaceKind.Customer)
                {
                    shipped += movement.Mass;
                }
                else
                {
                    used += movement.Mass;
                }
            }
        }

        return new PackageBalance(count, made, stock, held, shipped, used, returned);
    }
}
