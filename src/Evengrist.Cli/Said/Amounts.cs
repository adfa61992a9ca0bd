using System.Globalization;
using Evengrist.Plant.Answers;
using Evengrist.Quantities;

namespace Evengrist.Cli.Said;

/// <summary>Numbers in words.</summary>
internal static class Amounts
{
    public static string Kilograms(double kilograms) => kilograms.ToString("#,##0.0", CultureInfo.InvariantCulture);

    public static string Kilograms(Mass mass) => mass.Kilograms.ToString("#,##0.###", CultureInfo.InvariantCulture);

    public static string Tonnes(double tonnes) => tonnes.ToString("#,##0.00", CultureInfo.InvariantCulture);

    public static string Tonnes(decimal tonnes) => tonnes.ToString("#,##0.###", CultureInfo.InvariantCulture);

    public static string Share(double fraction) => (fraction * 100).ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>A number with so many decimals; empty for none.</summary>
    public static string Number(double? number, int decimals) => number?.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) ?? "";

    /// <summary>A change with its sign, the true minus.</summary>
    public static string Signed(double number, int decimals) => Math.Round(number, decimals) is var rounded && rounded == 0 ? Number(0, decimals) : (rounded > 0 ? "+" : "−") + Number(Math.Abs(rounded), decimals);

    public static string[] Spread(SpreadAnswer spread, Func<double, string> words) => [words(spread.Least), words(spread.Expected), words(spread.Most)];

    /// <summary>A hypothesis in words.</summary>
    public static string Words(string hypothesis) => hypothesis switch
    {
        "firstInFirstOut" => "first in first out",
        "coreFirst" => "core first",
        _ => hypothesis,
    };
}
