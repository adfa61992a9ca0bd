using System.Globalization;
using System.Xml.Linq;

namespace Evengrist.Plant.Prints.Labels;

/// <summary>A drawing as SVG, in millimetres. Text keeps its width whatever font is there.</summary>
internal static class DrawingSvg
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static string Write(Drawing drawing, string title)
    {
        var (wide, high) = (Number(drawing.Width), Number(drawing.Height));
        return new XElement(Svg + "svg",
            new XAttribute("width", wide + "mm"), new XAttribute("height", high + "mm"), new XAttribute("viewBox", $"0 0 {wide} {high}"), new XAttribute("role", "img"),
            new XElement(Svg + "title", title),
            new XElement(Svg + "rect", new XAttribute("width", "100%"), new XAttribute("height", "100%"), new XAttribute("fill", "#fff")),
            new XElement(Svg + "g", new XAttribute("shape-rendering", "crispEdges"), drawing.Boxes.Select(b => new XElement(Svg + "rect",
                new XAttribute("x", Number(b.X)), new XAttribute("y", Number(b.Y)), new XAttribute("width", Number(b.Across)), new XAttribute("height", Number(b.Down))))),
            new XElement(Svg + "g", new XAttribute("font-family", "DejaVu Sans Condensed, Arial Narrow, sans-serif"), drawing.Texts.Select(Text))).ToString(SaveOptions.DisableFormatting);
    }

    private static XElement Text(DrawnText text) => new(Svg + "text",
        new XAttribute("x", Number(text.X)), new XAttribute("y", Number(text.Base)), new XAttribute("font-size", Number(text.Points * 25.4 / 72)),
        text.Bold ? new XAttribute("font-weight", "bold") : null, new XAttribute("textLength", Number(text.Wide)), new XAttribute("lengthAdjust", "spacingAndGlyphs"), text.Text);

    private static string Number(double millimetres) => Math.Round(millimetres, 4).ToString(CultureInfo.InvariantCulture);
}
