namespace Evengrist.Plant.Prints;

/// <summary>A sheet that tickets are printed on, upright. Points of 1/72 inch.</summary>
/// <param name="Name">What a person types: <c>a4</c>, <c>letter</c>.</param>
/// <param name="Width">Width in points.</param>
/// <param name="Height">Height in points.</param>
public sealed record PaperSize(string Name, double Width, double Height)
{
    /// <summary>210 mm by 297 mm (ISO 216), whole points.</summary>
    public static PaperSize A4 { get; } = new("a4", 595, 842);

    /// <summary>8.5 in by 11 in (ANSI/ASME Y14.1, size A).</summary>
    public static PaperSize Letter { get; } = new("letter", 612, 792);

    /// <summary>The size of a name, case not mattering, A4 for an empty one; null where there is none.</summary>
    public static PaperSize? Find(string? name) => string.IsNullOrWhiteSpace(name) ? A4 : new[] { A4, Letter }.FirstOrDefault(p => p.Name.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));
}
