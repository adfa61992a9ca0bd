namespace Evengrist.Laboratory.Conformity;

/// <summary>Whether a lot is inside its limits, how surely, and what follows. JCGM 106:2012 (= OIML G 1-106), formulas from memory. Model: docs/model/conformity.md.</summary>
public static class ConformityModel
{
    /// <summary>Most further results that testing again is advised for [ours].</summary>
    public const int MostMore = 20;

    /// <summary>Judges a property.</summary>
    /// <exception cref="ArgumentException">The case has faults; the message says which.</exception>
    public static ConformityOutcome Of(ConformitySpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(spec));
        }

        var (results, samples) = (spec.Results.Count, spec.Samples ?? spec.Results.Count);
        var missing = spec.Rule == ResultRule.MeanOf ? Math.Max(0, spec.Needed - results) : 0;
        var judged = spec.Rule == ResultRule.Single ? spec.Results.MinBy(r => Chance(spec, r, 1, 1)) : spec.Results.Average();
        var (n, k) = spec.Rule == ResultRule.Single ? (1, 1) : (results, samples);
        var uncertainty = spec.Spread.OfMean(n, k);
        var known = Known(spec, judged, uncertainty);
        var guard = spec.IsGuarded ? spec.Guard ?? GuardBand.ForBuyersRisk(uncertainty, spec.BuyersRisk) : 0;
        var acceptance = spec.Tolerance.Within(guard);
        var (accepted, chance) = (acceptance.Holds(judged), Chance(spec, judged, n, k));
        return new ConformityOutcome(
            judged, uncertainty, known, Inside(spec, new NormalBelief(judged, uncertainty)), chance, guard, acceptance, accepted,
            spec.Customer?.Rejects(known, spec.Spread.Lot, spec.Tolerance), spec.Lots is { } lots && uncertainty > 0 ? LotRisk.Of(lots, uncertainty, spec.Tolerance, acceptance) : null,
            missing, Advice(spec, missing, accepted && chance >= spec.Policy, judged));
    }

    private static ReleaseAdvice Advice(ConformitySpec spec, int missing, bool enough, double judged)
    {
        if (missing > 0)
        {
            return new ReleaseAdvice.Retest(missing);
        }

        if (enough)
        {
            return new ReleaseAdvice.Release();
        }

        // A further result never mends one that is judged by itself.
        var more = spec.Rule == ResultRule.Single ? 0 : Enumerable.Range(1, MostMore).FirstOrDefault(m => Reaches(spec, judged, m));
        return more > 0 ? new ReleaseAdvice.Retest(more) : new ReleaseAdvice.Hold();
    }

    private static bool Reaches(ConformitySpec spec, double judged, int more)
    {
        var (n, k) = (spec.Results.Count + more, (spec.Samples ?? spec.Results.Count) + more);
        var guard = spec.IsGuarded ? spec.Guard ?? GuardBand.ForBuyersRisk(spec.Spread.OfMean(n, k), spec.BuyersRisk) : 0;
        return Chance(spec, judged, n, k) >= spec.Policy && spec.Tolerance.Within(guard).Holds(judged);
    }

    private static double Chance(ConformitySpec spec, double result, int n, int k) => Inside(spec, Known(spec, result, spec.Spread.OfMean(n, k)));

    private static NormalBelief Known(ConformitySpec spec, double result, double uncertainty) => spec.Lots?.After(result, uncertainty) ?? new NormalBelief(result, uncertainty);

    private static double Inside(ConformitySpec spec, NormalBelief lot) => (spec.Rule == ResultRule.LotRange ? lot.Plus(0, spec.Spread.Lot) : lot).Inside(spec.Tolerance);
}
