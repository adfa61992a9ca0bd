using Evengrist.Ledger;
using Evengrist.Planning.Season;
using Evengrist.Season;

namespace Evengrist.Planning.Tests.Season;

/// <summary>What has to hold of any season, on small made ones.</summary>
public sealed class SeasonLawTests
{
    public static readonly TheoryData<int> Seeds = [.. MadeSeason.Seeds];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Linear_AnySeason_PassesOurOwnCheckAndItsBoundIsItsCost(int seed)
    {
        var plan = Years.Linear(Made(seed));
        Assert.Empty(SeasonCheck.Of(plan));
        Assert.Equal(SeasonExit.Optimal, plan.Exit);
        Assert.Equal(plan.Bound, plan.Costs.Total, 1e-6 * Math.Max(1, Math.Abs(plan.Bound)));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Linear_MoreStockThatIsNotKept_NeverCostsMore(int seed)
    {
        var spec = Made(seed);
        var less = Years.Linear(spec).Costs;
        // What lies there costs storage whether it is used or not; without that cost, more is never worse.
        var free = spec with { StoragePerTonneWeek = 0 };
        var (before, after) = (Years.Linear(free).Costs.Total, Years.Linear(free with { Wheats = [.. free.Wheats.Select((w, i) => i == 1 ? w with { OpeningTonnes = w.OpeningTonnes + 50 } : w)] }).Costs.Total);
        Assert.True(after <= before + 1e-4, $"{before} to {after}");
        Assert.True(less.Storage > 0);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Linear_TighterLimit_NeverCostsLess(int seed)
    {
        var spec = Made(seed);
        var tighter = spec with { Flours = [.. spec.Flours.Select(f => f with { Limits = [.. f.Limits.Select(l => l.What == Property.Protein ? l with { Least = l.Least + 0.2 } : l)] })] };
        Assert.True(Years.Linear(tighter).Costs.Total >= Years.Linear(spec).Costs.Total - 1e-4);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Linear_AllTonnesTwice_CostsTwice(int seed)
    {
        var spec = Made(seed);
        var twice = spec with
        {
            Units = [.. spec.Units.Select(u => u with { TonnesPerHour = 2 * u.TonnesPerHour })],
            Homes = [.. spec.Homes.Select(h => h with { CapacityTonnes = 2 * h.CapacityTonnes })],
            Wheats = [.. spec.Wheats.Select(w => w with { OpeningTonnes = 2 * w.OpeningTonnes, Deliveries = [.. w.Deliveries.Select(d => d with { Tonnes = 2 * d.Tonnes })] })],
            Offers = [.. spec.Offers.Select(o => o with { Tiers = [.. o.Tiers.Select(t => t with { TonnesPerPeriod = 2 * t.TonnesPerPeriod })] })],
            Flours = [.. spec.Flours.Select(f => f with { Demand = [.. f.Demand.Select(d => 2 * d)] })],
        };
        var once = Years.Linear(spec).Costs.Total;
        Assert.Equal(2 * once, Years.Linear(twice).Costs.Total, 1e-6 * Math.Abs(once));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Linear_OtherOrderOfWheatsAndFlours_CostsTheSame(int seed)
    {
        var spec = Made(seed);
        var turned = spec with { Wheats = [.. spec.Wheats.Reverse()], Flours = [.. spec.Flours.Reverse()], Homes = [.. spec.Homes.Reverse()] };
        var once = Years.Linear(spec).Costs.Total;
        Assert.Equal(once, Years.Linear(turned).Costs.Total, 1e-6 * Math.Abs(once));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Worth_OfOneMoreTonne_IsWhatASolveAnewSaves(int seed)
    {
        var spec = Made(seed);
        using var open = new OpenSeason();
        var plan = Years.Planned(open.Solve(spec));
        var worth = new SeasonWorth(plan);
        foreach (var wheat in spec.Wheats)
        {
            var more = Years.Planned(open.Solve(spec with { Wheats = [.. spec.Wheats.Select(w => w == wheat ? w with { OpeningTonnes = w.OpeningTonnes + 0.01 } : w)] }));
            Assert.Equal(worth.Of(wheat.Code), (plan.Costs.Total - more.Costs.Total) / 0.01, 0.05 + (1e-3 * Math.Abs(worth.Of(wheat.Code))));
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Worth_OfATonneKeptApart_IsWhatANewWheatSaves(int seed)
    {
        var spec = Made(seed);
        var plan = Years.Linear(spec);
        foreach (var (protein, falling) in new[] { (14.6, 390.0), (11.0, 250.0), (9.8, 400.0) })
        {
            var wheat = new SeasonWheat("new", "HW", 0.01, 12, MadeSeason.Quality(protein, 1.55, falling));
            var with = Years.Linear(spec with { Wheats = [.. spec.Wheats, wheat] });
            var worth = new SeasonWorth(plan).OfTonne(wheat).PerTonne;
            Assert.Equal(worth, (plan.Costs.Total - with.Costs.Total) / 0.01, 0.05 + (1e-3 * Math.Abs(worth)));
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Solve_KeptOpen_AnswersAsAFreshOneDoes(int seed)
    {
        var spec = Made(seed);
        var changed = spec with { Wheats = [.. spec.Wheats.Select((w, i) => i == 2 ? TruckMix.Of(w, new("truck", "HW", 26, 12, MadeSeason.Quality(14, 1.5, 350))) : w)] };
        using var open = new OpenSeason();
        open.Solve(spec);
        var fresh = Years.Linear(changed).Costs.Total;
        Assert.Equal(fresh, Years.Planned(open.Solve(changed)).Costs.Total, 1e-6 * Math.Abs(fresh));
    }

    private static SeasonSpec Made(int seed) => MadeSeason.Of(seed, weeks: 6, bins: 7, flours: 3);
}
