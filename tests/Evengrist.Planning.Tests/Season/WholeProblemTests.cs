using Evengrist.Planning.Season;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Tests.Season;

/// <summary>A long season is solved with columns left for later; its answer is the whole problem's, and its duals obey what linear programmes obey.</summary>
public sealed class WholeProblemTests
{
    public static readonly TheoryData<int> Seeds = [1, 2, 3];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Linear_ColumnsLeftForLater_CostsWhatTheWholeProblemDoes(int seed)
    {
        var spec = MadeSeason.Of(seed, weeks: 26, bins: 8, flours: 4);
        var model = SeasonBuild.Of(spec, LayerDraws.First(spec));
        Assert.NotEmpty(CoarseSeason.Later(model));
        var whole = LinearSolver.Solve(model.Problem);
        using var open = new OpenSeason();
        Assert.Equal(whole.Cost, Years.Planned(open.Solve(spec)).Costs.Total, 1e-6 * Math.Abs(whole.Cost));
        var changed = spec with { Wheats = [.. spec.Wheats.Select((w, i) => i == 0 ? w with { OpeningTonnes = 2 * w.OpeningTonnes, Quality = MadeSeason.Quality(14.9, 1.5, 400) } : w)] };
        var anew = LinearSolver.Solve(SeasonBuild.Of(changed, LayerDraws.First(changed)).Problem);
        Assert.Equal(anew.Cost, Years.Planned(open.Solve(changed)).Costs.Total, 1e-6 * Math.Abs(anew.Cost));
    }

    /// <summary>Strong duality and complementary slackness (Dantzig, Linear Programming and Extensions, 1963 [memory]).</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Answer_OfTheSolver_IsDualToItself(int seed)
    {
        var spec = MadeSeason.Of(seed, weeks: 26, bins: 8, flours: 4);
        using var open = new OpenSeason();
        open.Solve(spec);
        var (problem, answer) = (open.Model!.Problem, open.LastAnswer!);
        double[] sums = new double[problem.Rows.Count];
        foreach (var term in problem.Terms)
        {
            sums[term.Row] += term.Coefficient * answer.Values[term.Column];
        }

        var dual = 0.0;
        for (var r = 0; r < problem.Rows.Count; r++)
        {
            var (row, price) = (problem.Rows[r], answer.RowDuals[r]);
            var side = price > 0 ? row.Lower : row.Upper;
            dual += Math.Abs(price) < 1e-9 ? 0 : price * side;
            Assert.True(Math.Abs(price) < 1e-6 || Math.Abs(sums[r] - side) <= 1e-5 * Math.Max(1, Math.Abs(side)), $"{row.Name}: {sums[r]} at price {price}");
        }

        for (var c = 0; c < problem.Columns.Count; c++)
        {
            var (column, price) = (problem.Columns[c], answer.ReducedCosts[c]);
            dual += Math.Abs(price) < 1e-9 ? 0 : price * (price > 0 ? column.Lower : double.IsInfinity(column.Upper) ? 0 : column.Upper);
            Assert.True(price > -1e-5 * Math.Max(1, Math.Abs(column.Cost)) || answer.Values[c] >= column.Upper - 1e-5, $"{column.Name} would save {-price}");
        }

        Assert.Equal(answer.Cost, dual, 1e-5 * Math.Abs(answer.Cost));
    }
}
