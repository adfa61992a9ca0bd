using Evengrist.Mix;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Mix;

/// <summary>A mix as a linear problem, with the tangents found so far; gates in whole steps and open or shut where that is asked.</summary>
internal sealed class MixProblem
{
    private readonly MixSpec spec;
    private readonly bool gates;
    private readonly double step;
    private readonly double[] least;
    private readonly double[] most;
    private readonly List<(int Cone, double[] Row)> tangents = [];


    /// <param name="spec">What is wanted, without faults.</param>
    /// <param name="cones">The ends of its limits.</param>
    /// <param name="gates">Whether steps, number and least opening of gates are kept; gates move freely otherwise.</param>
    public MixProblem(MixSpec spec, IReadOnlyList<Cone> cones, bool gates)
    {
        (this.spec, this.gates, Cones) = (spec, gates, cones);
        step = gates ? spec.StepShare ?? 0 : 0;
        least = [.. spec.Bins.Select(b => b.LockedShare ?? Math.Max(0, b.LeastShare))];
        most = [.. spec.Bins.Select(b => b.LockedShare is { } locked ? Math.Min(locked, spec.MostOf(b) + 1e-12) : Math.Min(1, spec.MostOf(b)))];
        if (step > 0)
        {
            least = [.. least.Select(l => Math.Ceiling((l / step) - 1e-6))];
            most = [.. most.Select(m => Math.Floor((m / step) + 1e-6))];
        }
    }

    public IReadOnlyList<Cone> Cones { get; }

    public IReadOnlyList<(int Cone, double[] Row)> Tangents => tangents;

    /// <summary>Whether a bin's own bounds already clash.</summary>
    public bool IsCrossed => least.Zip(most).Any(b => b.First > b.Second + 1e-12);

    /// <summary>Least that an open gate gives.</summary>
    private double LeastOpen => gates ? spec.LeastOpen : 0;

    /// <summary>Whether whole numbers are in it.</summary>
    public bool HasGates => step > 0 || (gates && (spec.Gates.MostGates < spec.Bins.Count || LeastOpen > 0));

    /// <summary>Keeps a tangent in all that is solved from now on.</summary>
    public void Add(int cone, double[] tangent) => tangents.Add((cone, tangent));

    /// <summary>The linear problem as it stands; the columns of the bins come first, in order.</summary>
    /// <param name="costs">Cost of each bin.</param>
    /// <param name="slack">Cost of one unit, relative to the cone's size, by which each end is missed; null or not a number for an end that has to be kept.</param>
    public LinearProblem Build(double[] costs, double[]? slack = null)
    {
        var problem = new LinearProblem();
        var per = step > 0 ? step : 1;
        for (var j = 0; j < costs.Length; j++)
        {
            problem.Column(spec.Bins[j].Code, least[j], Math.Max(least[j], most[j]), costs[j] * per, step > 0);
        }

        var whole = problem.Row("whole", 1 / per, 1 / per);
        for (var j = 0; j < costs.Length; j++)
        {
            problem.Put(whole, j, 1);
        }

        Shares(problem, per);
        Gates(problem, per);
        var misses = slack?.Select((s, k) => double.IsNaN(s) ? -1 : problem.Column($"missed {k}", 0, 4, s)).ToArray();
        for (var k = 0; k < Cones.Count; k++)
        {
            Row(problem, k, Cones[k].Mean, per, misses);
        }

        foreach (var (cone, row) in tangents)
        {
            Row(problem, cone, row, per, misses);
        }

        return problem;
    }

    /// <summary>Shares from the columns of an answer; whole steps are made exactly whole.</summary>
    public double[] SharesOf(LinearAnswer answer)
    {
        var shares = new double[spec.Bins.Count];
        for (var j = 0; j < shares.Length; j++)
        {
            shares[j] = step > 0 ? Math.Round(answer.Values[j]) * step : Math.Abs(answer.Values[j]) < 1e-11 ? 0 : answer.Values[j];
        }

        return shares;
    }

    private void Row(LinearProblem problem, int cone, double[] coefficients, double per, int[]? misses)
    {
        var row = problem.Row($"end {cone}, {problem.Rows.Count}", 0, double.PositiveInfinity);
        for (var j = 0; j < coefficients.Length; j++)
        {
            problem.Put(row, j, Sharp(problem) * coefficients[j] * per / Cones[cone].Size);
        }

        if (misses is not null && misses[cone] >= 0)
        {
            problem.Put(row, misses[cone], Sharp(problem));
        }
    }

    // Branch and bound lets a row be missed by a millionth: rows are written larger, so that a millionth of a row is less of a limit.
    private static double Sharp(LinearProblem problem) => problem.HasWhole ? 1000 : 1;

    private void Shares(LinearProblem problem, double per)
    {
        foreach (var part in spec.Classes)
        {
            var row = problem.Row($"share of {part.Class}", part.Least / per, part.Most / per);
            for (var j = 0; j < spec.Bins.Count; j++)
            {
                problem.Put(row, j, string.Equals(spec.Bins[j].Class, part.Class, StringComparison.OrdinalIgnoreCase) ? 1 : 0);
            }
        }
    }

    private void Gates(LinearProblem problem, double per)
    {
        var leastOpen = LeastOpen / per;
        var most = gates ? spec.Gates.MostGates ?? spec.Bins.Count : spec.Bins.Count;
        if (most >= spec.Bins.Count && leastOpen <= (step > 0 ? 1 : 0))
        {
            return;
        }

        var open = problem.Row("open gates", 0, most);
        for (var j = 0; j < spec.Bins.Count; j++)
        {
            var locked = spec.Bins[j].LockedShare is not null;
            var gate = problem.Column($"open {spec.Bins[j].Code}", least[j] > 0 ? 1 : 0, this.most[j] > 0 ? 1 : 0, 0, whole: true);
            var upper = problem.Row($"shut {j}", double.NegativeInfinity, 0);
            problem.Put(upper, j, 1);
            problem.Put(upper, gate, -this.most[j]);
            problem.Put(open, gate, 1);
            if (!locked && leastOpen > 0)
            {
                var lower = problem.Row($"open {j}", 0, double.PositiveInfinity);
                problem.Put(lower, j, 1);
                problem.Put(lower, gate, -leastOpen);
            }
        }
    }
}
