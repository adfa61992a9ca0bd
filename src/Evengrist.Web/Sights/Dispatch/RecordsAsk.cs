using Evengrist.Records.Packing.Dispatch;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights.Dispatch;

/// <summary>The days of which records are asked for, in the mill's calendar; the seven up to the moment looked at where nothing is said.</summary>
/// <param name="From">First day.</param>
/// <param name="Until">Last day.</param>
/// <param name="Begin">When the first day begins.</param>
/// <param name="End">When it is over: the end of the last day, or the moment looked at.</param>
/// <param name="Faults">What is wrong with what was asked, each a sentence.</param>
internal sealed record RecordsAsk(LocalDate From, LocalDate Until, Instant Begin, Instant End, IReadOnlyList<string> Faults)
{
    /// <summary>Reads two days.</summary>
    public static RecordsAsk Of(string? from, string? until, Instant asOf, DateTimeZone zone)
    {
        var (today, faults) = (asOf.InZone(zone).Date, new List<string>());
        LocalDate Read(string? text, LocalDate otherwise)
        {
            if (!string.IsNullOrWhiteSpace(text) && TypedDay.Read(text) is null)
            {
                faults.Add(TypedDay.None(text));
            }

            return TypedDay.Read(text) ?? otherwise;
        }

        var last = Read(until, today);
        var first = Read(from, last.PlusDays(-6));
        if (last < first)
        {
            faults.Add("It ends before it begins. Are the two swapped?");
        }
        else if (Period.DaysBetween(first, last) >= ReleaseRecords.MostDays)
        {
            faults.Add($"At most {ReleaseRecords.MostDays} days are shown together.");
        }

        if (faults.Count > 0)
        {
            (first, last) = (today.PlusDays(-6), today);
        }

        var (begin, end) = (first.AtStartOfDayInZone(zone).ToInstant(), last.PlusDays(1).AtStartOfDayInZone(zone).ToInstant());
        return new(first, last, begin, end > asOf ? asOf + Duration.FromTicks(1) : end, faults);
    }
}
