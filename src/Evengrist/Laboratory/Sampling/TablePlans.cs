using System.Globalization;

namespace Evengrist.Laboratory.Sampling;

/// <summary>Single plans by attributes of MIL-STD-105E, arrows followed: those letters and limits that were read and checked here; no others are made up.</summary>
/// <remarks>Public domain; read through R package AQLSchemes 1.7-2, which names it. ISO 2859-1 and ANSI/ASQ Z1.4 descend from it; their reduced plans differ.</remarks>
public static class TablePlans
{
    /// <summary>Acceptance quality limits that are here, per cent.</summary>
    public static IReadOnlyList<double> Limits { get; } = [0.65, 1.0, 1.5, 2.5, 4.0, 6.5];

    private static readonly Dictionary<(Severity, char), string> Rows = new()
    {
        [(Severity.Normal, 'D')] = "20 0/1|13 0/1|8 0/1|5 0/1|13 1/2|8 1/2",
        [(Severity.Normal, 'E')] = "20 0/1|13 0/1|8 0/1|20 1/2|13 1/2|13 2/3",
        [(Severity.Normal, 'F')] = "20 0/1|13 0/1|32 1/2|20 1/2|20 2/3|20 3/4",
        [(Severity.Normal, 'G')] = "20 0/1|50 1/2|32 1/2|32 2/3|32 3/4|32 5/6",
        [(Severity.Normal, 'H')] = "80 1/2|50 1/2|50 2/3|50 3/4|50 5/6|50 7/8",
        [(Severity.Normal, 'J')] = "80 1/2|80 2/3|80 3/4|80 5/6|80 7/8|80 10/11",
        [(Severity.Normal, 'K')] = "125 2/3|125 3/4|125 5/6|125 7/8|125 10/11|125 14/15",
        [(Severity.Normal, 'L')] = "200 3/4|200 5/6|200 7/8|200 10/11|200 14/15|200 21/22",
        [(Severity.Tightened, 'G')] = "32 0/1|80 1/2|50 1/2|32 1/2|32 2/3|32 3/4",
        [(Severity.Tightened, 'J')] = "125 1/2|80 1/2|80 2/3|80 3/4|80 5/6|80 8/9",
        [(Severity.Tightened, 'K')] = "125 1/2|125 2/3|125 3/4|125 5/6|125 8/9|125 12/13",
        [(Severity.Reduced, 'J')] = "32 0/2|32 1/3|32 1/4|32 2/5|32 3/6|32 5/8",
        [(Severity.Reduced, 'K')] = "50 1/3|50 1/4|50 2/5|50 3/6|50 5/8|50 7/10",
    };

    /// <summary>Letters that are here for a severity.</summary>
    public static string Letters(Severity severity) => string.Concat(Rows.Keys.Where(k => k.Item1 == severity).Select(k => k.Item2).Order());

    /// <summary>The plan; null where it is not here.</summary>
    /// <param name="severity">How severe.</param>
    /// <param name="letter">Of the lot and level.</param>
    /// <param name="limitPercent">One of <see cref="Limits"/>.</param>
    public static TablePlan? Of(Severity severity, char letter, double limitPercent)
    {
        var column = Limits.TakeWhile(l => l != limitPercent).Count();
        if (column == Limits.Count || !Rows.TryGetValue((severity, letter), out var row))
        {
            return null;
        }

        var parts = row.Split('|')[column].Split(' ', '/');
        int At(int i) => int.Parse(parts[i], CultureInfo.InvariantCulture);
        return new(severity, letter, limitPercent, new(At(0), At(1)), At(2));
    }
}
