using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Evengrist.Plant.Prints.Labels;

/// <summary>Drawings as a PDF, one to a page.</summary>
internal static class DrawingPdf
{
    private const double PointsPerMillimetre = 72 / 25.4;

    public static byte[] Write(IEnumerable<Drawing> drawings, string title)
    {
        using var document = new PdfDocument();
        (document.Info.Title, document.Info.Creator) = (title, "Evengrist");
        foreach (var drawing in drawings)
        {
            Page(document, drawing);
        }

        using var bytes = new MemoryStream();
        document.Save(bytes, closeStream: false);
        return bytes.ToArray();
    }

    private static void Page(PdfDocument document, Drawing drawing)
    {
        var page = document.AddPage();
        (page.Width, page.Height) = (XUnit.FromMillimeter(drawing.Width), XUnit.FromMillimeter(drawing.Height));
        using var graphics = XGraphics.FromPdfPage(page);
        foreach (var box in drawing.Boxes)
        {
            graphics.DrawRectangle(XBrushes.Black, box.X * PointsPerMillimetre, box.Y * PointsPerMillimetre, box.Across * PointsPerMillimetre, box.Down * PointsPerMillimetre);
        }

        foreach (var text in drawing.Texts)
        {
            graphics.DrawString(text.Text, ShippedFonts.Of(text.Points, text.Bold), XBrushes.Black, new XPoint(text.X * PointsPerMillimetre, text.Base * PointsPerMillimetre));
        }
    }
}
