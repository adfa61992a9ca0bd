namespace Evengrist.Plant.Cases;

/// <summary>The columns of a file of laboratory results, as an instrument exports them: one row for each value.</summary>
public static class LabResultColumns
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<FileColumn> All { get; } =
    [
        new("sample", "", true, "number of the sample, recorded as taken before"),
        new("measured", "", true, "day and time by the mill's clock, as 2026-01-14 10:55, or with its offset; not before the sample was taken"),
        new("property", "", true, "protein, moisture, ash, wet gluten, falling number or another, as on the readings"),
        new("value", "", true, "as reported; several rows alike are duplicates"),
        new("method", "", true, "as in the table of methods"),
        new("instrument", "", false, "as in the table of instruments; demanded where one serves the method"),
        new("unit", "", false, "the usual one of the property where left out"),
        new("basis", "", false, "moisture basis: 14mb, dry or another; demanded for every share of solids"),
    ];

    /// <summary>What a file looks like.</summary>
    public const string Example =
        """
        sample;measured;property;value;method;instrument;unit;basis
        A-0114;2026-01-14 10:32;protein;11.82;NIR;NIR-2;%;14mb
        A-0114;2026-01-14 10:32;moisture;13.7;NIR;NIR-2;%;
        A-0114;2026-01-14 10:32;ash;0.446;NIR;NIR-2;%;14mb
        """;
}
