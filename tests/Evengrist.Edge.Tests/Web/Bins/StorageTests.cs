using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Evengrist.Bins.Storage;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Records.Bins;

namespace Evengrist.Edge.Tests.Web.Bins;

/// <summary>Wheat in store: its pages, its forms, and the same over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class StorageTests(WebSite site)
{
    private static readonly Uri Ranked = new("/api/bins/storage?asof=2025-09-15T05:00", UriKind.Relative);

    [Theory]
    [InlineData("/bins/storage?asof=2025-09-15T05:00", "look at these bins first")]
    [InlineData("/bins/storage?asof=2025-09-15T05:00", "has not been cleared by anybody")]
    [InlineData("/bins/storage?asof=2020-01-01T05:00", "No wheat lies in any bin")]
    [InlineData("/bins/storage/constants", "not verified")]
    [InlineData("/bins/B02?asof=2025-09-15T05:00", "no cable was read since its grain came")]
    [InlineData("/bins/B02?asof=2025-09-15T05:00", "29 CFR 1910.272")]
    [InlineData("/bins/B02?asof=2025-09-15T05:00", "temperature not read: taken as 25 °C throughout")]
    [InlineData("/bins/B02?asof=2025-09-15T05:00", "a trend, do not use for release")]
    [InlineData("/bins/B02?asof=2025-09-15T05:00&air=10&humidity=50", "by the heat balance")]
    [InlineData("/bins/B02?asof=2025-09-15T05:00&air=24&humidity=95", "no, although a thermometer calls the air cooler")]
    [InlineData("/bins/B02?asof=2025-09-15T05:00&air=cold&humidity=50", "as numbers, such as 12, 70 and 0.104")]
    [InlineData("/bins/B03?asof=2025-09-15T05:00", "Nothing lies in it at this moment")]
    public async Task Page_OfTheStore_Shows(string path, string shows)
    {
        using var client = site.Client();
        var page = await client.GetStringAsync(new Uri(path, UriKind.Relative));
        Assert.Contains(shows, WebUtility.HtmlDecode(page), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("is safe", page, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Cables_RoundOnThePage_IsRecordedAndTold()
    {
        using var client = await Named();
        using var answer = await WebSite.PostAsync(client, "/bins/B01", "/bins/B01", Round("2025-09-10T08:00", "C7 at 3.0 m: 21.4\nC7 at 6.0 m: 22"));
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.EndsWith("/bins/B01?done=true#storage", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
        var page = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/bins/B01?asof=2025-09-11T05:00", UriKind.Relative)));
        Assert.Contains("C7 at 6.0 m", page, StringComparison.Ordinal);
        Assert.Contains("21.4", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2025-09-10T08:00", "C7 at 3.0 m 21.4", "then a colon and the temperature")]
    [InlineData("2025-09-10T08:00", "C7 at 3.0 m: warm", "is no temperature in °C")]
    [InlineData("2025-09-10T08:00", "C7 three up: 20", "is no point")]
    [InlineData("2025-09-10T08:00", "C9 at 3.0 m: 20\nC9 at 3.00 m: 21", "stands twice")]
    [InlineData("2025-09-10T08:00", "", "at least one point")]
    [InlineData("soon", "C7 at 3.0 m: 20", "give the date and time")]
    public async Task Cables_RoundThatCannotBe_IsToldAndNothingIsLost(string at, string lines, string said)
    {
        using var client = await Named();
        var before = site.Mill.Ask(v => v.Book.Last);
        using var answer = await WebSite.PostAsync(client, "/bins/B01", "/bins/B01", Round(at, lines));
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Contains(said, page, StringComparison.Ordinal);
        Assert.Contains(lines.Split('\n')[0], page, StringComparison.Ordinal);
        Assert.Equal(before, site.Mill.Ask(v => v.Book.Last));
    }

    [Fact]
    public async Task Cables_OverHttp_AreRecordedOnceAndFaultsTold()
    {
        using var client = site.Client();
        var round = new { at = "2025-09-12T08:00", points = new Dictionary<string, double> { ["C5 at 2.0 m"] = 19.5, ["C5 at 4.0 m"] = 20 } };
        using var first = await client.PostAsJsonAsync("/api/bins/B01/cables?by=Ada", round);
        using var second = await client.PostAsJsonAsync("/api/bins/B01/cables?by=Ada", round);
        Assert.Equal((HttpStatusCode.Created, HttpStatusCode.OK), (first.StatusCode, second.StatusCode));
        var bins = await client.GetFromJsonAsync<JsonElement>(Ranked);
        var bin = bins.EnumerateArray().Single(b => b.GetProperty("bin").GetString() == "B01");
        Assert.Contains(bin.GetProperty("cables").EnumerateArray(), c => c.GetProperty("point").GetString() == "C5 at 4.0 m" && c.GetProperty("celsius").GetDouble() == 20);
        using var nobody = await client.PostAsJsonAsync("/api/bins/B01/cables", new { at = "noon", points = new Dictionary<string, double> { ["top"] = 1 } });
        Assert.Equal(HttpStatusCode.BadRequest, nobody.StatusCode);
        Assert.Equal(3, (await nobody.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("faults").GetArrayLength());
        using var leg = await client.PostAsJsonAsync("/api/bins/LEG1/cables?by=Ada", round);
        Assert.Equal(HttpStatusCode.Conflict, leg.StatusCode);
    }

    [Theory]
    [InlineData("storage", HttpStatusCode.OK)]
    [InlineData("equilibrium", HttpStatusCode.OK)]
    [InlineData("aeration", HttpStatusCode.OK)]
    public async Task Case_OfTheSamples_IsAnsweredOverHttp(string verb, HttpStatusCode status)
    {
        using var client = site.Client();
        using var content = new StringContent(await File.ReadAllTextAsync(Repository.Sample("cases", $"{verb}.json")), Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri($"/api/bins/{verb}", UriKind.Relative), content);
        Assert.Equal(status, answer.StatusCode);
    }

    [Theory]
    [InlineData("""{ "wheat": "hard", "equation": "Halsey", "celsius": 20, "humidityPercent": 60 }""", HttpStatusCode.UnprocessableEntity, "none are made up")]
    [InlineData("""{ "wheat": "hard", "celsius": 20, "humidityPercent": 600 }""", HttpStatusCode.BadRequest, "a number from 1 to 99")]
    public async Task Case_WithoutAnAnswer_SaysWhy(string text, HttpStatusCode status, string said)
    {
        using var client = site.Client();
        using var content = new StringContent(text, Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri("/api/bins/equilibrium", UriKind.Relative), content);
        Assert.Equal(status, answer.StatusCode);
        Assert.Contains(said, (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Storage_AsOfThatIsNoMoment_IsRefused()
    {
        using var client = site.Client();
        Assert.Equal(HttpStatusCode.BadRequest, (await client.GetAsync(new Uri("/api/bins/storage?asof=later", UriKind.Relative))).StatusCode);
    }

    [Fact]
    public async Task Constants_ChangedOnThePage_AreKeptAndAFaultIsTold()
    {
        using var client = await Named();
        var json = EmcJson.Write(EmcTable.Start);
        using var bad = await WebSite.PostAsync(client, "/bins/storage/constants", "/bins/storage/constants", [new("_handler", "constants"), new("Json", json.Replace("2.2857", "-2", StringComparison.Ordinal))]);
        Assert.Contains("lie above 0", WebUtility.HtmlDecode(await bad.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        Assert.Equal(0, KeepEmcConstants.Newest(site.Mill).Version);
        using var good = await WebSite.PostAsync(client, "/bins/storage/constants", "/bins/storage/constants", [new("_handler", "constants"), new("Json", json.Replace("2.2857", "2.29", StringComparison.Ordinal))]);
        Assert.Equal(HttpStatusCode.Redirect, good.StatusCode);
        Assert.Equal((1, 2.29), (KeepEmcConstants.Newest(site.Mill).Version, KeepEmcConstants.Newest(site.Mill).Table.Constants[0].B));
        Assert.Contains("Version 1 of the mill's own table, kept by Ada Miller", WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/bins/storage/constants", UriKind.Relative))), StringComparison.Ordinal);
    }

    private static KeyValuePair<string, string>[] Round(string at, string lines) => [new("_handler", "cables"), new("Round.At", at), new("Round.More", lines)];

    private async Task<HttpClient> Named()
    {
        var client = site.Client();
        (await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")])).Dispose();
        return client;
    }
}
