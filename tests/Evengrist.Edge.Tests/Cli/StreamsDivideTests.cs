using System.Net;
using System.Text;
using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>The best divide through the command line and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class StreamsDivideTests(WebSite site)
{
    private static string Sample => File.ReadAllText(Repository.Sample("cases", "streams-divide.json"));

    [Fact]
    public void Divide_Sample_IsProvenKeepsItsLimitsAndAddsUp()
    {
        var (status, output, _) = Shell.Run("streams", "divide", "--in", Repository.Sample("cases", "streams-divide.json"), "--json");
        Assert.Equal(Exit.Done, status);
        var answer = JsonDocument.Parse(output).RootElement;
        Assert.True(answer.GetProperty("isProven").GetBoolean());
        Assert.Equal(0, answer.GetProperty("gapPercent").GetDouble());
        var flours = answer.GetProperty("flours").EnumerateArray().ToArray();
        Assert.Equal(77.7, flours.Sum(f => f.GetProperty("yield").GetDouble()), 1e-9); // the survey's streams added up by hand
        Assert.All(flours.SelectMany(f => f.GetProperty("limits").EnumerateArray()), l => Assert.True(l.GetProperty("isKept").GetBoolean()));
        Assert.True(answer.GetProperty("now").GetProperty("bestBringsMorePerDay").GetDecimal() > 0);
    }

    [Fact]
    public void Divide_Sample_SaysWhatTheNextStreamIsWorthAndThatAPersonDecides()
    {
        var (_, output, _) = Shell.Run("streams", "divide", "--in", Repository.Sample("cases", "streams-divide.json"));
        Assert.Contains("WB ash at most 0.46 % 14mb", output, StringComparison.Ordinal);
        Assert.Contains("Proven: no divide brings more. Gap 0.0000 %", output, StringComparison.Ordinal);
        Assert.Contains("a person sets the valves", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Divide_OverHttp_IsTheSameAndAClashIs422()
    {
        using var client = site.Client();
        using var good = await PostAsync(client, Sample);
        Assert.Equal(HttpStatusCode.OK, good.StatusCode);
        Assert.Equal(4, JsonDocument.Parse(await good.Content.ReadAsStringAsync()).RootElement.GetProperty("flours").GetArrayLength());
        using var clash = await PostAsync(client, Sample.Replace("\"pricePerTonne\": 430,", "\"pricePerTonne\": 430, \"leastYield\": 75,", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, clash.StatusCode);
        Assert.Contains("WB at least 75 % of the wheat", await clash.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var bad = await PostAsync(client, "{}");
        Assert.Equal(HttpStatusCode.BadRequest, bad.StatusCode);
    }

    [Fact]
    public void Divide_LimitsThatClash_EndAsNoAnswer()
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("streams", "divide", "--in", folder.File("case.json", Sample.Replace("\"pricePerTonne\": 430,", "\"pricePerTonne\": 430, \"leastYield\": 75,", StringComparison.Ordinal)), "--json");
        Assert.Equal((Exit.NoAnswer, ""), (status, output));
        Assert.Contains("WB ash at most 0.46 % 14mb", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"yield\": 14,", "\"yield\": -14,", "a yield above 0 is needed")]
    [InlineData("\"what\": \"Ash\", \"most\": 0.46", "\"what\": \"Ash\", \"most\": 46", "a limit on ash lies from 0 to 10 %; got 46")]
    [InlineData("\"what\": \"Ash\", \"most\": 0.46", "\"what\": \"Ash\"", "neither a least nor a most")]
    [InlineData("\"what\": \"Ash\", \"most\": 0.46", "\"what\": \"Colour\"", "what")]
    [InlineData("\"stream\": \"1M\", \"now\": \"WB\"", "\"stream\": \"1M\", \"now\": \"XX\"", "1M may go to XX, and there is no such flour")]
    [InlineData("\"stream\": \"1M\",", "\"stream\": \"9Z\",", "no such stream in the survey")]
    [InlineData("\"rateTonnesPerHour\": 17.5", "\"rateTonnesPerHour\": 0", "Tonnes of wheat an hour lie above 0")]
    [InlineData("\"code\": \"feed\",", "\"code\": \"WB\",", "WB stands there 2 times")]
    [InlineData("\"rest\": { \"code\": \"feed\", \"pricePerTonne\": 180 },", "\"rest\": { \"code\": \"feed\", \"pricePerTonne\": 180, \"mostYield\": 1 },", "has no limits")]
    [InlineData("\"valves\": [", "\"valves\": [ null,", "null in a list")]
    public void Divide_BadCase_SaysWhatIsWrong(string was, string becomes, string says)
    {
        using var folder = new Folder();
        Assert.Contains(was, Sample, StringComparison.Ordinal);
        var (status, output, error) = Shell.Run("streams", "divide", "--in", folder.File("case.json", Sample.Replace(was, becomes, StringComparison.Ordinal)), "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    private static async Task<HttpResponseMessage> PostAsync(HttpClient client, string text)
    {
        using var body = new StringContent(text, Encoding.UTF8, "application/json");
        return await client.PostAsync(new Uri("/api/streams/divide", UriKind.Relative), body);
    }
}
