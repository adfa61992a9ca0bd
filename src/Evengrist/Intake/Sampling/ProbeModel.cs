using System.Globalization;

namespace Evengrist.Intake.Sampling;

/// <summary>Plans the sample of a vehicle: how many increments by the rule chosen, how large, and where they stand.</summary>
/// <remarks>The numbers are those of the rule; where the points stand is ours. The same spec gives the same plan. Model: docs/model/sampling.md.</remarks>
public static class ProbeModel
{
    /// <summary>Plans a sample.</summary>
    /// <returns>A <see cref="ProbePlan"/>, or <see cref="NoProbePlan"/> with every reason.</returns>
    public static ProbeOutcome Plan(ProbeSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            return new NoProbePlan(faults);
        }

        var pattern = spec.Pattern;
        var measure = pattern.By == ProbeBy.Depth ? (decimal)spec.DepthMetres : spec.Mass.Tonnes;
        if (pattern.Steps.FirstOrDefault(s => s.UpTo is not { } end || measure <= end) is not { } step)
        {
            return new NoProbePlan([Text($"The rule \"{pattern.Name}\" as known here ends at {pattern.Steps[^1].UpTo} t, and this is {measure:0.##} t: sample it in parts, or by another rule.")]);
        }

        var increments = pattern.Spread == PointSpread.Hoppers ? PointsOn.HopperProbes(spec.Hoppers) : step.Increments;
        var (each, composite) = Grams(pattern, step, increments);
        return new ProbePlan(spec, PointsOn.Plan(spec, increments), increments, each, composite, Why(pattern, step, measure, increments), SamplingCautions.For(spec))
        {
            CutsAt = pattern.Spread == PointSpread.Stream ? [.. Enumerable.Range(0, increments).Select(i => (i + 0.5) / increments)] : [],
        };
    }

    private static (int? Each, int? Composite) Grams(ProbePattern pattern, ProbeStep step, int increments)
    {
        var composite = step.CompositeGrams is { } least && pattern.IncrementGrams is { } one ? Math.Max(least, one * increments)
            : step.CompositeGrams ?? pattern.IncrementGrams * increments;
        return (pattern.IncrementGrams ?? (composite is { } all ? (all + increments - 1) / increments : null), composite);
    }

    private static string Why(ProbePattern pattern, ProbeStep step, decimal measure, int increments)
    {
        var what = pattern.Spread == PointSpread.Stream ? "cuts" : "probes";
        return pattern.By == ProbeBy.Nothing ? Text($"{increments} {what} by the rule \"{pattern.Name}\"")
            : Text($"{measure:0.##} {(pattern.By == ProbeBy.Depth ? "m deep" : "t")}, {(step.UpTo is { } end ? Text($"up to {end:0.##}") : "above the last limit")}: {increments} {what} by the rule \"{pattern.Name}\"");
    }

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
