using Evengrist.Planning.Season;
using Evengrist.Planning.Season.Mixing;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Tests.Season.Mixing;

/// <summary>The cheapest mix of a flour in a week, beside every choice of wheats there is, each solved by an engine of its own.</summary>
public sealed class MixPricingTests
{
    public static readonly TheoryData<int> Seeds = [1, 2, 3];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Cheapest_AnyPrices_IsTheBestOfAllChoicesOfWheats(int seed)
    {
        var spec = MadeSeason.Of(seed, weeks: 2, bins: 6, flours: 3, gates: 3, share: 0.15);
        var model = SeasonBuild.Of(spec, LayerDraws.First(spec));
        var dice = new Random(seed);
        for (var f = 0; f < spec.Flours.Count; f++)
        {
            var pricing = Pricing(model, f, 1);
            double[] prices = [.. pricing.Wheats.Select(_ => 180 + (120 * dice.NextDouble()))];
            var found = pricing.Cheapest(prices, double.PositiveInfinity)[^1];
            Assert.InRange(found.Wheats.Length, 1, 3);
            Assert.Equal(1, found.Shares.Sum(), 1e-9);
            Assert.All(found.Shares, s => Assert.True(s >= 0.15 - 1e-9));
            var best = Choices(pricing.Wheats.Length, 3).Min(drawn => ByEngine(model, f, 1, pricing, prices, drawn));
            Assert.Equal(best, CostOf(found, pricing, prices), 1e-5);
            Assert.Empty(pricing.Cheapest(prices, best - 1e-3));
        }
    }

    [Fact]
    public void Cheapest_WheatsSettled_DrawsThose()
    {
        var spec = MadeSeason.Of(1, weeks: 2, bins: 6, flours: 1, gates: 3, share: 0.15);
        var pricing = Pricing(SeasonBuild.Of(spec, LayerDraws.First(spec)), 0, 0);
        Assert.Equal([1, 4], pricing.Cheapest([.. pricing.Wheats.Select(k => 200.0 + k)], double.PositiveInfinity, [1, 4])[^1].Wheats);
        Assert.Contains(5, pricing.Cheapest([.. pricing.Wheats.Select(k => 200.0 + k)], double.PositiveInfinity, with: 5)[^1].Wheats);
    }

    private static MixPricing Pricing(SeasonModel model, int f, int t) => new(model, model.Problem.Terms.ToLookup(x => x.Row), [.. model.Limits.Where(l => l.Flour == f && l.Period == t)], f, t);

    private static double CostOf(MixColumn mix, MixPricing pricing, double[] prices) => mix.Penalty + mix.Wheats.Zip(mix.Shares, (k, s) => prices[Array.IndexOf(pricing.Wheats, k)] * s).Sum();

    private static IEnumerable<int[]> Choices(int of, int most) =>
        Enumerable.Range(1, (1 << of) - 1).Select(bits => Enumerable.Range(0, of).Where(i => (bits >> i & 1) == 1).ToArray()).Where(c => c.Length <= most);

    // One t of wheat, these wheats each with the least share at least, misses at their price.
    private static double ByEngine(SeasonModel model, int f, int t, MixPricing pricing, double[] prices, int[] drawn)
    {
        var problem = new LinearProblem();
        var all = problem.Row("all", 1, 1);
        var columns = drawn.ToDictionary(i => pricing.Uses[i], i => problem.Column($"x{i}", model.Spec.Flours[f].LeastShare, 1, prices[i]));
        foreach (var column in columns.Values)
        {
            problem.Put(all, column, 1);
        }

        foreach (var limit in model.Limits.Where(l => l.Flour == f && l.Period == t))
        {
            var row = problem.Row($"limit{limit.Row}", 0, double.PositiveInfinity);
            problem.Put(row, problem.Column($"miss{limit.Row}", 0, 1e6, model.Problem.Columns[limit.Miss].Cost), 1);
            foreach (var term in model.Problem.Terms.Where(x => x.Row == limit.Row && columns.ContainsKey(x.Column)))
            {
                problem.Put(row, columns[term.Column], term.Coefficient);
            }
        }

        return LinearSolver.Solve(problem) is { HasValues: true } answer ? answer.Cost : double.PositiveInfinity;
    }
}
