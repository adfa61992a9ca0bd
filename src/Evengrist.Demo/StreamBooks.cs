using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Streams;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;
using Evengrist.Streams.Surveys;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The stream survey of unit A and the flours it is divided into; all figures are invented.</summary>
internal static class StreamBooks
{
    /// <summary>The day of the survey.</summary>
    public static LocalDate Day { get; } = new(2025, 9, 16);

    /// <summary>Share of the wheat on the rolls, ash and protein at 14mb, and where it went.</summary>
    public static IReadOnlyList<(string Stream, decimal Share, decimal Ash, decimal Protein, string Flour)> Streams { get; } =
    [
        ("1M", 14.0m, 0.37m, 11.0m, "WB"), ("2M", 12.5m, 0.39m, 11.1m, "WB"), ("1MF", 8.0m, 0.40m, 11.2m, "WB"), ("SZ1", 6.5m, 0.42m, 11.0m, "WB"), ("3M", 7.0m, 0.44m, 11.5m, "WB"), ("2B", 4.2m, 0.50m, 13.3m, "WB"),
        ("SZ2", 3.2m, 0.52m, 11.4m, "WB"), ("1B", 3.0m, 0.52m, 12.6m, "WB"), ("4M", 4.5m, 0.52m, 11.9m, "WB"), ("5M", 3.5m, 0.64m, 12.2m, "WB"), ("3B", 2.6m, 0.68m, 14.6m, "WB"), ("6M", 2.2m, 0.82m, 12.6m, "C1"),
        ("4B", 1.4m, 0.98m, 16.0m, "C1"), ("1T", 1.0m, 1.10m, 13.2m, "C1"), ("7M", 1.3m, 1.15m, 13.0m, "C2"), ("5B", 0.7m, 1.30m, 16.6m, "C2"), ("BRD", 1.3m, 1.45m, 15.8m, "C2"), ("SHD", 0.8m, 1.60m, 15.0m, "C2"),
    ];

    /// <summary>Keeps both, as a person would.</summary>
    public static void Keep(Mill mill)
    {
        var table = new StreamTable([.. Streams.Select(s => new MillStream(s.Stream, (double)s.Share, (double)s.Ash) { ProteinPercent = (double)s.Protein })], Basis.At14);
        var survey = new StreamSurvey("UA", MillCalendar.At(Day, 9), "Dr Anya Holt", 17.5, table)
        {
            MinutesWeighed = 3, Valves = [.. Streams.Select(s => new StreamValve(s.Stream) { Now = s.Flour })],
            Remark = "White bread wheat at 17.5 t/h. By this wheat the patent has less protein than white bread needs: that is for the mix to mend, not for the valves.",
        };
        var flours = new WantedFlours(
            "UA",
            [
                new FlourWish("WB", 430m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 0.46 }], CalledFlour = true },
                new FlourWish("C1", 330m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 0.99 }, new FlourLimit(StreamProperty.Protein) { Least = 13.2 }], CalledFlour = true },
                new FlourWish("C2", 260m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 1.45 }] },
            ],
            new FlourWish("feed", 205m));
        string[] faults = [.. StreamSurveys.Keep(mill, survey, "Dr Anya Holt").Faults, .. StreamSurveys.Keep(mill, flours, "Osric Venn").Faults];
        if (faults.Length > 0)
        {
            throw new InvalidOperationException(string.Join(" ", faults));
        }
    }
}
