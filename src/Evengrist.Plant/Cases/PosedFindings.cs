using Evengrist.Intake;
using Evengrist.Plant.Imports;

namespace Evengrist.Plant.Cases;

/// <summary>Findings of a posed case, under the headings of an intake file.</summary>
internal static class PosedFindings
{
    private static readonly ReadingColumn[] Columns = [.. Layout.Of(ImportKind.Intake).OfType<ReadingColumn>().Where(c => !c.IsUncertainty)];

    /// <summary>The findings of an object; null values where a member is at fault are left out, the fault noted.</summary>
    public static Finding[] Read(JsonNode? node) => [.. (node?.Members() ?? []).Select(m => Of(m.Name, m.Value)).OfType<Finding>()];

    /// <summary>The column of a heading, with its unit; null with a fault where there is none.</summary>
    public static (ReadingColumn Column, string Unit)? ColumnOf(string heading, JsonNode node)
    {
        var parsed = Heading.Of(heading);
        var column = Array.Find(Columns, c => c.Name == parsed?.Name);
        if (column is not null && column.Takes(parsed!.Unit))
        {
            return (column, parsed.Unit!);
        }

        var near = column is null ? Nearest.To(parsed?.Name ?? heading, Columns.Select(c => c.Name)) : null;
        node.Fault(column is not null ? $"the finding written {string.Join(" or ", column.Headings)}"
            : near is not null ? $"a known finding; the nearest is {Columns.First(c => c.Name == near).Headings[0]}"
            : $"a finding such as {string.Join(", ", Columns.Select(c => c.Headings[0]))}");
        return null;
    }

    private static Finding? Of(string heading, JsonNode node)
    {
        if (ColumnOf(heading, node) is not { } known || node.Number(-1_000_000m, 1_000_000m) is not { } value)
        {
            return null;
        }

        var (unit, basis) = ReadingColumn.Split(known.Unit);
        var finding = new Finding(known.Column.What, value, unit, basis);
        if (finding.Fault is { } wrong)
        {
            node.Fault($"a finding that can be. {wrong}");
        }

        return finding;
    }
}
