namespace Evengrist.Laboratory.Sampling;

/// <summary>Plans by variables of MIL-STD-414, standard deviation not known, one limit, form 1: accepted where (limit − mean)/s is at least k on the good side.</summary>
/// <remarks>
/// Public domain. Factors of 0.65, 1.0 and 2.5 % read through R package Planesmuestra 0.1; those of B to J at the other limits read in a public copy made from the scan; the rest, and the arrows, from memory (<see cref="IsRead"/>).
/// Reduced plans are not here. Model: docs/model/acceptance-sampling.md.
/// </remarks>
public static class VariablesTable
{
    /// <summary>Code letters, B to Q with I and O.</summary>
    public const string Letters = "BCDEFGHIJKLMNOPQ";

    /// <summary>Levels; IV where nothing else was agreed.</summary>
    public static IReadOnlyList<string> Levels { get; } = ["I", "II", "III", "IV", "V"];

    /// <summary>Acceptance quality limits that are here, per cent.</summary>
    public static IReadOnlyList<double> Limits { get; } = [0.65, 1.0, 1.5, 2.5, 4.0, 6.5, 10];

    private static readonly int[] Sizes = [3, 4, 5, 7, 10, 15, 20, 25, 30, 35, 40, 50, 75, 100, 150, 200];

    // Lot sizes of MIL-STD-414, table A-2: from memory, and equal in five public copies that are not independent of each other.
    private static readonly (int Most, string Letters)[] Lots =
    [
        (8, "BBBBC"), (15, "BBBBD"), (25, "BBBCE"), (40, "BBBDF"), (65, "BBCEG"), (110, "BBDFH"), (180, "BCEGI"), (300, "BDFHJ"), (500, "CEGIK"), (800, "DFHJL"), (1300, "EGIKL"), (3200, "FHJLM"),
        (8000, "GILMN"), (22_000, "HJMNO"), (110_000, "IKNOP"), (550_000, "IKOPQ"), (int.MaxValue, "IKPQQ"),
    ];

    // NaN is an arrow down: the next letter's plan, its size too.
    private static readonly Dictionary<double, double[]> Factors = new()
    {
        [0.65] = [double.NaN, double.NaN, 1.65, 1.75, 1.84, 1.91, 1.96, 1.98, 2.00, 2.03, 2.03, 2.08, 2.12, 2.14, 2.18, 2.18],
        [1.0] = [double.NaN, 1.45, 1.53, 1.62, 1.72, 1.79, 1.82, 1.85, 1.86, 1.89, 1.89, 1.93, 1.98, 2.00, 2.03, 2.04],
        [1.5] = [double.NaN, 1.34, 1.40, 1.50, 1.58, 1.65, 1.69, 1.72, 1.73, 1.76, 1.76, 1.80, 1.84, 1.86, 1.89, 1.89],
        [2.5] = [1.12, 1.17, 1.24, 1.33, 1.41, 1.47, 1.51, 1.53, 1.55, 1.57, 1.58, 1.61, 1.65, 1.67, 1.70, 1.70],
        [4.0] = [.958, 1.01, 1.07, 1.15, 1.23, 1.30, 1.33, 1.35, 1.36, 1.39, 1.39, 1.42, 1.46, 1.48, 1.51, 1.51],
        [6.5] = [.765, .814, .874, .955, 1.03, 1.09, 1.12, 1.14, 1.15, 1.18, 1.18, 1.21, 1.24, 1.26, 1.29, 1.29],
        [10] = [.566, .617, .675, .755, .828, .886, .917, .936, .946, .969, .971, 1.00, 1.03, 1.05, 1.07, 1.07],
    };

    /// <summary>The letter of a lot.</summary>
    /// <param name="lot">Units in the lot, 3 or more.</param>
    /// <param name="level">One of <see cref="Levels"/>.</param>
    /// <exception cref="ArgumentException">The lot is smaller than 3, or there is no such level.</exception>
    public static char LetterOf(int lot, string level)
    {
        var column = Levels.TakeWhile(l => l != level).Count();
        return lot < 3 || column == Levels.Count ? throw new ArgumentException($"Lots are of 3 units or more and levels are {string.Join(", ", Levels)}; got {lot}, {level}.", nameof(lot)) : Lots.First(r => lot <= r.Most).Letters[column];
    }

    /// <summary>Whether the factor of a normal plan was read; else it is from memory.</summary>
    public static bool IsRead(char letter, double limitPercent) => limitPercent is 0.65 or 1.0 or 2.5 || letter <= 'J';

    /// <summary>The plan; null where it is not here. A tightened plan is the normal one at the next lower limit of the standard, so that there is none here below 1.0 %.</summary>
    /// <param name="letter">One of <see cref="Letters"/>.</param>
    /// <param name="limitPercent">One of <see cref="Limits"/>.</param>
    /// <param name="tightened">Whether tightened.</param>
    public static VariablesPlan? Of(char letter, double limitPercent, bool tightened)
    {
        var (row, column) = (Letters.IndexOf(letter, StringComparison.Ordinal), Limits.TakeWhile(l => l != limitPercent).Count() - (tightened ? 1 : 0));
        if (row < 0 || column < 0 || column + (tightened ? 1 : 0) >= Limits.Count)
        {
            return null;
        }

        var factors = Factors[Limits[column]];
        var found = Array.FindIndex(factors, row, k => !double.IsNaN(k));
        return new(Sizes[found], factors[found], IsSigmaKnown: false);
    }
}
