using Evengrist.Ledger;
using Evengrist.Mix.Relations;
using NodaTime;

namespace Evengrist.Milling.Clock;

/// <summary>Hours of running of a place that wheat passes, and the wall clock: what has left it by the ledger, and on from the moment looked at with the flow of now.</summary>
/// <remarks>While nothing leaves, no hour runs. One hour of running is what leaves in an hour at the flow of now.</remarks>
public sealed class RunningTime
{
    private readonly MassCurve outOf;
    private readonly Instant now;
    private readonly double start;

    private RunningTime(MassCurve outOf, Instant from, Instant now, double gramsPerHour)
    {
        (this.outOf, this.now) = (outOf, now);
        (start, GramsPerHour) = (outOf.By(from), gramsPerHour);
    }

    /// <summary>The flow of now, g/h.</summary>
    public double GramsPerHour { get; }

    /// <summary>Running time of a place from a moment on.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="place">The place.</param>
    /// <param name="from">The moment at which it is 0.</param>
    /// <param name="now">The moment looked at; what happened later does not count.</param>
    /// <returns>Null where nothing left the place within the day before that moment.</returns>
    public static RunningTime? Of(Book book, PlaceId place, Instant from, Instant now)
    {
        ArgumentNullException.ThrowIfNull(book);
        Movement[] gone = [.. book.MovementsOf(place).Select(i => book.Movements[i]).Where(m => m.From == place && m.At < now)];
        var curve = new MassCurve(gone.Select(m => (m.At, Until: Instant.Min(m.Until, now), Grams: m.Until <= now ? m.Mass.Grams : m.Mass.Grams * ((now - m.At) / (m.Until - m.At)))));
        Movement[] running = [.. gone.Where(m => m.Until >= now && m.IsFlow)];
        var day = now - Duration.FromDays(1);
        var rate = running.Length > 0 ? running.Sum(m => m.Mass.Grams / (m.Until - m.At).TotalHours) : (curve.By(now) - curve.By(day)) / 24;
        return rate > 0 ? new RunningTime(curve, from, now, rate) : null;
    }

    /// <summary>Hours of running by a moment; below 0 before the beginning.</summary>
    public double At(Instant moment) => (outOf.By(Instant.Min(moment, now)) - start) / GramsPerHour + Math.Max(0, (moment - now).TotalHours);

    /// <summary>The moment by which so many hours have run.</summary>
    /// <param name="hours">0 or more.</param>
    public Instant When(double hours)
    {
        var wanted = start + (hours * GramsPerHour);
        var passed = outOf.By(now);
        return wanted <= passed && outOf.When(wanted) is { } reached ? reached : now + Duration.FromHours(Math.Max(0, wanted - passed) / GramsPerHour);
    }
}
