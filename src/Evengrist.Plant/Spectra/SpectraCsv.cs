using System.Globalization;
using System.Text.RegularExpressions;
using Evengrist.Laboratory.Calibration;
using Evengrist.Plant.Imports;
using Evengrist.Plant.Tables;

namespace Evengrist.Plant.Spectra;

/// <summary>Spectra from a table: a row for each, a column for each channel (<c>w1100</c> or <c>1100 nm</c>, <c>6000 1/cm</c>, <c>X17</c>), the others free.</summary>
internal static partial class SpectraCsv
{
    private static readonly Limits Most = new() { Bytes = SpectraTable.MostBytes, Rows = CalibrationSpec.MostSamples, Columns = SpectralAxis.Most + 64 };

    public static Parsed<SpectraTable> Read(ReadOnlyMemory<byte> bytes)
    {
        using var stream = new MemoryStream(bytes.ToArray());
        return TableReader.Read(stream, null, Most).Then(Of);
    }

    private static Parsed<SpectraTable> Of(Table table)
    {
        var channels = table.Heading.Cells.Index().Select(c => (Column: c.Index, Place: Place(c.Item.Text))).Where(c => c.Place is not null).Select(c => (c.Column, c.Place!.Value.At, c.Place.Value.Unit)).ToArray();
        if (channels.Length < 2 || channels.Any(c => c.Unit != channels[0].Unit))
        {
            return Parsing.Failed<SpectraTable>(Fault.ToldOfLine(table.Heading.Line, channels.Length < 2 ? "No channels are named: their columns are headed w1100, 1100 nm, 6000 1/cm or X17." : "Channels stand in one unit: all in nm, all in 1/cm, or all as numbers X1, X2."));
        }

        var comma = table.Declared.TryGetValue("decimal", out var said) && said.Value.Equals("comma", StringComparison.OrdinalIgnoreCase);
        var named = table.Heading.Cells.Index().Where(c => c.Item.Text.Length > 0 && channels.All(x => x.Column != c.Index)).ToArray();
        var id = named.Where(c => c.Item.Text.ToLowerInvariant() is "id" or "sample").Select(c => (int?)c.Index).FirstOrDefault();
        List<Fault> faults = [.. named.GroupBy(c => c.Item.Text, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => new Fault(table.Heading.Line, g.Last().Index + 1, "", Fault.Show(g.Key), "each heading once"))];
        List<SpectrumRow> rows = [];
        foreach (var row in table.Rows)
        {
            var values = new double[channels.Length];
            foreach (var (i, channel) in channels.Index())
            {
                values[i] = Number(row[channel.Column], comma) ?? Bad(row, channel.Column);
                if (faults.Count >= SpectraTable.MostFaults)
                {
                    return Parsing.Failed<SpectraTable>(faults);
                }
            }

            var name = id is { } at ? row[at].Text : "";
            rows.Add(new(
                name.Length > 0 ? name : (rows.Count + 1).ToString(CultureInfo.InvariantCulture), row.Line, values,
                named.Where(c => c.Index != id).DistinctBy(c => c.Item.Text, StringComparer.OrdinalIgnoreCase).ToDictionary(c => c.Item.Text, c => (row[c.Index].Text, c.Index + 1), StringComparer.OrdinalIgnoreCase)));
        }

        return faults.Count > 0 ? Parsing.Failed<SpectraTable>(faults)
            : rows.Count == 0 ? Parsing.Failed<SpectraTable>(Fault.OfFile("a heading alone", "rows below it, one for each spectrum"))
            : Parsing.Got(new SpectraTable(new([.. channels.Select(c => c.At)], channels[0].Unit), rows, comma ? DecimalMark.Comma : DecimalMark.Point));

        double Bad(Row row, int column)
        {
            var missing = column >= row.Cells.Count;
            faults.Add(new Fault(row.Line, column + 1, table.Heading[column].Text, Fault.Show(row[column].Text), missing ? $"a number such as 0.3284: the spectrum ends after column {row.Cells.Count}" : "a number such as 0.3284"));
            return 0;
        }
    }

    // Spectra come with many decimals and now and then with an exponent; grouped thousands they never have.
    private static double? Number(Cell cell, bool comma) =>
        double.TryParse(comma && !cell.IsNumber ? cell.Text.Replace(',', '.') : cell.Text, NumberStyles.Float & ~NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;

    private static (double At, string Unit)? Place(string heading) =>
        Channel().Match(heading) is { Success: true } found && double.TryParse(found.Groups["at"].Value, CultureInfo.InvariantCulture, out var at)
            ? (at, found.Groups["number"].Success ? "channel" : found.Groups["wave"].Success ? "1/cm" : "nm") : null;

    [GeneratedRegex(@"^(w(?<at>[0-9]{1,6}(\.[0-9]{1,6})?)|(?<at>[0-9]{1,6}(\.[0-9]{1,6})?)( ?nm)?|(?<at>[0-9]{1,6}(\.[0-9]{1,6})?) ?(?<wave>1/cm|cm-1)|(?<number>[Xx])(?<at>[0-9]{1,6}(\.[0-9]{1,6})?))$", RegexOptions.ExplicitCapture)]
    private static partial Regex Channel();
}
