using System.IO.Compression;
using System.Text;

namespace Evengrist.Edge.Tests.Plant;

/// <summary>Writes small workbooks (ECMA-376 parts) for the tests, sound and hostile.</summary>
internal static class Workbooks
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Links = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Package = "http://schemas.openxmlformats.org/package/2006/relationships";

    /// <summary>A workbook of sheets by name, each with the inner XML of its sheetData.</summary>
    public static byte[] Of(params (string Name, string Rows)[] sheets) => Zip(
    [
        ("[Content_Types].xml", """<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/></Types>"""),
        ("_rels/.rels", $"""<Relationships xmlns="{Package}"><Relationship Id="rId1" Type="{Links}/officeDocument" Target="xl/workbook.xml"/></Relationships>"""),
        ("xl/workbook.xml", $"""<workbook xmlns="{Main}" xmlns:r="{Links}"><sheets>{string.Concat(sheets.Select((s, i) => $"""<sheet name="{s.Name}" sheetId="{i + 1}" r:id="rId{i + 1}"/>"""))}</sheets></workbook>"""),
        ("xl/_rels/workbook.xml.rels", $"""<Relationships xmlns="{Package}">{string.Concat(sheets.Select((_, i) => $"""<Relationship Id="rId{i + 1}" Type="{Links}/worksheet" Target="worksheets/sheet{i + 1}.xml"/>"""))}<Relationship Id="rIdS" Type="{Links}/styles" Target="styles.xml"/></Relationships>"""),
        ("xl/styles.xml", $"""<styleSheet xmlns="{Main}"><cellXfs count="3"><xf numFmtId="0"/><xf numFmtId="22"/><xf numFmtId="10"/></cellXfs></styleSheet>"""),
        .. sheets.Select((s, i) => ($"xl/worksheets/sheet{i + 1}.xml", $"""<worksheet xmlns="{Main}"><sheetData>{s.Rows}</sheetData></worksheet>""")),
    ]);

    /// <summary>A row of text cells and, where a value is a number, number cells.</summary>
    public static string Row(int number, params object[] cells) =>
        $"""<row r="{number}">{string.Concat(cells.Select((c, i) => Cell($"{(char)('A' + i)}{number}", c)))}</row>""";

    public static byte[] Zip(params IReadOnlyList<(string Name, string Text)> parts)
    {
        using var bytes = new MemoryStream();
        using (var archive = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, text) in parts)
            {
                using var part = archive.CreateEntry(name).Open();
                part.Write(Encoding.UTF8.GetBytes(text));
            }
        }

        return bytes.ToArray();
    }

    private static string Cell(string at, object value) => value switch
    {
        double number => FormattableString.Invariant($"""<c r="{at}"><v>{number:R}</v></c>"""),
        int number => FormattableString.Invariant($"""<c r="{at}"><v>{number}</v></c>"""),
        _ => $"""<c r="{at}" t="inlineStr"><is><t>{System.Security.SecurityElement.Escape(value.ToString())}</t></is></c>""",
    };
}
