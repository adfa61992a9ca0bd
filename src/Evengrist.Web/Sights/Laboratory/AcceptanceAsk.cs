using System.Globalization;
using Evengrist.Laboratory.Sampling;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Acceptance sampling as it is asked for with the address of its page: shares and risks in per cent.</summary>
public sealed class AcceptanceAsk
{
    private static readonly Dictionary<string, string> Start = new()
    {
        ["good"] = "1", ["alpha"] = "5", ["bad"] = "6", ["beta"] = "10", ["size"] = "", ["accept"] = "", ["lot"] = "1000", ["level"] = "II", ["limit"] = "1", ["vlevel"] = "IV", ["share"] = "5", ["chance"] = "95", ["grams"] = "25", ["portions"] = "60", ["positive"] = "0",
    };

    private readonly Func<string, string?> typed;
    private readonly List<string> faults = [];

    /// <summary>Reads what was typed.</summary>
    public AcceptanceAsk(Func<string, string?> typed)
    {
        this.typed = typed;
        Points = new(Percent("good", "Good lots"), Percent("alpha", "Seller's risk"), Percent("bad", "Bad lots"), Percent("beta", "Buyer's risk"));
        var (size, accept, lot) = (Whole("size", "Looked at"), Whole("accept", "Accepted with"), Whole("lot", "Units in the lot"));
        var (share, chance, grams, limit) = (Percent("share", "Share of bad units"), Percent("chance", "How surely"), Number("grams", "Grams") ?? 0, Number("limit", "Quality limit") ?? 0);
        var (portions, positive) = (Whole("portions", "Portions") ?? 0, Whole("positive", "Accepted with") ?? 0);
        faults.AddRange(faults.Count == 0 ? Points.Faults() : []);
        Rule(size is null == accept is null && (size is null || (size >= 1 && size <= AttributesPlan.MostSize && accept < size)), $"A plan of your own: 1 to {AttributesPlan.MostSize} looked at and fewer bad ones accepted, or both left empty.");
        Rule(lot >= 2, "A lot has 2 units or more.");
        Rule(TableLetters.Levels.Contains(this["level"]), $"The level is one of {string.Join(", ", TableLetters.Levels)}.");
        Rule(VariablesTable.Levels.Contains(this["vlevel"]), $"The level by variables is one of {string.Join(", ", VariablesTable.Levels)}.");
        Rule(TablePlans.Limits.Contains(limit), $"The quality limit is one of {string.Join(", ", TablePlans.Limits.Select(l => FormattableString.Invariant($"{l}")))} %.");
        Rule(portions >= 1 && portions <= AttributesPlan.MostSize && positive < portions, $"Portions are 1 to {AttributesPlan.MostSize}, and fewer positive ones accepted.");
        Rule(share is > 0 and < 1 && chance is > 0 and < 1, "The share of bad units and how surely lie between 0 and 100 %.");
        Rule(grams > 0, "Grams are above 0.");
        if (faults.Count > 0)
        {
            return;
        }

        Smallest = AttributesPlan.For(Points);
        Own = size is { } n ? new(n, accept!.Value) : null;
        Measured = [VariablesPlan.For(Points, true), VariablesPlan.For(Points, false)];
        OneByOne = SequentialPlan.For(Points);
        Letter = TableLetters.Of(lot!.Value, this["level"]);
        Table = [.. new[] { Severity.Normal, Severity.Tightened, Severity.Reduced }.Select(s => TablePlans.Of(s, Letter, limit)).OfType<TablePlan>()];
        VariablesLetter = lot < 3 ? null : VariablesTable.LetterOf(lot.Value, this["vlevel"]);
        ByVariables = VariablesLetter is { } letter ? [.. new[] { false, true }.Select(t => (t, VariablesTable.Of(letter, limit, t)))] : [];
        Hold = new HoldTest(portions, positive, grams, chance);
        Lot = lot.Value;
        Units = Finding.UnitsFor(share, chance);
    }

    /// <summary>Two points that a plan is wanted for.</summary>
    public TwoPoints Points { get; }

    /// <summary>The smallest plan for them; null where there is none, or faults.</summary>
    public AttributesPlan? Smallest { get; }

    /// <summary>A plan of the reader's own; null where none was typed.</summary>
    public AttributesPlan? Own { get; }

    /// <summary>By variables: with a known standard deviation, and with that of the sample.</summary>
    public IReadOnlyList<VariablesPlan> Measured { get; } = [];

    /// <summary>Looked at one by one.</summary>
    public SequentialPlan? OneByOne { get; }

    /// <summary>Code letter of the lot.</summary>
    public char Letter { get; }

    /// <summary>Plans of the table that are here.</summary>
    public IReadOnlyList<TablePlan> Table { get; } = [];

    /// <summary>Letter by variables; null where the lot is too small.</summary>
    public char? VariablesLetter { get; }

    /// <summary>Plans by variables, normal and tightened; null where one is not here.</summary>
    public IReadOnlyList<(bool Tightened, VariablesPlan? Plan)> ByVariables { get; } = [];

    /// <summary>A test-and-hold for micro-organisms.</summary>
    public HoldTest? Hold { get; }

    /// <summary>Units in the lot.</summary>
    public int Lot { get; }

    /// <summary>Units so that a bad one is among them.</summary>
    public int Units { get; }

    /// <summary>Every fault.</summary>
    public IReadOnlyList<string> Faults => faults;

    /// <summary>What stands in a field.</summary>
    public string this[string key] => typed(key)?.Trim() ?? Start[key];

    private void Rule(bool holds, string otherwise)
    {
        if (!holds && faults.Count == 0)
        {
            faults.Add(otherwise);
        }
    }

    private double Percent(string key, string what) => (Number(key, what) ?? 0) / 100;

    private double? Number(string key, string what)
    {
        if (double.TryParse(this[key], NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
        {
            return number;
        }

        faults.Add($"{what}: a number such as {(Start[key].Length > 0 ? Start[key] : "50")} is needed; read “{this[key]}”.");
        return null;
    }

    private int? Whole(string key, string what)
    {
        if (this[key].Length == 0)
        {
            return null;
        }

        if (int.TryParse(this[key], NumberStyles.None, CultureInfo.InvariantCulture, out var whole))
        {
            return whole;
        }

        faults.Add($"{what}: a whole number is needed; read “{this[key]}”.");
        return null;
    }
}
