using System.Text.Json;
using Evengrist.Cli;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Net content through the command line.</summary>
public sealed class NetContentTests
{
    private const string TwelveBags = """{ "rules": "US", "label": 5, "unit": "lb", "lot": 200, "weights": [ 4.98, 5.01, 4.97, 4.99, 5.02, 4.96, 5.00, 4.98, 5.01, 4.99, 4.97, 5.00 ] }""";

    /// <summary>Twelve bags of 5 lb [ours], by hand: mean −0.010, s 0.0185864, limit 0.0118024 lb.</summary>
    [Fact]
    public void Bags_OfFivePounds_PassInJsonAndInWords()
    {
        using var folder = new Folder();
        var file = folder.File("case.json", TwelveBags);
        var found = JsonDocument.Parse(Shell.Run("packing", "netcontent", "--in", file, "--json").Output).RootElement.GetProperty("american");
        Assert.Equal(-0.010, found.GetProperty("meanError").GetDouble(), 1e-9);
        Assert.Equal(0.0118024, found.GetProperty("errorLimit").GetDouble(), 1e-7);
        var (status, output, _) = Shell.Run("packing", "netcontent", "--in", file);
        Assert.Equal(Exit.Done, status);
        Assert.Contains("the lot passes", output, StringComparison.Ordinal);
        Assert.Contains("from memory: check them", output, StringComparison.Ordinal);
    }

    /// <summary>1 kg, T1 985 g: s 10 g asks for 1007.19 g [practice of packers, from memory; computed]; 14 % flour sold at 12 % asks for 1000 · 88/86 of that.</summary>
    [Fact]
    public void Fill_OfAKilogram_IsAskedWithoutWeights()
    {
        using var folder = new Folder();
        var file = folder.File("case.json", """{ "rules": "EU", "label": 1000, "unit": "g", "lot": 5000, "fill": { "deviation": 10, "packedMoisture": 14, "soldMoisture": 12 } }""");
        var fill = JsonDocument.Parse(Shell.Run("packing", "netcontent", "--in", file, "--json").Output).RootElement.GetProperty("fill");
        Assert.Equal(1007.19, fill.GetProperty("whenSold").GetDouble(), 1e-6);
        Assert.Equal(1007.19 * 88 / 86, fill.GetProperty("toAim").GetDouble(), 1e-6);
    }

    [Theory]
    [InlineData("{ }", "US or EU")]
    [InlineData("""{ "rules": "US", "label": 5, "unit": "stone", "lot": 200 }""", "kg, g or lb")]
    [InlineData("""{ "rules": "US", "label": 0, "unit": "lb", "lot": 200 }""", "$.label")]
    [InlineData("""{ "rules": "US", "label": 5, "unit": "lb", "lot": 1, "weights": [ 5 ] }""", "A lot has 2")]
    [InlineData("""{ "rules": "US", "label": 5, "unit": "lb", "lot": 300, "weights": [ 5, 5 ] }""", "24 are weighed; got 2")]
    [InlineData("""{ "rules": "EU", "label": 1, "lot": 20000, "weights": [ 1 ] }""", "in parts")]
    [InlineData("""{ "rules": "EU", "label": 1, "lot": 400 }""", "Nothing is asked")]
    [InlineData("""{ "rules": "EU", "label": 1, "lot": 3, "weights": [ 1, 1, -1 ] }""", "above 0")]
    [InlineData("""{ "rules": "EU", "label": 1, "lot": 3, "weights": [ 1, 1, 1 ], "tare": { "mean": 1.2 } }""", "that of the empty package")]
    [InlineData("""{ "rules": "EU", "label": 1, "lot": 3, "weights": [ 1, 1, 1 ], "second": [ 1 ] }""", "no second sample")]
    [InlineData("""{ "rules": "EU", "label": 1, "lot": 400, "fill": { "deviation": 0 } }""", "above 0")]
    [InlineData("""{ "rules": "EU", "label": 1, "lot": 400, "fill": { "deviation": 1, "soldMoisture": 12 } }""", "or neither")]
    public void Weights_ThatCannotBe_NameTheFault(string text, string says)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("packing", "netcontent", "--in", folder.File("case.json", text));
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }
}
