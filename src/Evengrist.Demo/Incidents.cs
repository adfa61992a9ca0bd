using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The dated events of the year, as facts.</summary>
internal static class Incidents
{
    private static readonly Instant LampChanged = MillCalendar.At(new LocalDate(2025, 10, 7), 10, 20), LampSetRight = MillCalendar.At(new LocalDate(2025, 10, 8), 13);

    // Twelve check pairs of the NIR watch: hours after 6 October 00:00, reference and NIR protein, 14mb. Posed, not drawn.
    private static readonly (int Hour, decimal Reference, decimal Nir)[] Pairs =
    [
        (14, 11.86m, 11.90m), (22, 11.91m, 11.84m), (26, 11.78m, 11.86m), (32, 11.95m, 11.93m), (36, 11.88m, 12.12m), (40, 11.83m, 12.15m),
        (44, 11.90m, 12.14m), (48, 11.97m, 12.27m), (52, 11.81m, 12.09m), (55, 11.85m, 12.10m), (58, 11.92m, 12.25m), (60, 11.89m, 12.16m),
    ];

    /// <summary>How much too high the flour NIR read protein at a moment, points.</summary>
    public static double NirShift(Instant at) => at >= LampChanged && at < LampSetRight ? 0.28 : 0;

    /// <summary>The laboratory's own facts of a day.</summary>
    public static void InTheLaboratory(Desk lab, LocalDate day)
    {
        if (day == StreamBooks.Day)
        {
            foreach (var (i, (stream, share, ash, protein, _)) in StreamBooks.Streams.Index())
            {
                var at = MillCalendar.At(day, 9) + Duration.FromMinutes(3 * i);
                lab.Read("UA", at, Property.Ash, ash, "%", Basis.At14, $"furnace, stream {stream} at {share} % of wheat", "furnace 1", 0.005m);
                lab.Read("UA", at, Property.Protein, protein, "%", Basis.At14, $"combustion, stream {stream} at {share} % of wheat", "N-1", 0.05m);
            }
        }

        foreach (var (hour, reference, nir) in Pairs)
        {
            var at = MillCalendar.At(new LocalDate(2025, 10, 6), 0) + Duration.FromHours(hour);
            if (MillCalendar.MillingDay(at) == day)
            {
                lab.Read("UA", at, Property.Protein, reference, "%", Basis.At14, "combustion, watch", "N-1", 0.05m);
                lab.Read("UA", at, Property.Protein, nir, "%", Basis.At14, "NIR, watch", "NIR-2", 0.12m);
            }
        }

        foreach (var (when, hour, minute, on, text) in Notes)
        {
            if (when == day)
            {
                lab.Happened(on, MillCalendar.At(when, hour, minute), HappeningKind.Note, text);
            }
        }
    }

    private static readonly (LocalDate Day, int Hour, int Minute, string On, string Text)[] Notes =
    [
        (new(2025, 7, 9), 14, 5, "PIT1", "Scale house without network from 14:05 to 15:10; tickets from the reserved numbers, entered the next morning."),
        (new(2025, 7, 14), 8, 0, "B05", "Scarrow Rim wheat is thin and light but strong: keep it in B05 by itself."),
        (new(2025, 7, 24), 9, 0, "B07", "Lowmere after the rain: falling number and vomitoxin on every truck; B07 is a budgeted diluent."),
        (new(2025, 9, 15), 6, 30, "UA", "Plan frozen this morning. Unit A held at 17.5 t/h for the stream survey: B14 40 %, B06, B05."),
        (new(2025, 10, 7), 16, 20, "UA", "Watch on the flour NIR alarms at the sixth check pair: not sure yet, more pairs asked for."),
        (new(2025, 10, 8), 0, 20, "UA", "Eighth pair: the reference has not moved, the NIR has. Instrument, started between pairs 4 and 5 (lamp changed 10:20)."),
        (new(2025, 10, 8), 13, 0, "UA", "Flour NIR set right against the reference. Five lots since 7 October 10:20 to be judged again."),
        (new(2025, 11, 11), 9, 0, "L2", "Retail peak: rush order for 2 kg all-purpose, Orlawick."),
        (new(2025, 12, 2), 14, 40, "F-WB", "Malt feeder found empty; no malt from 14:10 to 14:35."),
        (new(2026, 1, 14), 10, 15, BinPlan.SuspectTicket, "Supplier F02 (Drumsallow) reports by telephone: the trailer of this ticket had carried pink-treated seed before it was loaded at DS-2."),
        (new(2026, 3, 9), 9, 0, "B10", "Spring wheat runs out about 4 June at this rate; new spring wheat comes about 18 August. Buying from E2 at 14.8."),
        (new(2026, 6, 20), 8, 0, "UA", "Audit: mass balance of the month and a mock trace."),
    ];
}
