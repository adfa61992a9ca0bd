using Evengrist.Ledger;
using Evengrist.Plant.Cases;
using Evengrist.Tracing.Structure;

namespace Evengrist.Plant.Answers;

/// <summary>Ways of keeping lots apart beside each other, on paper, in plain values.</summary>
/// <param name="Ways">In the order asked.</param>
public sealed record StructureAnswer(IReadOnlyList<StructureWayAnswer> Ways)
{
    /// <summary>Reckons a posed case.</summary>
    public static StructureAnswer Of(StructureCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return new([.. posed.Ways.Select(w => StructureWayAnswer.Of(w.Name, StructureModel.Of(w.Spec)))]);
    }
}

/// <summary>One way.</summary>
public sealed record StructureWayAnswer(
    string Name, double WorstTonnes, double ExpectedTonnes, double ExpectedByMassTonnes, long Links, double TrucksEachLot, int Lots, int TrucksMilled, double FinishedTonnes, double SetAsideTonnes, double SetAsidePercent, int CleanOuts, double Hours)
{
    /// <summary>In plain values, not rounded.</summary>
    public static StructureWayAnswer Of(string name, StructureOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        var sizes = outcome.Sizes;
        return new(name, sizes.Worst / 1000, sizes.Expected / 1000, sizes.ExpectedByMass / 1000, sizes.Links, outcome.TrucksEachLot, outcome.Lots.Count, outcome.TrucksMilled, outcome.FinishedKilograms / 1000, outcome.SetAsideKilograms / 1000, 100 * outcome.SetAsideShare, outcome.CleanOuts, outcome.Hours);
    }
}

/// <summary>Recall sizes of today's practice in plain values.</summary>
public sealed record PracticeAnswer(int TrucksInSpan, int Traced, int NotPackedYet, decimal ThresholdKg, IReadOnlyList<PracticeSizesAnswer> Sizes, double StandardErrorTonnes, double PackagesTonnes, string Says)
{
    /// <summary>In plain values, not rounded.</summary>
    public static PracticeAnswer Of(PracticeOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        var sizes = outcome.Outflows.Zip(outcome.Each, (o, s) => PracticeSizesAnswer.Of(o switch { Outflow.CoreFirst => "coreFirst", Outflow.Stirred => "stirred", _ => "firstInFirstOut" }, s)).Append(PracticeSizesAnswer.Of("any", outcome.Union));
        return new(outcome.TrucksInSpan, outcome.Traced, outcome.NotPackedYet, outcome.Question.Threshold.Kilograms, [.. sizes], outcome.StandardError / 1000, outcome.PackagesKilograms / 1000,
            outcome.IsSample ? $"{outcome.Traced} of {outcome.TrucksInSpan} trucks were traced, evenly over the span; the worst is the worst of those." : "Every truck of the span was traced.");
    }
}

/// <summary>Recall sizes under one hypothesis, or under any.</summary>
public sealed record PracticeSizesAnswer(string Outflow, double WorstTonnes, double ExpectedTonnes, double ExpectedByMassTonnes, long Links)
{
    /// <summary>In plain values, not rounded.</summary>
    public static PracticeSizesAnswer Of(string outflow, RecallSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        return new(outflow, sizes.Worst / 1000, sizes.Expected / 1000, sizes.ExpectedByMass / 1000, sizes.Links);
    }
}
