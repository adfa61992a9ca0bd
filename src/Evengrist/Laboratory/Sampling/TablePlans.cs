using System.Globalization;

namespace Evengrist.Laboratory.Sampling;

/// <summary>Single plans by attributes of MIL-STD-105E, arrows followed, for shares of bad units up to a limit of 10 %.</summary>
/// <remarks>
/// Public domain. The table runs along diagonals: a step to the next letter and a step to the next lower limit give the same numbers; two steps hold an arrow. That structure and its numbers are from memory; they give every plan that was read
/// (<see cref="IsRead"/>), and tightened plans accept less and reduced ones more than normal ones at every limit, as they must. ISO 2859-1 and ANSI/ASQ Z1.4 descend from it; their reduced plans differ. Model: docs/model/acceptance-sampling.md.
/// </remarks>
public static class TablePlans
{
    /// <summary>Acceptance quality limits, per cent of bad units.</summary>
    public static IReadOnlyList<double> Limits { get; } = [0.010, 0.015, 0.025, 0.040, 0.065, 0.10, 0.15, 0.25, 0.40, 0.65, 1.0, 1.5, 2.5, 4.0, 6.5, 10];

    /// <summary>Code letters in the order of their sizes; I and O are left out. S is met by arrows of tightened plans alone.</summary>
    public const string Letters = "ABCDEFGHJKLMNPQR";

    private const string Up = "up", Down = "down";
    private static readonly int[] Sizes = [2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800, 1250, 2000, 3150], ReducedSizes = [2, 2, 2, 3, 5, 8, 13, 20, 32, 50, 80, 125, 200, 315, 500, 800];

    // Place of the letter plus place of the limit, less where the diagonal that accepts with none begins.
    private static readonly Dictionary<Severity, (int First, int[] Sizes, string[] Steps)> Diagonals = new()
    {
        [Severity.Normal] = (14, Sizes[..^1], ["0/1", Up, Down, "1/2", "2/3", "3/4", "5/6", "7/8", "10/11", "14/15", "21/22"]),
        [Severity.Tightened] = (15, Sizes, ["0/1", Down, Down, "1/2", "2/3", "3/4", "5/6", "8/9", "12/13", "18/19"]),
        [Severity.Reduced] = (14, ReducedSizes, ["0/1", Up, Down, "0/2", "1/3", "1/4", "2/5", "3/6", "5/8", "7/10", "10/13"]),
    };

    /// <summary>Whether a plan was read, through R package AQLSchemes 1.7-2 or a public copy typed from the scan of the standard; else it follows from the diagonals.</summary>
    public static bool IsRead(Severity severity, char letter, double limitPercent) => limitPercent is >= 0.65 and <= 6.5 && severity switch
    {
        Severity.Normal => letter is >= 'C' and <= 'N',
        Severity.Tightened => letter is 'G' or 'J' or 'K',
        Severity.Reduced => letter is 'J' or 'K',
        _ => false,
    };

    /// <summary>The plan; null where there is no such letter or limit, or looking is stopped.</summary>
    /// <param name="severity">How severe.</param>
    /// <param name="letter">Of the lot and level.</param>
    /// <param name="limitPercent">One of <see cref="Limits"/>.</param>
    public static TablePlan? Of(Severity severity, char letter, double limitPercent)
    {
        var (row, column) = (Letters.IndexOf(letter, StringComparison.Ordinal), Limits.TakeWhile(l => l != limitPercent).Count());
        if (row < 0 || column == Limits.Count || !Diagonals.TryGetValue(severity, out var diagonal))
        {
            return null;
        }

        var (first, sizes, steps) = diagonal;
        var step = Math.Clamp(row + column - first, 0, steps.Length - 1);
        var (above, below) = (LastPlan(steps, step), NextPlan(steps, step));
        int Row(int plan) => first + plan - column;

        // An arrow leads to the next plan of the column it points at; where the table ends there, to the other side.
        var found = steps[step] == Up && Row(above) >= 0 || Row(below) >= sizes.Length ? above : below;
        var parts = steps[found].Split('/');
        int At(int i) => int.Parse(parts[i], CultureInfo.InvariantCulture);
        return new(severity, letter, limitPercent, new(sizes[Row(found)], At(0)), At(1));
    }

    private static int LastPlan(string[] steps, int from) => Array.FindLastIndex(steps, from, s => s is not (Up or Down));

    private static int NextPlan(string[] steps, int from) => Array.FindIndex(steps, from, s => s is not (Up or Down));
}
