namespace Evengrist.Plant.Imports;

/// <summary>What parts the whole from the tenths in a file's numbers.</summary>
public enum DecimalMark
{
    /// <summary>12.5</summary>
    Point,

    /// <summary>12,5</summary>
    Comma,
}
