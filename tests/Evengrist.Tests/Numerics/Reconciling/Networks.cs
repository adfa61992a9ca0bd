using Evengrist.Numerics.Reconciling;

namespace Evengrist.Tests.Numerics.Reconciling;

/// <summary>Questions to reconcile, written as rows of numbers.</summary>
internal static class Networks
{
    /// <summary>Splitter with a bypass: the data file names "Data Reconciliation and Gross Error Detection" (2000). Set P4 of the public collection EDSONCV/dr-ged-benchmarks; solved anew by us.</summary>
    public static readonly ReconcileSpec Bypass = Linear(
        [101.91, 64.45, 34.65, 64.20, 36.44, 98.88], [1, 1, 1, 1, 1, 1],
        [1, -1, -1, 0, 0, 0], [0, 1, 0, -1, 0, 0], [0, 0, 1, 0, -1, 0], [0, 0, 0, 1, 1, -1]);

    /// <summary>Set P2 of the same collection, which names Chemical Engineering Journal 84 (2001) 309; solved anew by us.</summary>
    public static readonly ReconcileSpec ThreeUnits = Linear(
        [11, 9.9, 21.25, 11.1, 7, 3.8], [0.032, 0.026, 0.120, 0.033, 0.052, 0.015],
        [1, 1, -1, 0, 0, 0], [0, -1, 1, -1, 0, 0], [0, 0, 0, 1, -1, -1]);

    /// <summary>Set P5 of the same collection, which names Computers and Chemical Engineering 19S (1995) S217, with a gross error; solved anew by us.</summary>
    public static readonly ReconcileSpec WithGrossError = Linear(
        [110.1, 41.1, 79, 30.6, 108.3, 19.8, 55, 39], [3.234, 1.803, 1.665, 0.999, 3.129, 0.418, 3.228, 1.623],
        [1, -1, 0, 0, 0, 0, -1, 0], [0, 1, -1, 0, 0, 0, 0, 1], [0, 0, 1, 1, -1, 0, 0, 0], [0, 0, 0, 0, 0, -1, 1, -1]);

    /// <summary>A mill's dry flows and ash, made up by us.</summary>
    public static readonly ReconcileSpec Mill = Flows(
        [("wheat", 9.95, 0.05, [(1.72, 0.03)]), ("flour", 7.62, 0.08, [(0.56, 0.01)]), ("bran", 1.30, 0.03, [(6.40, 0.10)]), ("shorts", 0.98, 0.03, [(3.90, 0.08)]), ("germ", 0.07, 0.005, [(4.60, 0.10)])]);

    /// <summary>A distillation column, as a university's module gives it (a copy of "Basic Concepts in Data Reconciliation", chapter 4). Its own answer was not seen; solved by us.</summary>
    public static readonly ReconcileSpec Column = Flows(
        [("F1", 1095.475, 4.8, [(0.4822, 0.0048), (0.5170, 0.0052)]), ("F2", 478.402, 3.9, [(0.9410, 0.0094), (0.0501, 0.0005)]), ("F3", 488.232, 4.4, [(0.0197, 0.0002), (0.9748, 0.0097)])], mass: false, sums: true);

    /// <summary>Rows of factors over measured values with their variances.</summary>
    public static ReconcileSpec Linear(double[] values, double[] variances, params double[][] rows) => new(
        [.. values.Select((v, i) => new Unknown($"{i + 1}", v, Math.Sqrt(variances[i])))],
        [.. rows.Select((r, n) => new Constraint($"row {n + 1}", [.. r.Index().Where(f => f.Item != 0).Select(f => new Term(f.Item, f.Index))]))]);

    /// <summary>One flow in, the others out, each with the shares of its components.</summary>
    private static ReconcileSpec Flows((string Name, double Flow, double U, (double Share, double U)[] Parts)[] streams, bool mass = true, bool sums = false)
    {
        var parts = streams[0].Parts.Length;
        var (n, constraints) = (streams.Length, new List<Constraint>());
        double Sign(int i) => i == 0 ? 1 : -1;
        Unknown[] unknowns =
        [
            .. streams.Select(s => new Unknown(s.Name, s.Flow, s.U)),
            .. Enumerable.Range(0, parts).SelectMany(p => streams.Select(s => new Unknown($"{s.Name} x{p + 1}", s.Parts[p].Share, s.Parts[p].U))),
        ];
        if (mass)
        {
            constraints.Add(new Constraint("mass", [.. streams.Select((_, i) => new Term(Sign(i), i))]));
        }

        constraints.AddRange(Enumerable.Range(0, parts).Select(p => new Constraint($"component {p + 1}", [.. streams.Select((_, i) => new Term(Sign(i), i, n + (p * n) + i))])));
        if (sums)
        {
            constraints.AddRange(streams.Select((s, i) => new Constraint($"sum of {s.Name}", [.. Enumerable.Range(0, parts).Select(p => new Term(1, n + (p * n) + i))], 1)));
        }

        return new ReconcileSpec(unknowns, constraints);
    }
}
