using System.Globalization;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Web.Sights.Packing;

/// <summary>Reads fields of a form of several rows, and says beside the field what was wrong.</summary>
internal static class TypedRows
{
    /// <summary>A number; null where it is missing or cannot be, which is then said.</summary>
    /// <param name="typed">Takes the fault.</param>
    /// <param name="field">Name of the field.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="unit">Its unit; empty where it counts.</param>
    /// <param name="least">The least it can be.</param>
    /// <param name="most">The most it can be.</param>
    /// <param name="whole">Whether it is a whole number.</param>
    public static double? Number(this Typed typed, string field, string? text, string unit, double least, double most, bool whole = false)
    {
        var clean = (text ?? "").Trim();
        var span = FormattableString.Invariant($"from {least} to {most}{(unit.Length > 0 ? " " + unit : "")}");
        var fault = clean.Length == 0 ? $"Missing: write a number {span}."
            : !double.TryParse(clean, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) ? $"“{clean}” is no number with a point as decimal mark."
            : whole && number != Math.Floor(number) ? $"It is a whole number; read {clean}."
            : number >= least && number <= most ? null : $"It lies {span}; read {clean}.";
        if (fault is null)
        {
            return double.Parse(clean, CultureInfo.InvariantCulture);
        }

        typed.Fault(field, fault);
        return null;
    }

    /// <summary>The place in a list that an act names after a colon, such as 2 in <c>rule-:2</c>; −1 where it names none.</summary>
    public static int At(string act, int of, int part = 0)
    {
        var parts = act[(act.IndexOf(':', StringComparison.Ordinal) + 1)..].Split('.');
        return parts.Length > part && int.TryParse(parts[part], NumberStyles.None, CultureInfo.InvariantCulture, out var at) && at < of ? at : -1;
    }

    /// <summary>A number as a field shows it.</summary>
    public static string Say(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);
}
