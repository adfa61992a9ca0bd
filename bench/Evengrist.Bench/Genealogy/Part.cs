using System.Globalization;

namespace Evengrist.Bench.Genealogy;

/// <summary>How one part of one engine's run went.</summary>
/// <param name="Milliseconds">One figure for each question answered.</param>
/// <param name="Asked">Questions in the set.</param>
/// <param name="Best">Median over the questions of the best round of each; on a busy machine nearer to what the work costs.</param>
/// <param name="Note">Why it is not whole; empty when it is.</param>
internal sealed record Part(IReadOnlyList<double> Milliseconds, int Asked, double Best = double.NaN, string Note = "")
{
    public double Median => MedianOf(Milliseconds);

    public static double MedianOf(IEnumerable<double> figures)
    {
        var sorted = figures.Order().ToArray();
        return sorted.Length == 0 ? double.NaN : (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }

    public string RatioTo(Part other) =>
        Milliseconds.Count == 0 ? "-" : string.Create(CultureInfo.InvariantCulture, $"{Median / other.Median:#,##0.#}");

    public override string ToString() => Milliseconds.Count == 0
        ? Note
        : string.Create(CultureInfo.InvariantCulture, $"{Median:#,##0.000} ({Milliseconds.Count} of {Asked})");
}
