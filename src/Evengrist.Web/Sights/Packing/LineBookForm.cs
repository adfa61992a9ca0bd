using System.Globalization;
using Evengrist.Packing.Lines;
using Evengrist.Packing.Runs;
using Evengrist.Records;
using Evengrist.Records.Packing;
using Evengrist.Web.Sights.Trucks;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>The packing lines as they were typed: a row for each line, rate, rule, shift and person.</summary>
public sealed class LineBookForm
{
    /// <summary>The act that keeps it; every other changes the rows and keeps nothing.</summary>
    internal const string KeepIt = "keep";

    // Together they stay below the fields a form may have.
    private const int MostRates = 200, MostRules = 30, MostShifts = 14, MostSigners = 20;

    /// <summary>What is done.</summary>
    public string? Do { get; set; }

    /// <summary>The version it follows; 0 for the first.</summary>
    public string? Seen { get; set; }

    /// <summary>The lines.</summary>
    public List<LineRow> Lines { get; set => field = [.. (value ?? []).Where(r => r is not null)]; } = [];

    /// <summary>Rules for changing over.</summary>
    public List<RuleRow> Rules { get; set => field = [.. (value ?? []).Where(r => r is not null)]; } = [];

    /// <summary>Shifts.</summary>
    public List<ShiftRow> Shifts { get; set => field = [.. (value ?? []).Where(r => r is not null)]; } = [];

    /// <summary>Who may sign a clean-down.</summary>
    public List<SignerRow> Signers { get; set => field = [.. (value ?? []).Where(r => r is not null)]; } = [];

    /// <summary>Minutes from one pack to another of the same flour.</summary>
    public string? PackChange { get; set; }

    /// <summary>Whether a clean-down may stand in a plan.</summary>
    public bool MayCleanDown { get; set; }

    /// <summary>What an hour late costs.</summary>
    public string? Late { get; set; }

    /// <summary>What an hour of changing over costs.</summary>
    public string? Change { get; set; }

    /// <summary>What a tonne run through costs.</summary>
    public string? Flush { get; set; }

    /// <summary>What is wrong, by field.</summary>
    internal Typed Typed { get; } = new();

    /// <summary>What is wrong with all of it.</summary>
    internal List<string> Faults { get; } = [];

    /// <summary>What is kept, as it is typed.</summary>
    internal static LineBookForm Of(LineBook book, int version) => new()
    {
        Seen = version.ToString(CultureInfo.InvariantCulture), Lines = [.. book.Lines.Select(LineRow.Of)], Rules = [.. book.Rules.Select(RuleRow.Of)], Shifts = [.. book.Shifts.Select(ShiftRow.Of)], Signers = [.. book.Signers.Select(s => new SignerRow { Name = s })],
        PackChange = TypedRows.Say(book.PackChangeMinutes), MayCleanDown = book.MayCleanDown, Late = TypedRows.Say(book.Costs.LatePerHour), Change = TypedRows.Say(book.Costs.ChangePerHour), Flush = TypedRows.Say(book.Costs.FlushPerTonne),
    };

    /// <summary>Adds, moves or takes out a row, as the act says.</summary>
    internal void ChangeRows()
    {
        var act = Do ?? "";
        switch (act.Split(':')[0])
        {
            case "line+" when Lines.Count < RunOrderSpec.MostLines: Lines.Add(new() { Makes = [new()] }); break;
            case "line-" when TypedRows.At(act, Lines.Count) is >= 0 and var at: Lines.RemoveAt(at); break;
            case "rate+" when TypedRows.At(act, Lines.Count) is >= 0 and var at && Lines.Sum(l => l.Makes.Count) < MostRates: Lines[at].Makes.Add(new()); break;
            case "rate-" when TypedRows.At(act, Lines.Count) is >= 0 and var at && TypedRows.At(act, Lines[at].Makes.Count, 1) is >= 0 and var row: Lines[at].Makes.RemoveAt(row); break;
            case "rule+" when Rules.Count < MostRules: Rules.Insert(0, new()); break;
            case "rule-" when TypedRows.At(act, Rules.Count) is >= 0 and var at: Rules.RemoveAt(at); break;
            case "rule^" when TypedRows.At(act, Rules.Count) is > 0 and var at: (Rules[at - 1], Rules[at]) = (Rules[at], Rules[at - 1]); break;
            case "shift+" when Shifts.Count < MostShifts: Shifts.Add(new() { Days = [.. Enum.GetValues<IsoDayOfWeek>().Where(d => d is >= IsoDayOfWeek.Monday and <= IsoDayOfWeek.Friday).Select(d => d.ToString())] }); break;
            case "shift-" when TypedRows.At(act, Shifts.Count) is >= 0 and var at: Shifts.RemoveAt(at); break;
            case "signer+" when Signers.Count < MostSigners: Signers.Add(new()); break;
            case "signer-" when TypedRows.At(act, Signers.Count) is >= 0 and var at: Signers.RemoveAt(at); break;
        }
    }

    /// <summary>Keeps it as the next version; false with every fault where it cannot be, and then nothing is kept.</summary>
    internal bool Keep(Mill mill, HallKnown known, string? by)
    {
        if (string.IsNullOrWhiteSpace(by))
        {
            Faults.Add(Visiting.Visit.Nameless);
        }

        var book = Read(known);
        if (Typed.Faults.Count == 0 && Faults.Count == 0)
        {
            Faults.AddRange(KeepLineBook.KeepAfter(mill, book, by!.Trim(), int.TryParse(Seen, NumberStyles.None, CultureInfo.InvariantCulture, out var seen) ? seen : -1));
        }

        return Typed.Faults.Count == 0 && Faults.Count == 0;
    }

    private LineBook Read(HallKnown known)
    {
        LineTerms[] lines = [.. Lines.Select((line, i) => Line(known, line, $"Lines[{i}]."))];
        foreach (var (i, line) in lines.Index().Where(l => lines.Take(l.Index).Any(o => o.Code.Equals(l.Item.Code, StringComparison.OrdinalIgnoreCase))))
        {
            Typed.Fault($"Lines[{i}].Code", $"{line.Code} stands above already.");
        }

        ChangeRule[] rules = [.. Rules.Select((rule, i) => Rule(known, rule, $"Rules[{i}]."))];
        HallShift[] shifts = [.. Shifts.Select((shift, i) => Shift(shift, $"Shifts[{i}]."))];
        string[] signers = [.. Signers.Select(s => (s.Name ?? "").Trim()).Where(s => s.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)];
        double Cost(string field, string? text) => Typed.Number(field, text, "", 0, 1e6) ?? 0;
        return new(lines, rules, shifts)
        {
            PackChangeMinutes = (int)(Typed.Number(nameof(PackChange), PackChange, "min", 0, 1440, whole: true) ?? 0), MayCleanDown = MayCleanDown, Signers = signers,
            Costs = new(Cost(nameof(Late), Late), Cost(nameof(Change), Change), Cost(nameof(Flush), Flush)),
        };
    }

    private LineTerms Line(HallKnown known, LineRow line, string field)
    {
        var code = Known(known.Lines, line.Code, field + "Code", "Choose the line, or take it out.", c => $"The ledger has no packing line {c}: enter its place there first.");
        List<LineRate> makes = [];
        foreach (var (i, row) in line.Makes.Index().Where(m => !m.Item.IsEmpty))
        {
            var at = $"{field}Makes[{i}].";
            var product = Known(known.Products, row.Product, at + "Product", "Choose the product, or take the row out.", c => $"There is no product {c}: keep it among the products first.");
            if (product.Length > 0 && makes.Any(m => m.Product.Equals(product, StringComparison.OrdinalIgnoreCase)))
            {
                Typed.Fault(at + "Product", $"{product} stands above already.");
            }

            var bin = (row.Bin ?? "").Trim();
            var fed = known.Bins.FirstOrDefault(b => b.Code.Equals(bin, StringComparison.OrdinalIgnoreCase));
            if (bin.Length > 0 && fed?.Lines.Contains(code, StringComparer.OrdinalIgnoreCase) != true)
            {
                Typed.Fault(at + "Bin", $"{bin} is not connected to {(code.Length > 0 ? code : "this line")} in the ledger.");
            }

            var rate = Typed.Number(at + "Rate", row.Rate, "t/h", 0, 500);
            if (rate == 0)
            {
                Typed.Fault(at + "Rate", "A rate is above 0: take the row out where the line cannot make it.");
            }

            makes.Add(new(product, rate ?? 1, fed?.Code));
        }

        return new(code, (int)(Typed.Number(field + "Crew", line.Crew, "people", 0, 100, whole: true) ?? 0), makes);
    }

    private ChangeRule Rule(HallKnown known, RuleRow rule, string field)
    {
        string? Side(string? text, string name) => string.IsNullOrWhiteSpace(text) ? null : Known([.. known.Flours, .. known.Products], text, field + name, "", c => $"There is no flour and no product {c}. Leave it empty for any.");
        var flush = string.IsNullOrWhiteSpace(rule.Flush) ? 0 : Typed.Number(field + "Flush", rule.Flush, "t", 0, 100) ?? 0;
        var to = (rule.FlushTo ?? "").Trim();
        if (flush > 0 && to.Length == 0)
        {
            Typed.Fault(field + "FlushTo", "Say where the flour run through goes.");
        }

        return new(Side(rule.After, "After"), Side(rule.Into, "Into"), (int)(Typed.Number(field + "Minutes", rule.Minutes, "min", 0, 1440, whole: true) ?? 0))
        {
            EitherWay = rule.EitherWay, FlushTonnes = flush, FlushTo = to.Length > 0 ? to : null, IsCleanDown = rule.CleanDown,
        };
    }

    private HallShift Shift(ShiftRow shift, string field)
    {
        IsoDayOfWeek[] days = [.. (shift.Days ?? []).Select(d => Enum.TryParse<IsoDayOfWeek>(d, out var day) ? day : IsoDayOfWeek.None).Where(d => d != IsoDayOfWeek.None).Distinct().Order()];
        if (days.Length == 0)
        {
            Typed.Fault(field + "Days", "Tick the days on which it begins.");
        }

        foreach (var (name, text) in new[] { ("From", shift.From), ("Until", shift.Until) })
        {
            if (!HallShift.IsClock((text ?? "").Trim()))
            {
                Typed.Fault(field + name, $"A time is like 06:00; read “{text?.Trim()}”.");
            }
        }

        return new(days, (shift.From ?? "").Trim(), (shift.Until ?? "").Trim(), (int)(Typed.Number(field + "People", shift.People, "people", 0, 1000, whole: true) ?? 0));
    }

    // A name as the mill writes it; what is typed, with its fault said, where the mill has none.
    private string Known(IReadOnlyList<string> all, string? text, string field, string missing, Func<string, string> none)
    {
        var typed = (text ?? "").Trim();
        if (all.FirstOrDefault(a => a.Equals(typed, StringComparison.OrdinalIgnoreCase)) is { } known)
        {
            return known;
        }

        Typed.Fault(field, typed.Length == 0 ? missing : none(typed));
        return typed;
    }
}
