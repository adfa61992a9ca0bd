using System.IO.Compression;
using System.Xml;

namespace Evengrist.Plant.Tables;

/// <summary>Finds the cells of a workbook that show an error (<c>#REF!</c>, <c>#DIV/0!</c> …), which would otherwise read as empty.</summary>
internal static class ErrorCells
{
    private static readonly XmlReaderSettings Strict = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };

    public static IReadOnlyList<Fault> In(byte[] workbook, int most)
    {
        using var archive = new ZipArchive(new MemoryStream(workbook, writable: false));
        return archive.Entries.Where(e => e.FullName.StartsWith("xl/worksheets/", StringComparison.OrdinalIgnoreCase) && e.FullName.EndsWith(".xml", StringComparison.OrdinalIgnoreCase))
            .SelectMany(Cells).Take(most).Select(FaultAt).ToArray();
    }

    private static IEnumerable<string> Cells(ZipArchiveEntry sheet)
    {
        using var part = sheet.Open();
        using var xml = XmlReader.Create(part, Strict);
        while (xml.Read())
        {
            if (xml is { NodeType: XmlNodeType.Element, LocalName: "c" } && xml.GetAttribute("t") == "e")
            {
                yield return xml.GetAttribute("r") ?? "";
            }
        }
    }

    private static Fault FaultAt(string cell)
    {
        var letters = cell.TakeWhile(char.IsAsciiLetterUpper).Take(3).ToArray();
        var column = letters.Aggregate(0, (sum, letter) => (sum * 26) + letter - 'A' + 1);
        return new Fault(int.TryParse(cell[letters.Length..], out var line) ? line : null, column, "", $"an error in {Fault.Show(cell)}", "a value; the workbook shows an error there");
    }
}
