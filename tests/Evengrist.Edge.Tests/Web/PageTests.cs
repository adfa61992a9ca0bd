using System.Net;

namespace Evengrist.Edge.Tests.Web;

[Collection(WebSiteCollection.Name)]
public sealed class PageTests(WebSite site)
{
    public static TheoryData<string, string> Pages => new()
    {
        { "/", "Needs a person" },
        { "/bins", "Wheat bins" },
        { "/bins?outflow=stirred", "What leaves is the mean" },
        { "/bins/B01", "Northledge" },
        { "/bins/b02", "Smell to be looked into." },
        { "/bins/F-WB", "flour bin" },
        { "/ledger", "newest first" },
        { "/ledger?place=B01&sort=movement", "LEG1" },
        { "/ledger?text=indicator", "Level indicator reads high." },
        { "/ledger?place=B99", "No fact matches." },
        { "/ledger/1", "opened as field" },
        { "/ledger/balance", "adds up" },
        { "/mill", "Little Mill" },
        { "/who", "Your name" },
        { "/import", "dry run" },
        { "/openapi/v1.json", "/api/bins" },
    };

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Page_WithATinyMill_AnswersAndShows(string path, string shows)
    {
        using var client = site.Client();
        using var answer = await client.GetAsync(new Uri(path, UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains(shows, await answer.Content.ReadAsStringAsync(), StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("/nowhere")]
    [InlineData("/bins/B99")]
    [InlineData("/ledger/999999")]
    [InlineData("/ledger/0")]
    public async Task Page_Unknown_IsNotFoundAndSaysSo(string path)
    {
        using var client = site.Client();
        using var answer = await client.GetAsync(new Uri(path, UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("nothing at this address", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bins_AsOfBeforeTheDraw_ShowTheStockOfThatMoment()
    {
        // B01 got 26.34 t + 25.10 t = 51.44 t on 17 July and gave 20 t on 15 September: counted by hand from TinyMill.
        using var client = site.Client();
        Assert.Contains("51.4<", await client.GetStringAsync(new Uri("/bins/B01?asof=2025-09-15T05:00", UriKind.Relative)), StringComparison.Ordinal);
        Assert.Contains("31.4<", await client.GetStringAsync(new Uri("/bins/B01?asof=2025-09-16T05:00", UriKind.Relative)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task AsOf_Chosen_IsKeptForTheNextPage()
    {
        using var client = site.Client();
        await client.GetStringAsync(new Uri("/?asof=2025-09-15T05:00", UriKind.Relative));
        Assert.Contains("15 Sep 2025 05:00", await client.GetStringAsync(new Uri("/bins", UriKind.Relative)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task AsOf_Unreadable_IsToldAndChangesNothing()
    {
        using var client = site.Client();
        var page = await client.GetStringAsync(new Uri("/?asof=yesterday", UriKind.Relative));
        Assert.Contains("yesterday", page, StringComparison.Ordinal);
        Assert.Contains("is no moment", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Units_UsCustomary_ChangeTheShownUnitAlone()
    {
        // 31.44 t = 31,440 kg / (60 × 0.45359237 kg) = 1,155.2 bu: the definitions of pound and wheat bushel.
        using var client = site.Client();
        using var chosen = await WebSite.PostAsync(client, "/bins/B01?asof=2025-09-16T05:00", "/choose", [new("units", "us"), new("back", "/bins/B01")]);
        Assert.Equal("/bins/B01", chosen.Headers.Location?.ToString());
        Assert.Contains("1,155", await client.GetStringAsync(new Uri("/bins/B01", UriKind.Relative)), StringComparison.Ordinal);
    }
}
