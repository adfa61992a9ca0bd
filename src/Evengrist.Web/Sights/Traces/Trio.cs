using Evengrist.Tracing;

namespace Evengrist.Web.Sights.Traces;

/// <summary>A sum under each hypothesis, and its least, expected and most.</summary>
/// <param name="Each">Under each hypothesis, in the order of the beliefs.</param>
/// <param name="Least">The least under any.</param>
/// <param name="Expected">The mean, weighed by belief.</param>
/// <param name="Most">The most under any.</param>
public sealed record Trio(IReadOnlyList<double> Each, double Least, double Expected, double Most)
{
    /// <summary>Sums several figures hypothesis by hypothesis.</summary>
    public static Trio Sum(IEnumerable<Spread> spreads, IReadOnlyList<Belief> beliefs) => Of(spreads.Select(s => s.Each), beliefs);

    /// <summary>Sums several rows of figures hypothesis by hypothesis.</summary>
    public static Trio Of(IEnumerable<IReadOnlyList<double>> rows, IReadOnlyList<Belief> beliefs)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(beliefs);
        var each = new double[beliefs.Count];
        foreach (var row in rows)
        {
            for (var h = 0; h < each.Length; h++)
            {
                each[h] += row[h];
            }
        }

        var weight = beliefs.Sum(b => b.Weight);
        return new Trio(each, each.Min(), each.Zip(beliefs, (v, b) => v * b.Weight).Sum() / weight, each.Max());
    }
}
