using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The demonstration's ramp on the morning of 14 January: what may not go is stopped in words, on the page and over HTTP. No movement is written here.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class RampOfTheYearTests(DemonstrationSite site)
{
    private const string Loading = "/dispatch/load?n=D-260114-90", Moment = "2026-01-14T10:40";

    [Fact]
    public async Task Load_WithAPalletOnHold_SaysWhoHeldItAndWhy_AndDoesNotLeave()
    {
        using var client = site.Client();
        var board = await Tickets.TextAsync(client, "/dispatch?asof=" + Moment);
        Assert.Contains("■ HOLD P-WB-260113-0003 is on HOLD since 13 Jan 2026 06:20, by Femi Strand: ash above the limit on one NIR reading", board, StringComparison.Ordinal);
        Assert.Contains("✖ turned away", board, StringComparison.Ordinal);
        Assert.Contains("carried fertiliser before", await Tickets.TextAsync(client, "/dispatch/load?n=D-260114-91"), StringComparison.Ordinal);
        using var refused = await client.PostAsJsonAsync(new Uri("/api/dispatch/loads/d-260114-90/depart?by=Ada", UriKind.Relative), new { at = Moment, seals = "1", reason = "must go" });
        Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
        var says = await refused.Content.ReadAsStringAsync();
        Assert.Contains("is on HOLD since", says, StringComparison.Ordinal);
        Assert.Contains("No seal was put on", says, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Orders_OfALoad_AreJoined_AndTodayTellsOfTheLoadThatWaits()
    {
        using var client = site.Client();
        using var planned = await client.PostAsJsonAsync(new Uri("/api/dispatch/loads?by=Ada", UriKind.Relative), new { number = "T-7", day = "2026-01-14", consignee = "C6", orders = "so-5119, X-9, SO-5128, SO-5112" });
        Assert.Equal(HttpStatusCode.Created, planned.StatusCode);
        var load = await Tickets.TextAsync(client, "/dispatch/load?n=T-7&asof=" + Moment);
        Assert.Contains("SO-5119 PA-25", load, StringComparison.Ordinal);
        var ordered = (await client.GetFromJsonAsync<JsonElement>(new Uri("/api/dispatch/loads/T-7?asof=" + Moment, UriKind.Relative))).GetProperty("orders");
        Assert.Equal((4, "so-5119", 0m, true), (ordered.GetArrayLength(), ordered[0].GetProperty("number").GetString(), ordered[0].GetProperty("onThisKilograms").GetDecimal(), ordered[0].GetProperty("orderedKilograms").GetDecimal() == ordered[0].GetProperty("stillOpenKilograms").GetDecimal()));
        Assert.Contains("No order X-9 is kept", load, StringComparison.Ordinal);
        Assert.Contains("Order SO-5128 was called off", load, StringComparison.Ordinal);
        Assert.Contains("Order SO-5112 is of C5, and the load goes to C6", load, StringComparison.Ordinal);
        Assert.Contains("T-7 of 14 Jan 2026 to C6", await Tickets.TextAsync(client, "/packing/orders/SO-5119?asof=" + Moment), StringComparison.Ordinal);
        Assert.Contains("SO-5119: PA-25", await Tickets.TextAsync(client, "/dispatch?to=C6&order=SO-5119&asof=" + Moment), StringComparison.Ordinal);
        var today = await Tickets.TextAsync(client, "/?whole=1&asof=" + Moment);
        Assert.Contains("D-260114-90 to DUNMARRICK-1 waits: on HOLD on it is P-WB-260113-0003", today, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Scan_OnThePageAndOverHttp_StopsAsksAndLoads()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada")]);
        using var planned = await client.PostAsJsonAsync(new Uri("/api/dispatch/loads?by=Ada", UriKind.Relative), new { number = "T-1", day = "2026-01-14", consignee = "C5", planned = "2 HG" });
        Assert.Equal(HttpStatusCode.Created, planned.StatusCode);
        const string Page = "/dispatch/load?n=T-1";
        async Task<string> ScanAsync(string code, string reason = "")
        {
            using var answer = await WebSite.PostAsync(client, Page, Page, [new("_handler", "scan"), new("L.Act", "scan"), new("L.Code", code), new("L.Reason", reason)]);
            return Tickets.Plain(await answer.Content.ReadAsStringAsync());
        }

        Assert.Contains("There is no package P-X", await ScanAsync("P-X"), StringComparison.Ordinal);
        Assert.Contains("P-WB-250918-0146 stands on load D-260114-90, scanned by Oskar Penhale", await ScanAsync("P-WB-250918-0146"), StringComparison.Ordinal);
        Assert.Contains("P-AP-251115-0162 is AP; planned are 2 × HG", await ScanAsync("P-AP-251115-0162"), StringComparison.Ordinal);
        Assert.Contains("✔ Done. On it last: P-AP-251115-0162", await ScanAsync("p-ap-251115-0162", "order changed by telephone"), StringComparison.Ordinal);
        Assert.Contains("is on this load already", await ScanAsync("P-AP-251115-0162"), StringComparison.Ordinal);
        var load = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/dispatch/loads/T-1?asof=" + Moment, UriKind.Relative));
        Assert.Equal((1_000_000, "Loading"), (load.GetProperty("grams").GetInt64(), load.GetProperty("stage").GetString()));
        using var failed = await client.PostAsJsonAsync(new Uri("/api/dispatch/loads/T-1/check?by=Ada", UriKind.Relative), new { point = "pests", good = "no" });
        Assert.Contains("Say what was seen", await failed.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var odd = await client.PostAsJsonAsync(new Uri("/api/dispatch/loads/T-1/fly?by=Ada", UriKind.Relative), new { });
        Assert.Contains("There is no act “fly” at the ramp", JsonDocument.Parse(await odd.Content.ReadAsStringAsync()).RootElement.GetProperty("detail").GetString(), StringComparison.Ordinal);
        using var away = await client.PostAsJsonAsync(new Uri("/api/dispatch/loads/T-1/turn-away?by=Ada", UriKind.Relative), new { reason = "a test", at = Moment });
        Assert.Equal(HttpStatusCode.OK, away.StatusCode);
        using var over = await client.PostAsJsonAsync(new Uri("/api/dispatch/loads/T-1/seal?by=Ada", UriKind.Relative), new { seals = "1" });
        Assert.Equal(HttpStatusCode.Conflict, over.StatusCode);
    }

    [Fact]
    public async Task Records_OfTheNewestDays_NameWhatTheyLack_AndConsigneesAreReadyOrNot()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/dispatch/records?from=2026-01-14&until=2026-01-14&asof=" + Moment);
        Assert.Contains("name of the transporter (1.345(a)(6))", page, StringComparison.Ordinal); // the fourth load of the day names no carrier
        var csv = await client.GetStringAsync(new Uri("/dispatch/releases.csv?from=2026-01-14&until=2026-01-14", UriKind.Relative));
        Assert.Contains("D-260114-12,2026-01-14T14:10:00Z,ORLAWICK-2", csv, StringComparison.Ordinal);
        Assert.Contains("ends before it begins", await Tickets.TextAsync(client, "/dispatch/records?from=2026-01-14&until=2026-01-10"), StringComparison.Ordinal);
        // The record of one load: its sources add up to what left, and its largest truck leads back from one of its pallets by the trace too.
        var record = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/dispatch/releases/D-260114-12", UriKind.Relative));
        var sources = record.GetProperty("sources").EnumerateArray().ToArray();
        Assert.Equal(24_000, sources.Sum(s => s.GetProperty("expectedKilograms").GetDouble()), 24_000 * 1e-6);
        Assert.Equal(24_000_000, record.GetProperty("record").GetProperty("grams").GetInt64());
        var truck = sources.First(s => s.GetProperty("truck").GetString() is { Length: > 0 }).GetProperty("truck").GetString()!;
        Assert.Contains(truck, await client.GetStringAsync(new Uri("/dispatch/load/record?n=D-260114-12", UriKind.Relative)), StringComparison.Ordinal);
        Assert.Contains(truck, await client.GetStringAsync(new Uri($"/tracing?way=roots&code={record.GetProperty("record").GetProperty("lots")[0].GetProperty("packages")[0].GetString()}", UriKind.Relative)), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync(new Uri("/api/dispatch/releases/D-260114-92", UriKind.Relative))).StatusCode);
        var cards = await Tickets.TextAsync(client, "/dispatch/consignees");
        Assert.Contains("7 of 10 are ready for a recall", cards, StringComparison.Ordinal);
        Assert.Contains("confirmed 469 days ago, more than a year", cards, StringComparison.Ordinal); // 2 October 2024 to 14 January 2026
        Assert.Contains("Flour is a raw food", await Tickets.TextAsync(client, "/dispatch/load/note?n=D-260114-12"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Rework_OnTheDayAToteStands_IsTheNextToFeedIntoItsFlour_AndStopsOfNothingElse()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/packing/rework?into=WB&rate=12.075&asof=2026-01-17T10:40");
        Assert.Contains("✔ feed this next", page, StringComparison.Ordinal);
        Assert.Contains("635.5", page, StringComparison.Ordinal); // kg/h: 12.075 t/h · 5/95
        Assert.Contains("P-WB-260113-0003", page, StringComparison.Ordinal); // what it was made from
        Assert.Contains("F-AP, 6000 kg", page, StringComparison.Ordinal); // what an earlier one was fed into
        Assert.Contains("◆ nobody said", page, StringComparison.Ordinal);
        var other = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/rework?into=AP&asof=2026-01-17T10:40", UriKind.Relative));
        Assert.Contains("Like goes into like: WB in R-260116-1 is not AP", other.GetProperty("totes")[0].GetProperty("findings")[0].GetProperty("words").GetString(), StringComparison.Ordinal);
        Assert.Contains("No flour bin holds XX", await Tickets.TextAsync(client, "/packing/rework?into=XX"), StringComparison.Ordinal);
        Assert.Contains("is no flow", await Tickets.TextAsync(client, "/packing/rework?into=WB&rate=fast"), StringComparison.Ordinal);
        using var refused = await client.PostAsJsonAsync(new Uri("/api/rework/feed?by=Ada", UriKind.Relative), new { tote = "R-260116-1", bin = "B01" });
        Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
    }
}
