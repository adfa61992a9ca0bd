using CsvHelper;

namespace Evengrist.Plant.Tables;

/// <summary>CSV text (RFC 4180 quoting, no line breaks in cells) parted by <c>;</c>, <c>,</c> or tab, whichever the heading uses.</summary>
internal static class Csv
{
    private static readonly char[] Separators = [';', ',', '\t'];

    public static Parsed<T> Read<T>(string text, Limits limits, Func<IEnumerable<Row>, char?, List<Fault>, Parsed<T>> make)
        where T : class
    {
        var faults = new List<Fault>();
        var separator = SeparatorOf(text);
        return make(Rows(text, separator, limits, faults), separator, faults);
    }

    /// <summary>The mark that parts most cells of the heading line; a comma where there is none.</summary>
    private static char SeparatorOf(string text)
    {
        var heading = "";
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (!line.IsWhiteSpace() && !line.TrimStart("\" ").StartsWith("#"))
            {
                heading = line.ToString();
                break;
            }
        }

        var outside = string.Concat(heading.Split('"').Where((_, i) => i % 2 == 0));
        var best = Separators.MaxBy(s => outside.Count(c => c == s));
        return outside.Contains(best) ? best : ',';
    }

    private static IEnumerable<Row> Rows(string text, char separator, Limits limits, List<Fault> faults)
    {
        var options = new CsvReaderOptions
        {
            Separator = separator,
            HasHeader = false,
            AllowLineBreaksInQuotes = false,
            MalformedData = CsvMalformedDataHandling.Skip,
            TrackLineNumbers = true,
            OnMalformedRecord = bad => faults.Add(Fault.OfLine((int)bad.LineNumber, bad.RawRecord, Expected(bad.Reason))),
        };
        using var reader = CsvReader.FromText(text, options);
        for (var count = 0; reader.Read(); count++)
        {
            var line = (int)reader.LineNumber;
            if (count > limits.Rows)
            {
                faults.Add(Fault.OfLine(line, "more rows", $"at most {limits.Rows} rows; split the file"));
                yield break;
            }

            var cells = Enumerable.Range(0, Math.Min(reader.FieldCount, limits.Columns + 1)).Select(i => reader.GetString(i).Trim()).ToArray();
            if (Sizes.Fault(line, cells, limits) is { } fault)
            {
                faults.Add(fault);
                yield break;
            }

            yield return new Row(line, cells.Select(c => new Cell(c)).ToArray());
        }
    }

    private static string Expected(CsvMalformedReason reason) => reason switch
    {
        CsvMalformedReason.StrayQuote => "quotes only round a whole cell, and doubled inside one",
        CsvMalformedReason.TextAfterClosingQuote => "a separator or the end of the line after a closing quote",
        _ => "a closing quote on the same line",
    };
}
