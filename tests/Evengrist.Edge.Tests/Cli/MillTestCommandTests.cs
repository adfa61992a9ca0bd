using Evengrist.Cli;
using Evengrist.Demo;
using Evengrist.Edge.Tests.Web;
using Evengrist.Milling.Sheet;
using Evengrist.Plant.Cases;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Mill tests kept, listed, struck and asked from the command line, in a tiny mill.</summary>
public sealed class MillTestCommandTests
{
    private static readonly string Example = MillTestColumns.Example.Replace("2025-09-", "2025-05-", StringComparison.Ordinal);

    [Fact]
    public void Tests_AddedListedAskedAndStruck()
    {
        using var folder = new Folder();
        var mill = folder.File("mill.db", "");
        File.Delete(mill);
        TinyMill.Open(mill).Dispose();
        (int Status, string Output, string Error) Run(params string[] words) => Shell.Run([.. words, "--data", mill]);
        var file = folder.File("tests.csv", Example);
        Assert.Contains("No flow sheet of a unit UA", Run("milling", "tests", "add", "--in", file, "--unit", "UA", "--by", "Ada").Error, StringComparison.Ordinal);
        Assert.Equal(Exit.Done, Run("milling", "keep", "--in", folder.File("sheet.json", FlowSheetJson.Write(HouseFlowSheets.Of('A'))), "--unit", "UA", "--by", "Ada", "--reason", "as it stands").Status);
        Assert.Contains("No mill test is kept", Run("milling", "tests", "list").Output, StringComparison.Ordinal);
        Assert.Equal(Exit.NoAnswer, Run("milling", "tests", "fit", "--unit", "UA").Status);
        Assert.Contains("2 tests could be kept; nothing was.", Run("milling", "tests", "add", "--in", file, "--unit", "UA", "--by", "Ada", "--dry-run").Output, StringComparison.Ordinal);
        Assert.Contains("2 tests of UA stand: UA-2025-05-22T0900, UA-2025-05-29T0900", Run("milling", "tests", "add", "--in", file, "--unit", "UA", "--by", "Ada").Output, StringComparison.Ordinal);
        Assert.Contains("2 releases, 1 sieve, 1 stream", Run("milling", "tests", "list", "--unit", "ua").Output, StringComparison.Ordinal);
        Assert.Contains("\"sheetVersion\": 1", Run("milling", "tests", "list", "--json").Output, StringComparison.Ordinal);
        Assert.Contains("From line 6: UA-2025-05-29T0900 stands already in version 1", Run("milling", "tests", "add", "--in", folder.File("b.csv", Example.Replace("31.2", "32.2", StringComparison.Ordinal)), "--unit", "UA", "--by", "Ada").Error, StringComparison.Ordinal);
        Assert.Contains("line 3, column 7 (kind)", Run("milling", "tests", "add", "--in", folder.File("c.csv", Example.Replace("release;B2", "relese;B2", StringComparison.Ordinal)), "--unit", "UA", "--by", "Ada").Error, StringComparison.Ordinal);
        var (status, output, _) = Run("milling", "tests", "fit", "--unit", "UA");
        Assert.Equal(Exit.Done, status);
        Assert.Contains("B1", output, StringComparison.Ordinal);
        Assert.Contains("4 or more are needed", Run("milling", "tests", "drift", "--unit", "UA", "--flour", "430", "--feed", "200").Error, StringComparison.Ordinal);
        Assert.Contains("Flour brings no less than feed", Run("milling", "tests", "drift", "--unit", "UA", "--flour", "100", "--feed", "200").Error, StringComparison.Ordinal);
        Assert.Contains("is struck in version 2: blind sieve", Run("milling", "tests", "strike", "--code", "UA-2025-05-29T0900", "--reason", "blind sieve", "--by", "Ada").Output, StringComparison.Ordinal);
        Assert.Contains("struck already", Run("milling", "tests", "strike", "--code", "UA-2025-05-29T0900", "--reason", "x", "--by", "Ada").Error, StringComparison.Ordinal);
    }
}
