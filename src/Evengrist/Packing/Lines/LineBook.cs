using System.Diagnostics.CodeAnalysis;
using Evengrist.Packing.Runs;

namespace Evengrist.Packing.Lines;

/// <summary>The mill's packing lines, and what lies between two products on them.</summary>
/// <param name="Lines">The lines.</param>
/// <param name="Rules">Rules for changing over, by flour or by product; the first that fits holds.</param>
/// <param name="Shifts">People in the hall; empty where there are always enough.</param>
public sealed record LineBook(IReadOnlyList<LineTerms> Lines, IReadOnlyList<ChangeRule> Rules, IReadOnlyList<HallShift> Shifts)
{
    /// <summary>Kind of its paper.</summary>
    public const string PaperKind = "packing-lines";

    /// <summary>What the program begins with: nothing.</summary>
    public static LineBook Start { get; } = new([], [], []);

    /// <summary>Minutes from one pack to another of the same flour, where no rule says it.</summary>
    public int PackChangeMinutes { get; init; } = 20;

    /// <summary>Whether a clean-down may stand in a plan, to be signed by a named person.</summary>
    public bool MayCleanDown { get; init; } = true;

    /// <summary>Who may sign that a line is clean after an allergen; empty: nobody may.</summary>
    public IReadOnlyList<string> Signers { get; init; } = [];

    /// <summary>What an order of runs is judged by.</summary>
    public RunCosts Costs { get; init; } = new();

    /// <summary>The line of a code; null where there is none.</summary>
    public LineTerms? Find(string code) => Lines.FirstOrDefault(l => l.Code.Equals(code, StringComparison.OrdinalIgnoreCase));

    /// <summary>What is wrong with it, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Lines.Count <= RunOrderSpec.MostLines ? Array.Empty<string>() : [$"There are at most {RunOrderSpec.MostLines} lines; read {Lines.Count}."],
        .. Lines.GroupBy(l => l.Code, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => $"Line {g.Key} is there twice."),
        .. Lines.Where(l => string.IsNullOrWhiteSpace(l.Code) || l.Crew is < 0 or > 100).Select(l => $"Line “{l.Code}” has a code and takes 0 to 100 people."),
        .. Lines.SelectMany(l => l.Makes.Where(m => string.IsNullOrWhiteSpace(m.Product) || m.TonnesPerHour is not (> 0 and <= 500)).Select(m => $"Line {l.Code} makes a product at above 0 and at most 500 t/h: “{m.Product}” at {m.TonnesPerHour} is not.")),
        .. Lines.SelectMany(l => l.Makes.GroupBy(m => m.Product, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => $"Line {l.Code} names {g.Key} twice.")),
        .. Rules.Where(r => r.Minutes is < 0 or > 24 * 60 || r.FlushTonnes is not (>= 0 and <= 100)).Select(r => $"The rule after {r.After ?? "any"} into {r.Into ?? "any"} takes 0 to 1440 minutes and 0 to 100 t."),
        .. Shifts.Select(s => s.Fault).OfType<string>(),
        .. PackChangeMinutes is >= 0 and <= 24 * 60 ? Array.Empty<string>() : ["From one pack to another takes 0 to 1440 minutes."],
        .. Costs.Fault is { } costs ? [costs] : Array.Empty<string>(),
    ];

    /// <summary>All it says, each a short sentence, so that two versions can be set side by side.</summary>
    public IReadOnlyList<string> Says() =>
    [
        .. Lines.SelectMany(l => l.Makes.Select(m => FormattableString.Invariant($"{l.Code} makes {m.Product} at {m.TonnesPerHour} t/h{(m.Bin is null ? "" : $" from {m.Bin}")}")).Prepend($"{l.Code} takes {l.Crew} people")),
        .. Rules.Select((r, i) => FormattableString.Invariant($"rule {i + 1}: after {r.After ?? "any"} into {r.Into ?? "any"}{(r.EitherWay ? ", either way" : "")}: {r.Minutes} min{(r.FlushTonnes > 0 ? $", {r.FlushTonnes} t run through to {r.FlushTo ?? "where is not said"}" : "")}{(r.IsCleanDown ? ", a clean-down" : "")}")),
        .. Shifts.Select(s => $"{s.People} people from {s.From} to {s.Until} on {string.Join(", ", s.Days.Select(d => d.ToString()[..3]))}"),
        .. Signers.Select(s => $"{s} may sign a clean-down"),
        $"another pack of the same flour takes {PackChangeMinutes} min", MayCleanDown ? "a clean-down may stand in a plan" : "no clean-down may stand in a plan",
        FormattableString.Invariant($"an hour late costs {Costs.LatePerHour}, an hour of changing over {Costs.ChangePerHour}, a tonne run through {Costs.FlushPerTonne}"),
    ];

    /// <summary>It as JSON.</summary>
    public static string Write(LineBook book) => PackingJson.Write(book);

    /// <summary>Reads one and checks it; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out LineBook? book, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, b => b.Faults(), out book, out faults);
}
