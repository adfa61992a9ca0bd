using System.Globalization;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Reads values a person typed into one field, parted by blanks or semicolons, digits kept.</summary>
internal static class TypedValues
{
    private static readonly char[] Parts = [' ', ';', '\t', '\u00a0'];

    /// <summary>The values; a fault is said for each that is none, and where there is none at all.</summary>
    /// <param name="what">What they are, as a sentence begins.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="faults">Takes the faults.</param>
    public static IReadOnlyList<decimal> Read(string what, string? text, ICollection<string> faults)
    {
        var values = new List<decimal>();
        foreach (var part in (text ?? "").Split(Parts, StringSplitOptions.RemoveEmptyEntries))
        {
            if (decimal.TryParse(part, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value))
            {
                values.Add(value);
            }
            else
            {
                faults.Add($"{what}: \"{part}\" is no number; write a point as decimal mark, and a blank between two values.");
            }
        }

        if (string.IsNullOrWhiteSpace(text))
        {
            faults.Add($"{what}: nothing was typed.");
        }

        return values;
    }
}
