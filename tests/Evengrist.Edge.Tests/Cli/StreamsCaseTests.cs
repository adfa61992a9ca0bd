using System.Net;
using System.Text;
using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>The ash curve through the command line and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class StreamsCaseTests(WebSite site)
{
    [Fact]
    public void Curve_Sample_IsTheWorkedCaseOfTheModelPage()
    {
        var (status, output, _) = Shell.Run("streams", "curve", "--in", Repository.Sample("cases", "streams-curve.json"), "--json");
        Assert.Equal(Exit.Done, status);
        var answer = JsonDocument.Parse(output).RootElement;
        Assert.Equal(76.0, answer.GetProperty("straight").GetProperty("yield").GetDouble(), 1e-9);
        Assert.Equal(0.5163, answer.GetProperty("straight").GetProperty("ashPercent").GetDouble(), 0.00005);
        var cut = answer.GetProperty("cuts")[0];
        Assert.Equal(("B1", 0.375), (cut.GetProperty("divided").GetString(), Math.Round(cut.GetProperty("dividedYield").GetDouble(), 3)));
        Assert.Equal(52.875, cut.GetProperty("yield").GetDouble(), 0.0005);
        Assert.Equal(4.5, answer.GetProperty("left").GetProperty("yield").GetDouble(), 1e-9);
    }

    [Fact]
    public void Curve_Sample_SaysWhatMayBeCalledFlourAndThatAPersonDecides()
    {
        var (_, output, _) = Shell.Run("streams", "curve", "--in", Repository.Sample("cases", "streams-curve.json"));
        Assert.Contains("B4 is divided after 0.97", output, StringComparison.Ordinal);
        Assert.Contains("no: too much ash", output, StringComparison.Ordinal);
        Assert.Contains("a person sets the valves", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Curve_OverHttp_IsTheSame()
    {
        using var client = site.Client();
        using var body = new StringContent(await File.ReadAllTextAsync(Repository.Sample("cases", "streams-curve.json")), Encoding.UTF8, "application/json");
        using var reply = await client.PostAsync(new Uri("/api/streams/curve", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.OK, reply.StatusCode);
        var answer = JsonDocument.Parse(await reply.Content.ReadAsStringAsync()).RootElement;
        Assert.Equal(14, answer.GetProperty("points").GetArrayLength());
    }

    [Theory]
    [InlineData("\"yield\": 14,", "\"yield\": 84,", "more flour than wheat")]
    [InlineData("\"ashPercent\": 0.36,", "\"ashPercent\": -0.36,", "1M: ash lies above 0")]
    [InlineData("\"code\": \"2M\"", "\"code\": \"1M\"", "1M stands there 2 times")]
    [InlineData("\"basis\": \"14mb\"", "\"basis\": \"wet\"", "basis")]
    [InlineData("\"cutAt\": [0.4", "\"cutAt\": [-0.4", "ash above 0 and at most 10 %")]
    [InlineData("[\"B3\", \"5M\"", "[\"B3\", \"9Z\"", "There is no stream 9Z in the table.")]
    [InlineData("[\"B3\", \"5M\"", "[\"B3\", \"1M\"", "1M goes into 2 places")]
    [InlineData("\"cutAt\"", "\"cut\"", "\"cut\" (line")]
    public void Curve_BadCase_SaysWhatIsWrong(string was, string becomes, string says)
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", "streams-curve.json"));
        Assert.Contains(was, text, StringComparison.Ordinal);
        var (status, output, error) = Shell.Run("streams", "curve", "--in", folder.File("case.json", text.Replace(was, becomes, StringComparison.Ordinal)), "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(says, error, StringComparison.Ordinal);
    }
}
