using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace Evengrist.Plant.Prints;

/// <summary>The fonts that prints are set in, shipped with the program so that a print looks the same on every machine.</summary>
internal sealed class ShippedFonts : IFontResolver
{
    private const string Family = "Evengrist print", Regular = "DejaVuSansCondensed.ttf", Bold = "DejaVuSansCondensed-Bold.ttf";

    static ShippedFonts() => GlobalFontSettings.FontResolver = new ShippedFonts();

    /// <summary>The font at a size in points.</summary>
    public static XFont Of(double size, bool bold = false) => new(Family, size, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? Bold : Regular);

    public byte[]? GetFont(string faceName)
    {
        using var font = typeof(ShippedFonts).Assembly.GetManifestResourceStream(faceName)
            ?? throw new InvalidOperationException($"The font {faceName} is not in the program.");
        using var copy = new MemoryStream();
        font.CopyTo(copy);
        return copy.ToArray();
    }
}
