using Evengrist.Mix;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Mix;

/// <summary>What a search for gates works in: the unit of a gate (a step, or the whole mix where gates move freely), bounds, and the tableau of what is linear.</summary>
internal sealed class GateFrame
{
    private const double Tiny = 1e-9;

    // How near to tight a row has to be to be kept.
    private const double Near = 1e-6;

    // An end may be missed by so many times its size: more than any mix can miss it by.
    private const double MostMissed = 4;
    private readonly double[] costs;
    private readonly List<(int Cone, double[] Row)> tangents = [];
    private readonly (double[] Is, double Least, double Most)[] classes;

    /// <param name="spec">What is wanted, without faults.</param>
    /// <param name="cones">The ends of its limits.</param>
    /// <param name="costs">Cost of each bin.</param>
    /// <param name="slack">Cost of missing each end; not a number for those that are kept; null where all are.</param>
    /// <param name="gates">Whether steps, number and least opening are kept.</param>
    public GateFrame(MixSpec spec, IReadOnlyList<Cone> cones, double[] costs, double[]? slack, bool gates)
    {
        (Bins, this.costs) = (spec.Bins.Count, costs);
        (Cones, Unit) = (cones, gates ? spec.StepShare ?? 1 : 1);
        HasMargins = cones.Any(c => c.HasMargin);
        IsStepped = gates && spec.StepShare is not null;
        MostOpen = gates ? spec.Gates.MostGates ?? Bins : Bins;
        LeastOpen = [.. spec.Bins.Select(b => gates && b.LockedShare is null ? Up(spec.LeastOpen) : 0)];
        var (least, most) = (new double[Bins], new double[Bins]);
        for (var j = 0; j < Bins; j++)
        {
            var bin = spec.Bins[j];
            (least[j], most[j]) = bin.LockedShare is { } locked ? (Up(locked), locked <= spec.MostOf(bin) + Tiny ? Up(locked) : -1) : (Up(Math.Max(0, bin.LeastShare)), Down(Math.Min(1, spec.MostOf(bin))));
        }

        Root = new GateNode(least, most, [.. least.Select(l => l > 0)]);
        Missing = slack is null ? [] : [.. Enumerable.Range(0, slack.Length).Where(k => !double.IsNaN(slack[k]))];
        Tableau = new DenseSimplex([.. costs.Select(c => c * Unit), .. Missing.Select(k => slack![k])], [.. least, .. Missing.Select(_ => 0.0)], [.. most.Select(m => Math.Max(m, 0)), .. Missing.Select(_ => MostMissed)]);
        Tableau.Row(Wide(Enumerable.Repeat(1.0, Bins)), 1 / Unit, 1 / Unit);
        classes = [.. spec.Classes.Select(part => (spec.Bins.Select(b => string.Equals(b.Class, part.Class, StringComparison.OrdinalIgnoreCase) ? 1.0 : 0).ToArray(), part.Least / Unit, part.Most / Unit))];
        foreach (var (isOf, lowest, highest) in classes)
        {
            Tableau.Row(Wide(isOf), lowest, highest);
        }

        for (var k = 0; k < cones.Count; k++)
        {
            Tableau.Row(Scaled(k, cones[k].Mean), 0, double.PositiveInfinity);
        }
    }

    public int Bins { get; }

    public IReadOnlyList<Cone> Cones { get; }

    /// <summary>Share of one unit.</summary>
    public double Unit { get; }

    public bool IsStepped { get; }

    public int MostOpen { get; }

    /// <summary>Least that an open gate gives, units.</summary>
    public double[] LeastOpen { get; }

    public GateNode Root { get; }

    /// <summary>Ends that may be missed, in the order of their columns behind the bins.</summary>
    public int[] Missing { get; }

    /// <summary>All that is linear, with the tangents found so far.</summary>
    public DenseSimplex Tableau { get; }

    /// <summary>Whether a bin's own bounds clash.</summary>
    public bool IsCrossed => Root.Least.Zip(Root.Most).Any(b => b.First > b.Second + Tiny);

    /// <summary>Whether any end is not linear.</summary>
    public bool HasMargins { get; }

    /// <summary>Whether there is more to it than what is linear.</summary>
    public bool HasGates => IsStepped || MostOpen < Bins || LeastOpen.Any(l => l > 0);

    /// <summary>Adds a tangent to a tableau for each end missed by more than is let pass; gives the greatest such miss, 0 where there is none.</summary>
    public double Cut(DenseSimplex tableau, double[] values, double let)
    {
        var (shares, most) = (SharesOf(values), 0.0);
        for (var k = 0; k < Cones.Count; k++)
        {
            if (Cones[k].HasMargin && Missed(k, shares, values) is var miss && miss > let)
            {
                var row = Cones[k].Tangent(shares);
                tableau.Row(Scaled(k, row), 0, double.PositiveInfinity);
                most = Math.Max(most, miss);
                if (tableau == Tableau)
                {
                    tangents.Add((k, row));
                }
            }
        }

        return most;
    }

    /// <summary>Takes over those rows of another frame that are nearly tight at its answer: the others would only be carried along.</summary>
    public void AddTight(GateFrame other, double[] shares)
    {
        foreach (var (cone, row) in other.tangents.Where(r => r.Row.Zip(shares, (a, x) => a * x).Sum() < Near * Cones[r.Cone].Size))
        {
            Tableau.Row(Scaled(cone, row), 0, double.PositiveInfinity);
        }
    }

    /// <summary>Shares of the bins.</summary>
    public double[] SharesOf(double[] values)
    {
        var shares = new double[Bins];
        for (var j = 0; j < shares.Length; j++)
        {
            shares[j] = Math.Abs(values[j]) < 1e-11 ? 0 : values[j] * Unit;
        }

        return shares;
    }

    // By how much an end is missed beyond what was paid for, relative to its size; 0 or below where it is kept.
    private double Missed(int cone, double[] shares, double[] values) =>
        -Cones[cone].Slack(shares) - (Array.IndexOf(Missing, cone) is var m and >= 0 ? values[Bins + m] : 0);

    /// <summary>Cost of one unit of a bin.</summary>
    public double CostOfOne(int bin) => costs[bin] * Unit;

    /// <summary>Cost of a mix.</summary>
    public double CostOf(double[] values) => Enumerable.Range(0, Bins).Sum(j => costs[j] * Unit * values[j]);

    /// <summary>Whether a mix in whole steps lies in a part and keeps every end, class and gate.</summary>
    public bool Keeps(GateNode node, double[] values)
    {
        var open = 0;
        for (var j = 0; j < Bins; j++)
        {
            if (values[j] < node.Least[j] - Tiny || values[j] > node.Most[j] + Tiny || (values[j] > Tiny && values[j] < LeastOpen[j] - Tiny))
            {
                return false;
            }

            open += values[j] > Tiny ? 1 : 0;
        }

        var shares = SharesOf(values);
        return open <= MostOpen && Cones.All(c => c.Slack(shares) >= -Tiny)
            && classes.All(c => c.Is.Zip(values, (i, v) => i * v).Sum() is var sum && sum >= c.Least - Tiny && sum <= c.Most + Tiny);
    }

    // A row of an end, scaled to its size.
    private double[] Scaled(int cone, double[] row)
    {
        var (wide, by) = (new double[Bins + Missing.Length], Unit / Cones[cone].Size);
        for (var j = 0; j < Bins; j++)
        {
            wide[j] = by * row[j];
        }

        if (Array.IndexOf(Missing, cone) is var m and >= 0)
        {
            wide[Bins + m] = 1;
        }

        return wide;
    }

    private double[] Wide(IEnumerable<double> bins) => [.. bins, .. new double[Missing.Length]];

    private double Up(double share) => IsStepped ? Math.Ceiling((share / Unit) - 1e-6) : share / Unit;

    private double Down(double share) => IsStepped ? Math.Floor((share / Unit) + 1e-6) : share / Unit;
}
