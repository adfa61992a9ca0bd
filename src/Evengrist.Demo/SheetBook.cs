using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Mix.Sheets;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Mix;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The mix sheets of the weeks before the demonstration opens: written as the gates are set, by flour, day and open bins. Invented.</summary>
internal sealed class SheetBook(BinPlan plan, ulong seed)
{
    private const double Step = 1, ProteinError = 0.12;
    private static readonly string[] Millers = ["Osric Venn", "Lidia Marsh", "Tam Underhill"];
    private static readonly double[] Moves = [0, 4, -6, 2, -2, 6, -4];
    private readonly List<MixSheet> sheets = [];
    private readonly GateTruth truth = new(seed);

    /// <summary>First and last milling day with sheets; the last is the day on which the demonstration opens.</summary>
    public static LocalDate First { get; } = new(2025, 12, 1);

    /// <inheritdoc cref="First"/>
    public static LocalDate Last { get; } = new(2026, 1, 14);

    /// <summary>Whether sheets are written on a milling day.</summary>
    public static bool IsKept(LocalDate day) => day >= First && day <= Last;

    /// <summary>Where two gates or more are open the miller moves the first by a few points, another way each day, and the second makes up for it.</summary>
    public static List<Gate> Moved(IReadOnlyList<Gate> gates, LocalDate day)
    {
        var move = gates.Count < 2 ? 0 : Moves[day.DayOfYear % Moves.Length] / 100;
        return [.. gates.Select((g, i) => g with { Share = g.Share + (i == 0 ? move : i == 1 ? -move : 0) })];
    }

    /// <summary>Writes what is set for a stretch, and says what the gates give, t/h.</summary>
    public IReadOnlyList<(string Bin, double TonnesPerHour)> Set(char unit, Flour flour, IReadOnlyList<Gate> gates, Instant from, Instant until)
    {
        var (rate, day) = (UnitRun.WheatPerHour(unit), MillCalendar.MillingDay(from));
        Write(unit, flour, gates, rate, from, until);
        return [.. gates.Select(g => (g.Bin, truth.Gives(g.Bin, g.Share * rate, day)))];
    }

    /// <summary>Keeps the sheets; what is kept already stays.</summary>
    public void KeepPapers(Mill mill)
    {
        foreach (var sheet in sheets)
        {
            mill.Papers(MixSheet.Kind).Keep(MixSheets.CodeOf(sheet, mill.Settings.Zone), 1, MixSheetJson.Write(sheet), sheet.SetBy);
        }
    }

    private void Write(char unit, Flour flour, IReadOnlyList<Gate> gates, double rate, Instant from, Instant until)
    {
        var line = $"MX{unit}";
        var open = sheets.FindLastIndex(s => s.Line == line);
        if (open >= 0 && sheets[open] is var last && last.Until == from && last.Flour == $"{flour}" && MillCalendar.MillingDay(last.From) == MillCalendar.MillingDay(from) && last.Gates.Select(g => g.Bin).SequenceEqual(gates.Select(g => g.Bin)))
        {
            sheets[open] = last with { Until = until };
            return;
        }

        var terms = SeasonBooks.Terms.Flours.First(f => f.Code == $"{flour}");
        var sheet = new MixSheet
        {
            Line = line, Flour = terms.Code, From = from, Until = until, TonnesPerHour = rate, StepPercent = Step, SetBy = Millers[MillCalendar.MillingDay(from).DayOfYear % Millers.Length],
            Gates = [.. gates.Select(g => new SheetGate(g.Bin, plan[g.Bin].Material, Math.Round(100 * g.Share)) { MoisturePercent = Math.Round(plan[g.Bin].Moisture, 2), Values = [new(Property.Protein, Math.Round(plan[g.Bin].Protein, 2), Basis.At12, ProteinError)] })],
            Limits = [.. terms.Limits.Where(l => l.What == Property.Protein).Select(l => new SheetLimit(l.What, LimitOn.Wheat, l.Basis, "terms of the crop year") { Least = l.Least, Most = l.Most })],
            Remarks = ["Written before the best mix was reckoned on this page; protein is the mean of what was measured on the way into each bin."],
        };
        sheets.Add(sheet with { Expected = sheet.ExpectedOfGates() });
    }
}
