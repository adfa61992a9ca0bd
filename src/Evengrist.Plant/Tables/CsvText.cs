using System.Globalization;
using System.Text;

namespace Evengrist.Plant.Tables;

/// <summary>Comma-separated text on its way out: RFC 4180 quoting, units in the head, numbers with a decimal point.</summary>
public sealed class CsvText
{
    private readonly StringBuilder text = new();

    /// <summary>Adds a line.</summary>
    public CsvText Line(params IEnumerable<string> cells)
    {
        text.Append(LineOf(cells)).Append("\r\n");
        return this;
    }

    /// <summary>A line by itself, without its end.</summary>
    public static string LineOf(IEnumerable<string> cells) => string.Join(',', cells.Select(Cell));

    /// <summary>A number as a cell; empty where there is none.</summary>
    public static string Number(decimal? value, int decimals) => value?.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) ?? "";

    /// <summary>The text with the mark that spreadsheets know UTF-8 by.</summary>
    public byte[] ToBytes() => [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text.ToString())];

    /// <summary>The text without it.</summary>
    public override string ToString() => text.ToString();

    // A text that a spreadsheet would take for a formula gets an apostrophe before it.
    private static string Cell(string cell)
    {
        var safe = cell.Length > 0 && "=+-@\t\r".Contains(cell[0], StringComparison.Ordinal) && !decimal.TryParse(cell, CultureInfo.InvariantCulture, out _) ? "'" + cell : cell;
        return safe.AsSpan().IndexOfAny(",\"\r\n") >= 0 ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }
}
