using ZXing;
using ZXing.Common;
using ZXing.Datamatrix;
using ZXing.Datamatrix.Encoder;
using ZXing.OneD;
using ZXing.QrCode;
using ZXing.QrCode.Internal;

namespace Evengrist.Plant.Gs1.Symbols;

/// <summary>Draws element strings and links as symbols.</summary>
public static class Gs1Symbols
{
    /// <summary>The most characters of one GS1-128 symbol, identifiers and separators counted (GS1 General Specifications, from memory).</summary>
    public const int MostOfBars = 48;

    // The writer's own sign for FNC1 in bars.
    private const char Fnc1 = '\u00f1';

    /// <summary>Bars, or why they cannot hold it.</summary>
    public static Parsed<Symbol> Bars(ElementString elements)
    {
        ArgumentNullException.ThrowIfNull(elements);
        var text = elements.Transmitted();
        return text.Length > MostOfBars
            ? Parsing.Failed<Symbol>(Fault.AtCharacter(MostOfBars + 1, "", text[MostOfBars..], FormattableString.Invariant($"at most {MostOfBars} characters in one GS1-128 symbol; split the elements over two, or take a Data Matrix")))
            : Drawn(SymbolKind.Gs1128, elements.ToString(), () => new Code128Writer().encode(Fnc1 + text.Replace(ElementString.Separator, Fnc1), BarcodeFormat.CODE_128, 1, 1, new Dictionary<EncodeHintType, object> { [EncodeHintType.MARGIN] = 0 }));
    }

    /// <summary>Bars of a plain text, without the mark of GS1: for a code of the mill's own. Or why they cannot hold it.</summary>
    public static Parsed<Symbol> Plain(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length is 0 or > MostOfBars || text.Any(c => c is < ' ' or > '~') ? Parsing.Failed<Symbol>(Fault.OfFile(text, FormattableString.Invariant($"1 to {MostOfBars} letters without accents, digits and signs")))
            : Drawn(SymbolKind.PlainBars, text, () => new Code128Writer().encode(text, BarcodeFormat.CODE_128, 1, 1, new Dictionary<EncodeHintType, object> { [EncodeHintType.MARGIN] = 0 }));
    }

    /// <summary>A Data Matrix, or why it cannot hold it.</summary>
    public static Parsed<Symbol> DataMatrix(ElementString elements)
    {
        ArgumentNullException.ThrowIfNull(elements);
        // Both the hint and the leading separator are needed: with the hint alone the symbol comes out without the mark of GS1.
        return Drawn(SymbolKind.Gs1DataMatrix, elements.ToString(), () => new DataMatrixWriter().encode(ElementString.Separator + elements.Transmitted(), BarcodeFormat.DATA_MATRIX, 1, 1, new Dictionary<EncodeHintType, object>
        {
            [EncodeHintType.GS1_FORMAT] = true,
            [EncodeHintType.DATA_MATRIX_SHAPE] = SymbolShapeHint.FORCE_SQUARE,
            [EncodeHintType.MARGIN] = 0,
        }));
    }

    /// <summary>A QR code of a link, or why it cannot hold it. 15 % of it may be lost (level M).</summary>
    public static Parsed<Symbol> Qr(string link)
    {
        ArgumentNullException.ThrowIfNull(link);
        return Drawn(SymbolKind.QrLink, link, () => new QRCodeWriter().encode(link, BarcodeFormat.QR_CODE, 1, 1, new Dictionary<EncodeHintType, object>
        {
            [EncodeHintType.ERROR_CORRECTION] = ErrorCorrectionLevel.M,
            [EncodeHintType.MARGIN] = 0,
        }));
    }

    private static Parsed<Symbol> Drawn(SymbolKind kind, string forPeople, Func<BitMatrix> draw)
    {
        try
        {
            var bits = draw();
            var dark = new bool[bits.Width, bits.Height];
            for (var x = 0; x < bits.Width; x++)
            {
                for (var y = 0; y < bits.Height; y++)
                {
                    dark[x, y] = bits[x, y];
                }
            }

            return Parsing.Got(new Symbol(kind, dark, forPeople));
        }
        catch (Exception tooLong) when (tooLong is WriterException or ArgumentException or InvalidOperationException)
        {
            return Parsing.Failed<Symbol>(Fault.OfFile(forPeople, "fewer or shorter elements: the symbol cannot hold these"));
        }
    }
}
