using Evengrist.Ledger;
using Evengrist.Season;

namespace Evengrist.Planning.Tests.Season;

/// <summary>The check finds whatever is put wrong in a good plan.</summary>
public sealed class SeasonCheckTests
{
    private static readonly Lazy<SeasonPlan> Good = new(() => Years.Linear(MadeSeason.Of(1, weeks: 6, bins: 7, flours: 3)));

    public static readonly TheoryData<string, Func<SeasonPlan, SeasonPlan>> Wrongs = new()
    {
        { "by the balance", p => p with { Stocks = [p.Stocks[0] with { Tonnes = p.Stocks[0].Tonnes + 0.01 }, .. p.Stocks.Skip(1)] } },
        { "by what is used", p => p with { Uses = [.. p.Uses.Skip(1)] } },
        { "against its terms", p => p with { Purchases = [new("P1", 0, 0, 1), .. p.Purchases] } },
        { "of room", p => p with { Spec = p.Spec with { Homes = [.. p.Spec.Homes.Select(h => h with { CapacityTonnes = 1 })] } } },
        { "no row", p => p with { Flours = [.. p.Flours.Skip(1)] } },
        { "wanted", p => p with { Flours = [p.Flours[0] with { UnmetTonnes = p.Flours[0].UnmetTonnes + 0.01 }, .. p.Flours.Skip(1)] } },
        { " h of ", p => p with { Spec = p.Spec with { Units = [.. p.Spec.Units.Select(u => u with { Hours = [.. u.Hours.Select(_ => 1.0)] })] } } },
        { "is stated as missed", p => p with { Spec = p.Spec with { Flours = [.. p.Spec.Flours.Select(f => f with { Limits = [.. f.Limits.Select(l => l with { Most = l.Most - (l.What == Property.FallingNumber ? 60 : 0.3), Least = null })] })] } } },
        { "storage", p => p with { Costs = p.Costs with { Storage = p.Costs.Storage + 1 } } },
        { "below the bound", p => p with { Bound = p.Bound + (1e-3 * Math.Abs(p.Bound)) + 1000 } },
        { "may not go into it", p => p with { Spec = p.Spec with { Flours = [.. p.Spec.Flours.Select(f => f with { Classes = ["SW"] })] } } },
        { "carry-out", p => p with { Spec = p.Spec with { CarryOut = [new("", 1e7)] } } },
        { "gates, at most", p => p with { IsMillable = true, Spec = p.Spec with { Flours = [.. p.Spec.Flours.Select(f => f with { MostGates = 1 })] } } },
        { "is needed", p => p with { IsMillable = true, Spec = p.Spec with { Flours = [.. p.Spec.Flours.Select(f => f with { LeastShare = 0.9 })] } } },
        { "milled for", p => p with { IsMillable = true, Spec = p.Spec with { Units = [.. p.Spec.Units.Select(u => u with { LeastCampaignHours = 160 })] } } },
        { "UseChoice", p => p with { Spec = p.Spec with { Choices = [new UseChoice("B01", "F1", 0, 9_000, 10_000)] } } },
    };

    [Fact]
    public void Of_AGoodPlan_FindsNothing() => Assert.Empty(SeasonCheck.Of(Good.Value));

    [Theory]
    [MemberData(nameof(Wrongs), DisableDiscoveryEnumeration = true)]
    public void Of_APlanPutWrong_SaysWhat(string words, Func<SeasonPlan, SeasonPlan> wrong)
    {
        ArgumentNullException.ThrowIfNull(wrong);
        Assert.Contains(SeasonCheck.Of(wrong(Good.Value)), f => f.Contains(words, StringComparison.Ordinal));
    }
}
