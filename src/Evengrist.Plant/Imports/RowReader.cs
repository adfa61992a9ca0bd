using Evengrist.Plant.Tables;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Plant.Imports;

/// <summary>Reads the cells of one row; what is wrong is noted, and null given, so that every fault of the row is found.</summary>
internal sealed class RowReader(Bindings bindings, Row row, List<Fault> faults)
{
    private const decimal MostKilograms = 1_000_000_000m;
    private const string CommandMarks = "=+-@";

    public Row Row => row;

    public bool Has(string name) => Cell(name).Text.Length > 0;

    public string Text(string name)
    {
        var text = Cell(name).Text;
        if (text.Any(char.IsControl))
        {
            Fault(name, "text on one line");
            return "";
        }

        if (text.Length > 0 && CommandMarks.Contains(text[0]) && !Cell(name).IsNumber)
        {
            Fault(name, "text that does not begin with = + - or @, which a spreadsheet would take for a formula");
            return "";
        }

        if (text.Length == 0)
        {
            Miss(name);
        }

        return text;
    }

    /// <summary>Whether the file must have a value in the column in every row.</summary>
    public bool Demands(string name) => bindings.Columns.TryGetValue(name, out var bound) && bound.Column.Required;

    /// <summary>Codes parted by <c>|</c>.</summary>
    public IReadOnlyList<string> Codes(string name) => Text(name).Split('|', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    public decimal? Number(string name)
    {
        if (!Has(name))
        {
            Miss(name);
            return null;
        }

        var value = Numbers.Of(Cell(name), bindings.Mark);
        if (value is null)
        {
            Fault(name, $"a plain number such as {(bindings.Mark == DecimalMark.Comma ? "12,5" : "12.5")}");
        }

        return value;
    }

    /// <summary>A mass above zero; with <paramref name="orZero"/> at least zero.</summary>
    public Mass? Mass(string name, bool orZero = false)
    {
        if (Number(name) is not { } number)
        {
            return null;
        }

        var unit = bindings.Columns[name].Unit;
        if (Math.Abs(number) <= MostKilograms)
        {
            var mass = unit switch
            {
                "t" => Quantities.Mass.FromTonnes(number),
                "lb" => Quantities.Mass.FromPounds(number),
                _ => Quantities.Mass.FromKilograms(number),
            };
            if (mass > Quantities.Mass.Zero || (orZero && mass == Quantities.Mass.Zero))
            {
                return mass;
            }
        }

        Fault(name, orZero ? "a mass of at least zero, below 1 000 000 t" : "a mass above zero, below 1 000 000 t");
        return null;
    }

    /// <summary>A share of a whole, 0 to 100 %, as a fraction.</summary>
    public decimal? Share(string name)
    {
        var percent = Number(name);
        if (percent is < 0m or > 100m)
        {
            Fault(name, "a share from 0 to 100 %");
            return null;
        }

        return percent / 100m;
    }

    public Instant? Time(string name)
    {
        if (!Has(name))
        {
            Miss(name);
            return null;
        }

        var zone = TimeColumn.Zone(bindings.Columns[name].Unit)
            ?? (bindings.Columns[name].Unit.Equals(TimeColumn.Local, StringComparison.OrdinalIgnoreCase) ? bindings.Zone : null);
        var (at, expected) = Moments.Of(Cell(name).Text, zone);
        if (at is null)
        {
            Fault(name, expected);
        }

        return at;
    }

    /// <summary>Notes a fault of the cell.</summary>
    public void Fault(string name, string expected) => faults.Add(bindings.Columns.TryGetValue(name, out var bound)
        ? new Fault(row.Line, bound.Index + 1, bound.Heading, Plant.Fault.Show(row[bound.Index].Text), expected)
        : new Fault(row.Line, null, name, "", expected));

    /// <summary>The columns of readings and uncertainties in the file.</summary>
    public IEnumerable<Bound> Columns => bindings.Columns.Values.OrderBy(b => b.Index);

    private Cell Cell(string name) => bindings.Columns.TryGetValue(name, out var bound) ? row[bound.Index] : Tables.Cell.Empty;

    private void Miss(string name)
    {
        if (Demands(name))
        {
            Fault(name, "a value; the cell is empty");
        }
    }
}
