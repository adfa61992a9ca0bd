using Evengrist.Season;

namespace Evengrist.Bench.Season.Backtest;

/// <summary>The bins of the mill: what lies in each is mixed through and known.</summary>
internal sealed class Store
{
    public const int Count = 20;
    private readonly Dictionary<string, SeasonWheat> bought = [];

    public Store(SimulatedYear year)
    {
        Capacity = year.Need * 1.1 / Count;
        Bins = [.. Enumerable.Range(1, Count).Select(b => SimulatedYear.Wheat($"B{b:00}", 0, 12.5, 340) with { Home = $"B{b:00}" })];
    }

    public double Capacity { get; }

    public SeasonWheat[] Bins { get; }

    public bool HasRoom(int bin, double tonnes) => Bins[bin].OpeningTonnes + tonnes <= Capacity;

    public void Lay(int bin, SeasonWheat truck) => Bins[bin] = TruckMix.Of(Bins[bin], truck);

    /// <summary>Everything that lies there, worth at the end what such wheat is paid.</summary>
    public IReadOnlyList<SeasonWheat> Wheats => [.. Bins.Concat(bought.Values).Where(w => w.OpeningTonnes > 1e-6).Select(w => w with { Home = "", EndValuePerTonne = SimulatedYear.Price(w) })];

    /// <summary>Takes out what a plan mills in its first period and in what it buys.</summary>
    public void Mill(SeasonPlan plan)
    {
        var used = plan.Uses.Where(u => u.Period == 0).GroupBy(u => u.Wheat).ToDictionary(g => g.Key, g => g.Sum(u => u.Tonnes));
        for (var b = 0; b < Count; b++)
        {
            Bins[b] = Less(Bins[b], used.GetValueOrDefault(Bins[b].Code));
        }

        foreach (var code in bought.Keys.ToArray())
        {
            bought[code] = Less(bought[code], used.GetValueOrDefault(code));
        }

        foreach (var offer in plan.Spec.Offers)
        {
            var kept = offer.Code + " kept";
            var lies = bought.GetValueOrDefault(kept, offer.Wheat with { Code = kept });
            bought[kept] = lies with { OpeningTonnes = lies.OpeningTonnes + plan.Purchases.Where(p => p.Period == 0 && p.Offer == offer.Code).Sum(p => p.Tonnes) - used.GetValueOrDefault(offer.Code) };
        }
    }

    private static SeasonWheat Less(SeasonWheat wheat, double tonnes) => wheat with { OpeningTonnes = Math.Max(0, wheat.OpeningTonnes - tonnes) };
}
