using System.Text;

namespace Evengrist.Plant.Tables;

/// <summary>Reads a table out of the bytes of a file; what sort of file it is, the bytes say, not the name.</summary>
public static class TableReader
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The table in the stream: CSV in UTF-8, or the named sheet (or the only sheet) of an XLSX workbook.</summary>
    public static Parsed<Table> Read(Stream stream, string? sheet, Limits limits) => Read(stream, sheet, limits, (rows, delimiter, faults) => Table.From(rows, delimiter, limits, faults));

    /// <summary>What is made of the rows as they come, so that a file of a million rows need not lie in memory as cells.</summary>
    internal static Parsed<T> Read<T>(Stream stream, string? sheet, Limits limits, Func<IEnumerable<Row>, char?, List<Fault>, Parsed<T>> make)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(limits);
        if (Bytes(stream, limits.Bytes) is not { } bytes)
        {
            return Parsing.Failed<T>(Fault.OfFile("a larger file", $"at most {limits.Bytes / (1024 * 1024)} MiB; split the file"));
        }

        return bytes switch
        {
            [] => Parsing.Failed<T>(Fault.OfFile("", "a heading line and rows below it; the file is empty")),
            [0x50, 0x4B, 0x03, 0x04, ..] => Workbook.Read(bytes, sheet, limits, make),
            [0xD0, 0xCF, 0x11, 0xE0, ..] => Parsing.Failed<T>(Fault.OfFile("an old or locked workbook", "CSV in UTF-8 or an XLSX workbook without a password; save it again as one of the two")),
            [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] => Parsing.Failed<T>(Fault.OfFile("text in UTF-16", "CSV in UTF-8; save it again as \"CSV UTF-8\"")),
            _ => Text(bytes, limits, make),
        };
    }

    private static Parsed<T> Text<T>(byte[] bytes, Limits limits, Func<IEnumerable<Row>, char?, List<Fault>, Parsed<T>> make)
        where T : class
    {
        var start = bytes is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0;
        string text;
        try
        {
            text = Strict.GetString(bytes, start, bytes.Length - start);
        }
        catch (DecoderFallbackException bad)
        {
            var line = 1 + bytes.AsSpan(0, Math.Clamp(start + bad.Index, 0, bytes.Length)).Count((byte)'\n');
            return Parsing.Failed<T>(Fault.OfLine(line, "bytes that are not UTF-8 text", "CSV in UTF-8, or an XLSX workbook; save it again as one of the two"));
        }

        var nul = text.IndexOf('\0', StringComparison.Ordinal);
        return nul >= 0
            ? Parsing.Failed<T>(Fault.OfLine(1 + text.AsSpan(0, nul).Count('\n'), "a zero byte", "text; this is not a CSV file"))
            : Csv.Read(text, limits, make);
    }

    private static byte[]? Bytes(Stream stream, int most)
    {
        using var copy = new MemoryStream();
        var buffer = new byte[64 * 1024];
        int read;
        while ((read = stream.Read(buffer)) > 0)
        {
            if (copy.Length + read > most)
            {
                return null;
            }

            copy.Write(buffer, 0, read);
        }

        return copy.ToArray();
    }
}
