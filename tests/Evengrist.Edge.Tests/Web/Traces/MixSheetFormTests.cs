using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>A mix sheet written on its page, with wrong input too: clear words, and nothing typed is lost.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class MixSheetFormTests(DemonstrationSite site)
{
    private const string Page = "/mix/set?flour=WB&asof=2026-01-14T10:40";

    private static Dictionary<string, string> Typed(string from, string until, params (string Field, string Value)[] others)
    {
        var fields = new Dictionary<string, string> { ["_handler"] = "sheet", ["act"] = "keep", ["line"] = "MXA", ["from"] = from, ["until"] = until, ["rate"] = "17.5", ["share:B02"] = "40", ["share:B05"] = "60", ["reason"] = "B05 is to be emptied first" };
        foreach (var (field, value) in others)
        {
            fields[field] = value;
        }

        return fields;
    }

    private async Task<HttpClient> NamedAsync()
    {
        var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Osric Venn")]);
        return client;
    }

    private static async Task<string> SendAsync(HttpClient client, Dictionary<string, string> fields, string page = Page)
    {
        using var answer = await WebSite.PostAsync(client, page, page, fields);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }

    [Theory]
    [InlineData("share:B05", "50", "The shares add up to 90 %")]
    [InlineData("share:B05", "-60", "The share of B05 lies above 0")]
    [InlineData("share:B05", "much", "The share of B05, %, is a number")]
    [InlineData("rate", "0", "The rate of the mix lies above 0")]
    [InlineData("rate", "", "Wheat, t/h, is missing")]
    [InlineData("until", "2026-11-01T06:00", "ends before it begins")]
    [InlineData("from", "soon", "a date and time such as")]
    [InlineData("line", "MXQ", "There is no mix line MXQ")]
    [InlineData("reason", "", "say why")]
    public async Task Keep_WhatCannotBe_IsSaidAndStaysTyped(string field, string value, string says)
    {
        using var client = await NamedAsync();
        var page = await SendAsync(client, Typed("2026-11-02T06:00", "2026-11-03T06:00", (field, value)));
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains("Not kept.", page, StringComparison.Ordinal);
        Assert.Matches("name=\"share:B02\"[^>]*value=\"40\"", page);
    }

    [Fact]
    public async Task Keep_AndCorrectAndPrint()
    {
        using var client = await NamedAsync();
        Assert.Contains("Kept.", await SendAsync(client, Typed("2026-11-05T06:00", "2026-11-06T06:00")), StringComparison.Ordinal);
        Assert.Contains("MXA has a sheet for that time", await SendAsync(client, Typed("2026-11-05T18:00", "2026-11-06T18:00")), StringComparison.Ordinal);
        var correct = $"/mix/set?sheet={Uri.EscapeDataString("MXA 2026-11-05 06:00")}";
        Assert.Contains("Kept.", await SendAsync(client, Typed("2026-11-05T06:00", "2026-11-06T06:00", ("share:B02", "45"), ("share:B05", "55")), correct), StringComparison.Ordinal);
        foreach (var (version, share) in new[] { (1, "60.0"), (2, "55.0") })
        {
            Assert.Contains(share, await Tickets.TextAsync(client, $"/mix/sheets/print?sheet={Uri.EscapeDataString("MXA 2026-11-05 06:00")}&version={version}"), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Look_ShowsWhatToExpectAndKeepsNothing()
    {
        using var client = site.Client();
        var page = await SendAsync(client, Typed("2026-11-09T06:00", "2026-11-10T06:00", ("act", "look")));
        Assert.Contains("Expected as it stood", page, StringComparison.Ordinal);
        Assert.Contains("No mix sheet “MXA 2026-11-09 06:00”", await Tickets.TextAsync(client, $"/mix/sheets/print?sheet={Uri.EscapeDataString("MXA 2026-11-09 06:00")}"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Send_WithoutItsFields_IsAnsweredInWords()
    {
        using var client = await NamedAsync();
        Assert.Contains("a date and time such as", await SendAsync(client, new() { ["_handler"] = "sheet" }), StringComparison.Ordinal);
    }
}
