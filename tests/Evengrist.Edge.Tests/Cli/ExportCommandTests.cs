using System.Text.Json;
using Evengrist.Cli;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Lists taken out by the command line.</summary>
public sealed class ExportCommandTests
{
    [Fact]
    public void Export_AList_WritesItsRowsAndSaysHowMany()
    {
        using var folder = EpcisCommandTests.Mill();
        var file = Path.Combine(folder.Path, "m.csv");
        var (status, output, error) = Shell.Run("ledger", "export", "--list", "movements", "--of", "25-0001", "--out", file, "--data", folder.Path, "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        Assert.Equal(JsonDocument.Parse(output).RootElement.GetProperty("rows").GetInt32(), File.ReadAllLines(file).Length - 1);
        Assert.Contains("25-0001", File.ReadAllText(file), StringComparison.Ordinal);
        Assert.Contains("movements", Shell.Run("ledger", "export", "--data", folder.Path).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--list", "--list", "cows", "--out", "x.csv")]
    [InlineData("--out", "--list", "movements")]
    [InlineData("--as", "--list", "movements", "--out", "x.docx")]
    [InlineData("--with", "--list", "layers", "--out", "x.csv", "--with", "stirred")]
    [InlineData("--from", "--list", "movements", "--out", "x.csv", "--from", "yesterday")]
    public void Export_CalledWrongly_NamesTheOption(string option, params string[] args)
    {
        using var folder = EpcisCommandTests.Mill();
        var (status, _, error) = Shell.Run(["ledger", "export", .. args, "--data", folder.Path]);
        Assert.Equal(Exit.BadInput, status);
        Assert.StartsWith(option, error, StringComparison.Ordinal);
    }
}
