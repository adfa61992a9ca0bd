using System.Globalization;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;

namespace Evengrist.Web.Sights.Streams;

/// <summary>A survey as lines that <see cref="SurveyLines"/> reads again.</summary>
public static class SurveyText
{
    /// <summary>The lines, with headings for the columns that hold anything.</summary>
    public static string Of(StreamTable table, IReadOnlyList<StreamValve> valves)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(valves);
        (string Heading, string[] Cells)[] columns =
        [
            .. from heading in SurveyLines.Headings
               let cells = table.Streams.Select(s => Cell(heading, s, valves.FirstOrDefault(v => v.Stream == s.Code))).ToArray()
               where SurveyLines.Headings.Take(3).Contains(heading) || cells.Any(c => c.Length > 0)
               select (heading, cells),
        ];
        return string.Join("\n", (string[])[string.Join(", ", columns.Select(c => c.Heading)), .. table.Streams.Select((_, row) => string.Join(", ", columns.Select(c => c.Cells[row])))]);
    }

    private static string Cell(string heading, MillStream stream, StreamValve? valve) => heading switch
    {
        "stream" => stream.Code,
        "yield" => Number(stream.Yield),
        "ash" => Number(stream.AshPercent),
        "protein" => Number(stream.ProteinPercent),
        "fn" => Number(stream.FallingNumberSeconds),
        "damage" => Number(stream.StarchDamagePercent),
        "flour" => valve?.Now ?? "",
        "splits" => valve?.Splits == true ? "yes" : "",
        "may" => string.Join("+", valve?.May ?? []),
        _ => valve?.Locked ?? "",
    };

    private static string Number(double? value) => value?.ToString("0.####", CultureInfo.InvariantCulture) ?? "";
}
