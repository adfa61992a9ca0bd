using System.Globalization;
using Evengrist.Quantities.Lists;
using NodaTime;
using SpreadCheetah;
using SpreadCheetah.Styling;
using SpreadCheetah.Worksheets;

namespace Evengrist.Plant.Exports;

/// <summary>A list as a workbook: the rows under a heading that stays in sight, and a sheet that says of each column unit, code, basis and whether it was seen or reckoned. Moments stand as dates on the mill's clock.</summary>
/// <remarks>Texts are written as texts: a spreadsheet takes none of them for a formula.</remarks>
internal static class ListXlsx
{
    // A sheet holds 1,048,576 rows; a cell 32,767 characters (ECMA-376 as every office program reads it).
    private const int MostRows = 1_000_000;
    private const int MostText = 32_000;

    public static async Task<long> WriteAsync(TakenList list, DateTimeZone zone, Stream stream, CancellationToken stopping)
    {
        var book = await Spreadsheet.CreateNewAsync(stream, new SpreadCheetahOptions { DefaultDateTimeFormat = NumberFormat.Custom("yyyy-mm-dd hh:mm:ss") }, stopping).ConfigureAwait(false);
        await using (book.ConfigureAwait(false))
        {
            var bold = book.AddStyle(new Style { Font = { Bold = true } });
            var day = book.AddStyle(new Style { Format = NumberFormat.Custom("yyyy-mm-dd") });
            var heads = list.Columns.Select(c => c.Head + (c.Type == ListType.Moment ? $" [{zone.Id}]" : "")).ToArray();
            long count = 0;
            var cells = new Cell[list.Columns.Count];
            foreach (var row in list.Rows)
            {
                if (count % MostRows == 0)
                {
                    await StartAsync(book, list.Columns.Count, SheetName(list.Name, count), heads, bold, stopping).ConfigureAwait(false);
                }

                for (var i = 0; i < cells.Length; i++)
                {
                    cells[i] = Of(row[i], zone, day);
                }

                await book.AddRowAsync(cells.AsMemory(), stopping).ConfigureAwait(false);
                count++;
            }

            if (count == 0)
            {
                await StartAsync(book, list.Columns.Count, SheetName(list.Name, 0), heads, bold, stopping).ConfigureAwait(false);
            }

            await AboutAsync(book, list, zone, bold, stopping).ConfigureAwait(false);
            await book.FinishAsync(stopping).ConfigureAwait(false);
            return count;
        }
    }

    private static async Task StartAsync(Spreadsheet book, int columns, string name, string[] heads, StyleId bold, CancellationToken stopping)
    {
        var options = new WorksheetOptions { FrozenRows = 1 };
        for (var i = 1; i <= columns; i++)
        {
            options.Column(i).Width = Math.Clamp(heads[i - 1].Length + 2, 12, 44);
        }

        await book.StartWorksheetAsync(name, options, stopping).ConfigureAwait(false);
        await book.AddHeaderRowAsync(heads, bold, stopping).ConfigureAwait(false);
    }

    private static async Task AboutAsync(Spreadsheet book, TakenList list, DateTimeZone zone, StyleId bold, CancellationToken stopping)
    {
        await book.StartWorksheetAsync("about the columns", null, stopping).ConfigureAwait(false);
        await book.AddRowAsync([new Cell(list.Title)], stopping).ConfigureAwait(false);
        await book.AddHeaderRowAsync(["column", "unit", "UN/ECE Recommendation 20", "basis", "where it comes from", "type"], bold, stopping).ConfigureAwait(false);
        foreach (var column in list.Columns)
        {
            var type = column.Type == ListType.Moment ? "moment on the clock of " + zone.Id : Word(column.Type);
            await book.AddRowAsync([new Cell(column.Heading), new Cell(column.Unit?.Symbol), new Cell(column.Unit?.Code), new Cell(column.Basis), new Cell(Word(column.Origin)), new Cell(type)], stopping).ConfigureAwait(false);
        }
    }

    private static Cell Of(object? value, DateTimeZone zone, StyleId day) => value switch
    {
        null => default,
        string text => new Cell(Writable(text)),
        bool yes => new Cell(yes),
        Instant moment => new Cell(moment.InZone(zone).ToDateTimeUnspecified()),
        LocalDate date => new Cell(date.ToDateTimeUnspecified(), day),
        decimal number => new Cell(number),
        double number => new Cell(number),
        long number => new Cell(number),
        _ => throw new ArgumentException($"A list holds no {value.GetType().Name}.", nameof(value)),
    };

    // XML 1.0 has no place for control characters, and a cell none for a novel.
    private static string Writable(string text)
    {
        var clean = text.AsSpan().IndexOfAnyInRange('\0', '\u001F') < 0 ? text : string.Concat(text.Select(c => c < ' ' && c is not ('\t' or '\n' or '\r') ? '\uFFFD' : c));
        return clean.Length <= MostText ? clean : clean[..MostText] + " … cut here: whole in the list as csv";
    }

    private static string SheetName(string name, long count) => (name.Length > 24 ? name[..24] : name) + (count == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" {(count / MostRows) + 1}"));

    private static string Word(ListOrigin origin) => origin switch { ListOrigin.Seen => "seen", ListOrigin.Reckoned => "reckoned", _ => "stated" };

    private static string Word(ListType type) => type switch { ListType.Text => "text", ListType.Whole => "whole number", ListType.Number => "number", ListType.Moment => "moment", ListType.Day => "day", _ => "yes or no" };
}
