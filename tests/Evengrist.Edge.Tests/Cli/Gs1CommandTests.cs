using System.Text;
using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Codes on the command line.</summary>
public sealed class Gs1CommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("evengrist-gs1-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("]C1010952123400201715250315310200250010F24-0915-2")]
    [InlineData("(01)09521234002017(15)250315(3102)002500(10)F24-0915-2")]
    [InlineData("https://flour.example/01/9521234002017/10/F24-0915-2?15=250315&3102=002500")]
    public void Parse_OneBagInEveryForm_SaysTheSame(string text)
    {
        var (status, output, error) = Shell.Run("gs1", "parse", text, "--prefix-length", "7", "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        using var answer = JsonDocument.Parse(output);
        Assert.Equal("https://id.gs1.org/01/09521234002017/10/F24-0915-2?15=250315&3102=002500", answer.RootElement.GetProperty("link").GetString());
        Assert.Equal("urn:epc:class:lgtin:9521234.000201.F24-0915-2", answer.RootElement.GetProperty("epcUri").GetString());
        Assert.Contains("net weight, kg: 25.00", answer.RootElement.GetProperty("elements").EnumerateArray().Select(e => e.GetProperty("says").GetString()));
    }

    [Fact]
    public void Parse_WrongCheckDigit_IsSaidWithItsPlace()
    {
        var (status, output, error) = Shell.Run("gs1", "parse", "0109521234002016", "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Equal("character 3 ((01)): read \"09521234002016\"; expected check digit 7 at the end, not 6; read it again\n", error);
    }

    [Fact]
    public void Parse_OneOfSeveralSymbols_IsNotAskedForItsCompanions()
    {
        Assert.Equal(Exit.BadInput, Shell.Run("gs1", "parse", "(15)250315(10)F24").Status);
        var (status, output, _) = Shell.Run("gs1", "parse", "(15)250315(10)F24", "--part");
        Assert.Equal(Exit.Done, status);
        Assert.Contains("best before: 2025-03-15", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Make_ElementsAndSymbol_AreWritten()
    {
        var file = Path.Combine(folder, "bag.svg");
        var (status, output, _) = Shell.Run("gs1", "make", "10=WB-251007-3", "01=09521234002017", "21=1001", "--symbol", "qr", "--out", file);
        Assert.Equal(Exit.Done, status);
        Assert.Contains("sent: 010952123400201710WB-251007-3<GS>211001", output, StringComparison.Ordinal);
        Assert.Contains("https://id.gs1.org/01/09521234002017/10/WB-251007-3/21/1001", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ELEMENT", "01")]
    [InlineData("(04)", "04=1")]
    [InlineData("--out", "01=09521234002017", "--symbol", "qr")]
    [InlineData("--symbol", "01=09521234002017", "--symbol", "dots", "--out", "x.svg")]
    [InlineData("--prefix-length", "01=09521234002017", "--prefix-length", "4")]
    public void Make_WhatCannotBe_IsRefusedByName(string name, params string[] words)
    {
        var (status, output, error) = Shell.Run(["gs1", "make", .. words]);
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.StartsWith(name, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Label_Samples_AreDrawnAsPdfAndSvg()
    {
        foreach (var (sample, says) in new[] { ("label-bag.json", "(21)1001"), ("label-pallet.json", "(00)095212340000000426") })
        {
            var (pdf, svg) = (Path.Combine(folder, "label.pdf"), Path.Combine(folder, "label.svg"));
            var (status, output, _) = Shell.Run("gs1", "label", "--in", Repository.Sample("cases", sample), "--out", pdf);
            Assert.Equal(Exit.Done, status);
            Assert.Contains(says, output, StringComparison.Ordinal);
            Assert.Equal(Exit.Done, Shell.Run("gs1", "label", "--in", Repository.Sample("cases", sample), "--out", svg).Status);
            Assert.Equal("%PDF", Encoding.ASCII.GetString(File.ReadAllBytes(pdf)[..4]));
            Assert.StartsWith("<svg", File.ReadAllText(svg), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Label_WrongMembers_AreEachNamed()
    {
        var file = Path.Combine(folder, "case.json");
        File.WriteAllText(file, """{ "mill": "M", "flour": "F", "item": "09521234002016", "netKilograms": 0, "lot": "12345678901234567890X", "bestBefore": "7 Oct", "bags": 3, "size": "a4" }""");
        var (status, _, error) = Shell.Run("gs1", "label", "--in", file, "--out", Path.Combine(folder, "x.pdf"));
        Assert.Equal(Exit.BadInput, status);
        Assert.All(new[] { "$.item", "$.netKilograms", "$.lot", "$.bestBefore", "$.bags", "$.size" }, path => Assert.Contains(path, error, StringComparison.Ordinal));
        Assert.Equal(Exit.BadInput, Shell.Run("gs1", "label", "--in", Repository.Sample("cases", "label-bag.json"), "--out", Path.Combine(folder, "none", "x.pdf")).Status);
        Assert.Equal(Exit.BadInput, Shell.Run("gs1", "label", "--in", Repository.Sample("cases", "label-bag.json"), "--out", "x.png").Status);
    }
}
