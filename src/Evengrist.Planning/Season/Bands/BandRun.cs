using Evengrist.Season;
using Evengrist.Season.Bands;

namespace Evengrist.Planning.Season.Bands;

/// <summary>What bands cost the year, by their number: edges by what wheat is worth, then the year solved with the bands as wheats. Model: docs/model/season-bands.md.</summary>
public static class BandRun
{
    /// <summary>Reckons.</summary>
    /// <param name="spec">The harvest.</param>
    /// <param name="season">The year without that harvest.</param>
    /// <param name="endValuePerTonne">What a t of the harvest left at the end is worth, money per t.</param>
    /// <param name="stop">Ends it.</param>
    /// <returns>The rows; or a bad input, an infeasible year or a failure as the planner names it.</returns>
    public static BandsOutcome Reckon(BandSpec spec, SeasonSpec season, double endValuePerTonne, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(season);
        if (BandFaults.Of(spec) is { Count: > 0 } faults)
        {
            return new BandsNotPlanned(new SeasonBadInput(faults));
        }

        var rows = new List<BandRow>();
        var design = BandModel.Design(spec with { Bins = 1, FallingNumberEdges = [] }, (_, _) => 0)[0];
        if (Solve(season, spec, design, endValuePerTonne, stop) is not SeasonPlanned { Plan: var plan })
        {
            return new BandsNotPlanned(Solve(season, spec, design, endValuePerTonne, stop));
        }

        rows.Add(new BandRow(design, plan.Costs.Total, plan.Costs.Total, null));
        for (var bins = Math.Max(2, spec.FallingNumberEdges.Count + 1); bins <= spec.Bins && !stop.IsCancellationRequested; bins++)
        {
            // Worth is exact for a small change only, and parting a harvest is none: it is priced anew with the year it leads to, and the cheaper year is kept.
            BandRow? best = null;
            for (var pass = 0; pass < 3; pass++)
            {
                var price = Price(new SeasonWorth(plan), spec, endValuePerTonne);
                if (BandModel.Design(spec with { Bins = bins }, price) is not [.., var next] || next.Bands.Count == 0 || Solve(season, spec, next, endValuePerTonne, stop) is not SeasonPlanned { Plan: var solved })
                {
                    break;
                }

                var even = best?.EvenCost ?? (Solve(season, spec, BandModel.Even(spec, bins, price), endValuePerTonne, stop) is SeasonPlanned { Plan: var habit } ? habit.Costs.Total : double.NaN);
                if (best is null || solved.Costs.Total < best.Cost - 1e-6)
                {
                    (best, plan) = (new BandRow(next, solved.Costs.Total, even, null), solved);
                }
                else
                {
                    break;
                }
            }

            if (best is null)
            {
                break;
            }

            rows.Add(best);
        }

        return new BandsPlanned([.. rows.Select((r, i) => i == rows.Count - 1 ? r with { Commingled = Commingled(season, spec, r, endValuePerTonne, stop) } : r)], season.Currency);
    }

    // The dearest slip: two bands that lie side by side fall into one bin.
    private static CommingledBin? Commingled(SeasonSpec season, BandSpec spec, BandRow row, double endValue, CancellationToken stop)
    {
        CommingledBin? dearest = null;
        for (var i = 0; i + 1 < row.Design.Bands.Count && !stop.IsCancellationRequested; i++)
        {
            var (a, b) = (row.Design.Bands[i], row.Design.Bands[i + 1]);
            HarvestBand[] merged = [.. row.Design.Bands.Where(x => x != a && x != b), BandMerge.Of(a, b)];
            if (Solve(season, spec, new BandDesign(merged, 0), endValue, stop) is SeasonPlanned { Plan: var plan } && (dearest is null || plan.Costs.Total - row.Cost > dearest.Cost))
            {
                dearest = new CommingledBin(a, b, plan.Costs.Total - row.Cost);
            }
        }

        return dearest;
    }

    private static Func<Evengrist.Season.SeasonQuality, double, double> Price(SeasonWorth worth, BandSpec spec, double endValue) =>
        (quality, moisture) => worth.OfTonne(new SeasonWheat("band", spec.WheatClass, 1, moisture, quality) { EndValuePerTonne = endValue }).PerTonne;

    private static SeasonOutcome Solve(SeasonSpec season, BandSpec spec, BandDesign design, double endValue, CancellationToken stop) => SeasonPlanner.Linear(
        season with
        {
            Wheats = [.. season.Wheats, .. design.Bands.Select((b, i) => new SeasonWheat($"{spec.WheatClass} band {i + 1}", spec.WheatClass, b.Tonnes, b.MoisturePercent, b.Quality) { EndValuePerTonne = endValue })],
        },
        stop: stop);
}
