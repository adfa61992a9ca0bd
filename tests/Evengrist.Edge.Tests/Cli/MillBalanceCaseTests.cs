using System.Net;
using System.Text;
using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>The balance of a mill through the command line and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class MillBalanceCaseTests(WebSite site)
{
    private static string Sample => File.ReadAllText(Repository.Sample("cases", "mill-balance.json"));

    [Fact]
    public void Balance_Sample_IsTheWorkedCaseOfTheModelPage()
    {
        var (status, output, _) = Shell.Run("milling", "balance", "--in", Repository.Sample("cases", "mill-balance.json"), "--json");
        Assert.Equal(Exit.Done, status);
        var answer = JsonDocument.Parse(output).RootElement;
        Assert.Equal([74.2, 77.0, 78.1], answer.GetProperty("extractions").EnumerateArray().Take(3).Select(e => Math.Round(e.GetProperty("percent").GetDouble(), 1)));
        Assert.Equal((2.16, 9.4, 1.5), (Round("bushelsPerHundredweight", 2), Round("unexplainedTonnes", 1), Round("unexplainedPercent", 1)));
        Assert.Equal(100, answer.GetProperty("kilowattHoursPerTonneFlour").GetDouble(), 1e-9);
        Assert.Equal(answer.GetProperty("unexplainedTonnes").GetDouble(), answer.GetProperty("losses").EnumerateArray().Sum(l => l.GetProperty("tonnes").GetDouble()), 1e-6);
        double Round(string member, int decimals) => Math.Round(answer.GetProperty(member).GetDouble(), decimals);
    }

    [Fact]
    public void Balance_OfTenTonnesOfFlourFewer_IsFlagged()
    {
        using var folder = new Folder();
        var (_, output, _) = Shell.Run("milling", "balance", "--in", folder.File("case.json", Sample.Replace("462", "452", StringComparison.Ordinal)));
        Assert.Contains("NOT usual (0.5 to 2 % of wheat and water, from memory)", output, StringComparison.Ordinal);
        Assert.Contains("does not fit", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Balance_OverHttp_IsTheSame()
    {
        using var client = site.Client();
        using var body = new StringContent(Sample, Encoding.UTF8, "application/json");
        using var reply = await client.PostAsync(new Uri("/api/milling/balance", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.OK, reply.StatusCode);
        Assert.Equal(622.59, JsonDocument.Parse(await reply.Content.ReadAsStringAsync()).RootElement.GetProperty("firstBreakTonnes").GetDouble(), 1e-9);
    }

    [Theory]
    [InlineData("\"tonnes\": 600", "\"tonnes\": -600", "Wheat: it lies from 0")]
    [InlineData("\"tonnes\": 600", "\"tonnes\": 0", "No wheat went to the mill")]
    [InlineData("\"percent\": 11.6", "\"percent\": 111.6", "Moisture of the wheat: it lies from 0 up to 100 %")]
    [InlineData("\"name\": \"germ\"", "\"name\": \"flour\"", "flour stands there 2 times")]
    [InlineData("\"kind\": \"Flour\"", "\"kind\": \"Gold\"", "kind")]
    [InlineData("\"kilowattHours\"", "\"kilowatts\"", "\"kilowatts\" (line")]
    public void Balance_BadCase_SaysWhatIsWrong(string was, string becomes, string says)
    {
        using var folder = new Folder();
        Assert.Contains(was, Sample, StringComparison.Ordinal);
        var (status, output, error) = Shell.Run("milling", "balance", "--in", folder.File("case.json", Sample.Replace(was, becomes, StringComparison.Ordinal)), "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(says, error, StringComparison.Ordinal);
    }
}
