namespace Evengrist.Plant.Tables;

/// <summary>Keeps rows within the limits.</summary>
internal static class Sizes
{
    public static Fault? Fault(int line, IReadOnlyList<string> cells, Limits limits)
    {
        if (cells.Count > limits.Columns)
        {
            return Plant.Fault.OfLine(line, "more columns", $"at most {limits.Columns} columns");
        }

        for (var i = 0; i < cells.Count; i++)
        {
            if (cells[i].Length > limits.CellLength)
            {
                return new Fault(line, i + 1, "", Plant.Fault.Show(cells[i]), $"at most {limits.CellLength} characters in a cell");
            }
        }

        return null;
    }
}
