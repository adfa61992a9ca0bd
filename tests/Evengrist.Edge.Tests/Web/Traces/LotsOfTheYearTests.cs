using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The demonstration's lots about the days its flour NIR read protein 0.28 too high.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class LotsOfTheYearTests(DemonstrationSite site)
{
    private const string Wrong = "instrument=NIR-2&property=Protein&from=2025-10-07T10:20&until=2025-10-08T13:00&bias=0.279&pm=0.03";

    [Fact]
    public async Task Rejudge_OfTheShiftedInstrument_ListsFiveLotsAndPutsThemInside()
    {
        using var client = site.Client();
        Assert.Contains("5 lots hang on NIR-2", await Tickets.TextAsync(client, $"/laboratory/rejudge?{Wrong}"), StringComparison.Ordinal);
        var lots = await client.GetFromJsonAsync<JsonElement[]>(new Uri($"/api/lab/rejudge?{Wrong}", UriKind.Relative));
        Assert.Equal(["WB-251007-1", "WB-251007-2", "WB-251007-3", "WB-251008-1", "WB-251008-2"], lots!.Select(l => l.GetProperty("lot").GetString()));
        double Of(JsonElement lot, string when, string what) => lot.GetProperty(when).GetProperty(what).GetDouble();
        Assert.All(lots!.Where(l => l.GetProperty("wrong").GetInt32() >= 7), l =>
        {
            Assert.Equal(0.28, Of(l, "before", "result") - Of(l, "after", "result"), 0.05);
            Assert.True(Of(l, "after", "chance") > Of(l, "before", "chance"));
            Assert.InRange(Of(l, "after", "result"), 11.7, 12.1); // the truth of those days lies inside: the reference pairs say 11.88
        });
        Assert.All(lots!, l => Assert.True(l.GetProperty("goneTonnes").GetDouble() > 0));
    }

    [Fact]
    public async Task Lots_OfADay_SayHowTheyStandAndWhatWasDecided()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/laboratory/lots?day=2025-10-08&days=2");
        Assert.Contains("WB-251007-2", page, StringComparison.Ordinal);
        var held = await Tickets.TextAsync(client, "/laboratory/lots/WB-251007-2?asof=2025-10-08T07:00");
        Assert.Contains("■ HOLD", held, StringComparison.Ordinal);
        var lot = await Tickets.TextAsync(client, "/laboratory/lots/WB-251007-2?asof=2026-01-14T10:40");
        Assert.Contains("released by Dr Anya Holt: judged again by the reference, from retained samples", lot, StringComparison.Ordinal);
        Assert.Contains("readings of an instrument that was found wrong", lot, StringComparison.Ordinal);
        Assert.Contains("combustion N-1", lot, StringComparison.Ordinal);
        Assert.DoesNotContain("out of check", lot, StringComparison.Ordinal); // every instrument was checked each Monday
        Assert.Contains("keeps US, ash of white flour", lot, StringComparison.Ordinal);
        Assert.Contains("not judged US, DON", lot, StringComparison.Ordinal);
        Assert.Contains("Orlawick", await Tickets.TextAsync(client, "/laboratory/lots/WB-251007-2?spec=WB-ORLAWICK"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/laboratory/lots?day=yesterday", "is no day")]
    [InlineData("/laboratory/lots?days=400", "1 to 31")]
    [InlineData("/laboratory/lots?day=2020-01-01", "No flour was packed")]
    [InlineData("/laboratory/rejudge?instrument=NIR-2&property=Weight&from=x&until=y&bias=z&pm=-1", "is no property")]
    [InlineData("/laboratory/rejudge?instrument=NIR-2&property=Protein&from=2025-10-08T10:20&until=2025-10-07T13:00&bias=0.2", "ends before it begins")]
    [InlineData("/laboratory/rejudge?instrument=NIR-2&property=Protein&from=2025-07-08T10:20&until=2025-10-07T13:00&bias=0.2", "at most 28 days")]
    [InlineData("/laboratory/rejudge?instrument=NIR-77&property=Protein&from=2025-10-07T10:20&until=2025-10-08T13:00&bias=0.2", "No lot hangs on it")]
    public async Task Page_AskedOddly_SaysWhatToDo(string path, string says)
    {
        using var client = site.Client();
        Assert.Contains(says, await Tickets.TextAsync(client, path), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Decide_OnThePage_IsForThoseWhoMayAndKeepsWhatWasTyped()
    {
        using var client = site.Client();
        using var other = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Piet Larkin")]);
        const string Page = "/laboratory/lots/HG-260113-2?asof=2026-01-14T10:40";
        KeyValuePair<string, string>[] hold = [new("_handler", "decide"), new("D.Verdict", "Hold"), new("D.Reason", "<b>specks</b>"), new("D.At", "2026-01-14T10:30"), new("D.Seen", "7")];
        using var refused = await WebSite.PostAsync(client, Page, Page, hold);
        var text = await refused.Content.ReadAsStringAsync();
        Assert.Contains("Piet Larkin is not among those who may decide", Tickets.Plain(text), StringComparison.Ordinal);
        Assert.Contains("decided meanwhile", Tickets.Plain(text), StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;specks", text, StringComparison.Ordinal);
        using var empty = await WebSite.PostAsync(client, Page, Page, [new("_handler", "decide")]);
        Assert.Contains("Choose what is decided", Tickets.Plain(await empty.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        using var api = await client.PostAsJsonAsync(new Uri("/api/lab/lots/HG-260113-2/decisions?by=Piet", UriKind.Relative), new { verdict = "Hold", reason = "x", at = "2026-01-14T10:30" });
        Assert.Equal(HttpStatusCode.BadRequest, api.StatusCode);
    }
}
