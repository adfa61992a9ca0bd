using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Records.Tracing;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>A site of its own: drills are kept.</summary>
public sealed class DrillPageTests(WebSite site) : IClassFixture<WebSite>
{
    private const string Page = "/tracing/drill?asof=2025-12-01T00:00";

    [Fact]
    public async Task Drill_StartedClosedAndAborted_IsKeptWithItsScore()
    {
        using var client = await Tickets.NamedAsync(site);
        async Task<string> Send(string form, params KeyValuePair<string, string>[] fields)
        {
            using var answer = await WebSite.PostAsync(client, Page, Page, [new("_handler", form), .. fields]);
            return Tickets.Plain(await answer.Content.ReadAsStringAsync());
        }

        Assert.Contains("is no truck, pallet or load", await Send("start", new KeyValuePair<string, string>("D.Code", "B01")), StringComparison.Ordinal);
        Assert.Contains("is no seed", await Send("start", new KeyValuePair<string, string>("D.Seed", "x")), StringComparison.Ordinal);
        Assert.Contains("is no threshold", await Send("start", new("D.Code", "25-0709-001"), new("D.Kg", "much")), StringComparison.Ordinal);
        Assert.Empty(Drills.All(site.Mill));

        var started = await Send("start", new("D.Code", "25-0709-001"), new("D.Kg", "0"), new("D.Net", "Union"));
        Assert.True(started.Contains("runs since", StringComparison.Ordinal), started);
        var open = Assert.Single(Drills.All(site.Mill));
        Assert.Equal(("25-0709-001", "Ada Miller", true), (open.Subject, open.StartedBy, open.IsOpen));
        Assert.Contains("closed by Ada Miller", await Send($"close {open.Number}", new KeyValuePair<string, string>("D.Note", "went well")), StringComparison.Ordinal);
        var score = Assert.Single(Drills.All(site.Mill)).Score!;
        Assert.Equal((1.0, 1.0, 1, 1), (score.Completeness, score.Precision, score.Listed, score.Recounted));

        await Send("start", new KeyValuePair<string, string>("D.Seed", "3"));
        var second = Drills.All(site.Mill).Single(d => d.IsOpen);
        Assert.Equal(3, second.Seed);
        Assert.Contains("Say why", await Send($"abort {second.Number}", new KeyValuePair<string, string>("D.Reason", " ")), StringComparison.Ordinal);
        Assert.Contains("aborted by Ada Miller", await Send($"abort {second.Number}", new KeyValuePair<string, string>("D.Reason", "fire alarm")), StringComparison.Ordinal);
        Assert.Contains("fire alarm", await Tickets.TextAsync(client, "/tracing/drill"), StringComparison.Ordinal);
        Assert.Equal(2, (await client.GetFromJsonAsync<JsonElement>(new Uri("/api/tracing/drills", UriKind.Relative))).GetArrayLength());
    }

    [Fact]
    public async Task Api_ScoresACode_AndRefusesWhatIsNone()
    {
        using var client = site.Client();
        var drill = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/tracing/drill?code=25-0709-001&asof=2025-12-01T00:00", UriKind.Relative));
        Assert.Equal(1, drill.GetProperty("score").GetProperty("completeness").GetDouble());
        foreach (var bad in new[] { "", "?code=B01", "?code=25-0709-001&kg=-1", "?code=25-0709-001&asof=never" })
        {
            using var answer = await client.GetAsync(new Uri("/api/tracing/drill" + bad, UriKind.Relative));
            Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        }
    }
}
