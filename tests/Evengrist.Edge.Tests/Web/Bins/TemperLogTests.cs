using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Bins;

/// <summary>Starts, stops, trims and notes at a temper bin of a small mill, on the page, the wall and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class TemperLogTests(WebSite site)
{
    [Fact]
    public async Task Page_OfATemperBin_RecordsATrimAndRefusesWhatCannotBe()
    {
        using var client = await Tickets.NamedAsync(site);
        Task<HttpResponseMessage> Post(string key, string what, string water, string words, string at = "2025-09-15T07:00") =>
            WebSite.PostAsync(client, "/tempering/bins/TA", "/tempering/bins/TA", [new("_handler", "temper"), new("Temper.Key", key), new("Temper.What", what), new("Temper.At", at), new("Temper.Water", water), new("Temper.Words", words)]);
        async Task RefusesAsync(string says, string what, string water, string words, string at = "2025-09-15T07:00")
        {
            using var bad = await Post("bad", what, water, words, at);
            var page = WebUtility.HtmlDecode(await bad.Content.ReadAsStringAsync());
            Assert.Contains("Not recorded; what you typed is still here.", page, StringComparison.Ordinal);
            Assert.Contains(says, page, StringComparison.Ordinal);
            Assert.Contains($"value=\"{water}\"", page, StringComparison.Ordinal);
        }

        await RefusesAsync("read \"much\"", "WaterSet", "much", "x");
        await RefusesAsync("lies from 0 to 100000; read -5", "WaterSet", "-5", "x");
        await RefusesAsync("Say what was done", "Nonsense", "5", "x");
        await RefusesAsync("A note has words", "Note", "5", " ");
        await RefusesAsync("When: give date and time", "WaterSet", "5", "x", "yesterday");
        await RefusesAsync("no beginning is recorded", "FillingEnded", "", "x");
        using var good = await Post("trim-1", "WaterSet", "812", "wheat drier than said");
        Assert.Equal(HttpStatusCode.Redirect, good.StatusCode);
        var bin = await Tickets.TextAsync(client, "/tempering/bins/ta?asof=2025-09-15T08:00");
        Assert.Contains("water set to 812 L/h: wheat drier than said", bin, StringComparison.Ordinal);
        Assert.Contains("812 L/h, since 07:00", bin, StringComparison.Ordinal);
        Assert.Contains("812 L/h, since 07:00", await Tickets.TextAsync(client, "/tempering?asof=2025-09-15T08:00"), StringComparison.Ordinal);
        Assert.Contains("water set 812 L/h", await Tickets.TextAsync(client, "/tempering/wall?asof=2025-09-15T08:00"), StringComparison.Ordinal);
        Assert.Contains("Nothing was recorded of this bin", await Tickets.TextAsync(client, "/tempering/bins/TA?asof=2025-09-15T05:00"), StringComparison.Ordinal);
        using var nowhere = await client.GetAsync(new Uri("/tempering/bins/B01", UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, nowhere.StatusCode);
    }

    [Fact]
    public async Task Api_OfTheLog_RecordsOnceAndAnswersInWords()
    {
        using var client = site.Client();
        Task<HttpResponseMessage> Post(object body, string bin = "TA", string by = "?by=Ada") => client.PostAsJsonAsync(new Uri($"/api/tempering/bins/{bin}/log{by}", UriKind.Relative), body);
        var draw = new { key = "api-1", what = "DrawingBegun", at = "2025-09-15T16:00", wheat = "5" };
        using var first = await Post(draw);
        using var again = await Post(draw);
        Assert.Equal((HttpStatusCode.Created, HttpStatusCode.OK), (first.StatusCode, again.StatusCode));
        var lines = JsonDocument.Parse(await client.GetStringAsync(new Uri("/api/tempering/bins/TA/log?asof=2025-09-15T17:00", UriKind.Relative))).RootElement;
        var line = Assert.Single(lines.EnumerateArray(), l => l.GetProperty("what").GetString() == "DrawingBegun");
        Assert.Equal(DateTimeOffset.Parse("2025-09-15T21:00:00Z", System.Globalization.CultureInfo.InvariantCulture), line.GetProperty("at").GetDateTimeOffset()); // 16:00 in Chicago.
        Assert.Equal(("Ada", 5.0), (line.GetProperty("by").GetString(), line.GetProperty("tonnesPerHour").GetDouble()));
        using var nameless = await Post(draw, by: "");
        using var unknown = await Post(draw, bin: "B01");
        using var twice = await Post(new { key = "api-2", what = "DrawingBegun", at = "2025-09-15T17:00" });
        Assert.Equal((HttpStatusCode.BadRequest, HttpStatusCode.NotFound, HttpStatusCode.BadRequest), (nameless.StatusCode, unknown.StatusCode, twice.StatusCode));
        Assert.Contains("recorded already", await twice.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }
}
