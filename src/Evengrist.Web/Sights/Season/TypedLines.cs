using System.Globalization;

namespace Evengrist.Web.Sights.Season;

/// <summary>Lines of a name and numbers typed into one field, as they come out of a spreadsheet or off a slip of paper.</summary>
public static class TypedLines
{
    private const string Blank = "-";

    /// <summary>Reads the lines of a field; a line that cannot be read is a fault. Cells are parted by spaces, tabs, commas or semicolons; a cell left out before others is a hyphen.</summary>
    /// <param name="fields">The fields.</param>
    /// <param name="key">The field.</param>
    /// <param name="words">What it is called.</param>
    /// <param name="example">A line that can be read.</param>
    /// <param name="least">Fewest numbers behind the name, none of them left out.</param>
    /// <param name="most">Most numbers.</param>
    /// <param name="otherwise">The text where the field did not come.</param>
    public static IReadOnlyList<(string Name, double?[] Numbers)> Of(TypedFields fields, string key, string words, string example, int least, int most, string otherwise = "")
    {
        ArgumentNullException.ThrowIfNull(fields);
        List<(string, double?[])> lines = [];
        foreach (var line in fields.Text(key, otherwise).Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var parts = line.Split((char[])[' ', '\t', ',', ';'], StringSplitOptions.RemoveEmptyEntries);
            double?[] numbers = [.. parts.Skip(1).Select(p => p == Blank ? (double?)null : double.TryParse(p, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) ? n : double.NaN)];
            if (numbers.Length >= least && numbers.Length <= most && numbers.All(n => n is null or not double.NaN) && numbers.Take(least).All(n => n is not null))
            {
                lines.Add((parts[0], [.. numbers, .. new double?[most - numbers.Length]]));
            }
            else
            {
                fields.Fault($"{words}: a line such as “{example}” is needed; read “{line}”.");
            }
        }

        return lines;
    }

    /// <summary>Lines that are read again by <see cref="Of"/>.</summary>
    public static string Text(IEnumerable<(string Name, double?[] Numbers)> lines) => string.Join("\n", lines.Select(l => $"{l.Name} {string.Join(' ', l.Numbers.Select(n => n?.ToString("0.####", CultureInfo.InvariantCulture) ?? Blank))}"));
}
