using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>The booked slots of a mill, newest version of each.</summary>
public sealed class Bookings
{
    private const string Kind = "booking";

    private Bookings(IEnumerable<Booking> all) => All = [.. all.OrderBy(b => b.At).ThenBy(b => b.Code, StringComparer.Ordinal)];

    /// <summary>All of them, those called off included, by time.</summary>
    public IReadOnlyList<Booking> All { get; }

    /// <summary>Reads them from the shelf.</summary>
    public static Bookings Of(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return new Bookings(mill.Papers(Kind).NewestOfEach().Select(Booking.Read).OfType<Booking>());
    }

    /// <summary>Keeps a booking, as the next version where it stands already.</summary>
    /// <exception cref="ArgumentException">The tonnes are not above zero.</exception>
    public static void Keep(Mill mill, Booking booking, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(booking);
        Demand(booking);
        mill.Papers(Kind).KeepNext(booking.Code, booking.ToJson(), by);
    }

    /// <summary>Books a slot under the next free code of its day, <c>S-0709-001</c>. The same one sent again under its key is not booked again.</summary>
    /// <returns>The booking with its code.</returns>
    /// <exception cref="ArgumentException">The tonnes are not above zero.</exception>
    public static Booking Book(Mill mill, Booking booking, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(booking);
        Demand(booking);
        var (settings, shelf) = (mill.Settings, mill.Papers(Kind));
        var day = MillingDay.Of(booking.At, settings.Zone, settings.DayStart);
        for (var n = 1; ; n++)
        {
            var coded = booking with { Code = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"S-{day.Year % 100:00}{day.Month:00}{day.Day:00}-{n:000}") };
            if (shelf.Find(coded.Code, 1) is { } kept && kept.Json != coded.ToJson())
            {
                continue;
            }

            try
            {
                shelf.Keep(coded.Code, 1, coded.ToJson(), by);
                return coded;
            }
            catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
            {
                // Somebody else took the code between the look and the act: the next one.
            }
        }
    }

    /// <summary>Calls a booking off; it stays, and says so.</summary>
    /// <returns>The booking as it stands now; null where there is none of that code.</returns>
    public static Booking? CallOff(Mill mill, string code, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var shelf = mill.Papers(Kind);
        if (shelf.Newest(code) is not { } paper || Booking.Read(paper) is not { } booking)
        {
            return null;
        }

        var off = booking with { Cancelled = true };
        shelf.KeepNext(off.Code, off.ToJson(), by);
        return off;
    }

    /// <summary>All of a milling day, those called off included, by time.</summary>
    public IReadOnlyList<Booking> AllOf(LocalDate day, MillSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return [.. All.Where(b => MillingDay.Of(b.At, settings.Zone, settings.DayStart) == day)];
    }

    /// <summary>Those of a milling day that were not called off, by time.</summary>
    public IReadOnlyList<Booking> Of(LocalDate day, MillSettings settings) => [.. AllOf(day, settings).Where(b => !b.Cancelled)];

    /// <summary>Those of a milling day whose truck has not come, by time.</summary>
    public IReadOnlyList<Booking> Open(Book book, LocalDate day, MillSettings settings) =>
        Of(day, settings) is { Count: > 0 } slots && Come(book, day) is var come ? [.. slots.Where(b => !come.ContainsKey(b.Code))] : [];

    /// <summary>Which ticket used which slot, by the slot's code. A slot may be used by a truck that comes late and gets its number on the next milling day.</summary>
    public static IReadOnlyDictionary<string, string> Come(Book book, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(book);
        var come = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var ticket in new[] { day, day.PlusDays(1) }.SelectMany(d => Tickets(book, d)))
        {
            if (Arrival.Of(book, ticket)?.Booking is { Length: > 0 } slot)
            {
                come.TryAdd(slot, ticket.Code);
            }
        }

        return come;
    }

    private static void Demand(Booking booking)
    {
        if (booking.Tonnes <= 0m)
        {
            throw new ArgumentException("A booking expects more than 0 t.", nameof(booking));
        }
    }

    private static IEnumerable<Place> Tickets(Book book, LocalDate day) =>
        Enumerable.Range(1, 999).Select(n => book.Find(TicketNumber.Of(day, n).ToString())).OfType<Place>();
}
