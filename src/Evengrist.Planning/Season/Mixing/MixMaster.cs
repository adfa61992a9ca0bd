using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Season.Mixing;

/// <summary>The season over known mixes: how many t of each, with all that ties periods and flours together; limits lie within the mixes.</summary>
/// <remarks>
/// A mix is Σ share · (columns of its wheats) of the linear problem, less the rows of limits, so that whatever is asked of t of a wheat into a flour holds for mixes. Mixes keep gates and shares:
/// with all there are, this bounds a plan that can be milled from below more closely than the linear one does. Flours without such rules stay as they are.
/// </remarks>
internal sealed class MixMaster : IDisposable
{
    private const double Dust = 1e-6;
    private readonly SeasonModel model;
    private readonly LinearSolver solver;
    private readonly int[] rowOf;
    private readonly ILookup<int, LinearTerm> useTerms;
    private readonly IReadOnlyList<double> linearDuals;
    private readonly List<(MixColumn Mix, int Column)> mixes = [];
    private readonly HashSet<string> known = [];

    /// <param name="model">The linear problem.</param>
    /// <param name="pricings">Flours and periods that are mixed.</param>
    /// <param name="linear">The linear problem's answer.</param>
    public MixMaster(SeasonModel model, IReadOnlyList<MixPricing> pricings, LinearAnswer linear)
    {
        (this.model, linearDuals) = (model, linear.RowDuals);
        var (from, problem) = (model.Problem, new LinearProblem());
        HashSet<int> within = [.. pricings.SelectMany(p => p.Columns)], limits = [.. pricings.SelectMany(p => p.Rows)];
        int[] columnOf = [.. from.Columns.Select((c, i) => within.Contains(i) ? -1 : problem.Column(c.Name, c.Lower, c.Upper, c.Cost))];
        var counts = new int[from.Rows.Count];
        foreach (var term in from.TermSpan)
        {
            counts[term.Row]++;
        }

        rowOf = [.. from.Rows.Select((r, i) => limits.Contains(i) || counts[i] == 1 ? -1 : problem.Row(r.Name, r.Lower, r.Upper))];
        foreach (var term in from.TermSpan)
        {
            if (columnOf[term.Column] is var c && c < 0)
            {
                continue;
            }

            if (counts[term.Row] > 1)
            {
                problem.Put(rowOf[term.Row], c, term.Coefficient);
            }
            else
            {
                Narrow(problem, c, from.Rows[term.Row], term.Coefficient);
            }
        }

        useTerms = from.Terms.Where(t => columnOf[t.Column] < 0 && rowOf[t.Row] >= 0).ToLookup(t => t.Column);
        solver = new LinearSolver(problem, asItStands: true);
    }

    /// <summary>The last answer.</summary>
    public LinearAnswer Answer { get; private set; } = new(ExitReason.SolverFailed, double.NaN, double.NaN, [], [], [], default);

    // A row of one column is a bound of it: the simplex is spared the row.
    private static void Narrow(LinearProblem problem, int c, LinearRow row, double coefficient)
    {
        var (least, most) = (row.Lower / coefficient, row.Upper / coefficient);
        problem.Bound(c, Math.Max(problem.Columns[c].Lower, Math.Min(least, most)), Math.Min(problem.Columns[c].Upper, Math.Max(least, most)));
    }

    /// <summary>Takes a mix in; false where it is known.</summary>
    public bool Add(MixColumn mix)
    {
        if (!known.Add(mix.Words))
        {
            return false;
        }

        var (cost, terms) = (mix.Penalty, new Dictionary<int, double>());
        for (var i = 0; i < mix.Wheats.Length; i++)
        {
            var use = model.Use[mix.Wheats[i], mix.Flour, mix.Period];
            cost += mix.Shares[i] * model.Problem.Columns[use].Cost;
            foreach (var term in useTerms[use])
            {
                terms[rowOf[term.Row]] = terms.GetValueOrDefault(rowOf[term.Row]) + (mix.Shares[i] * term.Coefficient);
            }
        }

        mixes.Add((mix, solver.Add($"mix.{mixes.Count}", 0, double.PositiveInfinity, cost, terms)));
        return true;
    }

    /// <summary>Solves from where it stood.</summary>
    public void Solve(CancellationToken stop) => Answer = solver.Solve(new SolveOptions(), stop);

    /// <summary>What a t of each wheat costs a flour in a period at the duals of the last answer.</summary>
    /// <param name="pricing">The flour and period.</param>
    /// <param name="linear">How far to lean on the linear problem's duals, 0 to 1: those of few mixes jump about.</param>
    public double[] Prices(MixPricing pricing, double linear)
    {
        var prices = new double[pricing.Uses.Length];
        for (var i = 0; i < prices.Length; i++)
        {
            prices[i] = model.Problem.Columns[pricing.Uses[i]].Cost;
            foreach (var term in useTerms[pricing.Uses[i]])
            {
                var dual = (linear < 1 ? (1 - linear) * Answer.RowDuals[rowOf[term.Row]] : 0) + (linear * linearDuals[term.Row]);
                prices[i] -= dual * term.Coefficient;
            }
        }

        return prices;
    }

    /// <summary>The mixes of the last answer with their tonnes, by flour and period.</summary>
    public ILookup<(int Flour, int Period), (MixColumn Mix, double Tonnes)> Used() =>
        mixes.Where(m => m.Column < Answer.Values.Count && Answer.Values[m.Column] > Dust).ToLookup(m => (m.Mix.Flour, m.Mix.Period), m => (m.Mix, Answer.Values[m.Column]));

    /// <summary>Only mixes of exactly these wheats stay.</summary>
    public void Keep(int flour, int period, int[] wheats)
    {
        foreach (var (mix, column) in mixes)
        {
            if (mix.Flour == flour && mix.Period == period && !mix.Wheats.AsSpan().SequenceEqual(wheats))
            {
                solver.Bound(column, 0, 0);
            }
        }
    }

    /// <summary>All mixes may be used again.</summary>
    public void Free(int flour, int period)
    {
        foreach (var (mix, column) in mixes)
        {
            if (mix.Flour == flour && mix.Period == period)
            {
                solver.Bound(column, 0, double.PositiveInfinity);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => solver.Dispose();
}
