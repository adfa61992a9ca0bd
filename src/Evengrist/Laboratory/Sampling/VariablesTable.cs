namespace Evengrist.Laboratory.Sampling;

/// <summary>Plans by variables of MIL-STD-414, standard deviation not known, one limit, form 1: accepted where (limit − mean)/s is at least k on the good side. Those limits that were read here.</summary>
/// <remarks>Public domain; read through R package Planesmuestra 0.1, which names it. Letters by lot size are those of MIL-STD-414 and differ from other editions; they are not here: the letter is given.</remarks>
public static class VariablesTable
{
    private const string Letters = "BCDEFGHIJKLMNOPQ";

    private static readonly int[] Sizes = [3, 4, 5, 7, 10, 15, 20, 25, 30, 35, 40, 50, 75, 100, 150, 200];

    private static readonly Dictionary<double, double[]> Factors = new()
    {
        [0.65] = [1.65, 1.65, 1.65, 1.75, 1.84, 1.91, 1.96, 1.98, 2.00, 2.03, 2.03, 2.08, 2.12, 2.14, 2.18, 2.18],
        [1.0] = [1.45, 1.45, 1.53, 1.62, 1.72, 1.79, 1.82, 1.85, 1.86, 1.89, 1.89, 1.93, 1.98, 2.00, 2.03, 2.04],
        [2.5] = [1.12, 1.17, 1.24, 1.33, 1.41, 1.47, 1.51, 1.53, 1.55, 1.57, 1.58, 1.61, 1.65, 1.67, 1.70, 1.70],
    };

    /// <summary>The plan; null where it is not here. A tightened plan is the normal one at the next lower limit of the standard, known here for 1.0 alone (0.65).</summary>
    /// <param name="letter">B to Q, by MIL-STD-414.</param>
    /// <param name="limitPercent">0.65, 1.0 or 2.5.</param>
    /// <param name="tightened">Whether tightened.</param>
    public static VariablesPlan? Of(char letter, double limitPercent, bool tightened)
    {
        var limit = !tightened ? limitPercent : limitPercent == 1.0 ? 0.65 : double.NaN;
        var row = Letters.IndexOf(letter, StringComparison.Ordinal);
        return row >= 0 && Factors.TryGetValue(limit, out var factors) ? new(Sizes[row], factors[row], IsSigmaKnown: false) : null;
    }
}
