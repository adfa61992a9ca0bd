using System.Net;
using System.Text;
using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web;
using Evengrist.Plant.Cases;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>A flow sheet checked through the command line and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class FlowSheetCaseTests(WebSite site)
{
    private static readonly string Sample = Repository.Sample("cases", "flow-sheet.json");

    [Fact]
    public void Sheet_Sample_IsAddedUp()
    {
        var (status, output, error) = Shell.Run("milling", "sheet", "--in", Sample, "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        var answer = JsonDocument.Parse(output).RootElement;
        Assert.Equal((17, 21_000), (answer.GetProperty("passages").GetInt32(), answer.GetProperty("rollMillimetres").GetInt32()));
        Assert.Equal(21_000 / 1800.0, answer.GetProperty("rollMillimetresPer100Kilograms").GetDouble(), 1e-9); // 180 t in 24 h are 1800 times 100 kg.
        Assert.Equal(2, answer.GetProperty("loops").GetArrayLength());
    }

    [Fact]
    public void Sheet_Sample_SaysWhatItHasAndWhatToMind()
    {
        var (_, output, _) = Shell.Run("milling", "sheet", "--in", Sample);
        Assert.Contains("17 passages, 15 products, wheat to B1; no fault", output, StringComparison.Ordinal);
        Assert.Contains("rolls 11.67 mm", output, StringComparison.Ordinal);
        Assert.Contains("stock goes round, and all of it can leave: S1 S2 M1 P2 G1; M5 SF G2", output, StringComparison.Ordinal);
        Assert.Contains("lock out and tag out", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_OfTheHelp_HasNoFault()
    {
        using var folder = new Folder();
        var (status, output, _) = Shell.Run("milling", "sheet", "--in", folder.File("sheet.json", FlowSheetCase.Help.Example));
        Assert.Equal(Exit.Done, status);
        Assert.Contains("stock goes round, and all of it can leave: M1", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"firstBreak\": \"B1\"", "\"firstBreak\": \"B0\"", "First break B0 is not among the passages")]
    [InlineData("\"gapMicrometres\": 550", "\"gapMicrometres\": -550", "B1: a roll gap lies from 10 to 2000 µm.")]
    [InlineData("\"apertureMicrometres\": 950", "\"apertureMicrometres\": 0", "B3: a cloth of 0 µm")]
    [InlineData("\"tonnesPerDay\": 180", "\"tonnesPerDay\": \"180\"", "tonnesPerDay (line 4): write a number, without quotes.")]
    [InlineData("\"passages\"", "\"passage\"", "\"passage\" (line 5")]
    [InlineData("\"products\": [", "\"products\": ", "products (line 170): write a list in square brackets.")]
    public void Sheet_ThatCannotBe_SaysWhereAndWhat(string was, string becomes, string says)
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Sample);
        Assert.Contains(was, text, StringComparison.Ordinal);
        var (status, output, error) = Shell.Run("milling", "sheet", "--in", folder.File("sheet.json", text.Replace(was, becomes, StringComparison.Ordinal)), "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_WithSeveralFaults_NamesEachOnALine()
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Sample).Replace("\"gapMicrometres\": 550", "\"gapMicrometres\": 5", StringComparison.Ordinal).Replace("\"apertureMicrometres\": 850", "\"apertureMicrometres\": 9500", StringComparison.Ordinal);
        var (_, _, error) = Shell.Run("milling", "sheet", "--in", folder.File("sheet.json", text));
        Assert.Equal(2, error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public async Task Sheet_OverHttp_IsTheSame()
    {
        using var client = site.Client();
        var text = await File.ReadAllTextAsync(Sample);
        using var reply = await PostAsync(client, text);
        Assert.Equal(HttpStatusCode.OK, reply.StatusCode);
        Assert.Equal(17, JsonDocument.Parse(await reply.Content.ReadAsStringAsync()).RootElement.GetProperty("passages").GetInt32());
        using var bad = await PostAsync(client, text.Replace("\"gapMicrometres\": 550", "\"gapMicrometres\": 0", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.BadRequest, bad.StatusCode);
        Assert.Contains("B1: a roll gap lies from 10 to 2000", await bad.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public void Keep_AndKept_AreOneFileThereAndBack()
    {
        using var folder = new Folder();
        string[] mill = ["--data", folder.Path];
        Assert.Equal(Exit.Done, Shell.Run(["mill", "new", "--name", "Little Mill", "--zone", "America/Chicago", .. mill]).Status);
        var (status, output, _) = Shell.Run(["milling", "keep", "--in", Sample, "--unit", "B", "--by", "Ada Miller", "--reason", "as it stands", .. mill]);
        Assert.Equal(Exit.Done, status);
        Assert.Contains("Version 1 of B stands, kept by Ada Miller: as it stands", output, StringComparison.Ordinal);
        Assert.Contains("Roll nips draw in", output, StringComparison.Ordinal);
        Assert.Equal(File.ReadAllText(Sample), Shell.Run(["milling", "kept", "--unit", "B", .. mill]).Output.ReplaceLineEndings("\n"));
        Assert.Contains("as it stands", Shell.Run(["milling", "kept", .. mill]).Output, StringComparison.Ordinal);

        var changed = folder.File("changed.json", File.ReadAllText(Sample).Replace("\"gapMicrometres\": 550", "\"gapMicrometres\": 580", StringComparison.Ordinal));
        Assert.Contains("Version 1 of B was kept meanwhile", Shell.Run(["milling", "keep", "--in", changed, "--unit", "B", "--by", "Ben", "--reason", "ground", .. mill]).Error, StringComparison.Ordinal);
        Assert.Contains("Version 2 of B", Shell.Run(["milling", "keep", "--in", changed, "--unit", "B", "--by", "Ben", "--reason", "ground", "--after", "1", .. mill]).Output, StringComparison.Ordinal);
        (status, _, var error) = Shell.Run(["milling", "kept", "--unit", "B", "--version", "3", .. mill]);
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains("There is B up to version 2.", error, StringComparison.Ordinal);
        Assert.Contains("Say why this version is made", Shell.Run(["milling", "keep", "--in", changed, "--unit", "C", "--by", "Ben", "--reason", " ", .. mill]).Error, StringComparison.Ordinal);
    }

    private static async Task<HttpResponseMessage> PostAsync(HttpClient client, string text)
    {
        using var body = new StringContent(text, Encoding.UTF8, "application/json");
        return await client.PostAsync(new Uri("/api/milling/sheet", UriKind.Relative), body);
    }
}
