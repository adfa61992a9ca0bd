using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Season;
using Evengrist.Season.Lots;

namespace Evengrist.Planning.Season.Lots;

/// <summary>What an offered lot is worth: the first tonne from the duals, the rest by the year solved again with more and more of it. Model: docs/model/offered-lot.md.</summary>
public static class LotRun
{
    private const int Steps = 8;
    private const double FirstShare = 0.01, Nothing = 0.05;

    /// <summary>Reckons.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="season">The year without it.</param>
    /// <param name="progress">Told how far it is.</param>
    /// <param name="stop">Ends it; what then is not reckoned yet is missing, and that is a failure.</param>
    /// <returns>The worth; or a bad input, an infeasible year or a failure as the planner names it.</returns>
    public static LotOutcome Reckon(LotSpec lot, SeasonSpec season, IProgress<SeasonProgress>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(lot);
        ArgumentNullException.ThrowIfNull(season);
        if (season.Faults() is { Count: > 0 } bad)
        {
            return new LotNotWorthed(new SeasonBadInput(bad));
        }

        if (LotFaults.Of(lot, season) is { Count: > 0 } faults)
        {
            return new LotNotWorthed(new SeasonBadInput(faults));
        }

        // The lot is a wheat of its own from the start, of which nothing comes at first: then only a number changes from one solve to the next. Bins are taken as
        // mixed through, before and after alike: what layers shift between two plans is more than a small lot is worth.
        var code = Unused(lot.Wheat.Code, season);
        using var open = new OpenSeason(new SeasonOptions { LayerPasses = 0 });
        SeasonOutcome Solve(double tonnes) => open.Solve(season with { Wheats = [.. season.Wheats, Lot(lot, code, tonnes)] }, stop);

        Tell(progress, "The year without the lot");
        if (Solve(0) is not SeasonPlanned without)
        {
            return new LotNotWorthed(open.Last!);
        }

        var curve = new List<LotPoint> { Point(without.Plan, without.Plan, code, lot.Period, 0) };
        LotPoint? verified = null;
        SeasonPlan? with = null;
        foreach (var share in (double[])[FirstShare, .. Enumerable.Range(1, Steps).Select(i => (double)i / Steps)])
        {
            Tell(progress, string.Create(CultureInfo.InvariantCulture, $"The year with {share * lot.Tonnes:#,0.#} t of the lot"));
            if (Solve(share * lot.Tonnes) is not SeasonPlanned solved)
            {
                return new LotNotWorthed(open.Last!);
            }

            var point = Point(without.Plan, solved.Plan, code, lot.Period, share * lot.Tonnes);
            verified ??= point;
            with = solved.Plan;
            if (share >= 1.0 / Steps)
            {
                curve.Add(point);
            }
        }

        LotAtPrice? atPrice = null;
        if (lot.AskedPerTonne is { } asked)
        {
            // How much of it pays is the plan's own choice: the lot as an offer of one period.
            Tell(progress, "How much of it pays at the price asked");
            var offer = new SeasonOffer(Lot(lot, code, 0) with { Deliveries = [] }, [new OfferTier(lot.Tonnes, asked)], lot.Period, lot.Period, lot.Tonnes);
            if (SeasonPlanner.Linear(season with { Offers = [.. season.Offers, offer] }, new SeasonOptions { LayerPasses = 0 }, stop) is var outcome && outcome is not SeasonPlanned)
            {
                return new LotNotWorthed(outcome);
            }

            var chosen = ((SeasonPlanned)outcome).Plan;
            atPrice = new LotAtPrice(chosen.Purchases.Where(p => p.Offer == code).Sum(p => p.Tonnes), Math.Max(0, without.Plan.Costs.Total - chosen.Costs.Total), curve[^1].Worth - (asked * lot.Tonnes));
        }

        var worth = new SeasonWorth(without.Plan);
        return new LotWorth(
            lot, season.Currency, worth.OfTonne(lot.Wheat, lot.Period), verified!, Spread(worth, lot), curve, Uses(with!, code), Left(with!, code),
            [.. Replaced(without.Plan, with!, code)], atPrice);
    }

    private static void Tell(IProgress<SeasonProgress>? progress, string doing) => progress?.Report(new SeasonProgress(doing, double.NaN, double.NegativeInfinity, TimeSpan.Zero));

    private static string Unused(string code, SeasonSpec season)
    {
        var wanted = string.IsNullOrWhiteSpace(code) ? "the lot" : code;
        while (season.AllWheats.Any(w => w.Code == wanted))
        {
            wanted += " offered";
        }

        return wanted;
    }

    private static SeasonWheat Lot(LotSpec lot, string code, double tonnes) => lot.Wheat with { Code = code, OpeningTonnes = 0, Layers = [], Home = "", Deliveries = [new SeasonDelivery(lot.Period, tonnes)] };

    private static LotPoint Point(SeasonPlan without, SeasonPlan with, string code, int period, double tonnes) =>
        new(tonnes, without.Costs.Total - with.Costs.Total, new SeasonWorth(with).Of(code, period));

    private static (double, double)? Spread(SeasonWorth worth, LotSpec lot)
    {
        if (!lot.Wheat.Quality.TryGet(Property.Protein, out var protein) || protein.Spread <= 0)
        {
            return null;
        }

        double At(double value) => worth.OfTonne(lot.Wheat with { Quality = lot.Wheat.Quality.With(Property.Protein, protein with { Value = value }) }, lot.Period).PerTonne;
        return (At(Math.Max(0, protein.Value - protein.Spread)), At(protein.Value + protein.Spread));
    }

    private static IReadOnlyList<LotUse> Uses(SeasonPlan plan, string code) =>
        [.. plan.Uses.Where(u => u.Wheat == code).GroupBy(u => u.Flour).Select(g => new LotUse(g.Key, g.Sum(u => u.Tonnes), g.Min(u => u.Period), g.Max(u => u.Period))).Where(u => u.Tonnes >= Nothing).OrderByDescending(u => u.Tonnes)];

    private static double Left(SeasonPlan plan, string wheat) => plan.Stocks.Where(s => s.Wheat == wheat && s.Period == plan.Spec.Periods.Count - 1).Sum(s => s.Tonnes);

    private static IEnumerable<LotReplaced> Replaced(SeasonPlan without, SeasonPlan with, string code)
    {
        var changes = PlanChange.Of(without, with).Wheats.ToDictionary(w => w.Wheat);
        return with.Spec.AllWheats.Where(w => w.Code != code)
            .Select(w => new LotReplaced(w.Code, changes.GetValueOrDefault(w.Code)?.DrawnTonnes ?? 0, changes.GetValueOrDefault(w.Code)?.BoughtTonnes ?? 0, Left(with, w.Code) - Left(without, w.Code)))
            .Where(r => Math.Max(Math.Abs(r.DrawnTonnes), Math.Max(Math.Abs(r.BoughtTonnes), Math.Abs(r.LeftTonnes))) >= Nothing)
            .OrderByDescending(r => Math.Abs(r.DrawnTonnes) + Math.Abs(r.BoughtTonnes) + Math.Abs(r.LeftTonnes));
    }
}
