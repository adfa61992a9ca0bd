using MathNet.Numerics.Distributions;

namespace Evengrist.Laboratory.Bake;

/// <summary>A bake trial in which each dough (batch) of a recipe is divided over several treatments, all combinations once: the table of variance. The dough is what recipes are judged by, not the loaf.</summary>
/// <param name="Recipe">Between recipes, judged by the doughs.</param>
/// <param name="Dough">Doughs within recipes.</param>
/// <param name="Treatment">Between treatments, judged by the rest.</param>
/// <param name="Both">Recipe and treatment together.</param>
/// <param name="Rest">What is left.</param>
public sealed record SplitPlot(VarianceLine Recipe, VarianceLine Dough, VarianceLine Treatment, VarianceLine Both, VarianceLine Rest)
{
    /// <summary>Variance between doughs beyond that within, as restricted likelihood has it for a balanced trial; at least 0.</summary>
    public double DoughVariance => Math.Max(0, (Dough.Mean - Rest.Mean) / (Treatment.Freedom + 1));

    /// <summary>The table.</summary>
    /// <param name="values">By recipe, dough of the recipe and treatment: two or more of each, as many everywhere.</param>
    /// <exception cref="ArgumentException">The trial is not balanced.</exception>
    public static SplitPlot Of(IReadOnlyList<IReadOnlyList<IReadOnlyList<double>>> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count < 2 || values[0].Count < 2 || values[0][0].Count < 2 || values.Any(r => r.Count != values[0].Count || r.Any(d => d.Count != values[0][0].Count)))
        {
            throw new ArgumentException("Two recipes, doughs and treatments at least are needed, as many of each everywhere.", nameof(values));
        }

        var (a, n, b) = (values.Count, values[0].Count, values[0][0].Count);
        double[] all = [.. values.SelectMany(r => r.SelectMany(d => d))];
        var grand = all.Average();
        double Squares(IEnumerable<double> means, double each) => means.Sum(m => each * (m - grand) * (m - grand));
        var total = Squares(all, 1);
        var recipe = Squares(values.Select(r => r.SelectMany(d => d).Average()), n * b);
        var dough = Squares(values.SelectMany(r => r.Select(d => d.Average())), b) - recipe;
        var treatment = Squares(Enumerable.Range(0, b).Select(t => values.SelectMany(r => r.Select(d => d[t])).Average()), a * n);
        var both = Squares(values.SelectMany(r => Enumerable.Range(0, b).Select(t => r.Average(d => d[t]))), n) - recipe - treatment;
        var rest = new VarianceLine(total - recipe - dough - treatment - both, a * (n - 1) * (b - 1), null, null);
        var doughs = new VarianceLine(dough, a * (n - 1), null, null);
        return new(VarianceLine.Judged(recipe, a - 1, doughs), doughs, VarianceLine.Judged(treatment, b - 1, rest), VarianceLine.Judged(both, (a - 1) * (b - 1), rest), rest);
    }
}

/// <summary>A line of a table of variance.</summary>
/// <param name="Squares">Sum of squares.</param>
/// <param name="Freedom">Degrees of freedom.</param>
/// <param name="F">Against the line it is judged by; null for one that others are judged by.</param>
/// <param name="P">Chance of so much by chance; null likewise.</param>
public sealed record VarianceLine(double Squares, int Freedom, double? F, double? P)
{
    /// <summary>Mean square.</summary>
    public double Mean => Squares / Freedom;

    internal static VarianceLine Judged(double squares, int freedom, VarianceLine by)
    {
        var f = squares / freedom / by.Mean;
        return new(squares, freedom, f, 1 - FisherSnedecor.CDF(freedom, by.Freedom, f));
    }
}
