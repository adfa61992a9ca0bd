using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Mix.Relations;

/// <summary>What the flour of a run was read as: one value of all its readings.</summary>
/// <param name="Value">The mean, on the basis asked for.</param>
/// <param name="StandardUncertainty">One standard uncertainty of it.</param>
/// <param name="Count">Readings it is the mean of.</param>
public sealed record FlourRead(double Value, double StandardUncertainty, int Count)
{
    private const int LeastWithoutUncertainty = 3;

    /// <summary>
    /// The mean: weighted by 1/u² where every reading says its ±, u = 1/√Σ(1/u²); else the plain mean of three or more, u = s/√n. Null where neither can be.
    /// </summary>
    /// <param name="readings">Readings of one share of solids, each on a basis.</param>
    /// <param name="basis">The basis wanted.</param>
    public static FlourRead? Of(IReadOnlyList<Reading> readings, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(readings);
        (double Value, double Error)[] read = [.. readings.Select(r => (Factor: MixBlend.Factor(r.Basis) / MixBlend.Factor(basis), r)).Select(r => ((double)r.r.Value * r.Factor, (double)(r.r.StandardUncertainty ?? 0) * r.Factor))];
        if (read.Length > 0 && read.All(r => r.Error > 0))
        {
            var weights = read.Sum(r => 1 / (r.Error * r.Error));
            return new FlourRead(read.Sum(r => r.Value / (r.Error * r.Error)) / weights, 1 / Math.Sqrt(weights), read.Length);
        }

        if (read.Length < LeastWithoutUncertainty)
        {
            return null;
        }

        var mean = read.Average(r => r.Value);
        var scatter = Math.Sqrt(read.Sum(r => (r.Value - mean) * (r.Value - mean)) / (read.Length - 1));
        return scatter > 0 ? new FlourRead(mean, scatter / Math.Sqrt(read.Length), read.Length) : null;
    }
}
