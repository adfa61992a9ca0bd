using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Plant.Imports;
using Evengrist.Plant.Tables;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>Results of the laboratory read from CSV text or a workbook: one row for each value.</summary>
/// <param name="Rows">Each with its line, the number of its sample and when it was measured.</param>
public sealed record LabResultTable(IReadOnlyList<(int Line, string Sample, Instant Measured, ResultEntry Entry)> Rows)
{
    private static readonly Limits Most = new() { Bytes = 2 * 1024 * 1024, Rows = 20_000, Columns = 24 };

    /// <summary>Reads a file: all of it, or every fault with line and column. Whether the results can be taken is asked when they are to be recorded.</summary>
    /// <param name="stream">The file.</param>
    /// <param name="zone">Zone of times without an offset.</param>
    public static Parsed<LabResultTable> Read(Stream stream, DateTimeZone zone) => CsvRows.Of(stream, Most, LabResultColumns.All, "one for each value", line => Row(line, zone))
        .Then(rows => Parsing.Got(new LabResultTable([.. rows.Select(r => r!.Value)])));

    private static (int, string, Instant, ResultEntry)? Row(FileLine line, DateTimeZone zone)
    {
        if (line["sample"].Length == 0)
        {
            line.Fault("sample", "the number of a sample");
        }

        var (measured, expected) = Moments.Of(line["measured"], zone);
        if (measured is null)
        {
            line.Fault("measured", expected);
        }

        var what = Readings.Called(line["property"]);
        if (what == Property.None)
        {
            line.Fault("property", "a property such as protein, moisture, ash, wet gluten or falling number");
        }

        Basis basis = default;
        if (line["basis"].Length > 0 && !Basis.TryParse(line["basis"], out basis))
        {
            line.Fault("basis", "dry, 14mb or another, or nothing for a property without one");
        }

        var value = line.Reported("value");
        if (line["value"].Length == 0)
        {
            line.Fault("value", "a value; the cell is empty");
        }

        return measured is { } moment && value is { } number && what != Property.None
            ? (line.Line, line["sample"], moment, new ResultEntry(what, line["method"], line["instrument"], [number], line["unit"].Length > 0 ? line["unit"] : Readings.UnitsOf(what)[0], basis))
            : null;
    }
}
