using System.Diagnostics;
using Google.OrTools.LinearSolver;

namespace Evengrist.Planning.Solving;

/// <summary>Solves a problem, keeps it open, and solves it again from where it stood after bounds or prices were changed.</summary>
/// <remarks>
/// One solver is for one thread. A problem with a crossing or unread number never reaches it: <see cref="LinearProblem"/> refuses those. Slack
/// with no upper bound made engines fail here, so callers bound theirs (docs/decisions/0015-solvers.md).
/// </remarks>
public sealed class LinearSolver : IDisposable
{
    private readonly Solver solver;
    private readonly List<Variable> variables;
    private readonly Constraint[] constraints;
    private readonly List<double> costs;
    private readonly bool whole;
    private readonly bool givesDuals;

    /// <summary>Hands a problem to an engine.</summary>
    /// <param name="problem">The problem; rows and columns added to it later are not seen.</param>
    /// <param name="engine">The engine; null takes the usual one.</param>
    /// <param name="asItStands">
    /// Whether the simplex is to work on the problem as it stands, without making it smaller first. That costs a little the first time; solved again after
    /// columns were opened or numbers changed, it goes on from its last basis instead of beginning anew. For <see cref="LinearEngine.Glop"/> only.
    /// </param>
    public LinearSolver(LinearProblem problem, LinearEngine? engine = null, bool asItStands = false)
    {
        ArgumentNullException.ThrowIfNull(problem);
        whole = problem.HasWhole;
        givesDuals = !whole && engine is not (LinearEngine.Scip or LinearEngine.Cbc);
        solver = Solver.CreateSolver(NameOf(engine ?? (whole ? LinearEngine.Scip : LinearEngine.Glop), whole)) ?? throw new InvalidOperationException("The solver library has no such engine.");
        if (asItStands && !whole && (engine ?? LinearEngine.Glop) == LinearEngine.Glop)
        {
            solver.SetSolverSpecificParametersAsString("use_preprocessing: false");
        }

        variables = [.. problem.Columns.Select(c => solver.MakeVar(c.Lower, c.Upper, c.IsWhole, c.Name))];
        constraints = [.. problem.Rows.Select(r => solver.MakeConstraint(r.Lower, r.Upper, r.Name))];
        foreach (var term in problem.TermSpan)
        {
            constraints[term.Row].SetCoefficient(variables[term.Column], term.Coefficient);
        }

        costs = [.. problem.Columns.Select(c => c.Cost)];
        using var objective = solver.Objective();
        Minimise(objective, costs);
    }

    /// <summary>Solves a problem once.</summary>
    public static LinearAnswer Solve(LinearProblem problem, SolveOptions? options = null, CancellationToken stop = default)
    {
        options ??= new SolveOptions();
        using var solver = new LinearSolver(problem, options.Engine);
        return solver.Solve(options, stop);
    }

    /// <summary>Changes the bounds of a column.</summary>
    public void Bound(int column, double lower, double upper) => variables[column].SetBounds(lower, upper);

    /// <summary>Changes the bounds of a row.</summary>
    public void BoundRow(int row, double lower, double upper) => constraints[row].SetBounds(lower, upper);

    /// <summary>Changes a coefficient.</summary>
    public void Put(int row, int column, double coefficient) => constraints[row].SetCoefficient(variables[column], coefficient);

    /// <summary>Adds a column and gives its number.</summary>
    /// <param name="name">A name of its own.</param>
    /// <param name="lower">Least value.</param>
    /// <param name="upper">Greatest value.</param>
    /// <param name="cost">Cost of one.</param>
    /// <param name="coefficients">Its coefficients, by row.</param>
    public int Add(string name, double lower, double upper, double cost, IReadOnlyDictionary<int, double> coefficients)
    {
        ArgumentNullException.ThrowIfNull(coefficients);
        var variable = solver.MakeVar(lower, upper, integer: false, name);
        foreach (var (row, coefficient) in coefficients)
        {
            constraints[row].SetCoefficient(variable, coefficient);
        }

        variables.Add(variable);
        costs.Add(0);
        Price(variables.Count - 1, cost);
        return variables.Count - 1;
    }

    /// <summary>Changes the cost of a column.</summary>
    public void Price(int column, double cost)
    {
        costs[column] = cost;
        using var objective = solver.Objective();
        objective.SetCoefficient(variables[column], cost);
    }

    /// <summary>Solves it as it stands now.</summary>
    public LinearAnswer Solve(SolveOptions options, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(options);
        using var parameters = new MPSolverParameters();
        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, options.RelativeGap);
        solver.SetTimeLimit(options.Longest is { } longest ? Math.Max(1, (long)longest.TotalMilliseconds) : 0);
        if (options.Start is { Count: > 0 } start)
        {
            solver.SetHint([.. start.Keys.Select(c => variables[c])], [.. start.Values]);
        }

        var began = Stopwatch.GetTimestamp();
        using var interrupt = stop.Register(() => solver.InterruptSolve());
        var status = stop.IsCancellationRequested ? Solver.ResultStatus.NOT_SOLVED : solver.Solve(parameters);
        if (status == Solver.ResultStatus.INFEASIBLE && IsFeasible(parameters))
        {
            status = Solver.ResultStatus.UNBOUNDED;
        }

        return Answer(status, options, stop.IsCancellationRequested, Stopwatch.GetElapsedTime(began));
    }

    /// <inheritdoc/>
    public void Dispose() => solver.Dispose();

    // An engine's presolve says "infeasible" where it only knows "infeasible or without end"; the same limits without prices tell which.
    private bool IsFeasible(MPSolverParameters parameters)
    {
        using var objective = solver.Objective();
        Minimise(objective, new double[costs.Count]);
        var feasible = solver.Solve(parameters) is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE;
        Minimise(objective, costs);
        return feasible;
    }

    private void Minimise(Objective objective, IReadOnlyList<double> prices)
    {
        for (var c = 0; c < variables.Count; c++)
        {
            objective.SetCoefficient(variables[c], prices[c]);
        }

        objective.SetMinimization();
    }

    private LinearAnswer Answer(Solver.ResultStatus status, SolveOptions options, bool stopped, TimeSpan took)
    {
        var has = status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE;
        double[] values = has ? [.. variables.Select(v => v.SolutionValue())] : [];
        var cost = has ? Cost() : double.NaN;
        var bound = !has ? double.NegativeInfinity : whole ? solver.Objective().BestBound() : status == Solver.ResultStatus.OPTIMAL ? cost : double.NegativeInfinity;
        var duals = has && givesDuals && status == Solver.ResultStatus.OPTIMAL;
        return new LinearAnswer(
            Reason(status, options, stopped, took, cost, bound), cost, bound, values,
            duals ? [.. constraints.Select(c => c.DualValue())] : [], duals ? [.. variables.Select(v => v.ReducedCost())] : [], took);
    }

    private double Cost()
    {
        using var objective = solver.Objective();
        return objective.Value();
    }

    private static ExitReason Reason(Solver.ResultStatus status, SolveOptions options, bool stopped, TimeSpan took, double cost, double bound) => status switch
    {
        Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE when cost - bound <= 1e-9 * Math.Max(1, Math.Abs(cost)) => ExitReason.Optimal,
        Solver.ResultStatus.OPTIMAL => ExitReason.GapReached,
        Solver.ResultStatus.INFEASIBLE => ExitReason.Infeasible,
        Solver.ResultStatus.UNBOUNDED => ExitReason.Unbounded,
        _ when stopped => ExitReason.Cancelled,
        Solver.ResultStatus.FEASIBLE => ExitReason.TimeReached,
        Solver.ResultStatus.NOT_SOLVED when options.Longest is { } longest && took >= 0.9 * longest => ExitReason.TimeReached,
        _ => ExitReason.SolverFailed,
    };

    private static string NameOf(LinearEngine engine, bool whole) => engine switch
    {
        LinearEngine.Glop when whole => throw new ArgumentException("The simplex cannot keep columns whole.", nameof(engine)),
        LinearEngine.Glop => "GLOP",
        LinearEngine.Scip => "SCIP",
        LinearEngine.Clp when whole => throw new ArgumentException("The simplex cannot keep columns whole.", nameof(engine)),
        LinearEngine.Clp => "CLP",
        LinearEngine.Cbc => "CBC",
        LinearEngine.Highs => whole ? "HIGHS" : "HIGHS_LP",
        _ => throw new ArgumentOutOfRangeException(nameof(engine), engine, "No such engine."),
    };
}
