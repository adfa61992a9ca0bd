using Evengrist.Laboratory.Methods;

namespace Evengrist.Laboratory.Samples;

/// <summary>The sampling plan of a laboratory. Editable: a mill keeps its own versions.</summary>
/// <param name="Lines">Its lines.</param>
public sealed record LabPlan(IReadOnlyList<PlanLine> Lines)
{
    /// <summary>None: where samples are taken is a mill's own.</summary>
    public static LabPlan Start { get; } = new([]);

    /// <summary>The line with a code, case not mattering; null where there is none.</summary>
    public PlanLine? Of(string code) => Lines.FirstOrDefault(l => l.Code.Equals(code.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Lines.SelectMany(l => l.Faults()),
        .. Lines.GroupBy(l => l.Code, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands twice; keep one line."),
    ];

    /// <summary>Tests that no method of a table stands for, each a sentence.</summary>
    public IReadOnlyList<string> Unknown(LabMethods methods) =>
        [.. Lines.SelectMany(l => l.Tests.Where(t => methods.Of(t.Method, t.What) is null).Select(t => $"{l.Code}: there is no method \"{t.Method}\" for {Ledger.Readings.Words(t.What)} in the table of methods."))];
}
