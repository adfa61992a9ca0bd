using System.Globalization;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Lines of cells parted by semicolons, as people type them into a large field.</summary>
internal static class SemicolonLines
{
    private const NumberStyles Plain = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;

    /// <summary>The lines that are not blank, each with its number from 1.</summary>
    public static IEnumerable<(int Line, string[] Cells)> Of(string? text) => (text ?? "").ReplaceLineEndings("\n").Split('\n').Index()
        .Where(l => !string.IsNullOrWhiteSpace(l.Item)).Select(l => (l.Index + 1, l.Item.Split(';', StringSplitOptions.TrimEntries)));

    /// <summary>The number of a cell; null where it is none, which is then said.</summary>
    /// <param name="where">What begins the sentence: <c>Loaves, line 2</c>.</param>
    /// <param name="what">What it is.</param>
    /// <param name="cell">What was typed.</param>
    /// <param name="faults">Takes the fault.</param>
    public static double? Number(string where, string what, string cell, ICollection<string> faults)
    {
        if (double.TryParse(cell, Plain, CultureInfo.InvariantCulture, out var value))
        {
            return value;
        }

        faults.Add($"{where}: {what} is a number; read \"{cell}\".");
        return null;
    }
}
