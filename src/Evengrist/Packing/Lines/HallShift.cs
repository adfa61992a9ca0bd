using NodaTime;
using NodaTime.Text;

namespace Evengrist.Packing.Lines;

/// <summary>People in the packing hall, the same every week.</summary>
/// <param name="Days">Days on which the shift begins.</param>
/// <param name="From">Begin by the mill's clock: <c>06:00</c>.</param>
/// <param name="Until">End; on the next day where it is not after the beginning.</param>
/// <param name="People">How many.</param>
public sealed record HallShift(IReadOnlyList<IsoDayOfWeek> Days, string From, string Until, int People)
{
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary>Whether a text is a time of day as a shift has it: <c>06:00</c>.</summary>
    public static bool IsClock(string text) => Clock.Parse(text).Success;

    /// <summary>What is wrong with it, in a sentence; null where nothing is.</summary>
    public string? Fault => !IsClock(From) || !IsClock(Until) ? $"A shift begins and ends at times like 06:00; read “{From}” and “{Until}”."
        : Days.Count == 0 || Days.Contains(IsoDayOfWeek.None) ? "A shift has the days on which it begins: Monday to Sunday."
        : People is < 0 or > 1000 ? $"A shift has 0 to 1000 people; read {People}." : null;

    /// <summary>The shifts that begin on the days up to so many after one, as moments.</summary>
    /// <param name="first">The first day.</param>
    /// <param name="days">How many days.</param>
    /// <param name="zone">The mill's zone.</param>
    public IEnumerable<(Instant From, Instant Until)> On(LocalDate first, int days, DateTimeZone zone)
    {
        var (from, until) = (Clock.Parse(From).Value, Clock.Parse(Until).Value);
        return Enumerable.Range(0, days).Select(first.PlusDays).Where(d => Days.Contains(d.DayOfWeek))
            .Select(d => (zone.AtLeniently(d.At(from)).ToInstant(), zone.AtLeniently((until > from ? d : d.PlusDays(1)).At(until)).ToInstant()));
    }
}
