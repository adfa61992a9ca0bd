using System.Net;
using System.Text.RegularExpressions;
using Evengrist.Bins;
using Evengrist.Bins.BestBin;
using Evengrist.Bins.Shape;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Edge.Tests.Web.Bins;

[Collection(WebSiteCollection.Name)]
public sealed class BinPageTests(WebSite site)
{
    [Fact]
    public async Task Sounding_ReckonedThenRecordedThenBooked_StandsAgainstTheLedger()
    {
        site.Mill.Papers(BinPapers.Shape).KeepNext("B03", BinPapers.Write(new BinShape { DiameterMetres = 4, WallMetres = 8 }), "Ada Miller");
        var at = Instant.FromUtc(2025, 9, 18, 12, 0);
        site.Mill.Record([new OpenPlace("o", "OPEN-SW", PlaceKind.Opening), new Move("o1", "OPEN-SW", "B03", Mass.FromTonnes(30m), at)], "Ada", "test");
        using var client = await VisitorAsync();

        // 4π·(8 − 5) = 37.70 m³ at 780 kg/m³ × 1.055 = 31.02 t; ± (k = 2) of tape, test weight and pack factor well above the difference of 1.02 t.
        var reckoned = await SoundAsync(client, "reckon", "5.0", "2025-09-18T08:00");
        Assert.Contains("31.0", reckoned, StringComparison.Ordinal);
        Assert.Contains("Within ±.", reckoned, StringComparison.Ordinal);
        Assert.Contains("not calibrated", reckoned, StringComparison.Ordinal);
        Assert.DoesNotContain(Readings(), r => r.What == Property.Ullage);

        Assert.Contains("nothing to book", await SoundAsync(client, "book", "5.0", "2025-09-18T08:00"), StringComparison.Ordinal);
        await SoundAsync(client, "record", "5.0", "2025-09-18T08:00");
        var tape = Assert.Single(Readings(), r => r.What == Property.Ullage);
        Assert.Equal((5.0m, "tape at the wall, level"), (tape.Value, tape.Method));
        Assert.Equal((SoundedFrom.Wall, Surface.Level), SoundingMethod.Read(tape.Method));
        Assert.Contains("within ±", WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/bins/B03?asof=2025-09-19T05:00", UriKind.Relative))), StringComparison.Ordinal);

        Assert.Contains("Say why", await SoundAsync(client, "book", "6.0", "2025-09-18T09:00"), StringComparison.Ordinal);
        await SoundAsync(client, "book", "6.0", "2025-09-18T09:00", "sounded twice");
        Assert.Equal(20.7m, site.Mill.Ask(v => v.Book.StockOf(v.Book.Named("B03").Id)).Tonnes);
        Assert.Contains("Sound in the middle", await SoundAsync(client, "reckon", "9.0", "2025-09-18T10:00"), StringComparison.Ordinal);
        Assert.Contains("point as decimal mark", await SoundAsync(client, "reckon", "five", "2025-09-18T10:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Papers_ShapeAndBand_AreKeptAsVersionsAndFaultsSaid()
    {
        using var client = await VisitorAsync();
        await PaperAsync(client, new("Paper.Act", "band"), new("Paper.Name", "ordinary"), new("Paper.ProteinFrom", "11"), new("Paper.ProteinTo", "12.5"));
        await PaperAsync(client, new("Paper.Act", "band"), new("Paper.Name", "ordinary"), new("Paper.ProteinFrom", "11"), new("Paper.ProteinTo", "12.6"));
        var newest = site.Mill.Papers(BinPapers.Band).Newest("B02")!;
        Assert.True(BinPapers.TryReadBand(newest.Json, out var band, out _));
        Assert.Equal((2, 12.6, "Ada Miller"), (newest.Version, band.ProteinTo, newest.By));
        var refused = await PaperAsync(client, new("Paper.Act", "shape"), new("Paper.Diameter", "10"), new("Paper.Wall", "2000"));
        Assert.Contains("is the unit right", refused, StringComparison.Ordinal);
        Assert.Contains("value=\"2000\"", refused, StringComparison.Ordinal);
        Assert.Null(site.Mill.Papers(BinPapers.Shape).Newest("B02"));
        await PaperAsync(client, new("Paper.Act", "shape"), new("Paper.Diameter", "4"), new("Paper.Wall", "8"));
        Assert.NotNull(site.Mill.Papers(BinPapers.Shape).Newest("B02"));
    }

    [Fact]
    public async Task Wall_AndHistory_ShowWhatTheyShould()
    {
        using var client = site.Client();
        var wall = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/bins/wall?asof=2025-09-15T09:00", UriKind.Relative)));
        Assert.Matches("B02</span>[\\s\\S]*?■ HOLD", wall);
        Assert.Matches("B01</span>[\\s\\S]*?◆ drawing", wall);
        var bin = await client.GetStringAsync(new Uri("/bins/B01?asof=2025-09-16T05:00", UriKind.Relative));
        Assert.Contains("stock 31 t", bin, StringComparison.Ordinal);

        // Two loads of 26.34 t at 12.4 and 25.10 t at 10.9 %, both at 12 % moisture, as if stirred: 11.67 %.
        Assert.Contains("protein 11.7 %", bin, StringComparison.Ordinal);
    }

    [Fact]
    public async Task BestBin_TruckOnItsTicket_RanksByBandAndSaysWhyNot()
    {
        site.Mill.Papers(BinPapers.Band).KeepNext("B01", BinPapers.Write(new BinBand { ProteinFrom = 10, ProteinTo = 14 }), "Ada Miller");
        using var client = site.Client();
        var page = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/intake/25-0709-003?asof=2025-09-16T05:00", UriKind.Relative)));
        Assert.Matches("rank\">1</span> <a href=\"/bins/B01\"", page);
        Assert.Matches("<strong>B03</strong>: it is for SW, the load is HW", page);
        var answer = await client.GetStringAsync(new Uri("/api/bins/best?ticket=25-0709-003&asof=2025-09-16T05:00", UriKind.Relative));
        Assert.Equal("B01", Regex.Match(answer, "\"bin\":\"([^\"]+)\"").Groups[1].Value);
        using var unknown = await client.GetAsync(new Uri("/api/bins/best?ticket=25-0709-999", UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, unknown.StatusCode);
    }

    [Fact]
    public async Task Calibration_PostedWithAName_IsKeptForTheBin()
    {
        using var client = site.Client();
        using var nameless = await client.PostAsync(new Uri("/api/bins/B02/calibration", UriKind.Relative), Body());
        Assert.Equal(HttpStatusCode.BadRequest, nameless.StatusCode);
        using var kept = await client.PostAsync(new Uri("/api/bins/B02/calibration?by=Ada", UriKind.Relative), Body());
        Assert.Equal(HttpStatusCode.OK, kept.StatusCode);
        Assert.True(BinPapers.TryReadCalibration(site.Mill.Papers(BinPapers.Calibration).Newest("B02")!.Json, out var pack, out _));
        Assert.Equal(1.0399, pack.Value, 1e-4);

        static StringContent Body() => new(Evengrist.Plant.Cases.WeighOutCase.Help.Example, System.Text.Encoding.UTF8, "application/json");
    }

    private Reading[] Readings() => site.Mill.Ask(v => v.Book.ReadingsOn(v.Book.Named("B03").Id).ToArray());

    private async Task<HttpClient> VisitorAsync()
    {
        var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")]);
        return client;
    }

    private static async Task<string> SoundAsync(HttpClient client, string act, string ullage, string at, string reason = "")
    {
        using var answer = await WebSite.PostAsync(client, "/bins/B03", "/bins/B03",
            [new("_handler", "sounding"), new("Tape.Key", $"tape {ullage} {at} {reason}"), new("Tape.Act", act), new("Tape.At", at), new("Tape.Ullage", ullage), new("Tape.Uncertainty", "0.1"), new("Tape.Surface", "Level"),
                new("Tape.From", "Wall"), new("Tape.TestWeight", "78"), new("Tape.Reason", reason)]);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }

    private static async Task<string> PaperAsync(HttpClient client, params KeyValuePair<string, string>[] fields)
    {
        using var answer = await WebSite.PostAsync(client, "/bins/B02", "/bins/B02", [new("_handler", "papers"), .. fields]);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }
}
