using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Mix.Sheets;
using NodaTime;

namespace Evengrist.Web.Sights.Mix;

/// <summary>Numbers and names of mix sheets in words.</summary>
public static class MixWords
{
    /// <summary>Cautions of whoever acts at bins and gates.</summary>
    public const string Caution = "Nobody enters a bin while grain is drawn, nor without the mill's permit. Before a hand goes to a gate, a feeder or a spout: lock out and tag out by the mill's own rules, which go before this sheet.";

    /// <summary>A number with so many decimals and a true minus.</summary>
    public static string N(double value, int decimals) => value.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).Replace('-', '−');

    /// <summary>A difference with its sign.</summary>
    public static string Signed(double value, int decimals) => (Math.Round(value, decimals) > 0 ? "+" : "") + N(Math.Round(value, decimals) + 0.0, decimals);

    /// <summary>Words as a sentence or a heading begins.</summary>
    public static string Capital(string words)
    {
        ArgumentException.ThrowIfNullOrEmpty(words);
        return char.ToUpperInvariant(words[0]) + words[1..];
    }

    /// <summary>Decimals of a property.</summary>
    public static int Decimals(Property what) => BlendRules.Of(what)?.Decimals ?? 2;

    /// <summary>Unit and basis: <c>% 12mb</c>.</summary>
    public static string Unit(Property what, Quantities.Basis basis) => $"{Readings.UnitsOf(what)[0]}{(basis.IsStated ? " " + basis : "")}";

    /// <summary>What a limit asks: <c>13.1 to 13.7</c>, <c>at least 320</c>.</summary>
    public static string Span(SheetLimit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return limit switch
        {
            { Least: { } least, Most: { } most } => FormattableString.Invariant($"{least:0.###} to {most:0.###}"),
            { Least: { } least } => FormattableString.Invariant($"at least {least:0.###}"),
            { Most: { } most } => FormattableString.Invariant($"at most {most:0.###}"),
            _ => "",
        };
    }

    /// <summary>Whether an expected value lies within a limit.</summary>
    public static bool Keeps(SheetLimit limit, SheetExpected expected)
    {
        ArgumentNullException.ThrowIfNull(limit);
        ArgumentNullException.ThrowIfNull(expected);
        return !(expected.Value < limit.Least - 1e-6 || expected.Value > limit.Most + 1e-6);
    }

    /// <summary>The gates in a line: <c>B06 49 · B04 51</c>.</summary>
    public static string Gates(MixSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return string.Join(" · ", sheet.Gates.Select(g => FormattableString.Invariant($"{g.Bin} {g.SharePercent:0.##}")));
    }

    /// <summary>A day: <c>14 Jan 2026</c>.</summary>
    public static string Day(LocalDate day) => day.ToString("ddd d MMM uuuu", CultureInfo.InvariantCulture);
}
