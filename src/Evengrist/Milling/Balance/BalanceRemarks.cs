using Evengrist.Numerics.Reconciling;

namespace Evengrist.Milling.Balance;

/// <summary>What must be said with a balance.</summary>
internal static class BalanceRemarks
{
    private const int MostNamed = 6;

    // A rise below this share of the wheat is not worth a word.
    private const double Noticed = 0.002;

    public static IEnumerable<string> Of(BalanceSpec spec, GrossErrorOutcome check)
    {
        if (spec.UnexplainedTonnes < 0)
        {
            yield return "More came out weighed than went in: look for a weight taken twice or over another time.";
        }

        if (check.First is NothingToAdjust)
        {
            yield return "Nothing checks the weighers against one another, so evaporation and what was not weighed cannot be told apart. Read the moisture of the wheat and of every product, or weigh and read before first break.";
        }

        if (check.First is Reconciled { Freedom: 1 })
        {
            yield return $"{(check is NoGrossError ? "A single check stands over all measurements, and they keep it" : "The measurements do not go together")}: a single check tells that something is off, not which. A weight or a moisture before first break tells cleaning from milling.";
        }

        if (check.First is ConstraintsClash clash)
        {
            yield return $"What is said to be known exactly does not go together ({string.Join(", ", clash.Names)}): give every weigher an uncertainty.";
        }

        if (check.First is NotConverged)
        {
            yield return "The reconciliation did not come to rest: look for a weight or moisture far from the others.";
        }

        if (check is GrossErrorNotNamed)
        {
            yield return "The measurements do not go together and none stands out: an uncertainty is stated too small, or several errors hide one another.";
        }

        foreach (var suspect in check is GrossErrorsNamed { Before.Freedom: > 1 } named ? named.Suspects : [])
        {
            yield return suspect.Alike.Count == 0
                ? $"“{suspect.Name}” does not fit the others: look at it first."
                : $"Something does not fit, and nothing tells whether it is “{suspect.Name}” or {(suspect.Alike.Count > MostNamed ? $"any of {suspect.Alike.Count} others" : string.Join(", ", suspect.Alike.Select(a => $"“{a}”")))}.";
        }

        if (Math.Abs(spec.TemperRise.Tonnes) > Noticed * spec.Dirty.Tonnes)
        {
            yield return "The temper bins did not hold the same at both ends: flour is then of other wheat than was drawn. A longer span is surer.";
        }
    }
}
