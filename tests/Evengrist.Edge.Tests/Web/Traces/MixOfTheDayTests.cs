using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>Today's mix on its page, with the demonstration's bins at its opening moment.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class MixOfTheDayTests(DemonstrationSite site)
{
    [Theory]
    [InlineData("WB", "protein of the wheat at least 13.1 % 12mb")]
    [InlineData("AP", "protein of the wheat at most 12.3 % 12mb")]
    [InlineData("HG", "protein of the wheat at least 14.4 % 12mb")]
    public async Task Mix_OfAFlour_KeepsItsLimitsAndSaysWhatItCosts(string flour, string limit)
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, $"/mix?flour={flour}&asof=2026-01-14T10:40");
        Assert.Contains("To the year, USD/t", page, StringComparison.Ordinal);
        Assert.Contains(limit, page, StringComparison.Ordinal);
        Assert.Contains("no gate is moved by it", page, StringComparison.Ordinal);
    }

    /// <summary>Flour 12.0 % by the line from memory, flour = wheat − 1.3, is wheat of 13.3 %, by hand.</summary>
    [Fact]
    public async Task Mix_WithALimitOfTheFlour_CarriesItToTheWheatAndSaysByWhat()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/mix?flour=WB&flour-least:Protein=12.0&asof=2026-01-14T10:40");
        Assert.Contains("as wheat at least 13.30", page, StringComparison.Ordinal);
        Assert.Contains("not fitted on this mill: from memory", page, StringComparison.Ordinal);
        Assert.Contains("protein of the flour, expected", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Mix_WithALockedGate_LeavesItThere()
    {
        using var client = site.Client();
        Assert.Matches(@"B05 HW 30\.0 ", await Tickets.TextAsync(client, "/mix?flour=WB&lock:B05=30&asof=2026-01-14T10:40"));
    }

    [Theory]
    [InlineData("flour=WB&least:Protein=16&most:Protein=17", "No mix keeps all of these together.")]
    [InlineData("flour=WB&step=often", "a number such as 12.5 is needed; read “often”")]
    [InlineData("flour=WB&rate=-5", "Not solved.")]
    [InlineData("flour=WB&sure=20", "Not solved.")]
    public async Task Mix_WhatCannotBe_IsSaid(string query, string says)
    {
        using var client = site.Client();
        Assert.Contains(says, WebUtility.HtmlDecode(await client.GetStringAsync(new Uri($"/mix?{query}&asof=2026-01-14T10:40", UriKind.Relative))), StringComparison.Ordinal);
    }
}
