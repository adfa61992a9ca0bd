namespace Evengrist.Plant.Gs1.Symbols;

/// <summary>How elements are drawn.</summary>
public enum SymbolKind
{
    /// <summary>Bars: Code 128 with the mark of GS1.</summary>
    Gs1128,

    /// <summary>A square of dots: Data Matrix with the mark of GS1.</summary>
    Gs1DataMatrix,

    /// <summary>A QR code with a link.</summary>
    QrLink,

    /// <summary>Bars of a plain text: Code 128 without the mark of GS1.</summary>
    PlainBars,
}
