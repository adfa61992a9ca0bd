using Evengrist.Laboratory.Charts;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Limits of the charts of every flour by the flour NIR, frozen from November by the head of the laboratory, with the flour's own limits for capability.</summary>
internal static class ChartFreezes
{
    private const string Chief = "Dr Anya Holt", Why = "November: a month in which nothing was found wrong";

    private static readonly (Instant From, Instant Until) November = (MillCalendar.At(new LocalDate(2025, 11, 1), 6), MillCalendar.At(new LocalDate(2025, 12, 1), 6));

    /// <summary>Freezes them, through the use case a person's go through.</summary>
    public static void Keep(Mill mill)
    {
        foreach (var series in mill.Ask(view => ChartSeries.Of(view.Book, November.Until)).Where(s => s.Method == "NIR" && s.Flour.Length > 0 && s.Readings.Count(r => r.At >= November.From) >= FrozenLimits.Fewest))
        {
            var item = ReleaseBooks.Specifications.FirstOrDefault(s => s.Code == series.Flour)?.Items.FirstOrDefault(i => i.What == series.What);
            if (new FreezeLimits(series.Code, November, (null, (double?)item?.Lower, (double?)item?.Upper), RunRules.Four, Why).In(mill, Chief, MillCalendar.OpeningMoment) is { Count: > 0 } faults)
            {
                throw new InvalidOperationException(string.Join(" ", faults));
            }
        }
    }
}
