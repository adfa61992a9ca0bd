using System.Net;
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
