using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Web.Sights.Streams;

namespace Evengrist.Edge.Tests.Web;

/// <summary>The page of flour streams, with good and bad lines.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class StreamsPageTests(WebSite site)
{
    [Fact]
    public async Task Page_WithoutASurvey_SaysWhatToDo() => Assert.Contains("Weigh and sample every flour spout", await PageAsync(""), StringComparison.Ordinal);

    [Fact]
    public async Task Example_IsTheWorkedTableOfTheModelPage()
    {
        // docs/model/streams.md: ash 0.45 ends in B4 after 0.970, 70.470 % of the wheat; straight 0.5163.
        var page = await PageAsync($"?survey={Uri.EscapeDataString(CurveAsk.Example)}&cut=0.45");
        Assert.Contains("70.47 % of the wheat", page, StringComparison.Ordinal);
        Assert.Contains("has 0.450 % ash: all streams before B4, and 0.97 of its 2.00 %.", page, StringComparison.Ordinal);
        Assert.Contains("0.5163", page, StringComparison.Ordinal);
        Assert.Contains("no: at most", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lines_FromASpreadsheet_AreReadWithTabsAndWithoutProtein()
    {
        var page = await PageAsync($"?basis=dry&survey={Uri.EscapeDataString("# a heading\n1M\t10\t0.4\n2M\t5\t0.7\t\tclear\n")}");
        Assert.Contains("not divided", page, StringComparison.Ordinal);
        Assert.Contains("protein was not read", page, StringComparison.Ordinal);
        Assert.Contains("0.5000", page, StringComparison.Ordinal); // (10·0.4 + 5·0.7)/15
    }

    [Theory]
    [InlineData("survey=1M,10,x", "Line 1, ash: a number such as 0.45 is needed; read “x”.")]
    [InlineData("survey=1M,10", "Line 1: it has 2 cells")]
    [InlineData("survey=1M,80,0.4%0A2M,60,0.5", "more flour than wheat")]
    [InlineData("survey=1M,10,-0.4", "1M: ash lies above 0")]
    [InlineData("survey=1M,10,0.4%0A1M,5,0.5", "1M stands there 2 times")]
    [InlineData("survey=1M,10,0.4&basis=wet", "Basis: 14mb, 13.5mb, dry are possible; read “wet”.")]
    [InlineData("survey=1M,10,0.4&cut=0", "above 0 and at most 10 %")]
    [InlineData("survey=1M,10,0.4&cut=low", "Ash to cut at: a number such as 12.5 is needed; read “low”.")]
    [InlineData("survey=%23", "There are 0 streams")]
    public async Task Lines_ThatCannotBe_AreNamedAndStayTyped(string query, string says)
    {
        var page = await PageAsync("?" + query);
        Assert.Contains("what you typed is still here", page, StringComparison.Ordinal);
        Assert.Contains(says, page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Print_IsAListOfValvesWithItsCaution()
    {
        using var client = site.Client();
        var print = await Tickets.TextAsync(client, $"/streams/print?survey={Uri.EscapeDataString(CurveAsk.Example)}");
        Assert.Contains("first clear", print, StringComparison.Ordinal);
        Assert.Contains("lock out and tag out", print, StringComparison.Ordinal);
        Assert.Contains("There is nothing to set", await Tickets.TextAsync(client, "/streams/print"), StringComparison.Ordinal);
    }

    private async Task<string> PageAsync(string query)
    {
        using var client = site.Client();
        return WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/streams" + query, UriKind.Relative)));
    }
}
