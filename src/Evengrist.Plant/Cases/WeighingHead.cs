using Evengrist.Plant.Imports;
using Evengrist.Plant.Tables;
using Evengrist.Quantities;

namespace Evengrist.Plant.Cases;

/// <summary>Which column of a checkweigher's file is which, and in which unit its weights are.</summary>
/// <param name="At">Column of each heading, from 0.</param>
/// <param name="GramsEach">Grams of one unit of each weight.</param>
internal sealed record WeighingHead(IReadOnlyDictionary<string, int> At, IReadOnlyDictionary<string, decimal> GramsEach)
{
    private static readonly string[] Weights = ["gross", "net", "tare"];

    /// <summary>Reads a heading; what is wrong goes to the faults.</summary>
    /// <param name="row">The heading.</param>
    /// <param name="called">Our heading by the file's own, where it has other words.</param>
    /// <param name="faults">Takes what is wrong.</param>
    public static WeighingHead Of(Row row, IReadOnlyDictionary<string, string> called, List<Fault> faults)
    {
        var (at, grams) = (new Dictionary<string, int>(StringComparer.Ordinal), new Dictionary<string, decimal>(StringComparer.Ordinal));
        string[] known = [.. WeighingColumns.All.Select(c => c.Name)];
        foreach (var (i, cell) in row.Cells.Index().Where(c => c.Item.Text.Length > 0))
        {
            var heading = Heading.Of(called.TryGetValue(cell.Text, out var ours) ? ours : cell.Text);
            if (heading is null || !known.Contains(heading.Name))
            {
                var near = Nearest.To(heading?.Name ?? cell.Text, known);
                faults.Add(new Fault(row.Line, i + 1, "", Fault.Show(cell.Text), $"one of the headings {string.Join(", ", known)}{(near is null ? "" : $"; the nearest is {near}")}. Another word is taken where it is said which of these it means"));
            }
            else if (!at.TryAdd(heading.Name, i))
            {
                faults.Add(new Fault(row.Line, i + 1, "", Fault.Show(cell.Text), $"one column named {heading.Name}, not two"));
            }
            else if (Weights.Contains(heading.Name))
            {
                if (Unit(heading.Unit) is { } each)
                {
                    grams[heading.Name] = each;
                }
                else
                {
                    faults.Add(new Fault(row.Line, i + 1, heading.Name, Fault.Show(cell.Text), $"the unit with it: {heading.Name} [g], {heading.Name} [kg] or {heading.Name} [lb]"));
                }
            }
        }

        string[] missing = [.. WeighingColumns.All.Where(c => c.IsNeeded && !at.ContainsKey(c.Name)).Select(c => c.Name), .. at.ContainsKey("gross") || at.ContainsKey("net") ? Array.Empty<string>() : ["gross [g] or net [g]"]];
        if (missing.Length > 0 && faults.Count == 0)
        {
            faults.Add(Fault.ToldOfLine(row.Line, $"headings are missing: {string.Join(", ", missing)}. The first line names the columns."));
        }

        if (at.ContainsKey("gross") && at.TryGetValue("net", out var net))
        {
            faults.Add(new Fault(row.Line, net + 1, "net", Fault.Show(row[net].Text), "gross or net, not both: the one is reckoned from the other and the tare"));
        }

        return new(at, grams);
    }

    private static decimal? Unit(string? unit) => unit?.ToLowerInvariant() switch { "g" => 1m, "kg" => 1000m, "lb" => Mass.GramsPerPound, _ => null };
}
