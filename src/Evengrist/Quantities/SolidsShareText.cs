using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>Reads a share of solids from text and says what is missing where it cannot.</summary>
internal static class SolidsShareText
{
    private const string Example = "for example 13.1 % 12mb";

    public static bool TryRead(string? text, out SolidsShare share, out string fault)
    {
        share = default;
        var rest = (text ?? "").Trim();
        var digits = rest.Length - rest.TrimStart("+-.0123456789".ToCharArray()).Length;
        if (!decimal.TryParse(rest[..digits], NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value))
        {
            fault = $"\"{text}\" does not begin with a number with a decimal point; write a number, its unit and its basis, {Example}.";
            return false;
        }

        rest = rest[digits..].TrimStart();
        if (UnitAt(ref rest) is not { } unit)
        {
            fault = $"\"{text}\" has no unit; write %, mg/kg or ppm and a basis, {Example}.";
            return false;
        }

        if (!Basis.TryParse(rest, out var basis))
        {
            fault = rest.Length == 0
                ? $"\"{text}\" has no moisture basis; add dry, 12mb, 14mb or another, {Example}."
                : $"\"{rest}\" is not a moisture basis; write dry, 12mb, 14mb or another, {Example}.";
            return false;
        }

        try
        {
            share = unit == ShareUnit.Percent ? SolidsShare.Percent(value, basis) : SolidsShare.MilligramsPerKilogram(value, basis);
            fault = "";
            return true;
        }
        catch (Exception e) when (e is ArgumentOutOfRangeException or OverflowException)
        {
            fault = $"\"{text}\" cannot be: a share lies from 0 to all of the dry matter.";
            return false;
        }
    }

    private static ShareUnit? UnitAt(ref string rest)
    {
        foreach (var (word, unit) in new[] { ("%", ShareUnit.Percent), ("mg/kg", ShareUnit.MilligramsPerKilogram), ("ppm", ShareUnit.MilligramsPerKilogram) })
        {
            if (rest.StartsWith(word, StringComparison.OrdinalIgnoreCase))
            {
                rest = rest[word.Length..].Trim();
                return unit;
            }
        }

        return null;
    }
}
