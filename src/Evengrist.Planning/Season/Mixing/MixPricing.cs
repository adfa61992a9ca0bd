using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Season.Mixing;

/// <summary>The cheapest mixes of one flour in one period that keep its rules, when every wheat has a price.</summary>
/// <remarks>
/// Per t of wheat: Σ x = 1; limits with their misses and relief; x = 0 or x ≥ share; at most as many x &gt; 0 as gates. Branch and bound over a small tableau: a wheat is drawn or is not.
/// </remarks>
internal sealed class MixPricing
{
    private const double Tiny = 1e-9;
    private readonly int gates;
    private readonly double share;
    private readonly int[] extras;
    private readonly double[] extraCosts;
    private readonly double[] upper;
    private readonly List<(double[] Row, double Least, double Most)> rows = [];

    // Of the search that is on.
    private List<MixColumn> found = [];
    private double best;

    public MixPricing(SeasonModel model, ILookup<int, LinearTerm> terms, LimitRow[] limits, int flour, int period)
    {
        (Flour, Period) = (flour, period);
        (gates, share) = (model.Spec.Flours[flour].MostGates ?? int.MaxValue, model.Spec.Flours[flour].LeastShare);
        Wheats = [.. Enumerable.Range(0, model.Wheats.Length).Where(k => model.Use[k, flour, period] >= 0)];
        Uses = [.. Wheats.Select(k => model.Use[k, flour, period])];
        (extras, extraCosts, upper) = Read(model, terms, limits);
        Rows = [.. limits.SelectMany(l => l.Caps.Append(l.Row))];
    }

    /// <summary>The flour.</summary>
    public int Flour { get; }

    /// <summary>The period.</summary>
    public int Period { get; }

    /// <summary>All columns of the linear problem that lie within the mixes.</summary>
    public IEnumerable<int> Columns => Uses.Concat(extras);

    /// <summary>All rows of the linear problem that lie within the mixes.</summary>
    public IReadOnlyList<int> Rows { get; }

    /// <summary>The wheats that may be drawn.</summary>
    public int[] Wheats { get; }

    /// <summary>Their columns in the linear problem.</summary>
    public int[] Uses { get; }

    /// <summary>The mix of an answer of the linear problem; null where nothing is milled or its rules are not kept.</summary>
    public MixColumn? Of(IReadOnlyList<double> answer)
    {
        var all = Uses.Sum(u => answer[u]);
        if (all <= 1e-6)
        {
            return null;
        }

        double[] values = [.. Uses.Concat(extras).Select(c => answer[c] / all)];
        int[] drawn = [.. Enumerable.Range(0, Uses.Length).Where(i => values[i] > Tiny)];
        return drawn.Length <= gates && drawn.All(i => values[i] >= share - Tiny) ? Column(values) : null;
    }

    /// <summary>The cheapest mix and those met on the way to it, last the cheapest.</summary>
    /// <param name="prices">What a t of each of the wheats costs, without misses and relief.</param>
    /// <param name="below">Only what costs less is looked for.</param>
    /// <param name="drawn">The wheats that have to be drawn and no others; null where that is open.</param>
    /// <param name="with">A wheat that has to be drawn besides others, −1 for none; its place in <see cref="Wheats"/>.</param>
    public List<MixColumn> Cheapest(double[] prices, double below, int[]? drawn = null, int with = -1)
    {
        (found, best) = ([], below);
        var state = new sbyte[Wheats.Length];
        for (var i = 0; i < state.Length; i++)
        {
            state[i] = (sbyte)(drawn is not null ? Array.BinarySearch(drawn, Wheats[i]) >= 0 ? 1 : -1 : i == with ? 1 : 0);
        }

        var tableau = Tableau(prices);
        for (var i = 0; i < state.Length; i++)
        {
            Bound(tableau, i, state[i]);
        }

        Look(tableau, state);
        return found;
    }

    private DenseSimplex Tableau(double[] prices)
    {
        var tableau = new DenseSimplex([.. prices, .. extraCosts], new double[upper.Length], upper);
        foreach (var (row, least, most) in rows)
        {
            tableau.Row(row, least, most);
        }

        return tableau;
    }

    private void Look(DenseSimplex tableau, sbyte[] state)
    {
        if (tableau.Solve(best) != ExitReason.Optimal || tableau.Cost > best - (Tiny * Math.Max(1, Math.Abs(best))))
        {
            return;
        }

        var values = tableau.Values();
        var branch = Branch(values, state);
        if (branch < 0)
        {
            best = tableau.Cost;
            found.Add(Column(values));
            return;
        }

        var first = (sbyte)(values[branch] >= share / 2 && share > 0 && values[branch] < share ? 1 : -1);
        foreach (var to in stackalloc[] { first, (sbyte)-first })
        {
            var next = (sbyte[])state.Clone();
            next[branch] = to;
            if (to > 0 && next.Count(s => s > 0) > gates)
            {
                continue;
            }

            var part = tableau.Copy();
            Bound(part, branch, to);
            Look(part, next);
        }
    }

    // A wheat drawn below its least share first; then, where there are too many, the one with least.
    private int Branch(double[] values, sbyte[] state)
    {
        var (below, least, count) = (-1, -1, 0);
        for (var i = 0; i < Wheats.Length; i++)
        {
            if (values[i] <= Tiny)
            {
                continue;
            }

            count++;
            if (state[i] == 0)
            {
                below = values[i] < share - Tiny && (below < 0 || values[i] > values[below]) ? i : below;
                least = least < 0 || values[i] < values[least] ? i : least;
            }
        }

        return below >= 0 ? below : count > gates ? least : -1;
    }

    private MixColumn Column(double[] values)
    {
        int[] drawn = [.. Enumerable.Range(0, Wheats.Length).Where(i => values[i] > Tiny)];
        var penalty = 0.0;
        for (var e = 0; e < extraCosts.Length; e++)
        {
            penalty += extraCosts[e] * values[Wheats.Length + e];
        }

        return new MixColumn(Flour, Period, [.. drawn.Select(i => Wheats[i])], [.. drawn.Select(i => values[i])], penalty);
    }

    private void Bound(DenseSimplex tableau, int i, sbyte state) => tableau.Bound(i, state > 0 ? share : 0, state < 0 ? 0 : 1);

    // Misses and relief are columns behind the wheats; limits and caps of relief are rows.
    private (int[] Extras, double[] Costs, double[] Upper) Read(SeasonModel model, ILookup<int, LinearTerm> terms, LimitRow[] limits)
    {
        var (problem, places) = (model.Problem, new Dictionary<int, int>());
        Array.ForEach(Uses, u => places.Add(u, places.Count));
        var costs = new List<double>();
        List<double> most = [.. Uses.Select(_ => 1.0)];
        foreach (var extra in limits.SelectMany(l => l.Relief.Append(l.Miss)))
        {
            places.Add(extra, places.Count);
            costs.Add(problem.Columns[extra].Cost);
            most.Add(1e6);
        }

        rows.Add(([.. most.Select((_, i) => i < Uses.Length ? 1.0 : 0)], 1, 1));
        foreach (var row in limits.SelectMany(l => l.Caps.Append(l.Row)))
        {
            var coefficients = new double[places.Count];
            foreach (var term in terms[row])
            {
                coefficients[places[term.Column]] = term.Coefficient;
            }

            rows.Add((coefficients, problem.Rows[row].Lower, problem.Rows[row].Upper));
        }

        return ([.. places.Keys.Skip(Uses.Length)], [.. costs], [.. most]);
    }
}
