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
    /// <param name="progress">Told how far it is.</param>
    /// <param name="stop">Ends it; the numbers of bands reckoned by then stand.</param>
    /// <returns>The rows; or a bad input, an infeasible year or a failure as the planner names it.</returns>
    public static BandsOutcome Reckon(BandSpec spec, SeasonSpec season, double endValuePerTonne, IProgress<SeasonProgress>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(season);
        if (BandFaults.Of(spec, season) is { Count: > 0 } faults)
        {
            return new BandsNotPlanned(new SeasonBadInput(faults));
        }

        var rows = new List<BandRow>();
        var design = BandModel.Design(spec with { Bins = 1, FallingNumberEdges = [] }, (_, _) => 0)[0];
        Tell(progress, "The year with all of it in one band");
        var first = Solve(season, spec, design, endValuePerTonne, stop);
        if (first is not SeasonPlanned { Plan: var plan })
        {
            return new BandsNotPlanned(first);
        }

        rows.Add(Row(design, plan, plan.Costs.Total, spec));
        for (var bins = Math.Max(2, spec.FallingNumberEdges.Count + 1); bins <= spec.Bins && !stop.IsCancellationRequested; bins++)
        {
            // Worth is exact for a small change only, and parting a harvest is none: it is priced anew with the year it leads to, and the cheapest year is kept. Even
            // bands and the last design with one band parted are tried too: the one may happen to be better, the other cannot be worse than the last.
            BandRow? best = null;
            var last = rows[^1].Design;
            double Try(BandDesign? tried, bool mayStand = true)
            {
                if (tried is not { Bands.Count: > 0 } || Solve(season, spec, tried, endValuePerTonne, stop) is not SeasonPlanned { Plan: var solved })
                {
                    return double.NaN;
                }

                if (mayStand && (best is null || solved.Costs.Total < best.Cost - 1e-6))
                {
                    (best, plan) = (Row(tried, solved, double.NaN, spec), solved);
                }

                return solved.Costs.Total;
            }

            Tell(progress, FormattableString.Invariant($"{bins} bands of at most {spec.Bins}: even tonnes"));
            var price = Price(new SeasonWorth(plan), spec, endValuePerTonne);
            var even = Try(BandModel.Even(spec, bins, price), mayStand: spec.FallingNumberEdges.Count == 0);
            Tell(progress, FormattableString.Invariant($"{bins} bands of at most {spec.Bins}: one band parted"));
            if (last.Bands.Count == bins - 1)
            {
                Try(BandModel.Split(spec, last, price));
            }

            for (var pass = 0; pass < 3 && !stop.IsCancellationRequested; pass++)
            {
                Tell(progress, FormattableString.Invariant($"{bins} bands of at most {spec.Bins}: edges by worth, time {pass + 1}"));
                var before = best;
                Try(BandModel.Design(spec with { Bins = bins }, Price(new SeasonWorth(plan), spec, endValuePerTonne)) is [.., var next] ? next : null);
                if (best == before)
                {
                    break;
                }
            }

            if (best is null || stop.IsCancellationRequested)
            {
                break;
            }

            rows.Add(best with { EvenCost = even });
        }

        Tell(progress, "What a commingled bin costs");
        return new BandsPlanned([.. rows.Select((r, i) => i == rows.Count - 1 ? r with { Commingled = Commingled(season, spec, r, endValuePerTonne, stop) } : r)], season.Currency);
    }

    private static void Tell(IProgress<SeasonProgress>? progress, string doing) => progress?.Report(new SeasonProgress(doing, double.NaN, double.NegativeInfinity, TimeSpan.Zero));

    private static BandRow Row(BandDesign design, SeasonPlan plan, double even, BandSpec spec)
    {
        var stocks = plan.Stocks.ToLookup(s => s.Wheat, s => s.Tonnes);
        return new BandRow(design, plan.Costs.Total, even, [.. design.Bands.Select((b, i) => Math.Max(spec.Arriving.Count == 0 ? b.Tonnes : 0, stocks[Code(spec, i)].DefaultIfEmpty(0).Max()))], null);
    }

    private static string Code(BandSpec spec, int band) => FormattableString.Invariant($"{spec.WheatClass} band {band + 1}");

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

    // Bins are taken as mixed through: what layers shift between two plans is more than an edge moved a little.
    private static SeasonOutcome Solve(SeasonSpec season, BandSpec spec, BandDesign design, double endValue, CancellationToken stop) => SeasonPlanner.Linear(
        season with { Wheats = [.. season.Wheats, .. design.Bands.Select((b, i) => Wheat(spec, b, i, endValue))] }, new SeasonOptions { LayerPasses = 0 }, stop);

    private static SeasonWheat Wheat(BandSpec spec, HarvestBand band, int number, double endValue) =>
        new(Code(spec, number), spec.WheatClass, spec.Arriving.Count == 0 ? band.Tonnes : 0, band.MoisturePercent, band.Quality)
        {
            EndValuePerTonne = endValue,
            Deliveries = [.. spec.Arriving.Select((share, t) => new SeasonDelivery(t, share * band.Tonnes)).Where(d => d.Tonnes > 0)],
        };
}
