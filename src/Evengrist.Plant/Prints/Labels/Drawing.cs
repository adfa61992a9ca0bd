using Evengrist.Plant.Gs1.Symbols;
using PdfSharp.Drawing;

namespace Evengrist.Plant.Prints.Labels;

/// <summary>Black boxes and lines of text on a white sheet, in millimetres from its upper left corner; the same whatever it is written as.</summary>
internal sealed class Drawing(double width, double height)
{
    private const double PerPoint = 25.4 / 72;

    private readonly List<DrawnBox> boxes = [];
    private readonly List<DrawnText> texts = [];

    public double Width => width;

    public double Height => height;

    public IReadOnlyList<DrawnBox> Boxes => boxes;

    public IReadOnlyList<DrawnText> Texts => texts;

    /// <summary>How wide a text is set, mm.</summary>
    public static double WidthOf(string text, double points, bool bold)
    {
        using var context = XGraphics.CreateMeasureContext(new XSize(2000, 2000), XGraphicsUnit.Point, XPageDirection.Downwards);
        return context.MeasureString(text, ShippedFonts.Of(points, bold)).Width * PerPoint;
    }

    public void Box(double x, double y, double across, double down) => boxes.Add(new DrawnBox(x, y, across, down));

    /// <summary>One line of text, its upper edge at y; what is wider than the room is set smaller. Gives the lower edge.</summary>
    public double Line(string text, double x, double y, double points, bool bold = false, double room = double.PositiveInfinity)
    {
        var wide = WidthOf(text, points, bold);
        if (wide > room)
        {
            (points, wide) = (points * room / wide, room);
        }

        texts.Add(new DrawnText(x, y + (points * PerPoint), points, bold, text, wide));
        return y + (points * PerPoint * 1.25);
    }

    /// <summary>A text over as many lines as it takes. Gives the lower edge.</summary>
    public double Paragraph(string text, double x, double y, double points, double room, bool bold = false)
    {
        foreach (var line in Wrapping.Lines(text, room, t => WidthOf(t, points, bold)))
        {
            y = Line(line, x, y, points, bold, room);
        }

        return y;
    }

    /// <summary>A symbol, its quiet zone counted in from the corner given.</summary>
    /// <param name="symbol">The symbol.</param>
    /// <param name="x">Left edge of the quiet zone.</param>
    /// <param name="y">Upper edge; bars need no quiet zone above.</param>
    /// <param name="module">How wide a module is, mm.</param>
    /// <param name="barHeight">How high bars are, mm; the others are square.</param>
    public void Symbol(Symbol symbol, double x, double y, double module, double barHeight = 0)
    {
        var isBars = symbol.Rows == 1;
        var (left, top) = (x + (symbol.Quiet * module), isBars ? y : y + (symbol.Quiet * module));
        foreach (var (column, row, length) in symbol.Runs())
        {
            Box(left + (column * module), top + (row * module), length * module, isBars ? barHeight : module);
        }
    }
}
