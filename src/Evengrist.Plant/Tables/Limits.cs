namespace Evengrist.Plant.Tables;

/// <summary>How much of a file is read before it is refused as a whole.</summary>
public sealed record Limits
{
    /// <summary>Bytes of the file, as sent.</summary>
    public int Bytes { get; init; } = 20 * 1024 * 1024;

    /// <summary>Bytes of a workbook once unpacked.</summary>
    public long UnpackedBytes { get; init; } = 200L * 1024 * 1024;

    /// <summary>Rows below the heading.</summary>
    public int Rows { get; init; } = 200_000;

    /// <summary>Columns of a row.</summary>
    public int Columns { get; init; } = 64;

    /// <summary>Characters of a cell.</summary>
    public int CellLength { get; init; } = 400;

    /// <summary>Faults listed; more are counted as "and more".</summary>
    public int Faults { get; init; } = 500;
}
