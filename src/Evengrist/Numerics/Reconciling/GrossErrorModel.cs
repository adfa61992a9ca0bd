namespace Evengrist.Numerics.Reconciling;

/// <summary>Names gross errors: while all measurements together do not fit, the one that stands out most is set aside and the rest are reconciled anew (serial elimination). Model: docs/model/reconciliation.md.</summary>
public static class GrossErrorModel
{
    private const double SameDirection = 1 - 1e-6;

    /// <summary>Looks.</summary>
    /// <param name="spec">What was measured and what holds.</param>
    /// <param name="level">Chance of a false alarm of each test, above 0 and below 1.</param>
    public static GrossErrorOutcome Of(ReconcileSpec spec, double level = 0.05)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (!(level is > 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(level), level, "The chance of a false alarm lies between 0 and 1.");
        }

        if (ReconcileModel.Of(spec) is var outcome && outcome is not Reconciled)
        {
            return new GrossErrorNotSought(outcome);
        }

        var first = (Reconciled)outcome;
        var (now, suspects) = (first, new List<Suspect>());
        while (now.Fails(level))
        {
            var worst = now.Values.Where(v => v.Z is not null).OrderByDescending(v => Math.Abs(v.Z!.Value)).ThenBy(v => v.Unknown.Name, StringComparer.Ordinal).First();
            if (Math.Abs(worst.Z!.Value) <= now.CriticalZ(level))
            {
                return new GrossErrorNotNamed(first, suspects);
            }

            // Of those that cannot be told apart, the one whose bias would be the fewest of its own uncertainties.
            Adjusted[] like = [worst, .. Alike(now, worst)];
            worst = like.OrderByDescending(a => now.SeenOf(a)).ThenBy(a => a.Unknown.Name, StringComparer.Ordinal).First();
            spec = spec.Without(worst.Unknown.Name, worst.Value);
            var rest = ReconcileModel.Of(spec);
            suspects.Add(Seen(worst, [.. like.Where(a => a != worst).Select(a => a.Unknown.Name)], rest));
            if (rest is not Reconciled again)
            {
                return rest is NothingToAdjust left ? new GrossErrorsNamed(first, suspects, left) : new GrossErrorNotNamed(first, suspects);
            }

            now = again;
        }

        return suspects.Count == 0 ? new NoGrossError(first) : new GrossErrorsNamed(first, suspects, now);
    }

    private static Suspect Seen(Adjusted worst, string[] alike, ReconcileOutcome without)
    {
        var found = (without as Balanced)?[worst.Unknown.Name];
        return new Suspect(worst.Unknown.Name, worst.Z!.Value, alike, found?.StandardUncertainty is null ? null : worst.Unknown.Value - found.Value,
            found?.StandardUncertainty is { } u ? Math.Sqrt((u * u) + Math.Pow(worst.Unknown.StandardUncertainty!.Value, 2)) : null);
    }

    // Two measurements cannot be told apart where the constraints see their errors in one and the same direction.
    private static Adjusted[] Alike(Reconciled with, Adjusted worst) =>
        [.. with.Values.Where(v => v != worst && v.Z is not null && Math.Abs(with.SharedOf(worst, v)) >= SameDirection * Math.Sqrt(with.SeenOf(worst) * with.SeenOf(v)))];
}
