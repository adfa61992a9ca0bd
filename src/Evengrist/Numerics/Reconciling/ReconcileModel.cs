namespace Evengrist.Numerics.Reconciling;

/// <summary>Adjusts measured values, by weighted least squares, so that they keep their constraints.</summary>
/// <remarks>
/// min Σ ((x − y)/σ)² such that f(x, u) = 0, linearised again and again about the newest values; a linear question is answered by the first
/// round, the second sees that it stays. Model: docs/model/reconciliation.md.
/// </remarks>
public static class ReconcileModel
{
    private const int MostRounds = 100;
    private const double Still = 1e-11;
    private const double Missed = 1e-8;

    /// <summary>Reconciles, or says why not.</summary>
    public static ReconcileOutcome Of(ReconcileSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            return new ReconcileRefused(faults);
        }

        double[] values = [.. spec.Unknowns.Select(u => u.Value)];
        var change = double.NaN;
        for (var round = 1; round <= MostRounds; round++)
        {
            var next = Linearisation.About(spec, values);
            change = Change(spec, values, next.Values);
            if (!double.IsFinite(change))
            {
                return new NotConverged(round, change);
            }

            values = next.Values;
            if (change < Still)
            {
                // Where constraints cannot all be kept, the values rest at the least miss; those that then miss are the ones that clash.
                string[] missing = [.. spec.Constraints.Where(c => Math.Abs(c.Miss(values)) > Missed * c.Size(values)).Select(c => c.Name)];
                return missing.Length > 0 ? new ConstraintsClash(missing) : Linearisation.About(spec, values).Outcome(round);
            }
        }

        return new NotConverged(MostRounds, change);
    }

    private static double Change(ReconcileSpec spec, double[] from, double[] to)
    {
        var most = 0.0;
        for (var i = 0; i < from.Length; i++)
        {
            var size = Math.Abs(to[i]) + (spec.Unknowns[i].StandardUncertainty ?? 0) + Math.Abs(spec.Unknowns[i].Value);
            var change = size > 0 ? Math.Abs(to[i] - from[i]) / size : Math.Abs(to[i] - from[i]);
            most = double.IsFinite(change) ? Math.Max(most, change) : double.NaN;
            if (double.IsNaN(most))
            {
                break;
            }
        }

        return most;
    }
}
