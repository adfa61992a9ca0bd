using NodaTime;

namespace Evengrist.Mix.Relations;

/// <summary>What has passed a mouth up to a moment, grams, from movements: it never falls.</summary>
public sealed class MassCurve
{
    private readonly List<(Instant At, double Total)> points = [];

    /// <summary>The curve of some movements; a flow runs evenly from its beginning to its end, a load comes at once.</summary>
    /// <param name="movements">From when, until when, grams.</param>
    public MassCurve(IEnumerable<(Instant At, Instant Until, double Grams)> movements)
    {
        ArgumentNullException.ThrowIfNull(movements);
        var (total, rate, last) = (0.0, 0.0, Instant.MinValue);
        foreach (var (at, jump, change) in movements.SelectMany(Events).OrderBy(e => e.At))
        {
            total += rate > 0 ? rate * (at - last).TotalHours : 0;
            Add(at, total);
            total += jump;
            Add(at, total);
            (rate, last) = (rate + change, at);
        }
    }

    /// <summary>What has passed by a moment, grams.</summary>
    public double By(Instant at)
    {
        var after = points.FindIndex(p => p.At > at);
        if (after <= 0)
        {
            return after < 0 && points.Count > 0 ? points[^1].Total : 0;
        }

        var (from, to) = (points[after - 1], points[after]);
        return from.Total + ((to.Total - from.Total) * ((at - from.At) / (to.At - from.At)));
    }

    /// <summary>The first moment by which so much has passed; null where that has not come.</summary>
    public Instant? When(double grams)
    {
        var reached = points.FindIndex(p => p.Total >= grams - 1e-3);
        if (reached <= 0 || points[reached].Total - points[reached - 1].Total < 1e-6)
        {
            return reached < 0 ? null : points[reached].At;
        }

        var (from, to) = (points[reached - 1], points[reached]);
        return from.At + ((to.At - from.At) * Math.Clamp((grams - from.Total) / (to.Total - from.Total), 0, 1));
    }

    private static IEnumerable<(Instant At, double Jump, double Change)> Events((Instant At, Instant Until, double Grams) movement)
    {
        if (movement.Until <= movement.At)
        {
            return [(movement.At, movement.Grams, 0)];
        }

        var rate = movement.Grams / (movement.Until - movement.At).TotalHours;
        return [(movement.At, 0, rate), (movement.Until, 0, -rate)];
    }

    private void Add(Instant at, double total)
    {
        if (points.Count == 0 || points[^1] != (at, total))
        {
            points.Add((at, total));
        }
    }
}
