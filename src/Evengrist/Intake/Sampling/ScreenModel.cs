namespace Evengrist.Intake.Sampling;

/// <summary>Several loads screened by one composite: c = Σ wᵢcᵢ, so a load above L can hide in any composite above L·wᵢ, and only c ≤ L·w_min proves all.</summary>
/// <remarks>
/// Before test error: a result at the proof limit is itself unsure. Content is at least 0, so tested loads leave a remainder that bounds the others.
/// Compared as c·M against L·mᵢ in decimals, so that 0.20 of five equal loads clears at L = 1.0. Model: docs/model/sampling.md.
/// </remarks>
public static class ScreenModel
{
    /// <summary>Judges a composite.</summary>
    /// <exception cref="ArgumentException">The spec cannot be.</exception>
    public static ScreenOutcome Judge(ScreenSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is [var fault, ..])
        {
            throw new ArgumentException(fault, nameof(spec));
        }

        var all = (decimal)spec.All.Grams;
        var proof = spec.LimitMilligrams * spec.Trucks.Min(t => t.Mass.Grams) / all;
        var chance = spec.Prior is { } prior ? CompositeChance.AtMost(prior, [.. spec.Trucks.Select(t => (double)(t.Mass.Grams / all))], (double)proof) : (double?)null;
        var tests = chance is { } clears ? 1 + spec.Trucks.Count * (1 - clears) : (double?)null;
        if (spec.CompositeMilligrams is not { } composite)
        {
            return new ScreenPlanned(proof, tests, chance);
        }

        // In mg/kg × g: what the tested loads do not account for.
        var left = Math.Max(0m, composite * all - spec.Trucks.Sum(t => (t.Found ?? 0m) * t.Mass.Grams));
        bool MayExceed(ScreenTruck truck) => truck.Found is null && left > spec.LimitMilligrams * truck.Mass.Grams;
        var over = spec.Trucks.Where(t => t.Found > spec.LimitMilligrams).ToArray();
        var open = spec.Trucks.Where(MayExceed).ToArray();
        return open.Length == 0 && over.Length == 0
            ? new ScreenClears(proof, tests, chance)
            : new ScreenOpen(proof, tests, chance, left / all,
                [.. open.Select(t => new SuspectTruck(t, left / t.Mass.Grams)).OrderByDescending(s => s.Truck.ChanceOver ?? 0).ThenByDescending(s => s.CouldHold).ThenBy(s => s.Truck.Code, StringComparer.Ordinal)],
                [.. spec.Trucks.Where(t => !open.Contains(t) && !over.Contains(t))], over);
    }
}
