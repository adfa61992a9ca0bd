using System.Globalization;
using Evengrist.Streams.Dividing;

namespace Evengrist.Web.Sights.Streams;

/// <summary>One line of a survey, its cells by their headings.</summary>
/// <param name="Line">Its number, from 1.</param>
/// <param name="Columns">The headings.</param>
/// <param name="Cells">The cells, at most as many.</param>
/// <param name="Faults">Where what cannot be read is noted.</param>
internal sealed record SurveyLine(int Line, string[] Columns, string[] Cells, List<string> Faults)
{
    /// <summary>The cell below a heading; empty where there is none.</summary>
    public string this[string heading] => Array.IndexOf(Columns, heading) is var at and >= 0 && at < Cells.Length ? Cells[at] : "";

    /// <summary>The number below a heading; null where the cell is empty or cannot be read.</summary>
    public double? Number(string heading, bool isNeeded = false)
    {
        if (this[heading] is not { } cell || (cell.Length == 0 && !isNeeded))
        {
            return null;
        }

        if (double.TryParse(cell, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
        {
            return number;
        }

        Faults.Add($"Line {Line}, {heading}: a number such as 0.45 is needed; read “{cell}”.");
        return null;
    }

    /// <summary>What the line says of the spout; null where it says nothing.</summary>
    public StreamValve? Valve(string stream)
    {
        if (this["splits"] is { Length: > 0 } splits && splits is not ("yes" or "no"))
        {
            Faults.Add($"Line {Line}, splits: yes or no is needed; read “{splits}”.");
        }

        var (flour, may, locked) = (this["flour"], this["may"], this["locked"]);
        return flour.Length + may.Length + locked.Length == 0 && this["splits"] != "yes" ? null : new StreamValve(stream)
        {
            Now = flour.Length > 0 ? flour : null, Locked = locked.Length > 0 ? locked : null, Splits = this["splits"] == "yes",
            May = may.Length > 0 ? may.Split(['+', '/'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) : null,
        };
    }
}
