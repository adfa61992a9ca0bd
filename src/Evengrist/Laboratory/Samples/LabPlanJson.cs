using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Laboratory.Samples;

/// <summary>The sampling plan as JSON text and back: what is kept as a paper.</summary>
public static class LabPlanJson
{
    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "lab-plan";

    /// <summary>The plan as JSON.</summary>
    public static string Write(LabPlan plan) => LabJson.Write(plan);

    /// <summary>Reads a plan and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="plan">The plan; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out LabPlan? plan, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, p => p.Lines.Any(l => l is null || l.Tests.Any(t => t is null)) ? ["A line of the plan is null."] : p.Faults(), out plan, out faults);
}
