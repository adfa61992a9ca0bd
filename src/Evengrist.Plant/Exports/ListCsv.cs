using System.Globalization;
using System.Text;
using Evengrist.Plant.Tables;
using Evengrist.Quantities.Lists;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Plant.Exports;

/// <summary>A list as comma-separated text (RFC 4180), UTF-8 with the mark spreadsheets know it by: one line of headings, numbers with a decimal point, moments by ISO 8601 with their offset, days as 2026-01-14.</summary>
internal static class ListCsv
{
    private static readonly OffsetDateTimePattern Moments = OffsetDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm':'ss;FFFFFFo<m>");

    public static async Task<long> WriteAsync(TakenList list, DateTimeZone zone, Stream stream, CancellationToken stopping)
    {
        var text = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: true), 64 * 1024, leaveOpen: true) { NewLine = "\r\n" };
        await using (text.ConfigureAwait(false))
        {
            await text.WriteLineAsync(CsvText.LineOf(list.Columns.Select(c => c.Head))).ConfigureAwait(false);
            long count = 0;
            foreach (var row in list.Rows)
            {
                stopping.ThrowIfCancellationRequested();
                await text.WriteLineAsync(CsvText.LineOf(row.Select(v => Say(v, zone)))).ConfigureAwait(false);
                count++;
            }

            return count;
        }
    }

    public static string Say(object? value, DateTimeZone zone) => value switch
    {
        null => "",
        string text => text,
        bool yes => yes ? "yes" : "no",
        Instant moment => Say(moment, zone),
        LocalDate day => day.ToString("R", CultureInfo.InvariantCulture),
        decimal number => number.ToString("0.############################", CultureInfo.InvariantCulture),
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        long number => number.ToString(CultureInfo.InvariantCulture),
        _ => throw new ArgumentException($"A list holds no {value.GetType().Name}.", nameof(value)),
    };

    private static string Say(Instant moment, DateTimeZone zone) => Moments.Format(moment.InZone(zone).ToOffsetDateTime());
}
