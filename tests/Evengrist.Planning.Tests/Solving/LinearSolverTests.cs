using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Tests.Solving;

public sealed class LinearSolverTests
{
    private const double Without = double.PositiveInfinity;

    /// <summary>The diet problem of an operations research textbook (maize and soybean meal, 800 lb): 470.588 and 329.412, cost 437.647.</summary>
    private static LinearProblem Diet()
    {
        var problem = new LinearProblem();
        int maize = problem.Column("maize", 0, Without, 0.30), soya = problem.Column("soya", 0, Without, 0.90);
        int mass = problem.Row("mass", 800, Without), protein = problem.Row("protein", 0, Without), fibre = problem.Row("fibre", -Without, 0);
        (int Row, double Maize, double Soya)[] rows = [(mass, 1, 1), (protein, 0.09 - 0.30, 0.60 - 0.30), (fibre, 0.02 - 0.05, 0.06 - 0.05)];
        foreach (var row in rows)
        {
            problem.Put(row.Row, maize, row.Maize);
            problem.Put(row.Row, soya, row.Soya);
        }

        return problem;
    }

    [Theory]
    [InlineData(LinearEngine.Glop)]
    [InlineData(LinearEngine.Clp)]
    [InlineData(LinearEngine.Scip)]
    [InlineData(LinearEngine.Highs)]
    public void Solve_Diet_IsTheTextbooksAnswer(LinearEngine engine)
    {
        var answer = LinearSolver.Solve(Diet(), new SolveOptions { Engine = engine });
        Assert.Equal(ExitReason.Optimal, answer.Exit);
        Assert.Equal(437.647, answer.Cost, 3);
        Assert.Equal(470.588, answer.Values[0], 3);
        Assert.Equal(329.412, answer.Values[1], 3);
    }

    [Fact]
    public void Solve_Diet_DualsPayForTheCost()
    {
        var answer = LinearSolver.Solve(Diet());
        Assert.Equal(answer.Cost, 800 * answer.RowDuals[0], 6); // strong duality: only the mass row has a right side
    }

    [Fact]
    public void Solve_AgainAfterAChange_IsAsSolvedAnew()
    {
        using var solver = new LinearSolver(Diet());
        var first = solver.Solve(new SolveOptions());
        solver.BoundRow(0, 400, Without);
        Assert.Equal(first.Cost / 2, solver.Solve(new SolveOptions()).Cost, 6);
        solver.Price(0, 0.60);
        solver.BoundRow(0, 800, Without);
        Assert.True(solver.Solve(new SolveOptions()).Cost > first.Cost);
    }

    [Fact]
    public void Solve_LimitsThatClash_SaysSo()
    {
        var problem = Diet();
        problem.BoundRow(0, 800, 800);
        var most = problem.Row("most", -Without, 700);
        problem.Put(most, 0, 1);
        problem.Put(most, 1, 1);
        var answer = LinearSolver.Solve(problem);
        Assert.Equal(ExitReason.Infeasible, answer.Exit);
        Assert.False(answer.HasValues);
        Assert.Equal(double.PositiveInfinity, answer.Gap);
    }

    [Fact]
    public void Solve_CostThatFallsWithoutEnd_SaysSo()
    {
        var problem = new LinearProblem();
        problem.Column("x", 0, Without, -1);
        Assert.Equal(ExitReason.Unbounded, LinearSolver.Solve(problem).Exit);
    }

    [Fact]
    public void Solve_StoppedBefore_SaysSo() =>
        Assert.Equal(ExitReason.Cancelled, LinearSolver.Solve(Diet(), stop: new CancellationToken(canceled: true)).Exit);

    [Fact]
    public void Solve_WholeColumns_AreWholeAndProven()
    {
        // Two gates in steps of 5 of 100: the cheapest that is rich enough. Counted by hand: 12·a + 15·b ≥ 13.5·20, a + b = 20 gives b = 10.
        var problem = new LinearProblem();
        int a = problem.Column("a", 0, 20, 1, whole: true), b = problem.Column("b", 0, 20, 2, whole: true);
        int all = problem.Row("all", 20, 20), rich = problem.Row("rich", 13.45 * 20, Without);
        problem.Put(all, a, 1);
        problem.Put(all, b, 1);
        problem.Put(rich, a, 12);
        problem.Put(rich, b, 15);
        var answer = LinearSolver.Solve(problem);
        Assert.Equal(ExitReason.Optimal, answer.Exit);
        Assert.Equal([10.0, 10.0], answer.Values.Select(v => Math.Round(v, 9)));
        Assert.Empty(answer.RowDuals);
        Assert.Throws<ArgumentException>(() => LinearSolver.Solve(problem, new SolveOptions { Engine = LinearEngine.Glop }));
    }

    [Fact]
    public void Problem_BadNumbers_AreRefused()
    {
        var problem = new LinearProblem();
        Assert.Throws<ArgumentException>(() => problem.Column("x", 1, 0, 0));
        Assert.Throws<ArgumentException>(() => problem.Column("x", 0, 1, double.NaN));
        Assert.Throws<ArgumentException>(() => problem.Row("r", double.NaN, 1));
        Assert.Throws<ArgumentException>(() => problem.Put(0, 0, 1));
    }
}
