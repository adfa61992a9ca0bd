using Evengrist.Intake.Sampling;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>Where a probe goes in: metres from the front and from the left side.</summary>
public sealed record ProbePointAnswer(int Number, double AlongM, double AcrossM);

/// <summary>How far the result may be off, in the unit of the standard deviations: variance by step, one standard deviation, ± (k = 2), and the probes that the half-width wants.</summary>
public sealed record SpreadOfResult(double FromProbes, double FromSample, double FromPreparation, double FromDetermination, double FromInstrument, double StandardDeviation, double PlusMinus, int? ProbesWanted);

/// <summary>A plan for sampling a vehicle. The mark says how well the rule is known; masses are in g, null where none is known.</summary>
public sealed record ProbeAnswer(
    string Rule, string Mark, int Increments, int? IncrementG, int? CompositeG, string Why, IReadOnlyList<ProbePointAnswer> Points, IReadOnlyList<double> CutsAt, string WherePointsStand,
    SpreadOfResult? Spread, IReadOnlyList<string> Notes, IReadOnlyList<string> Cautions)
{
    /// <summary>Plans a posed vehicle; reasons where there is no plan.</summary>
    public static (ProbeAnswer? Answer, IReadOnlyList<string> Reasons) To(ProbeCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return ProbeModel.Plan(posed.Spec) switch
        {
            ProbePlan plan => (Of(plan, posed), []),
            NoProbePlan none => (null, none.Reasons),
            var other => throw new InvalidOperationException($"A plan ended as {other.GetType().Name}."),
        };
    }

    private static ProbeAnswer Of(ProbePlan plan, ProbeCase posed) => new(
        plan.Spec.Pattern.Name, plan.Spec.Pattern.Mark, plan.Increments, plan.IncrementGrams, plan.CompositeGrams, plan.Why,
        [.. plan.Points.Select(p => new ProbePointAnswer(p.Number, Math.Round(p.AlongMetres, 3), Math.Round(p.AcrossMetres, 3)))], plan.CutsAt,
        plan.Points.Count > 0 ? "spread by our own design; no official diagram was read" : "cuts across the whole stream, at these shares of the load run out",
        posed.Spread is { } spread ? SpreadOf(spread, plan.Increments, posed.HalfWidth) : null, plan.Spec.Pattern.Notes, plan.Cautions);

    private static SpreadOfResult SpreadOf(VarianceSpec spread, int probes, double? halfWidth)
    {
        var parts = VarianceModel.Of(spread, new SampleSizes(probes));
        return new(parts.Probes, parts.Sample, parts.Preparation, parts.Determination, parts.Instrument, parts.StandardDeviation, 2 * parts.StandardDeviation,
            halfWidth is { } e ? VarianceModel.RequiredProbes(spread.BetweenProbes, e) : null);
    }
}
