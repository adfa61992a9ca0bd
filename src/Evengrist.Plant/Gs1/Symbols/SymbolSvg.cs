using Evengrist.Plant.Prints.Labels;

namespace Evengrist.Plant.Gs1.Symbols;

/// <summary>A single symbol as SVG, with its quiet zone and the line for people below.</summary>
public static class SymbolSvg
{
    private const double LineRoom = 5, BarHeight = 20;

    /// <summary>The drawing.</summary>
    /// <param name="symbol">The symbol.</param>
    /// <param name="module">How wide a module is, mm.</param>
    public static string Write(Symbol symbol, double module = 0.5)
    {
        ArgumentNullException.ThrowIfNull(symbol);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(module);
        var wide = (symbol.Columns + (2 * symbol.Quiet)) * module;
        var high = symbol.Rows == 1 ? BarHeight : wide;
        var drawing = new Drawing(wide, high + LineRoom);
        drawing.Symbol(symbol, 0, 0, module, BarHeight);
        drawing.Line(symbol.ForPeople, symbol.Quiet * module, high + 0.5, 9, room: symbol.Columns * module);
        return DrawingSvg.Write(drawing, symbol.ForPeople);
    }
}
