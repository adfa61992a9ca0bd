using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Learning;

/// <summary>Tunes a mill to its tests: least squares with what was thought before as a prior, round after round at the newest factors (Gauss-Newton, damped after Levenberg and Marquardt), the covariance kept.</summary>
/// <remarks>
/// Σ = (P⁻¹ + Jᵀ R⁻¹ J)⁻¹, P before data, R measuring and shortfall. Where figures of a kind scatter more than R says, R and the shortfall of that kind are widened by as much. Page: docs/model/mill-tuning.md.
/// </remarks>
public static class MillFit
{
    /// <summary>Fewest figures it takes: fewer say nothing beyond a single stream.</summary>
    public const int FewestFigures = 3;

    private const int MostRounds = 60;
    private const double Enough = 1e-4;

    /// <summary>Tunes to tests.</summary>
    /// <param name="tests">The tests; the passages and products of all their flow sheets are the same, their settings may differ.</param>
    /// <param name="errors">How uncertain figures are; the usual where null.</param>
    /// <param name="goOn">Told how far it is; false where it is to stop.</param>
    public static MillFitOutcome Of(IReadOnlyList<MillTest> tests, TestErrors? errors = null, Func<string, bool>? goOn = null)
    {
        ArgumentNullException.ThrowIfNull(tests);
        errors ??= TestErrors.Usual;
        if (tests.Count == 0 || tests.Sum(t => t.Count) < FewestFigures)
        {
            return new MillNotTuned([$"There are {tests.Sum(t => t.Count)} measured figures: {FewestFigures} or more are needed. Enter a stream survey, or release tests of three breaks."]);
        }

        var none = MillTuning.None(tests[0].Sheet);
        string[] faults = [.. tests.SelectMany(t => t.Faults()), .. tests.Where(t => !TunePrior.Keys(t.Sheet).SequenceEqual(none.Keys)).Select(t => $"{t.Name}: its flow sheet has other passages, cloths or first break than that of {tests[0].Name}. Tune to tests of one flow sheet; only its settings may differ.")];
        return faults.Length > 0 ? new MillNotTuned(faults) : Tune(tests, errors, none, goOn ?? (_ => true));
    }

    // A kind of figure that lies further off than it was said to counts for less the second time. Not again: what counts for less lies still further off.
    private static MillFitOutcome Tune(IReadOnlyList<MillTest> tests, TestErrors errors, MillTuning none, Func<string, bool> goOn)
    {
        var isStopped = false;
        bool GoOn(string doing) => !(isStopped |= !goOn(doing));
        var first = Settle(tests, errors, none, [], none.Values.Clone(), GoOn);
        var scatter = first is null ? [] : Scatter(none, first);
        var settled = first is null || scatter.Count == 0 || isStopped ? first : Settle(tests, errors, none, scatter, first.Values, GoOn);
        if (isStopped)
        {
            return new MillNotTuned(["Tuning was stopped before it had settled."]);
        }

        if (settled is null)
        {
            return new MillNotTuned([$"Tuning did not settle in {MostRounds} rounds. Leave out the test that fits least and try again."]);
        }

        if (settled.Rows.Any(r => !double.IsFinite(r.Figure.Value)))
        {
            return new MillNotTuned(["The mill could not be solved at the factors tried: look for a stream or release that no setting of this flow sheet can give."]);
        }

        var tuning = new MillTuning(none.Keys, settled.Values, settled.Information.Inverse(), none.Prior, scatter, tests.Sum(t => t.Count));
        return new MillTuned(tuning, first!.Rounds + (ReferenceEquals(first, settled) ? 0 : settled.Rounds), [.. settled.Rows.Select(r => new ComparedFigure(r.Test, r.What, r.Measured, r.Figure.Value, r.Sigma))]);
    }

    private static Settled? Settle(IReadOnlyList<MillTest> tests, TestErrors errors, MillTuning none, Dictionary<FigureKind, double> scatter, Vector<double> values, Func<string, bool> goOn)
    {
        var before = none.Prior.Inverse();
        double Sigma(TestRow row) => row.Sigma * scatter.GetValueOrDefault(row.Figure.Kind, 1);
        TestRow[] Rows(Vector<double> at) => [.. tests.SelectMany(t => TestRows.Of(t, none.Keys, at, errors))];
        double Cost(TestRow[] of, Vector<double> at) => of.Sum(r => Math.Pow((r.Measured - r.Figure.Value) / Sigma(r), 2)) + (at * (before * at));
        var (rows, damping) = (Rows(values), 1e-3);
        var cost = Cost(rows, values);
        for (var round = 1; round <= MostRounds && goOn($"Tuning to {tests.Count} tests, round {round}"); round++)
        {
            var (information, pull) = (before.Clone(), -(before * values));
            foreach (var row in rows)
            {
                var weight = Math.Pow(Sigma(row), -2);
                information += row.Figure.Gradient.OuterProduct(row.Figure.Gradient) * weight;
                pull += row.Figure.Gradient * (weight * (row.Measured - row.Figure.Value));
            }

            if (!double.IsFinite(cost))
            {
                return new Settled(values, rows, information, round);
            }

            // The step is damped until it makes things better: beyond some way the model's own lines bend.
            var step = (information + Matrix<double>.Build.DiagonalOfDiagonalVector(information.Diagonal() * damping)).Cholesky().Solve(pull);
            var tried = values + (step * Math.Min(1, 0.5 / Math.Max(step.AbsoluteMaximum(), 1e-12)));
            var triedRows = Rows(tried);
            var gained = cost - Cost(triedRows, tried);
            if ((Math.Abs(gained) <= Enough * cost && (gained >= 0 || damping > 1)) || step.AbsoluteMaximum() < Enough)
            {
                return new Settled(values, rows, information, round);
            }

            if (gained > 0)
            {
                (values, rows, cost, damping) = (tried, triedRows, cost - gained, Math.Max(damping / 5, 1e-9));
            }
            else
            {
                damping *= 8;
            }
        }

        return null;
    }

    // Figures less what they were spent on: the trace of what the data told, shared over the kinds by their number.
    private static Dictionary<FigureKind, double> Scatter(MillTuning none, Settled settled)
    {
        var spent = none.Keys.Count - (none.Prior.Inverse() * settled.Information.Inverse()).Trace();
        var free = Math.Max(0.2, 1 - (spent / settled.Rows.Length));
        return settled.Rows.GroupBy(r => r.Figure.Kind)
            .Select(g => (g.Key, Of: Math.Sqrt(g.Sum(r => Math.Pow((r.Measured - r.Figure.Value) / r.Sigma, 2)) / (free * g.Count()))))
            .Where(x => x.Of > 1).ToDictionary(x => x.Key, x => x.Of);
    }

    private sealed record Settled(Vector<double> Values, TestRow[] Rows, Matrix<double> Information, int Rounds);
}
