using CsCheck;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Tests.Solving;

public sealed class DenseSimplexTests
{
    private const int Columns = 8;

    private static readonly Gen<(double[] Costs, double[][] Rows, double[] Least)> Any =
        Gen.Select(Number(-5, 5).Array[Columns], Number(-3, 3).Array[Columns].Array[1, 10], Number(-4, 2).Array[10]);

    // Hundredths: the library stumbles over numbers that are all but zero.
    private static Gen<double> Number(int from, int to) => Gen.Int[100 * from, 100 * to].Select(n => n / 100.0);

    private static DenseSimplex Make(double[] costs, double[][] rows, double[] least)
    {
        var simplex = new DenseSimplex(costs, new double[Columns], [.. Enumerable.Repeat(2.0, Columns)]);
        for (var i = 0; i < rows.Length; i++)
        {
            simplex.Row(rows[i], least[i], least[i] + 6);
        }

        return simplex;
    }

    /// <summary>The same problems through a simplex of the solver library (GLOP).</summary>
    [Fact]
    public void Solve_AnyProblem_IsWhatTheLibraryFinds() => Any.Sample((costs, rows, least) =>
    {
        var problem = new LinearProblem();
        for (var c = 0; c < Columns; c++)
        {
            problem.Column($"c{c}", 0, 2, costs[c]);
        }

        for (var i = 0; i < rows.Length; i++)
        {
            var row = problem.Row($"r{i}", least[i], least[i] + 6);
            for (var c = 0; c < Columns; c++)
            {
                problem.Put(row, c, rows[i][c]);
            }
        }

        var there = LinearSolver.Solve(problem);
        var here = Make(costs, rows, least);
        var exit = here.Solve();
        Assert.Equal(there.Exit, exit);
        if (exit == ExitReason.Optimal)
        {
            Assert.True(Math.Abs(there.Cost - here.Cost) < 1e-6);
            Assert.True(Math.Abs(here.Cost - here.Values().Zip(costs, (v, c) => v * c).Sum()) < 1e-8);
            Assert.All(rows.Select((r, i) => r.Zip(here.Values(), (a, v) => a * v).Sum() - least[i]), s => Assert.InRange(s, -1e-7, 6 + 1e-7));
        }
    }, iter: 300);

    [Fact]
    public void Solve_RowAddedAndBoundsChanged_IsAsMadeAnew() => Any.Where(a => a.Rows.Length > 1).Sample((costs, rows, least) =>
    {
        var first = Make(costs, rows[..^1], least);
        first.Solve();
        var copy = first.Copy();
        copy.Row(rows[^1], least[rows.Length - 1], least[rows.Length - 1] + 6);
        copy.Bound(0, 1, 1);
        var anew = Make(costs, rows, least);
        anew.Bound(0, 1, 1);
        Assert.Equal(anew.Solve(), copy.Solve());
        Assert.True(copy.Solve() != ExitReason.Optimal || Math.Abs(anew.Cost - copy.Cost) < 1e-6);
    }, iter: 300);

    [Fact]
    public void Solve_CrossedBounds_IsInfeasible()
    {
        var simplex = Make(new double[Columns], [], []);
        simplex.Bound(0, 2, 1);
        Assert.Equal(ExitReason.Infeasible, simplex.Solve());
    }
}
