using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Xml.Linq;

namespace Evengrist.Edge.Tests.Plant.Gs1;

/// <summary>Programs beside the writer of the symbols: zbar reads bars and QR codes, libdmtx Data Matrix, zxing-cpp (C++, of the same descent as the writer) tells the symbology identifier, poppler draws PDF pages.</summary>
internal static class ScanBack
{
    /// <summary>What is lacking here; null where all are there.</summary>
    public static string? Missing { get; } = new[] { ("zbarimg", "zbar-tools"), ("dmtxread", "dmtx-utils"), ("ZXingReader", "zxing-cpp-tools"), ("pdftoppm", "poppler-utils") }
        .Where(p => !(Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(f => File.Exists(Path.Combine(f, p.Item1))))
        .Select(p => $"No {p.Item1} here to read symbols back (Debian: {p.Item2}).").FirstOrDefault();

    /// <summary>What zbar reads: kind and text of each symbol.</summary>
    public static IReadOnlyList<string> Zbar(string picture) => Run("zbarimg", "-q", picture).Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>What libdmtx reads, with | for the mark of GS1 and for each separator.</summary>
    public static string Dmtx(string picture) => Run("dmtxread", "-G", "124", "-N1", "-m5000", picture).Replace('\u001d', '|');

    /// <summary>What zxing-cpp reads of a format: symbology identifier, then the bytes with | for each separator.</summary>
    public static string Zxing(string picture, string format)
    {
        var lines = Run("ZXingReader", "-format", format, picture).Split('\n');
        string Line(string name) => lines.FirstOrDefault(l => l.StartsWith(name + ":", StringComparison.Ordinal))?[(name.Length + 1)..].Trim() ?? "";
        var bytes = Line("Bytes").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(b => (char)byte.Parse(b, NumberStyles.HexNumber, CultureInfo.InvariantCulture));
        return Line("Identifier") + string.Concat(bytes).Replace('\u001d', '|');
    }

    /// <summary>The first page of a PDF as a grey picture, 300 dots to the inch; of the upper right corner alone where its side and the page's width are given, in dots.</summary>
    public static string Page(byte[] pdf, string folder, int corner = 0, int width = 0)
    {
        var (file, picture) = (Path.Combine(folder, "label.pdf"), Path.Combine(folder, $"label{corner}"));
        File.WriteAllBytes(file, pdf);
        string[] cut = corner > 0 ? ["-x", $"{width - corner}", "-y", "0", "-W", $"{corner}", "-H", $"{corner}"] : [];
        Run("pdftoppm", ["-r", "300", "-gray", "-png", "-singlefile", .. cut, file, picture]);
        return picture + ".png";
    }

    /// <summary>The black boxes of an SVG in millimetres as a grey picture, 12 dots to the millimetre.</summary>
    public static string Boxes(string svg, string folder)
    {
        const double Dots = 12;
        var root = XElement.Parse(svg);
        double Number(XElement e, string name) => double.Parse(e.Attribute(name)!.Value.Replace("mm", "", StringComparison.Ordinal), CultureInfo.InvariantCulture) * Dots;
        var (wide, high) = ((int)Number(root, "width"), (int)Number(root, "height"));
        var dots = Enumerable.Repeat((byte)255, wide * high).ToArray();
        foreach (var box in root.Descendants().Where(e => e.Name.LocalName == "rect" && e.Attribute("x") is not null))
        {
            var (left, right) = ((int)Math.Round(Number(box, "x")), (int)Math.Round(Number(box, "x") + Number(box, "width")));
            for (var y = (int)Math.Round(Number(box, "y")); y < Math.Min(high, (int)Math.Round(Number(box, "y") + Number(box, "height"))); y++)
            {
                Array.Fill(dots, (byte)0, (y * wide) + left, right - left);
            }
        }

        var file = Path.Combine(folder, "boxes.pgm");
        File.WriteAllBytes(file, [.. Encoding.ASCII.GetBytes(FormattableString.Invariant($"P5 {wide} {high} 255\n")), .. dots]);
        return file;
    }

    private static string Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, StandardOutputEncoding = Encoding.Latin1 })!;
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }
}
