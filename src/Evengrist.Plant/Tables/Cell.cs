namespace Evengrist.Plant.Tables;

/// <summary>One cell as it was read.</summary>
/// <param name="Text">The text, trimmed; empty for an empty cell.</param>
/// <param name="IsNumber">True for a number cell of a workbook: the text then has a decimal point and no grouping, whatever the file's decimal mark.</param>
public readonly record struct Cell(string Text, bool IsNumber = false)
{
    /// <summary>An empty cell.</summary>
    public static Cell Empty => new("");
}
