using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Evengrist.Plant.Prints;

/// <summary>Sets text down one page after another, black on white; what does not fit goes on the next page.</summary>
internal sealed class Leaf : IDisposable
{
    public const double Margin = 42;
    private const double Foot = 46, LineHeight = 1.32;
    private readonly PdfDocument document = new();
    private readonly PaperSize paper;
    private readonly string head;
    private XGraphics graphics = null!;
    private double y;
    private (IReadOnlyList<double> Columns, IReadOnlyList<string> Cells)? heading;

    public Leaf(PaperSize paper, string title, string head)
    {
        (this.paper, this.head) = (paper, head);
        document.Info.Title = title;
        document.Info.Creator = "Evengrist";
        Turn();
    }

    public double Width => paper.Width - (2 * Margin);

    /// <summary>A paragraph over the whole width, or a part of it.</summary>
    public void Text(string text, double size = 9, bool bold = false, double gap = 2)
    {
        var font = ShippedFonts.Of(size, bold);
        foreach (var line in Wrap(text, font, Width))
        {
            Need(size * LineHeight);
            Draw(line, font, Margin, y);
            y += size * LineHeight;
        }

        y += gap;
    }

    /// <summary>
    /// A row of cells, each wrapped within its column. Columns are shares of the width; a negative one stands right. A bold row is the heading of the rows below it in
    /// the same columns and stands again on every page they reach.
    /// </summary>
    public void Row(IReadOnlyList<double> columns, IReadOnlyList<string> cells, bool bold = false, bool ruled = true)
    {
        const double Size = 8.5, Between = 6;
        var font = ShippedFonts.Of(Size, bold);
        var wrapped = cells.Select((c, i) => Wrap(c, font, (Width * Math.Abs(columns[i])) - Between)).ToArray();
        var height = (wrapped.Max(w => w.Count) * Size * LineHeight) + 3;
        if (bold)
        {
            heading = (columns, cells);
        }

        if (Need(height) && !bold && heading is { } above && ReferenceEquals(above.Columns, columns))
        {
            Row(columns, above.Cells, bold: true);
        }

        var x = Margin;
        for (var i = 0; i < cells.Count; i++)
        {
            var width = Width * Math.Abs(columns[i]);
            foreach (var (n, line) in wrapped[i].Index())
            {
                Draw(line, font, columns[i] < 0 ? x + width - Between - graphics.MeasureString(line, font).Width : x, y + (n * Size * LineHeight));
            }

            x += width;
        }

        y += height;
        if (ruled)
        {
            graphics.DrawLine(new XPen(XColors.Black, bold ? 0.9 : 0.3), Margin, y - 1.5, paper.Width - Margin, y - 1.5);
        }
    }

    /// <summary>A word in a heavy frame over the whole width.</summary>
    public void Stamp(string word, string? says = null)
    {
        var (font, small) = (ShippedFonts.Of(22, bold: true), ShippedFonts.Of(9));
        var lines = says is null ? [] : Wrap(says, small, Width - 16);
        var height = 34 + (lines.Count * 9 * LineHeight);
        Need(height + 8);
        graphics.DrawRectangle(new XPen(XColors.Black, 2.5), Margin, y, Width, height);
        Draw(word, font, Margin + 8, y + 2);
        foreach (var (n, line) in lines.Index())
        {
            Draw(line, small, Margin + 8, y + 31 + (n * 9 * LineHeight));
        }

        y += height + 8;
    }

    /// <summary>Lines to sign on, side by side.</summary>
    public void Sign(params IReadOnlyList<string> who)
    {
        Need(58);
        y += 40;
        var each = (Width + 20) / who.Count;
        foreach (var (n, name) in who.Index())
        {
            graphics.DrawLine(new XPen(XColors.Black, 0.7), Margin + (n * each), y, Margin + (n * each) + each - 20, y);
            Draw(name, ShippedFonts.Of(8), Margin + (n * each), y + 2);
        }

        y += 18;
    }

    public void Gap(double points) => y += points;

    /// <summary>What comes next begins a page.</summary>
    public void NewPage() => Turn();

    /// <summary>The document, with a foot on every page that counts the pages.</summary>
    public byte[] Close(string foot)
    {
        graphics.Dispose();
        for (var n = 0; n < document.PageCount; n++)
        {
            using var on = XGraphics.FromPdfPage(document.Pages[n]);
            graphics = on;
            var small = ShippedFonts.Of(7.5);
            var count = $"page {n + 1} of {document.PageCount}";
            var at = paper.Height - Foot + 8;
            on.DrawLine(new XPen(XColors.Black, 0.5), Margin, at - 3, paper.Width - Margin, at - 3);
            Draw(count, small, paper.Width - Margin - on.MeasureString(count, small).Width, at);
            foreach (var (line, text) in Wrap(foot, small, Width - 70).Take(3).Index())
            {
                Draw(text, small, Margin, at + (line * 7.5 * LineHeight));
            }
        }

        using var bytes = new MemoryStream();
        document.Save(bytes, closeStream: false);
        return bytes.ToArray();
    }

    public void Dispose()
    {
        graphics.Dispose();
        document.Dispose();
    }

    // Whether a page had to be turned for it.
    private bool Need(double height)
    {
        if (y + height <= paper.Height - Foot)
        {
            return false;
        }

        Turn();
        return true;
    }

    private void Turn()
    {
        graphics?.Dispose();
        var page = document.AddPage();
        (page.Width, page.Height) = (XUnit.FromPoint(paper.Width), XUnit.FromPoint(paper.Height));
        graphics = XGraphics.FromPdfPage(page);
        y = Margin;
        if (document.PageCount > 1)
        {
            Text(head, 8.5, bold: true, gap: 6);
        }
    }

    private void Draw(string text, XFont font, double x, double top) => graphics.DrawString(text, font, XBrushes.Black, new XPoint(x, top + font.Size));

    private List<string> Wrap(string text, XFont font, double width) => Wrapping.Lines(text, width, t => graphics.MeasureString(t, font).Width);
}
