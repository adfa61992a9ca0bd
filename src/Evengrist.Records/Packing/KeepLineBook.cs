using Evengrist.Packing.Lines;

namespace Evengrist.Records.Packing;

/// <summary>The mill's packing lines and rules for changing over: kept by version, the newest is used; before there is one, there are none.</summary>
public static class KeepLineBook
{
    private static readonly KeptTable<LineBook> Kept = new(LineBook.PaperKind, "hall", LineBook.Start, LineBook.TryRead, LineBook.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (LineBook Book, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, LineBook book, string by) => Kept.Keep(mill, book, by);

    /// <inheritdoc cref="KeptTable{T}.KeepAfter"/>
    public static IReadOnlyList<string> KeepAfter(Mill mill, LineBook book, string by, int after) => Kept.KeepAfter(mill, book, by, after);

    /// <inheritdoc cref="KeptTable{T}.Versions"/>
    public static IReadOnlyList<(LineBook Value, Paper Paper)> Versions(Mill mill) => Kept.Versions(mill);
}
