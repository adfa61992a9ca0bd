using System.Globalization;
using Evengrist.Packing.Boards;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>Where moments of a plan lie on its drawing.</summary>
/// <param name="Start">Left edge.</param>
/// <param name="End">Right edge.</param>
/// <param name="Zone">The mill's zone.</param>
public sealed record BoardScale(Instant Start, Instant End, DateTimeZone Zone)
{
    /// <summary>Width of an hour, and where the first begins, in units of the drawing.</summary>
    public const double HourWidth = 17, Left = 62;

    /// <summary>Of a plan: whole hours round it.</summary>
    public static BoardScale Of(PackingPlan plan, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(zone);
        return new(plan.Start, Instant.Max(plan.End, plan.Start + Duration.FromHours(6)) + Duration.FromHours(1), zone);
    }

    /// <summary>Where its right edge is.</summary>
    public double Width => At(End) + 8;

    /// <summary>Where a moment lies.</summary>
    public double At(Instant moment) => Left + (HourWidth * (moment - Start).TotalHours);

    /// <summary>Marks at every sixth hour by the mill's clock, with the day at midnight and at the first.</summary>
    public IEnumerable<(double X, string Words)> Marks()
    {
        var first = Start.InZone(Zone).LocalDateTime;
        var isFirst = true;
        for (var local = first.Date.At(new LocalTime(first.Hour / 6 * 6, 0)).PlusHours(6); Zone.AtLeniently(local).ToInstant() < End; local = local.PlusHours(6))
        {
            yield return (At(Zone.AtLeniently(local).ToInstant()), local.ToString(isFirst || local.Hour == 0 ? "ddd d MMM HH:mm" : "HH:mm", CultureInfo.InvariantCulture));
            isFirst = false;
        }
    }
}
