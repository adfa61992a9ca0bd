using Evengrist.Ledger;
using Evengrist.Mix.Sheets;
using Evengrist.Quantities;
using Evengrist.Records.Mix;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Records.Tests.Mix;

/// <summary>A mill for tests, invented, small enough to reckon by hand: two bins, a temper bin that always holds 40 t, 5 of them stirred at its outlet, and a unit at 5 t/h.</summary>
/// <remarks>
/// Run n draws 40 t of wheat over 8 hours from hour 8·n on; B1 is 12 % protein, B2 14 %, 12mb. First in first out, its first wheat leaves the unstirred 35 t 7 hours later, and 15 t on (3 hours), when the stirred 5 t
/// were passed three times, next to nothing of the run before is left: on the rolls by itself from hour 8·n + 10 until the next run's first wheat comes into the stirred part at 8·n + 15.
/// </remarks>
internal static class MilledRuns
{
    public const int Runs = 6;

    public static readonly Instant Begin = Instant.FromUtc(2026, 1, 5, 0, 0);

    public static Instant Hour(double hours) => Begin + Duration.FromHours(hours);

    /// <summary>Share of B2 in a run: the wheat is 12 + 2 · share.</summary>
    public static double Share(int run) => 0.2 + (0.1 * run);

    /// <summary>Lays the runs down with their sheets; the flour is the wheat − 1.3 where nothing else is said.</summary>
    public static void LayDown(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        mill.Record([.. Places, .. Enumerable.Range(0, Runs + 2).SelectMany(Run), .. Enumerable.Range(0, Runs).SelectMany(Readings)], "Ada Miller", "test");
        mill.Papers(SeasonTerms.Kind).Keep(SeasonTerms.Code, 1, new SeasonTerms { End = new LocalDate(2026, 6, 30), Currency = "USD", Units = [new UnitTerms("A", 5, 24)], Flours = [new FlourTerms("WB", "White bread", "A", 100, 0.7, 900)] }.ToJson(), "Ada Miller");
        for (var run = 0; run < Runs; run++)
        {
            Assert.Empty(MixSheets.Keep(mill, Sheet(run), null, "Ada Miller").Faults);
        }
    }

    public static MixSheet Sheet(int run) => new()
    {
        Line = "MX", Flour = "WB", From = Hour(8 * run), Until = Hour(8 * (run + 1)), TonnesPerHour = 5, SetBy = "Ada Miller",
        Gates = [Gate("B1", 1 - Share(run), 12), Gate("B2", Share(run), 14)],
    };

    private static SheetGate Gate(string bin, double share, double protein) => new(bin, "HW", Math.Round(100 * share, 6)) { Values = [new(Property.Protein, protein, Basis.At12, 0.1)] };

    private static IEnumerable<Draft> Places =>
    [
        Place("OPEN", PlaceKind.Opening), Place("B1", PlaceKind.Bin), Place("B2", PlaceKind.Bin), Place("MX", PlaceKind.MixLine), Place("CL", PlaceKind.Cleaner), Place("T", PlaceKind.TemperBin) with { Stirred = Mass.FromTonnes(5m) },
        Place("U", PlaceKind.MillUnit), Place("F", PlaceKind.FlourBin),
        .. new[] { ("B1", "MX"), ("B2", "MX"), ("MX", "CL"), ("CL", "T"), ("T", "U"), ("U", "F") }.Select(c => new Connect($"{c.Item1}>{c.Item2}", c.Item1, c.Item2)),
        Load("OPEN", "B1", 400, Hour(-1)), Load("OPEN", "B2", 400, Hour(-1)), Load("OPEN", "T", 40, Hour(-1)),
    ];

    private static IEnumerable<Draft> Run(int run)
    {
        var (from, until, ofB2) = (Hour(8 * run), Hour(8 * (run + 1)), 40 * Math.Min(1, Share(run)));
        Move Flow(string a, string b, double tonnes) => new($"{a}>{b}/{run}", a, b, Mass.FromTonnes((decimal)Math.Round(tonnes, 3)), from, until);
        return [Flow("B1", "MX", 40 - ofB2), Flow("B2", "MX", ofB2), Flow("MX", "CL", 40), Flow("CL", "T", 40), Flow("T", "U", 40), Flow("U", "F", 40)];
    }

    // Two of the run's own flour; before and after them a wild one that must not count.
    private static IEnumerable<Draft> Readings(int run)
    {
        var flour = (decimal)Math.Round(12 + (2 * Share(run)) - 1.3, 3);
        Measure At(double hour, decimal value) => new($"{run}/{hour}", "U", Hour((8 * run) + hour), Property.Protein, value, "%", Basis.At14, "NIR", "N1", 0.1m);
        return [At(9.9, 30m), At(10, flour + 0.05m), At(14.9, flour - 0.05m), At(15, 30m)];
    }

    private static OpenPlace Place(string code, PlaceKind kind) => new("open " + code, code, kind, Material: kind == PlaceKind.Bin ? "HW" : "");

    private static Move Load(string from, string to, decimal tonnes, Instant at) => new($"{from}>{to}", from, to, Mass.FromTonnes(tonnes), at);
}
