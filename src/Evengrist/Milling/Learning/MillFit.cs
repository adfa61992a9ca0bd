using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Learning;

/// <summary>Tunes a mill to its tests: least squares with what was thought before as a prior, round after round at the newest factors (Gauss-Newton), the covariance kept.</summary>
/// <remarks>
/// Σ = (P⁻¹ + Jᵀ R⁻¹ J)⁻¹, P before data, R measuring and shortfall. Where the figures scatter more than R says, Σ and the shortfall are widened by as much. Page: docs/model/mill-tuning.md.
/// </remarks>
public static class MillFit
{
    /// <summary>Fewest figures it takes: fewer say nothing beyond a single stream.</summary>
    public const int FewestFigures = 3;

    private const int MostRounds = 25;
    private const double Enough = 1e-4;

    /// <summary>Tunes to tests.</summary>
    /// <param name="tests">The tests; the passages and products of all their flow sheets are the same, their settings may differ.</param>
    /// <param name="errors">How uncertain figures are; the usual where null.</param>
    public static MillFitOutcome Of(IReadOnlyList<MillTest> tests, TestErrors? errors = null)
    {
        ArgumentNullException.ThrowIfNull(tests);
        errors ??= TestErrors.Usual;
        if (tests.Count == 0 || tests.Sum(t => t.Count) < FewestFigures)
        {
            return new MillNotTuned([$"There are {tests.Sum(t => t.Count)} measured figures: {FewestFigures} or more are needed. Enter a stream survey, or release tests of three breaks."]);
        }

        var none = MillTuning.None(tests[0].Sheet);
        string[] faults = [.. tests.SelectMany(t => t.Faults()), .. tests.Where(t => !TunePrior.Keys(t.Sheet).SequenceEqual(none.Keys)).Select(t => $"{t.Name}: its flow sheet has other passages, cloths or first break than that of {tests[0].Name}. Tune to tests of one flow sheet; only its settings may differ.")];
        return faults.Length > 0 ? new MillNotTuned(faults) : Tune(tests, errors, none);
    }

    private static MillFitOutcome Tune(IReadOnlyList<MillTest> tests, TestErrors errors, MillTuning none)
    {
        var before = none.Prior.Inverse();
        var values = none.Values.Clone();
        for (var round = 1; round <= MostRounds; round++)
        {
            var rows = tests.SelectMany(t => TestRows.Of(t, none.Keys, values, errors)).ToArray();
            if (rows.Any(r => !double.IsFinite(r.Figure.Value)))
            {
                return new MillNotTuned(["The mill could not be solved at the factors tried: look for a stream or release that no setting of this flow sheet can give."]);
            }

            var (information, pull) = (before.Clone(), -(before * values));
            foreach (var row in rows)
            {
                var weight = 1 / (row.Sigma * row.Sigma);
                information += row.Figure.Gradient.OuterProduct(row.Figure.Gradient) * weight;
                pull += row.Figure.Gradient * (weight * (row.Measured - row.Figure.Value));
            }

            var step = information.Cholesky().Solve(pull);
            // A round turns no knob by more than half again: beyond it the model's own lines bend.
            var largest = step.AbsoluteMaximum();
            values += step * Math.Min(1, 0.5 / Math.Max(largest, 1e-12));
            if (largest < Enough)
            {
                return Found(tests, rows, none, values, information, round);
            }
        }

        return new MillNotTuned([$"Tuning did not settle in {MostRounds} rounds. Leave out the test that fits least and try again."]);
    }

    private static MillTuned Found(IReadOnlyList<MillTest> tests, TestRow[] rows, MillTuning none, Vector<double> values, Matrix<double> information, int round)
    {
        var covariance = information.Inverse();
        // Figures less what they were spent on: the trace of the information the data gave, in units of what there is now.
        var spent = none.Keys.Count - (none.Prior.Inverse() * covariance).Trace();
        var free = Math.Max(1, rows.Length - spent);
        var scatter = Math.Sqrt(Math.Max(1, rows.Sum(r => Math.Pow((r.Measured - r.Figure.Value) / r.Sigma, 2)) / free));
        var tuning = new MillTuning(none.Keys, values, covariance * (scatter * scatter), none.Prior, scatter, tests.Sum(t => t.Count));
        return new MillTuned(tuning, round, [.. rows.Select(r => new ComparedFigure(r.Test, r.What, r.Measured, r.Figure.Value, r.Sigma))]);
    }
}
