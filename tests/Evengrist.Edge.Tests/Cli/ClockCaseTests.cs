using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>The arrival clock through the command line and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class ClockCaseTests(WebSite site)
{
    private static string Sample => File.ReadAllText(Repository.Sample("cases", "mill-clock.json"));

    /// <summary>By hand: half of it is new at first break after 0.17 + 18 + 3.4 ln 2 hours.</summary>
    [Fact]
    public void Clock_Sample_IsTheWorkedCaseOfTheModelPage()
    {
        var (status, output, _) = Shell.Run("milling", "clock", "--in", Repository.Sample("cases", "mill-clock.json"), "--json");
        Assert.Equal(Exit.Done, status);
        var half = JsonDocument.Parse(output).RootElement.GetProperty("stages")[1].GetProperty("arrivals")[1];
        Assert.Equal(18.17 + (3.4 * Math.Log(2)), half.GetProperty("hours").GetDouble(), 1e-6);
        Assert.Equal(2 * Math.Sqrt((0.08 * 0.08) + (0.4 * 0.4) + Math.Pow(0.7 * Math.Log(2), 2)), half.GetProperty("plusMinus").GetDouble(), 1e-3);
        Assert.Contains("50 % new", Shell.Run("milling", "clock", "--in", Repository.Sample("cases", "mill-clock.json")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Clock_OverHttp_FindsADelayFromReadingsOrSaysWhyNot()
    {
        using var client = site.Client();
        string Readings(double step) => string.Join(',', Enumerable.Range(-12, 60).Select(h => string.Create(CultureInfo.InvariantCulture, $$"""{ "hours": {{h}}, "value": {{(h < 19.5 ? 12 : 12 + step) + (0.1 * (h % 2))}}, "standardUncertainty": 0.1 }""")));
        async Task<(HttpStatusCode, string)> Ask(string body)
        {
            using var content = new StringContent(body, Encoding.UTF8, "application/json");
            using var reply = await client.PostAsync(new Uri("/api/milling/clock", UriKind.Relative), content);
            return (reply.StatusCode, await reply.Content.ReadAsStringAsync());
        }

        var (found, answer) = await Ask($$"""{ "readings": [{{Readings(2)}}] }""");
        Assert.Equal(HttpStatusCode.OK, found);
        var step = JsonDocument.Parse(answer).RootElement.GetProperty("readings");
        Assert.Equal((true, 19.5), (step.GetProperty("isSharp").GetBoolean(), Math.Round(2 * (step.GetProperty("delayHours").GetDouble() + step.GetProperty("stirredHours").GetDouble())) / 2));
        var (none, why) = await Ask($$"""{ "readings": [{{Readings(0)}}] }""");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, none);
        Assert.Contains("No step stands out", why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"delayHours\": 18", "\"delayHours\": -18", "first break: a dead time lies from 0 to 1000 h")]
    [InlineData("\"stirredHours\": 3.4", "\"stirredHours\": 3.4, \"tanks\": 0", "first break: there are 1 to 20 tanks")]
    [InlineData("\"stages\"", "\"shares\": [1.5], \"stages\"", "a share above 0 and below 1")]
    [InlineData("\"name\": \"packer\", ", "", "name")]
    [InlineData("\"stages\"", "\"stage\"", "\"stage\" (line")]
    public void Clock_BadCase_SaysWhatIsWrong(string was, string becomes, string says)
    {
        using var folder = new Folder();
        Assert.Contains(was, Sample, StringComparison.Ordinal);
        var (status, output, error) = Shell.Run("milling", "clock", "--in", folder.File("case.json", Sample.Replace(was, becomes, StringComparison.Ordinal)), "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(says, error, StringComparison.Ordinal);
    }
}
