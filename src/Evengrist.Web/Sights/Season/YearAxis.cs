using System.Globalization;
using Evengrist.Season;
using NodaTime;

namespace Evengrist.Web.Sights.Season;

/// <summary>Days of a plan along a line of a drawing.</summary>
/// <param name="Start">The first day.</param>
/// <param name="End">The day after the last.</param>
/// <param name="Left">Where the first day begins.</param>
/// <param name="Right">Where the last one ends.</param>
public sealed record YearAxis(LocalDate Start, LocalDate End, double Left, double Right)
{
    /// <summary>The axis of a plan.</summary>
    public static YearAxis Of(SeasonSpec spec, double left, double right)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return new YearAxis(spec.Start, spec.End, left, right);
    }

    /// <summary>Where a day begins.</summary>
    public double X(LocalDate day) => Left + ((Right - Left) * Period.DaysBetween(Start, day) / Math.Max(1.0, Period.DaysBetween(Start, End)));

    /// <summary>The firsts of months, with their names; far enough apart to be read.</summary>
    public IEnumerable<(double X, string Words)> Months(double apart = 44)
    {
        var last = double.NegativeInfinity;
        for (var month = new LocalDate(Start.Year, Start.Month, 1).PlusMonths(1); month < End; month = month.PlusMonths(1))
        {
            if (X(month) - last >= apart)
            {
                last = X(month);
                yield return (last, month.ToString(month.Month == 1 ? "MMM uuuu" : "MMM", CultureInfo.InvariantCulture));
            }
        }
    }
}
