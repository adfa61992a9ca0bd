using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>Control charts of the demonstration's flour: limits frozen before the incident of the flour NIR, which then signals.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class ChartsOfTheYearTests(DemonstrationSite site)
{
    private const string Chart = "/laboratory/charts?chart=UA%20WB%20Protein%20NIR,%20watch";

    [Fact]
    public async Task Limits_FrozenFromAPeriod_StayAndJudgeWhatComesAfter()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada")]);
        var before = await Tickets.TextAsync(client, $"{Chart}&asof=2025-10-08T12:30");
        Assert.Contains("No limits are frozen for UA WB Protein NIR, watch", before, StringComparison.Ordinal);
        await RefusesAsync(client, "2025-10-06T00:00", "2025-10-07T09:00", "first period", "There are 4 readings in that period: 10 or more are needed");
        await RefusesAsync(client, "2025-10-08T00:00", "2025-10-07T09:00", "first period", "begins before it ends");
        await RefusesAsync(client, "2025-10-06T00:00", "2025-10-08T13:00", "", "Say why limits are frozen");
        using var kept = await PostAsync(client, "2025-10-06T00:00", "2025-10-08T13:00", "first period");
        Assert.Contains("Kept.", Tickets.Plain(await kept.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        var after = await Tickets.TextAsync(client, $"{Chart}&asof=2025-10-08T12:30");
        Assert.Contains("from moving ranges of 12 readings", after, StringComparison.Ordinal);
        Assert.Contains("version 1, frozen by Ada: first period", after, StringComparison.Ordinal);
        Assert.Contains("Cpk", after, StringComparison.Ordinal);
        Assert.Contains("12.16", await Tickets.TextAsync(client, "/laboratory/charts/wall?chart=UA%20WB%20Protein%20NIR,%20watch&asof=2025-10-08T12:30"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task LimitsOfTheDemonstration_AreFrozen_AndASignalKeepsEveryActionBesideIt()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada")]);
        Assert.Contains("frozen by Dr Anya Holt: November: a month in which nothing was found wrong", await Tickets.TextAsync(client, "/laboratory/charts"), StringComparison.Ordinal);
        var charts = await client.GetFromJsonAsync<JsonElement>("/api/lab/charts");
        Assert.All(charts.EnumerateArray().Where(c => c.GetProperty("method").GetString() == "NIR" && c.GetProperty("flour").GetString() is "WB" or "HG"), c => Assert.Equal(1, c.GetProperty("limits").GetProperty("version").GetInt32()));

        // October's incident by November's limits: the NIR of UA read 0.28 too high, two and a third of its standard deviation of 0.12.
        const string Coded = "UA WB Protein NIR";
        var query = $"chart={Uri.EscapeDataString(Coded)}&asof=2025-10-08T12:30";
        var signal = (await client.GetFromJsonAsync<JsonElement>($"/api/lab/charts/signals?{query}")).EnumerateArray().First(s => s.GetProperty("at").GetDateTimeOffset() > new DateTimeOffset(2025, 10, 7, 15, 20, 0, TimeSpan.Zero));
        var point = signal.GetProperty("at").GetDateTimeOffset().ToString("O", CultureInfo.InvariantCulture);
        await ActsAsync(client, point, "Femi", "lamp looked at; check sample read again", HttpStatusCode.Created);
        await ActsAsync(client, point, "Ada", "lamp changed", HttpStatusCode.Created);
        await ActsAsync(client, point, "Ada", " ", HttpStatusCode.BadRequest);
        await ActsAsync(client, point, "", "lamp changed", HttpStatusCode.BadRequest);
        await ActsAsync(client, "2025-10-07T00:00:00Z", "Ada", "nothing", HttpStatusCode.BadRequest);
        var page = await Tickets.TextAsync(client, $"/laboratory/charts?{query}");
        var (first, second) = (page.IndexOf("Done: lamp looked at; check sample read again (Femi,", StringComparison.Ordinal), page.IndexOf("Done: lamp changed (Ada,", StringComparison.Ordinal));
        Assert.InRange(first, 0, second); // Both stand beside the point, who and when with each.

        using var refused = await client.PostAsJsonAsync("/api/lab/charts/limits?by=Ada", new { chart = Coded, from = "2025-11-02T00:00", until = "2025-11-01T00:00", reason = "x", rules = "Five" });
        Assert.Contains("Rules are Four, One, Eight", await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var crossed = await client.PostAsJsonAsync("/api/lab/charts/limits?by=Ada", new { chart = Coded, from = "2025-11-02T00:00", until = "2025-11-01T00:00", reason = "x" });
        Assert.Contains("begins before it ends", await crossed.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var unknown = await client.PostAsJsonAsync("/api/lab/charts/limits?by=Ada", new { chart = "UX Protein NIR", from = "2025-11-01T00:00", until = "2025-11-02T00:00", reason = "x" });
        Assert.Contains("Nothing can be charted as", await unknown.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var again = await client.PostAsJsonAsync("/api/lab/charts/limits?by=Ada", new { chart = "ub hg protein nir", from = "2025-12-01T06:00", until = "2026-01-10T06:00", reason = "new wheat" });
        Assert.Equal(HttpStatusCode.Created, again.StatusCode);
        var versions = JsonDocument.Parse(await again.Content.ReadAsStringAsync()).RootElement;
        Assert.Equal([2, 1], versions.EnumerateArray().Select(v => v.GetProperty("version").GetInt32()));
    }

    private static async Task ActsAsync(HttpClient client, string point, string by, string done, HttpStatusCode status)
    {
        using var answer = await client.PostAsJsonAsync($"/api/lab/charts/actions?by={by}", new { chart = "UA WB Protein NIR", point, done });
        Assert.Equal(status, answer.StatusCode);
    }

    private static async Task RefusesAsync(HttpClient client, string from, string until, string reason, string says)
    {
        using var bad = await PostAsync(client, from, until, reason);
        var page = WebUtility.HtmlDecode(await bad.Content.ReadAsStringAsync());
        Assert.Contains("what you typed is still here", page, StringComparison.Ordinal);
        Assert.Contains(says, page, StringComparison.Ordinal);
    }

    private static Task<HttpResponseMessage> PostAsync(HttpClient client, string from, string until, string reason) => WebSite.PostAsync(
        client, Chart, Chart, [new("_handler", "freeze"), new("Freeze.From", from), new("Freeze.Until", until), new("Freeze.Lower", "11.7"), new("Freeze.Upper", "12.1"), new("Freeze.Rules", "Four"), new("Freeze.Reason", reason)]);
}
