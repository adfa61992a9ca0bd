using System.Globalization;
using System.IO.Compression;
using System.Text;
using ExcelDataReader;

namespace Evengrist.Plant.Tables;

/// <summary>One sheet of an XLSX workbook. Of a formula the value stored beside it is read; nothing is ever calculated.</summary>
internal static class Workbook
{
    private const int MostParts = 2000;

    public static Parsed<T> Read<T>(byte[] bytes, string? sheet, Limits limits, Func<IEnumerable<Row>, char?, List<Fault>, Parsed<T>> make)
        where T : class
    {
        // The two readers throw whatever a broken or hostile workbook provokes in them; here is the one place where that becomes a fault.
        try
        {
            if (!Unpacks(bytes, limits))
            {
                return Parsing.Failed<T>(Fault.OfFile("a workbook that unpacks to far more than it should", $"at most {limits.UnpackedBytes / (1024 * 1024)} MiB unpacked"));
            }

            var errors = ErrorCells.In(bytes, limits.Faults);
            return errors.Count > 0 ? Parsing.Failed<T>(errors) : Sheet(bytes, sheet, limits, make);
        }
        catch (Exception broken) when (broken is not OutOfMemoryException)
        {
            return Parsing.Failed<T>(Fault.OfFile("a broken workbook", "an XLSX workbook that opens; save it again, or save it as CSV UTF-8"));
        }
    }

    // What the directory of the archive claims is not believed: every part is unpacked and counted.
    private static bool Unpacks(byte[] bytes, Limits limits)
    {
        using var archive = new ZipArchive(new MemoryStream(bytes, writable: false));
        if (archive.Entries.Count > MostParts)
        {
            return false;
        }

        var left = limits.UnpackedBytes;
        var buffer = new byte[64 * 1024];
        foreach (var entry in archive.Entries)
        {
            using var part = entry.Open();
            int read;
            while ((read = part.Read(buffer)) > 0)
            {
                left -= read;
                if (left < 0)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static Parsed<T> Sheet<T>(byte[] bytes, string? wanted, Limits limits, Func<IEnumerable<Row>, char?, List<Fault>, Parsed<T>> make)
        where T : class
    {
        // The reader asks for code page 1252 when it starts, though an XLSX workbook is UTF-8 throughout.
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        using var reader = ExcelReaderFactory.CreateOpenXmlReader(new MemoryStream(bytes, writable: false));
        var names = new List<string>();
        do
        {
            names.Add(reader.Name);
        }
        while (reader.NextResult());

        var chosen = names.FindIndex(n => n.Trim().Equals(wanted, StringComparison.OrdinalIgnoreCase));
        if (chosen < 0 && names.Count > 1)
        {
            return Parsing.Failed<T>(Fault.OfFile(string.Join(", ", names), $"one sheet, or one named \"{wanted}\""));
        }

        reader.Reset();
        for (var i = 0; i < chosen; i++)
        {
            reader.NextResult();
        }

        var faults = new List<Fault>();
        return make(Rows(reader, limits, faults), null, faults);
    }

    private static IEnumerable<Row> Rows(IExcelDataReader reader, Limits limits, List<Fault> faults)
    {
        if (reader.FieldCount > limits.Columns)
        {
            faults.Add(Fault.OfFile($"{reader.FieldCount} columns", $"at most {limits.Columns} columns"));
            yield break;
        }

        for (var line = 1; reader.Read(); line++)
        {
            if (line > limits.Rows + 1)
            {
                faults.Add(Fault.OfLine(line, "more rows", $"at most {limits.Rows} rows; split the file"));
                yield break;
            }

            var cells = new Cell[reader.FieldCount];
            for (var i = 0; i < cells.Length; i++)
            {
                cells[i] = CellOf(reader, i);
            }

            if (Sizes.Fault(line, cells.Select(c => c.Text).ToArray(), limits) is { } fault)
            {
                faults.Add(fault);
                yield break;
            }

            yield return new Row(line, cells);
        }
    }

    private static Cell CellOf(IExcelDataReader reader, int column) => reader.GetValue(column) switch
    {
        null => Cell.Empty,
        string text => new Cell(text.Trim()),
        DateTime moment => new Cell(moment.ToString("yyyy-MM-dd'T'HH:mm:ss.FFFFFF", CultureInfo.InvariantCulture)),
        int whole => Number(whole, reader.GetNumberFormatString(column)),
        double number => Number(number, reader.GetNumberFormatString(column)),
        var other => new Cell(Convert.ToString(other, CultureInfo.InvariantCulture) ?? ""),
    };

    // A cell shown as 12.5 % is stored as 0.125; what the person saw is what is meant.
    private static Cell Number(double number, string? format)
    {
        if (!(Math.Abs(number) < 1e15))
        {
            return new Cell(number.ToString("R", CultureInfo.InvariantCulture));
        }

        var shown = (decimal)number * (format?.Contains('%', StringComparison.Ordinal) == true ? 100m : 1m);
        return new Cell(shown.ToString("0.##############", CultureInfo.InvariantCulture), IsNumber: true);
    }
}
