using Evengrist.Laboratory;
using Evengrist.Laboratory.Bake;
using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The laboratory's own tables, and a check sample read on every flour instrument each Monday of the crop year until the demonstration opens. All figures are invented.</summary>
internal static class LabBooks
{
    private const string Chief = "Dr Anya Holt", Technician = "Femi Strand", Found = "the laboratory's own duplicates of last season";

    /// <summary>The methods, with the limits the laboratory found itself where it did.</summary>
    public static LabMethods Methods { get; } = new(
    [
        .. LabMethods.Start.Methods.Where(m => m.Code != "NIR"),
        Nir(Property.Moisture, default, 0.2m, 0.4m, 0.8m), Nir(Property.Protein, Basis.At14, 0.15m, 0.4m, 1.0m), Nir(Property.Ash, Basis.At14, 0.02m, 0.06m, 0.08m),
    ]);

    /// <summary>The instruments of the flour bench.</summary>
    public static LabInstruments Instruments { get; } = new(
    [
        new("NIR-2", ["NIR"], 8 * 24, [Within(Property.Protein, 0.20m), Within(Property.Ash, 0.03m), Within(Property.Moisture, 0.20m)],
            [new(new LocalDate(2025, 6, 30), Property.Protein, 1m, 0m, Chief, "before harvest"), new(new LocalDate(2025, 10, 8), Property.Protein, 1m, 0m, Chief, "lamp and reference standard changed; checked on five samples")], "flour of unit A, at line"),
        new("NIR-3", ["NIR"], 8 * 24, [Within(Property.Protein, 0.20m), Within(Property.Ash, 0.03m), Within(Property.Moisture, 0.20m)], [new(new LocalDate(2025, 6, 30), Property.Protein, 1m, 0m, Chief, "before harvest")], "flour of unit B, at line"),
        new("N-1", ["combustion"], 8 * 24, [Within(Property.Protein, 0.15m)], [], "nitrogen by combustion"),
        new("oven 2", ["oven 130 °C"], 8 * 24, [Within(Property.Moisture, 0.12m)], [], "drying oven"),
        new("furnace 1", ["furnace"], 8 * 24, [Within(Property.Ash, 0.02m)], [], "ash furnace"),
    ]);

    /// <summary>The sampling plan: a check of each unit by the reference methods every day, and every bulk load of white bread by NIR.</summary>
    public static LabPlan Plan { get; } = new(
    [
        new("UA check", Reference, Place: "UA", EveryHours: 24), new("UB check", Reference, Place: "UB", EveryHours: 24),
        new("loads", [new(Property.Protein, "NIR"), new(Property.Moisture, "NIR")], Kind: PlaceKind.BulkLoad, Material: "WB"),
    ]);

    private static IReadOnlyList<SampleTest> Reference => [new(Property.Protein, "combustion"), new(Property.Moisture, "oven 130 °C"), new(Property.Ash, "furnace")];

    /// <summary>Keeps them, through the use cases a person's go through.</summary>
    public static void Keep(Mill mill, ulong seed)
    {
        KeepLabMethods.Keep(mill, Methods, Chief);
        KeepLabInstruments.Keep(mill, Instruments, Chief);
        KeepLabPlan.Keep(mill, Plan, Chief);
        Bake(mill, new Dice(seed, "bakes"));
        Blends(mill);
        var dice = new Dice(seed, "check samples");
        for (var day = MillCalendar.FirstDay.PlusDays(-1); MillCalendar.At(day, 8) < MillCalendar.OpeningMoment; day = day.PlusDays(7))
        {
            foreach (var check in Instruments.Instruments.SelectMany(i => i.Tolerances.Select(t => Of(i, t, MillCalendar.At(day, 8), dice))))
            {
                if (InstrumentChecks.Keep(mill, check, Technician, MillCalendar.OpeningMoment) is { Count: > 0 } faults)
                {
                    throw new InvalidOperationException(string.Join(" ", faults));
                }
            }
        }
    }

    // Four bakes: the new high-gluten flour stands 0.25 mL/g above the white bread of the control, and Femi's oven hand 0.15 below Dr Holt's; two loaves of each dough.
    private static void Bake(Mill mill, Dice dice)
    {
        foreach (var (week, baker) in new[] { Chief, Technician, Chief, Technician }.Index())
        {
            var (at, level) = (MillCalendar.At(new LocalDate(2025, 12, 16).PlusDays(7 * week), 14), 4.05 + (baker == Chief ? 0.15 : 0) + dice.Normal(0, 0.05));
            var loaves = new[] { ("WB control", 0.0), ("HG", 0.25) }.SelectMany(f => new[] { 1, 2 }.Select(d => (Flour: f.Item1, Dough: $"{f.Item1[..1]}{d}", Level: level + f.Item2 + dice.Normal(0, 0.06))))
                .SelectMany(d => new[] { 0, 1 }.Select(_ => (d, Grams: Math.Round(dice.Normal(212, 1.5), 1)))).Select(l => new BakedLoaf(l.d.Flour, l.d.Dough, Math.Round((l.d.Level + dice.Normal(0, 0.04)) * l.Grams), l.Grams, Math.Round(dice.Normal(76, 3)))).ToArray();
            if (BakeSessions.Keep(mill, new BakeSession($"bake {week + 1}", at, baker, "WB control", loaves, [new("WB control", "F-WB"), new("HG", "F-HG")], "", "straight dough, the program's own", Steps(week), Tasters(week)), baker, MillCalendar.OpeningMoment).Objections is { Count: > 0 } faults)
            {
                throw new InvalidOperationException(string.Join(" ", faults.Select(f => f.Words)));
            }
        }
    }

    // As the formula asks, but for the third bake's dough, which came out of the mixer two degrees warm.
    private static BakedStep[] Steps(int week) => [.. BakeFormula.Start.Steps.Select((s, i) => new BakedStep(s.Name, s.Minutes + (i % 2 == 0 ? 0 : week - 1), s.Celsius + (week == 2 && i == 0 ? 2 : 0), s.Minutes, s.Celsius))];

    private static TasterRanking[] Tasters(int week) => [.. new[] { Chief, Technician, "Ines Calder", "Tomas Wray" }.Select((taster, i) => new TasterRanking(taster, (week + i) % 4 == 3 ? [["WB control"], ["HG"]] : [["HG"], ["WB control"]]))];

    // Four blends of white bread and high-gluten flour whose absorption was measured: each stands a little above the line between the flours.
    private static void Blends(Mill mill)
    {
        foreach (var (i, (share, measured)) in new[] { (0.1, 61.9), (0.2, 62.3), (0.3, 62.3), (0.5, 62.9) }.Index())
        {
            if (MeasuredBlends.Keep(mill, new MeasuredBlend($"blend {i + 1}", MeasuredBlend.Properties[0], [new("WB", 1 - share, 61.5), new("HG", share, 64)], measured), Chief).Faults is { Count: > 0 } faults)
            {
                throw new InvalidOperationException(string.Join(" ", faults));
            }
        }
    }

    /// <summary>The jars of the last days before the demonstration opens: each daily check with its number, one of them tested again, and one that waits. Recorded as a person records them.</summary>
    /// <returns>How many facts that added.</returns>
    public static int Jars(Mill mill)
    {
        var added = 0;
        foreach (var (on, code) in new[] { ("UA", "A"), ("UB", "B") })
        {
            foreach (var at in mill.Ask(v => v.Book.ReadingsOn(v.Book.Named(on).Id).Where(r => r.Method == "combustion" && r.At < MillCalendar.OpeningMoment && r.At > MillCalendar.OpeningMoment - Duration.FromDays(6)).Select(r => r.At).Distinct().ToArray()))
            {
                added += new TakeLabSample(on, at, new LabSample($"{code}-{MillCalendar.Wall(at):MMdd}", $"{on} check", Reference)).In(mill, Technician, at).Added;
            }
        }

        var (again, waits) = (mill.Ask(v => TakenSample.Within(v.Book, Instant.MinValue, MillCalendar.OpeningMoment).Last(s => s.IsTested)), MillCalendar.OpeningMoment - Duration.FromMinutes(25));
        var usual = again.Readings.First(r => r.What == Property.Moisture).Value;
        var retest = new EnterResults("demo retest", again.Sample.Code, [new(Property.Moisture, "oven 130 °C", "oven 2", [usual + 0.03m, usual - 0.02m], "%", default)], MillCalendar.OpeningMoment, "");
        added += retest.In(mill, Chief, MillCalendar.OpeningMoment).Receipt?.Added ?? 0;
        return added + new TakeLabSample("UA", waits, new LabSample("A-0114", "UA check", Reference, "after the sieve change on 3M")).In(mill, Technician, waits).Added;
    }

    // A third of the tolerance at one standard deviation of two readings' mean.
    private static InstrumentCheck Of(LabInstrument instrument, CheckTolerance tolerance, Instant at, Dice dice)
    {
        var (known, digits) = tolerance.What switch { Property.Protein => (11.90m, 2), Property.Ash => (0.520m, 3), _ => (13.80m, 2) };
        decimal Read() => LabBench.Round((double)known + dice.Normal(0, (double)tolerance.Within / 4), digits);
        return new(instrument.Code, at, tolerance.What, known, [Read(), Read()], "CS-25");
    }

    private static LabMethod Nir(Property what, Basis basis, decimal r, decimal reproducibility, decimal odd) =>
        new("NIR", what, "%", basis, false, new PrecisionLimit(FigureMark.Mill, Found, r), new PrecisionLimit(FigureMark.Mill, "the laboratory's own NIR against its reference methods", reproducibility), odd);

    private static CheckTolerance Within(Property what, decimal within) => new(what, within, FigureMark.Mill, "the laboratory's own rule");
}
