using Evengrist.Milling.Learning;
using Evengrist.Plant.Imports;
using Evengrist.Plant.Tables;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>Tests of a mill unit read from CSV text or a workbook: one row for each figure.</summary>
/// <param name="Tests">The tests in the order of the file, each with the line it begins on.</param>
public sealed record MillTestTable(IReadOnlyList<(int Line, MillTestPaper Paper)> Tests)
{
    private static readonly Limits Most = new() { Bytes = 2 * 1024 * 1024, Rows = 20_000, Columns = 24 };

    /// <summary>Reads a file. Whether the tests fit the flow sheet is asked when they are to be kept.</summary>
    /// <param name="stream">The file.</param>
    /// <param name="unit">Code of the mill unit.</param>
    /// <param name="newest">Newest version of its flow sheet, for tests that name none.</param>
    /// <param name="zone">Zone of times without an offset.</param>
    public static Parsed<MillTestTable> Read(Stream stream, string unit, int newest, DateTimeZone zone) => TableReader.Read(stream, null, Most).Then(table =>
    {
        List<Fault> faults = [];
        var at = FileHeadings.Read(table, MillTestColumns.All, faults);
        if (faults.Count > 0)
        {
            return Parsing.Failed<MillTestTable>(faults);
        }

        var mark = FileHeadings.Mark(table);
        List<MillTestRows> tests = [];
        foreach (var row in table.Rows)
        {
            var line = new FileLine(row, at, mark, faults);
            if (line["taken"].Length == 0 && tests.Count == 0)
            {
                faults.Add(Fault.OfLine(row.Line, "", "under taken, day and time of the first test, such as 2025-09-22 09:00"));
                break;
            }

            if (line["taken"].Length > 0 && Moments.Of(line["taken"], zone) is var moment && (tests.Count == 0 || moment.At is null || tests[^1].TakenAt != moment.At))
            {
                if (moment.At is not { } taken)
                {
                    line.Fault("taken", moment.Expected);
                    continue;
                }

                if (tests.FirstOrDefault(t => t.TakenAt == taken) is { } before)
                {
                    faults.Add(Fault.ToldOfLine(row.Line, $"the test of {line["taken"]} stands there already, from line {before.Line} on: keep the rows of a test together."));
                }

                tests.Add(new MillTestRows(line, taken, unit, newest));
            }
            else
            {
                tests[^1].Agree(line);
            }

            tests[^1].Add(line);
        }

        return faults.Count > 0 ? Parsing.Failed<MillTestTable>([.. faults.Take(Most.Faults)])
            : tests.Count == 0 ? Parsing.Failed<MillTestTable>(Fault.OfFile("a heading alone", "rows below it, one for each figure"))
            : Parsing.Got(new MillTestTable([.. tests.Select(t => (t.Line, t.Paper()))]));
    });
}
