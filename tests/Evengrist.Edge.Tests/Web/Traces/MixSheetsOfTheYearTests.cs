using System.Net;
using System.Text;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>Mix sheets of the demonstration's weeks before its opening moment: pages, prints, HTTP.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class MixSheetsOfTheYearTests(DemonstrationSite site)
{
    private const string Moment = "asof=2026-01-14T10:40";

    [Fact]
    public async Task Sheets_OfTheYear_StandBesideWhatWasDrawn()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, $"/mix/sheets?{Moment}");
        Assert.Contains("Set and drawn", page, StringComparison.Ordinal);
        Assert.Contains("Gates against their weighers", page, StringComparison.Ordinal);
        Assert.Contains("Always set alike", page, StringComparison.Ordinal); // one gate alone gives all of the pastry wheat
        Assert.Contains("MXA 2026-01-13 06:00", page, StringComparison.Ordinal);
    }

    /// <summary>What the gates of the demonstration really give is told in its source alone; the bands of the fits hold it.</summary>
    [Theory]
    [InlineData("B06", 0.45, 0.930)]
    [InlineData("B05", 0.12, 1.010)]
    [InlineData("B07", 0.10, 0.960)]
    public async Task Gates_AsFitted_HoldWhatTheyReallyGive(string bin, double offset, double slope)
    {
        using var client = site.Client();
        var gates = JsonDocument.Parse(await client.GetStringAsync(new Uri($"/api/mix/sheets?{Moment}", UriKind.Relative))).RootElement.GetProperty("gates");
        var gate = gates.EnumerateArray().Single(g => g.GetProperty("bin").GetString() == bin);
        Assert.InRange(gate.GetProperty("slope").GetDouble(), slope - (1.5 * gate.GetProperty("slopePlusMinus").GetDouble()), slope + (1.5 * gate.GetProperty("slopePlusMinus").GetDouble()));
        Assert.InRange(gate.GetProperty("offsetTonnesPerHour").GetDouble(), offset - (1.5 * gate.GetProperty("offsetPlusMinus").GetDouble()), offset + (1.5 * gate.GetProperty("offsetPlusMinus").GetDouble()));
    }

    [Fact]
    public async Task Print_OfASheet_HasGatesExpectationAndCaution()
    {
        using var client = site.Client();
        var print = await Tickets.TextAsync(client, $"/mix/sheets/print?sheet={Uri.EscapeDataString("MXA 2026-01-13 06:00")}&{Moment}");
        foreach (var words in new[] { "Mix sheet, White bread, line MXA", "Set by", "set the gate to", "What to expect", "13.1 to 13.7", "lock out and tag out", "checked at the weigher" })
        {
            Assert.Contains(words, print, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Print_OfTheBuyList_SaysUpToWhichPrice()
    {
        using var client = site.Client();
        var print = await Tickets.TextAsync(client, $"/season/buying/print?{Moment}");
        Assert.Contains("Buy list of wheat", print, StringComparison.Ordinal);
        Assert.Contains("not above", print, StringComparison.Ordinal);
        Assert.Contains("E1 strong", print, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/mix?flour=QQ", "There is no flour QQ in the terms")]
    [InlineData("/mix?flour=WB", "The old habit beside it")]
    [InlineData("/mix/sheets?sheet=none", "No sheet none is kept")]
    [InlineData("/mix/sheets?day=gestern", "A day is written like 2026-01-14")]
    [InlineData("/mix/sheets/print?sheet=none", "No mix sheet “none”")]
    [InlineData("/mix/set?sheet=none", "No sheet none is kept")]
    public async Task Page_AskedForWhatIsNotThere_SaysSo(string path, string says)
    {
        using var client = site.Client();
        Assert.Contains(says, WebUtility.HtmlDecode(await client.GetStringAsync(new Uri($"{path}{(path.Contains('?', StringComparison.Ordinal) ? "&" : "?")}{Moment}", UriKind.Relative))), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Mix_AfterTheCropYear_StillSaysWhatWasLeftOut()
    {
        using var client = site.Client();
        Assert.Contains("crop year of the terms is over", await Tickets.TextAsync(client, "/mix?flour=WB&asof=2026-07-01T08:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Api_KeepsASheetAndItsCorrectionAndRefusesAnOverlap()
    {
        using var client = site.Client();
        var sheet = """{"line":"MXB","flour":"PA","from":"2026-09-01T12:00:00Z","until":"2026-09-02T12:00:00Z","tonnesPerHour":7.5,"setBy":"Osric Venn","gates":[{"bin":"B08","class":"SW","sharePercent":80},{"bin":"B09","class":"SW","sharePercent":20}]}""";
        Task<HttpResponseMessage> Post(string json, string query) => client.PostAsync(new Uri($"/api/mix/sheets?{query}", UriKind.Relative), new StringContent(json, Encoding.UTF8, "application/json"));
        using var kept = await Post(sheet, "by=Osric+Venn");
        Assert.Equal(HttpStatusCode.Created, kept.StatusCode);
        var code = JsonDocument.Parse(await kept.Content.ReadAsStringAsync()).RootElement.GetProperty("code").GetString()!;
        using var corrected = await Post(sheet.Replace("80", "70", StringComparison.Ordinal).Replace(":20}", ":30}", StringComparison.Ordinal), $"by=Osric+Venn&code={Uri.EscapeDataString(code)}");
        Assert.Contains("\"version\":2", await corrected.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        foreach (var (json, query, says) in new[]
        {
            (sheet.Replace("T12:00:00Z\",\"until", "T18:00:00Z\",\"until", StringComparison.Ordinal), "by=x", "has a sheet for that time"),
            (sheet.Replace("MXB", "MXA", StringComparison.Ordinal), "", "Say who you are first"), ("[]", "by=x", "Not kept"), (sheet.Replace("80", "90", StringComparison.Ordinal), "by=x", "add up to 110 %"), (sheet, "by=x&code=none", "no sheet none"),
        })
        {
            using var refused = await Post(json, query);
            Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
            Assert.Contains(says, await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }
    }
}
