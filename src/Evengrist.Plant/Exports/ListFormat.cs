namespace Evengrist.Plant.Exports;

/// <summary>A form in which a list is taken out.</summary>
/// <param name="Word">As it is asked for: <c>csv</c>, <c>xlsx</c>, <c>parquet</c>; also the ending of the file.</param>
/// <param name="Media">Its media type.</param>
public sealed record ListFormat(string Word, string Media)
{
    /// <summary>Comma-separated text.</summary>
    public static ListFormat Csv { get; } = new("csv", "text/csv; charset=utf-8");

    /// <summary>A workbook.</summary>
    public static ListFormat Xlsx { get; } = new("xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet");

    /// <summary>Columns for programs.</summary>
    public static ListFormat Parquet { get; } = new("parquet", "application/vnd.apache.parquet");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<ListFormat> All { get; } = [Csv, Xlsx, Parquet];

    /// <summary>The words that may be asked for, in a sentence.</summary>
    public static string Words => "csv, xlsx or parquet";

    /// <summary>The form with the word, case not mattering; null where it is none.</summary>
    public static ListFormat? Find(string? word) => All.FirstOrDefault(f => f.Word.Equals(word?.Trim(), StringComparison.OrdinalIgnoreCase));
}
