using Evengrist.Season;

namespace Evengrist.Bench.Season.Backtest;

/// <summary>What a year comes to, money, and what of it went wrong.</summary>
internal sealed record YearCost(double Harvest = 0, double Bought = 0, double Storage = 0, double Misses = 0, double Unmet = 0, double Left = 0)
{
    /// <summary>Flour not made, t.</summary>
    public double UnmetTonnes { get; init; }

    /// <summary>Wheat mix milled outside a limit, t.</summary>
    public double OffTonnes { get; init; }

    public double Total => Harvest + Bought + Storage + Misses + Unmet - Left;

    /// <summary>With what one period of a plan comes to.</summary>
    public YearCost And(SeasonPlan plan, int period)
    {
        var unmet = plan.Flours.Where(f => f.Period == period).Sum(f => f.UnmetTonnes);
        var misses = plan.Misses.Where(m => m.Period == period).ToArray();
        return this with
        {
            Bought = Bought + plan.Purchases.Where(p => p.Period == period).Sum(p => p.Tonnes * plan.Spec.Offers.First(o => o.Code == p.Offer).Tiers[p.Tier].PricePerTonne),
            Storage = Storage + (SimulatedYear.Storage * plan.Stocks.Where(s => s.Period == period).Sum(s => s.Tonnes)),
            Misses = Misses + misses.Sum(m => m.Cost),
            Unmet = Unmet + (unmet * SimulatedYear.UnmetPrice),
            UnmetTonnes = UnmetTonnes + unmet,
            OffTonnes = OffTonnes + misses.GroupBy(m => m.Flour).Sum(g => g.Max(m => m.Tonnes)),
        };
    }
}
