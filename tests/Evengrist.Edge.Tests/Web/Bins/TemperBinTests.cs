using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Tempering;
using Evengrist.Tempering;
using Evengrist.Web.Sights.Tempering;
using NodaTime;

namespace Evengrist.Edge.Tests.Web.Bins;

/// <summary>A temper bin of a small mill, and the aims a mill keeps for itself.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class TemperBinTests(WebSite site)
{
    [Theory]
    [InlineData("/tempering?asof=2025-09-15T20:00", "Holds 5.8 t of 60 t")]
    [InlineData("/tempering?asof=2025-09-15T20:00", "HW 100 %; leaves next as hard, runs in as hard")]
    [InlineData("/tempering?asof=2025-09-15T20:00", "15.38 ± ")] // By hand: 20 t of 12 % with 0.8 t of water: 3.2/20.8 = 15.385 %; less ± of 0.1 and 2 %.
    [InlineData("/tempering?asof=2020-01-01T05:00", "Nothing lies in it at this moment")]
    [InlineData("/tempering/aims", "typical, not tuned to a mill")]
    public async Task Page_OfTempering_Shows(string path, string shows)
    {
        using var client = site.Client();
        Assert.Contains(shows, await Tickets.TextAsync(client, path), StringComparison.Ordinal);
    }

    [Fact]
    public void Board_OfAnEmptyMillThenOfABinWithATemperatureRead_TakesItWhereNoneIsTyped()
    {
        var folder = Directory.CreateTempSubdirectory("evengrist-temper-");
        var at = Instant.FromUtc(2026, 1, 14, 12, 0);
        using (var mill = Mill.Open(MillOptions.InFile(Path.Combine(folder.FullName, "mill.db")), SystemClock.Instance))
        {
            TemperBinSight Look(Instant moment, string? celsius) => Assert.Single(TemperBoard.Of(mill, moment, TemperAims.Start, key => key == "celsius" ? celsius : null).Bins);
            Assert.Empty(TemperBoard.Of(mill, at, TemperAims.Start, _ => null).Bins);
            mill.Record(
            [
                new OpenPlace("1", "OPEN", PlaceKind.Opening, "", "SW"), new OpenPlace("2", "T", PlaceKind.TemperBin), new Move("3", "OPEN", "T", Mass.FromTonnes(40m), at - Duration.FromHours(2)),
                new Measure("4", "T", at - Duration.FromHours(1), Property.Temperature, 15m, "°C", default, "probe"),
            ], "Ada Miller", "test");
            Assert.Equal(Hardness.Soft, Look(at, null).Next.Hardness);
            Assert.Equal((15.0, 20.0), (Look(at, null).Next.Rest!.Celsius, Look(at, "20").Next.Rest!.Celsius));
            Assert.Null(Look(at, null).Next.Content.MoisturePercent); // Nothing was read of what was found.
            Assert.Equal(25, Look(at + Duration.FromDays(2), null).Next.Rest!.Celsius);
            Assert.Null(Look(at - Duration.FromHours(3), null).Window);
        }

        folder.Delete(recursive: true);
    }

    [Fact]
    public async Task Aims_ChangedOnThePage_AreKeptAsAVersionAndBadOnesRefused()
    {
        using var client = await Tickets.NamedAsync(site);
        var json = TemperAimsJson.Write(TemperAims.Start);
        Task<HttpResponseMessage> Post(string text) => WebSite.PostAsync(client, "/tempering/aims", "/tempering/aims", [new("_handler", "aims"), new("Json", text)]);
        using var bad = await Post(json.Replace("\"mostHours\": 8", "\"mostHours\": 800", StringComparison.Ordinal));
        var page = WebUtility.HtmlDecode(await bad.Content.ReadAsStringAsync());
        Assert.Contains("rests lie from 0 to 72 hours", page, StringComparison.Ordinal);
        Assert.Contains("\"mostHours\": 800", page, StringComparison.Ordinal);
        Assert.Equal(0, KeepTemperAims.Newest(site.Mill).Version);
        using var good = await Post(json.Replace("\"mostHours\": 8", "\"mostHours\": 9", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.Redirect, good.StatusCode);
        Assert.Equal((1, 9.0), (KeepTemperAims.Newest(site.Mill).Version, KeepTemperAims.Newest(site.Mill).Aims.Of(Hardness.Soft)!.MostHours));
        Assert.Contains("Version 1 of the mill's own, kept by", await Tickets.TextAsync(client, "/tempering/aims"), StringComparison.Ordinal);
    }
}
