using System.Globalization;

namespace Evengrist.Web.Sights.Bins;

/// <summary>Reads a number that a person typed, and says what was wrong with it.</summary>
public static class TypedNumber
{
    /// <summary>The number; null where nothing was typed, or where it is a fault, which is then said.</summary>
    /// <param name="what">What it is, as a sentence begins: <c>The ullage, m</c>.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="faults">Takes the fault.</param>
    /// <param name="least">The least it can be.</param>
    /// <param name="most">The most it can be.</param>
    /// <param name="demanded">Whether nothing typed is a fault.</param>
    public static double? Read(string what, string? text, ICollection<string> faults, double least = double.NegativeInfinity, double most = double.PositiveInfinity, bool demanded = false)
    {
        ArgumentNullException.ThrowIfNull(faults);
        if (string.IsNullOrWhiteSpace(text))
        {
            if (demanded)
            {
                faults.Add($"{what} is missing.");
            }

            return null;
        }

        if (!double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
        {
            faults.Add($"{what} is a number with a point as decimal mark; read \"{text.Trim()}\".");
            return null;
        }

        if (number >= least && number <= most)
        {
            return number;
        }

        faults.Add(FormattableString.Invariant($"{what} lies {(double.IsPositiveInfinity(most) ? $"at {least} or above" : $"from {least} to {most}")}; read {number}. Is the unit right?"));
        return null;
    }
}
