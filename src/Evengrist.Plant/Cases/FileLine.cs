using Evengrist.Plant.Imports;
using Evengrist.Plant.Tables;

namespace Evengrist.Plant.Cases;

/// <summary>A row of a file, its cells by their headings.</summary>
internal sealed class FileLine(Row row, IReadOnlyDictionary<string, int> at, DecimalMark mark, List<Fault> faults)
{
    public int Line => row.Line;

    /// <summary>The cell below a heading; empty where there is none.</summary>
    public string this[string heading] => at.TryGetValue(heading, out var column) ? row[column].Text : "";

    public double? Number(string heading) => (double?)Reported(heading);

    /// <summary>A number, digits kept.</summary>
    public decimal? Reported(string heading)
    {
        if (this[heading].Length == 0)
        {
            return null;
        }

        if (Numbers.Of(row[at[heading]], mark) is { } number)
        {
            return number;
        }

        Fault(heading, "a number such as 29.5");
        return null;
    }

    /// <summary>A number that has to be there.</summary>
    public double Needed(string heading)
    {
        if (this[heading].Length == 0)
        {
            Fault(heading, "a number such as 29.5");
        }

        return Number(heading) ?? 0;
    }

    public void Fault(string heading, string expected) => faults.Add(new Fault(row.Line, at.TryGetValue(heading, out var column) ? column + 1 : null, heading, Plant.Fault.Show(this[heading]), expected));
}
