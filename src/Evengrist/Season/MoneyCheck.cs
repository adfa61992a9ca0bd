using static Evengrist.Season.SeasonCheck;

namespace Evengrist.Season;

/// <summary>Reckons what a plan costs anew, from its rows.</summary>
internal static class MoneyCheck
{
    public static IEnumerable<string> Of(PlanTally tally)
    {
        var (spec, plan, costs) = (tally.Spec, tally.Plan, tally.Plan.Costs);
        var offers = spec.Offers.ToDictionary(o => o.Code);
        var flours = spec.Flours.ToDictionary(f => f.Code);
        double Falls(int t) => spec.Periods.Count > 1 ? 1 - (SeasonPrices.Fall * t / (spec.Periods.Count - 1)) : 1;
        double WeeksOf(int t) => spec.Periods[t].Days / 7.0;
        var bought = plan.Purchases.Sum(p => p.Tonnes * offers[p.Offer].Tiers[p.Tier].PricePerTonne);
        var stored = spec.StoragePerTonneWeek * (plan.Stocks.Sum(s => s.Tonnes * WeeksOf(s.Period)) + plan.Flours.Sum(f => f.StockTonnes * WeeksOf(f.Period)));
        var unmet = plan.Flours.Sum(f => f.UnmetTonnes * flours[f.Flour].UnmetPricePerTonne * Falls(f.Period));
        var byProducts = plan.Uses.Sum(u => u.Tonnes * (1 - tally.YieldOf(u.Wheat, flours[u.Flour])) * flours[u.Flour].ByProductPerTonne);
        var end = plan.Stocks.Where(s => s.Period == spec.Periods.Count - 1).Sum(s => s.Tonnes * tally.Wheat(s.Wheat).EndValuePerTonne);
        (string What, double Stated, double Reckoned)[] sums =
        [
            ("purchases", costs.Purchases, bought), ("storage", costs.Storage, stored), ("unmet demand", costs.Unmet, unmet), ("by-products", costs.ByProducts, byProducts),
            ("end value", costs.EndValue, end), ("misses", costs.Misses, plan.Misses.Sum(m => m.Cost)), ("relief", costs.Relief, plan.Reliefs.Sum(r => r.Cost)),
        ];
        foreach (var (what, stated, reckoned) in sums.Where(s => !Agree(s.Stated, s.Reckoned)))
        {
            yield return $"{what}: {stated:0.######} stated, {reckoned:0.######} reckoned.";
        }

        if (!NotAbove(plan.Bound, costs.Total, costs.Purchases + costs.Storage + costs.Misses + costs.Unmet + Math.Abs(costs.EndValue) + Math.Abs(costs.ByProducts)))
        {
            yield return $"the cost {costs.Total:0.######} lies below the bound {plan.Bound:0.######}.";
        }
    }
}
