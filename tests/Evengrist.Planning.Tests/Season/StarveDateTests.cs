using Evengrist.Ledger;
using Evengrist.Planning.Season;
using Evengrist.Season;
using NodaTime;

namespace Evengrist.Planning.Tests.Season;

/// <summary>
/// The strong flour of a mill: 90 t of wheat mix at 14.4 % protein (12mb) a run day, six run days a week, from 13,900 t at 14.628 % and a base, from 15 September 2025.
/// Shares and dates are arithmetic: share s of the strong wheat = (14.4 − base)/(14.628 − base); run days = 13,900/(90·s) [derived].
/// </summary>
public sealed class StarveDateTests
{
    public static readonly TheoryData<double, double, double, string> Bases = new()
    {
        { 13.9, 6_900, 0.687, "2026-06-04" }, // the drought wheat kept clean in its bin
        { 13.0, 40_000, 0.860, "2026-04-12" }, // an ordinary base
        { 12.6, 40_000, 0.888, "2026-04-06" }, // the drought wheat let down into a weak one
    };

    [Theory]
    [MemberData(nameof(Bases))]
    public void Linear_StrongFlour_StarvesOnTheDayOfArithmetic(double baseProtein, double baseTonnes, double share, string day)
    {
        var plan = Years.Linear(Spec(baseProtein, baseTonnes));
        var cover = SeasonCoverModel.Of(plan).Single();
        var expected = NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value;
        Assert.InRange(Period.DaysBetween(expected, cover.StarveDate!.Value), -1, 1);
        Assert.Equal(Property.Protein, cover.Limiting);
        var first = plan.Uses.Where(u => u.Period == 20).ToDictionary(u => u.Wheat, u => u.Tonnes);
        Assert.InRange(first["HS"] / first.Values.Sum(), share - 0.002, share + 0.002);
    }

    [Fact]
    public void Worth_OfADroughtTruck_IsMostInItsCleanBin_AndDaysAreGained()
    {
        var spec = Spec(13.9, 6_900);
        var truck = Years.Wheat("truck", 26, 14.0);
        using var open = new OpenSeason();
        var plan = Years.Planned(open.Solve(spec));
        var ranked = new SeasonWorth(plan).OfTruck(truck);
        Assert.Equal("B05", ranked[0].Wheat);
        Assert.True(ranked[0].Money > ranked[1].Money);
        Assert.Equal("it holds HS, the truck is HW", ranked.Single(r => r.Wheat == "HS").WhyNot);

        SeasonPlan With(string bin) => Years.Planned(open.Solve(spec with { Wheats = [.. spec.Wheats.Select(w => w.Code == bin ? TruckMix.Of(w, truck) : w)] }));
        var (clean, other) = (With("B05"), With("B02"));
        Assert.InRange(plan.Costs.Total - clean.Costs.Total, 0.9 * ranked[0].Money, 1.1 * ranked[0].Money);
        var gained = PlanChange.Of(plan, clean).Flours.Single().CoverDays!.Value;
        Assert.True(gained > 0 && gained > PlanChange.Of(plan, other).Flours.Single().CoverDays, $"{gained} days");
    }

    internal static SeasonSpec Spec(double baseProtein, double baseTonnes)
    {
        var periods = SeasonCalendar.DaysThenWeeks(Years.Start, new LocalDate(2026, 6, 30));
        int[] runDays = [.. periods.Select(p => Enumerable.Range(0, p.Days).Count(d => p.Start.PlusDays(d).DayOfWeek != IsoDayOfWeek.Sunday))];
        return new SeasonSpec(
            periods, [new("B", 7.5, [.. runDays.Select(d => 24.0 * d)])],
            [
                Years.Wheat("HS", 13_900, 14.628, "HS") with { Home = "B11" }, Years.Wheat("B05", baseTonnes, baseProtein) with { Home = "B05" },
                Years.Wheat("B02", 9_100, 12.1) with { Home = "B02" },
            ],
            [new("HG", "B", [.. runDays.Select(d => 90.0 * 0.75 * d)], 0.75, 900) { Limits = [Years.ProteinLeast(14.4)] }], "USD")
        {
            Homes = [new("B11", 20_000), new("B05", 50_000), new("B02", 10_000)],
            StoragePerTonneWeek = 0.35,
        };
    }
}
