using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>The booked slots of a mill, newest version of each.</summary>
public sealed class Bookings
{
    private const string Kind = "booking";
    private readonly Booking[] all;

    private Bookings(IEnumerable<Booking> all) => this.all = [.. all.OrderBy(b => b.At).ThenBy(b => b.Code, StringComparer.Ordinal)];

    /// <summary>Reads them from the shelf.</summary>
    public static Bookings Of(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return new Bookings(mill.Papers(Kind).All().GroupBy(p => p.Code).Select(g => Booking.Read(g.MaxBy(p => p.Version)!)).OfType<Booking>());
    }

    /// <summary>Keeps a booking, as the next version where it stands already.</summary>
    /// <exception cref="ArgumentException">The tonnes are not above zero.</exception>
    public static void Keep(Mill mill, Booking booking, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(booking);
        if (booking.Tonnes <= 0m)
        {
            throw new ArgumentException("A booking expects more than 0 t.", nameof(booking));
        }

        mill.Papers(Kind).KeepNext(booking.Code, booking.ToJson(), by);
    }

    /// <summary>Those of a milling day that were not called off, by time.</summary>
    public IReadOnlyList<Booking> Of(LocalDate day, MillSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return [.. all.Where(b => !b.Cancelled && MillingDay.Of(b.At, settings.Zone, settings.DayStart) == day)];
    }

    /// <summary>Those of a milling day whose truck has not come, by time.</summary>
    public IReadOnlyList<Booking> Open(Book book, LocalDate day, MillSettings settings)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Of(day, settings) is { Count: > 0 } slots && Come(book, day) is var come ? [.. slots.Where(b => !come.Contains(b.Code))] : [];
    }

    // A slot may be used by a truck that gets its number on the next milling day, when it comes late.
    private static HashSet<string> Come(Book book, LocalDate day) => [.. new[] { day, day.PlusDays(1) }.SelectMany(d => Tickets(book, d)).Select(t => Arrival.Of(book, t)?.Booking ?? "")];

    private static IEnumerable<Place> Tickets(Book book, LocalDate day) =>
        Enumerable.Range(1, 999).Select(n => book.Find(TicketNumber.Of(day, n).ToString())).OfType<Place>();
}
