namespace Evengrist.Numerics.Reconciling;

/// <summary>Names gross errors: while all measurements together do not fit, the one that stands out most is set aside and the rest are reconciled anew (serial elimination). Model: docs/model/reconciliation.md.</summary>
public static class GrossErrorModel
{
    private const double SameDirection = 1 - 1e-6;

    /// <summary>Looks.</summary>
    /// <param name="spec">What was measured and what holds.</param>
    /// <param name="level">Chance of a false alarm of each test, above 0 and below 1.</param>
    /// <param name="isPossible">Whether a quantity, by name, can have a value at all; a measurement is not named where the others would give it a value it cannot have. Null: any can be.</param>
    public static GrossErrorOutcome Of(ReconcileSpec spec, double level = 0.05, Func<string, double, bool>? isPossible = null)
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
            if (Worst(spec, now, level, isPossible ?? ((_, _) => true)) is not { } found)
            {
                return new GrossErrorNotNamed(first, suspects);
            }

            (spec, var suspect, var rest) = found;
            suspects.Add(suspect);
            if (rest is not Reconciled again)
            {
                return rest is NothingToAdjust left ? new GrossErrorsNamed(first, suspects, left) : new GrossErrorNotNamed(first, suspects);
            }

            now = again;
        }

        return suspects.Count == 0 ? new NoGrossError(first) : new GrossErrorsNamed(first, suspects, now);
    }

    // The measurement that stands out most and without which its quantity has a value it can have; null where none does.
    private static (ReconcileSpec Without, Suspect Suspect, ReconcileOutcome Others)? Worst(ReconcileSpec spec, Reconciled now, double level, Func<string, double, bool> isPossible)
    {
        var bound = now.CriticalZ(level);
        foreach (var worst in now.Values.Where(v => v.Z is { } z && Math.Abs(z) > bound).OrderByDescending(v => Math.Abs(v.Z!.Value)).ThenBy(v => v.Unknown.Name, StringComparer.Ordinal))
        {
            // Of those that cannot be told apart, first the one whose bias would be the fewest of its own uncertainties.
            Adjusted[] like = [worst, .. Alike(now, worst)];
            foreach (var likely in like.OrderByDescending(now.SeenOf).ThenBy(a => a.Unknown.Name, StringComparer.Ordinal))
            {
                var without = spec.Without(likely.Unknown.Name, likely.Value);
                var rest = ReconcileModel.Of(without);
                if ((rest as Balanced)?[likely.Unknown.Name] is not { StandardUncertainty: not null, Value: var value } || isPossible(likely.Unknown.Name, value))
                {
                    return (without, Seen(likely, [.. like.Where(a => a != likely).Select(a => a.Unknown.Name)], rest), rest);
                }
            }
        }

        return null;
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
