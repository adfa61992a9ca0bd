namespace Evengrist.Plant.Cases;

/// <summary>Samples that the reference method and a calibration both read, from CSV text.</summary>
/// <param name="Reference">By the reference method.</param>
/// <param name="Read">By the calibration, sample by sample.</param>
public sealed record CalibrationPairs(IReadOnlyList<double> Reference, IReadOnlyList<double> Read)
{
    /// <summary>The columns.</summary>
    public static IReadOnlyList<FileColumn> Columns { get; } =
    [
        new("sample", "", false, "its number or name"), new("reference", "", true, "by the reference method, unit and basis of the calibration"), new("read", "", true, "by the calibration as it is now"),
    ];

    /// <summary>What a text looks like.</summary>
    public const string Example =
        """
        sample;reference;read
        A-0114;11.86;11.90
        A-0115;11.91;12.02
        """;

    /// <summary>Reads them: all, or every fault with line and column.</summary>
    public static Parsed<CalibrationPairs> Of(string text) => CsvRows.Of(text, Columns, "one for each sample", line => (Reference: line.Needed("reference"), Read: line.Needed("read")))
        .Then(rows => Parsing.Got(new CalibrationPairs([.. rows.Select(r => r.Reference)], [.. rows.Select(r => r.Read)])));
}
