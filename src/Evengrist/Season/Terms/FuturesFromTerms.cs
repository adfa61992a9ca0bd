using Evengrist.Ledger;
using Evengrist.Season.Futures;

namespace Evengrist.Season.Terms;

/// <summary>What a promise is reckoned from, out of the terms that the plan was made by.</summary>
/// <remarks>Model: docs/model/season-promise.md.</remarks>
public static class FuturesFromTerms
{
    /// <summary>The spreads of the terms, as far as they bear on the plan: what has come already and properties without a limit are left out.</summary>
    /// <param name="plan">The plan, with the duals.</param>
    /// <param name="terms">The terms it was made by.</param>
    /// <param name="futures">How many futures, 2 or more.</param>
    /// <param name="seed">The same seed gives the same futures.</param>
    public static FuturesSpec Of(SeasonPlan plan, SeasonTerms terms, int futures, long seed)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(terms);
        var limited = plan.Spec.Flours.SelectMany(f => f.Limits).Select(l => l.What).ToHashSet();
        var coming = plan.Spec.Wheats.Where(w => w.Deliveries.Count > 0).Select(w => w.Code).ToHashSet(StringComparer.Ordinal);
        ArrivalTerms[] arrivals = [.. terms.Arrivals.Where(a => coming.Contains(a.Code))];
        return new FuturesSpec(plan, futures, seed)
        {
            Districts = [.. arrivals.GroupBy(a => a.Place, StringComparer.Ordinal).Select(g => District(g.Key, [.. g], limited))],
            Trucks = [.. arrivals.Where(a => a.TruckTonnes > 0).Select(a => new TruckSpread(a.Code, a.TruckTonnes) { Quality = [.. a.Quality.Where(q => limited.Contains(q.What)).Select(q => new PropertySpread(q.What, q.TruckSpread))] })],
            Demands = [.. terms.Flours.Where(f => plan.Spec.Flours.Any(p => p.Code == f.Code)).Select(f => new DemandSpread(f.Code, f.YearShare, f.WeekShare) { Hold = f.Hold })],
            Instruments = [.. terms.Instruments.Where(i => limited.Contains(i.What))],
            Tolerances = [.. terms.Tolerances.Where(t => limited.Contains(t.What))],
            Stated = terms.Stated,
        };
    }

    // Wheats of one district share its summer: what each is said to be off by is averaged by what is to come of it.
    private static DistrictSpread District(string name, ArrivalTerms[] arrivals, HashSet<Property> limited)
    {
        var tonnes = arrivals.Sum(a => a.Tonnes);
        double Mean(Func<ArrivalTerms, double> of) => tonnes > 0 ? arrivals.Sum(a => a.Tonnes * of(a)) / tonnes : arrivals.Average(of);
        return new DistrictSpread(name, tonnes > 0 ? arrivals.Sum(a => a.TonnesSpread) / tonnes : 0)
        {
            Quality = [.. arrivals.SelectMany(a => a.Quality).Select(q => q.What).Distinct().Where(limited.Contains).Order()
                .Select(what => new PropertySpread(what, Mean(a => a.Quality.FirstOrDefault(q => q.What == what)?.YearSpread ?? 0)))],
        };
    }
}
