using System.Net;
using System.Text;
using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Additions through the command line and over HTTP; figures as the model page works them.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class StreamsAdditionsTests(WebSite site)
{
    private static string Sample => File.ReadAllText(Repository.Sample("cases", "streams-additions.json"));

    [Fact]
    public void Additions_Sample_IsTheWorkedCaseOfTheModelPage()
    {
        var (status, output, _) = Shell.Run("streams", "additions", "--in", Repository.Sample("cases", "streams-additions.json"), "--json");
        Assert.Equal(Exit.Done, status);
        var answer = JsonDocument.Parse(output).RootElement;
        Assert.Equal(0.36667, answer.GetProperty("malt").GetProperty("slope").GetDouble(), 5);
        Assert.Equal(36.36, answer.GetProperty("malt").GetProperty("gramsPer100Kg").GetDouble(), 2);
        Assert.Equal(2.3256, answer.GetProperty("gluten").GetProperty("kilogramsPer100Kg").GetDouble(), 4);
        Assert.Equal(5.03, answer.GetProperty("tonnesWithout").GetDouble(), 2);
        Assert.Equal(11.71, answer.GetProperty("rework").GetProperty("values")[0].GetProperty("with").GetDouble(), 9);
        Assert.Equal(400 * 12.075 / 60, answer.GetProperty("ascorbic").GetProperty("rate").GetProperty("gramsPerMinute").GetDouble(), 9); // 40 ppm of a tenth
        Assert.Equal([6.39, 3.97, 52.9, 1.54, 44.1], answer.GetProperty("enrichment").GetProperty("nutrients").EnumerateArray().Select(n => n.GetProperty("aim").GetDouble()), (a, b) => Math.Abs(a - b) < 0.05);
    }

    [Fact]
    public void Additions_Sample_SaysWhatItIsNot()
    {
        var (_, output, _) = Shell.Run("streams", "additions", "--in", Repository.Sample("cases", "streams-additions.json"));
        Assert.Contains("5.03 t of flour ran while the feeder stood", output, StringComparison.Ordinal);
        Assert.Contains("21 CFR 137.165", output, StringComparison.Ordinal);
        Assert.Contains("local food law", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Additions_OverHttp_IsTheSame()
    {
        using var client = site.Client();
        using var body = new StringContent(Sample, Encoding.UTF8, "application/json");
        using var reply = await client.PostAsync(new Uri("/api/streams/additions", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.OK, reply.StatusCode);
        Assert.Equal(5.03, JsonDocument.Parse(await reply.Content.ReadAsStringAsync()).RootElement.GetProperty("tonnesWithout").GetDouble(), 2);
    }

    [Theory]
    [InlineData("\"wantedSeconds\": 250", "\"wantedSeconds\": 25", "60 to 1000 s; got 25")]
    [InlineData("\"glutenPercent\": 77", "\"glutenPercent\": 12", "cannot bring the flour")]
    [InlineData("\"market\": \"United States\"", "\"market\": \"Nowhere\"", "no table of Nowhere holds then")]
    [InlineData("\"iron\": 11.1", "\"gold\": 11.1", "asks for no gold")]
    [InlineData("\"untilKilograms\": 21.9", "\"untilKilograms\": 61.9", "say what was filled in")]
    [InlineData("\"flourTonnesPerHour\": 12.075", "\"flourTonnesPerHour\": -12", "tonnes an hour lie above 0")]
    [InlineData("\"trials\": [", "\"trials\": [ null,", "null in a list")]
    [InlineData("\"stoodMinutes\"", "\"stood\"", "\"stood\" (line")]
    public void Additions_BadCase_SaysWhatIsWrong(string was, string becomes, string says)
    {
        using var folder = new Folder();
        Assert.Contains(was, Sample, StringComparison.Ordinal);
        var (status, output, error) = Shell.Run("streams", "additions", "--in", folder.File("case.json", Sample.Replace(was, becomes, StringComparison.Ordinal)), "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(says, error, StringComparison.Ordinal);
    }
}
