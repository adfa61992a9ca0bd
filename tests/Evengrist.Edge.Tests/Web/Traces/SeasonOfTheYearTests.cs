using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The crop year on its pages, with the demonstration's year from its opening moment on.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class SeasonOfTheYearTests(DemonstrationSite site)
{
    [Fact]
    public async Task Season_OfTheDemonstration_IsPlannedAndOpened()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/season");
        Assert.Contains("From 14 Jan 2026 to 30 Jun 2026", page, StringComparison.Ordinal);
        Assert.Contains("no better plan exists", page, StringComparison.Ordinal);
        Assert.Contains("High gluten", page, StringComparison.Ordinal);
        Assert.Contains("its falling number was not read; 385 s is supposed", page, StringComparison.Ordinal); // bought trucks carry none
    }

    [Fact]
    public async Task Season_AfterTheCropYear_SaysWhatToDo()
    {
        using var client = site.Client();
        Assert.Contains("enter terms for the next one", await Tickets.TextAsync(client, "/season?asof=2026-07-02T08:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Paper_MoreHighGluten_CostsMoreAndKeepsNothing()
    {
        using var client = site.Client();
        var before = await Tickets.TextAsync(client, "/season/terms");
        var page = await Tickets.TextAsync(client, "/season/paper?demand:HG=430");
        Assert.Contains("High gluten, demand: 391 → 430 t flour/week", page, StringComparison.Ordinal);
        Assert.Contains("on paper", page, StringComparison.Ordinal);
        Assert.Contains("Version 1", before, StringComparison.Ordinal);
        Assert.Contains("Version 1", await Tickets.TextAsync(client, "/season/terms"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("demand:HG=lots", "a number such as 391 is needed")]
    [InlineData("demand:HG=-5", "0 t a week or more")]
    [InlineData("least:WB:Protein=15", "least above its most")]
    [InlineData("price:E1%20strong:0=900", "cheapest first")]
    public async Task Paper_WhatCannotBe_IsSaidAndStaysTyped(string query, string says)
    {
        using var client = site.Client();
        var page = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/season/paper?" + query, UriKind.Relative)));
        Assert.Contains("Not planned.", page, StringComparison.Ordinal);
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains($"value=\"{query[(query.IndexOf('=', StringComparison.Ordinal) + 1)..]}\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Buying_OfTheDemonstration_NamesDaysAndPrices()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/season/buying");
        Assert.Contains("pay no more than", page, StringComparison.Ordinal);
        Assert.Contains("E2 spring", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Terms_WithoutAName_AreShownAndNotKept()
    {
        using var client = site.Client();
        using var page = await client.GetAsync(new Uri("/season/terms", UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        Assert.Contains("Say who you are", await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }
}
