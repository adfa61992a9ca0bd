namespace Evengrist.Plant.Tables;

/// <summary>One row of a table.</summary>
/// <param name="Line">Line of the text or row of the sheet, from 1.</param>
/// <param name="Cells">The cells from the first column on.</param>
public sealed record Row(int Line, IReadOnlyList<Cell> Cells)
{
    /// <summary>The cell in a column from 0; an empty one beyond the row's end.</summary>
    public Cell this[int column] => column < Cells.Count ? Cells[column] : Cell.Empty;

    /// <summary>Whether nothing is written in the row.</summary>
    public bool IsBlank => Cells.All(c => c.Text.Length == 0);
}
