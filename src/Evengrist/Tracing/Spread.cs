using System.Globalization;

namespace Evengrist.Tracing;

/// <summary>One figure under each hypothesis, and what is believed of it.</summary>
/// <remarks>Unit: that of the figure; a share as a fraction, a mass in grams. Least and most are over the hypotheses asked, so they
/// bound the truth only as far as one of them holds.</remarks>
public sealed class Spread
{
    private readonly double[] each;

    internal Spread(double[] each, IReadOnlyList<Belief> beliefs)
    {
        this.each = each;
        double sum = 0, weight = 0;
        for (var i = 0; i < each.Length; i++)
        {
            sum += each[i] * beliefs[i].Weight;
            weight += beliefs[i].Weight;
        }

        Expected = sum / weight;
        Least = each.Min();
        Most = each.Max();
    }

    /// <summary>Under each hypothesis, in the order of the beliefs.</summary>
    public IReadOnlyList<double> Each => each;

    /// <summary>The least under any hypothesis.</summary>
    public double Least { get; }

    /// <summary>The mean, weighed by belief.</summary>
    public double Expected { get; }

    /// <summary>The most under any hypothesis: the cautious figure.</summary>
    public double Most { get; }

    /// <summary>Least, expected and most.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Least:G6} / {Expected:G6} / {Most:G6}");
}
