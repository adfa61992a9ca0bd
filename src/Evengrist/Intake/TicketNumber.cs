using System.Globalization;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Intake;

/// <summary>The number of a receiving ticket: the milling day and a running number of that day, <c>25-0709-061</c>.</summary>
/// <remarks>Days from 2000 to 2099; numbers 1 to 999. The default value is no ticket.</remarks>
public readonly record struct TicketNumber : IComparable<TicketNumber>
{
    private readonly LocalDate day;

    private TicketNumber(LocalDate day, int number)
    {
        this.day = day;
        Number = number;
    }

    /// <summary>The milling day.</summary>
    /// <exception cref="InvalidOperationException">No ticket (the default value).</exception>
    public LocalDate Day => Number > 0 ? day : throw new InvalidOperationException("There is no ticket number.");

    /// <summary>The running number within the day, 1 to 999; 0 for the default value.</summary>
    public int Number { get; }

    /// <summary>The number after this one on the same day.</summary>
    /// <exception cref="InvalidOperationException">No ticket (the default value).</exception>
    /// <exception cref="ArgumentOutOfRangeException">This was number 999.</exception>
    public TicketNumber Next => Of(Day, Number + 1);

    /// <summary>A ticket number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The year lies outside 2000 to 2099 or the number outside 1 to 999.</exception>
    public static TicketNumber Of(LocalDate day, int number)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(day.Year, 2000, nameof(day));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(day.Year, 2099, nameof(day));
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, 999);
        return new TicketNumber(day, number);
    }

    /// <summary>A ticket number on the milling day of a moment.</summary>
    /// <param name="moment">When the ticket is opened.</param>
    /// <param name="zone">The site's time zone.</param>
    /// <param name="dayBegins">The hour at which the site's milling day begins.</param>
    /// <param name="number">Running number within the day, 1 to 999.</param>
    /// <exception cref="ArgumentOutOfRangeException">The year lies outside 2000 to 2099 or the number outside 1 to 999.</exception>
    public static TicketNumber Of(Instant moment, DateTimeZone zone, LocalTime dayBegins, int number) => Of(MillingDay.Of(moment, zone, dayBegins), number);

    /// <summary>Reads <c>25-0709-061</c>: two figures of the year, month and day, three figures; spaces round it do not matter.</summary>
    public static bool TryParse(string? text, out TicketNumber ticket)
    {
        ticket = default;
        var word = (text ?? "").Trim();
        if (word.Length != 11 || word[2] != '-' || word[7] != '-' || !word.All(c => c == '-' || char.IsAsciiDigit(c)) || word.Count(c => c == '-') != 2)
        {
            return false;
        }

        var (year, month, date, number) = (2000 + Whole(word[..2]), Whole(word[3..5]), Whole(word[5..7]), Whole(word[8..]));
        if (number == 0 || month is < 1 or > 12 || date < 1 || date > CalendarSystem.Iso.GetDaysInMonth(year, month))
        {
            return false;
        }

        ticket = new TicketNumber(new LocalDate(year, month, date), number);
        return true;
    }

    /// <summary>Whether <paramref name="left"/> is earlier than <paramref name="right"/>.</summary>
    public static bool operator <(TicketNumber left, TicketNumber right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> is later than <paramref name="right"/>.</summary>
    public static bool operator >(TicketNumber left, TicketNumber right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> is not later than <paramref name="right"/>.</summary>
    public static bool operator <=(TicketNumber left, TicketNumber right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> is not earlier than <paramref name="right"/>.</summary>
    public static bool operator >=(TicketNumber left, TicketNumber right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(TicketNumber other) => day != other.day ? day.CompareTo(other.day) : Number.CompareTo(other.Number);

    /// <summary><c>25-0709-061</c>; <c>no ticket</c> for the default value.</summary>
    public override string ToString() => Number == 0 ? "no ticket"
        : string.Create(CultureInfo.InvariantCulture, $"{day.Year % 100:00}-{day.Month:00}{day.Day:00}-{Number:000}");

    private static int Whole(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);
}
