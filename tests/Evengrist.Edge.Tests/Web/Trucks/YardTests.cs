using System.Globalization;
using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Edge.Tests.Web.Trucks;

[Collection(TruckSiteCollection.Name)]
public sealed class YardTests(WebSite site)
{
    private static readonly SemaphoreSlim Once = new(1, 1);

    // By hand: one pit, so one lane. 001 was served 9:05 to 9:17, 12 minutes. At 9:20 truck 002 has waited 10 minutes at the gate and begins now, so that the lane is
    // free at 9:32: who comes now waits 12 minutes, who is booked for 9:30 waits 2.
    [Fact]
    public async Task Yard_OnePitAndOneTruckWaiting_ForecastsAsReckonedByHand()
    {
        using var client = await FilledAsync();
        var page = await Tickets.TextAsync(client, "/intake/yard?asof=2025-09-10T09:20");
        Assert.Matches(@"at gate 25-0910-002 trailer 2 DS-2 HW 10 10 ", page);
        Assert.Matches(@"A truck that comes now waits 12 ± 0\.?0? min", page);
        Assert.Matches(@"Y-0930 09:30 DS-2 HW 26\.0 2 ± 0", page);
        Assert.Matches(@"Came 2 trucks Weighed empty 1 trucks", page);
        Assert.Matches(@"B90 1 26\.3", page);
        Assert.DoesNotContain("Y-CALLED", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Yard_BeforeTheFirstTruck_SaysWhyThereIsNoForecast()
    {
        using var client = await FilledAsync();
        Assert.Contains("how long one takes is not known yet", await Tickets.TextAsync(client, "/intake/yard?asof=2025-09-10T09:02"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wall_ShowsTheThreeFacts()
    {
        using var client = await FilledAsync();
        var page = await Tickets.TextAsync(client, "/intake/yard/wall?asof=2025-09-10T09:20");
        Assert.Matches(@"in the yard 1 here longest, min 10 comes now: waits, min 12", page);
        Assert.Matches(@"2 at gate trailer 2 10 min", page);
    }

    private async Task<HttpClient> FilledAsync()
    {
        var client = await Tickets.NamedAsync(site);
        await Once.WaitAsync();
        try
        {
            Bookings.Keep(site.Mill, new Booking("Y-0930", Instant.FromUtc(2025, 9, 10, 14, 30), "DS-2", "HW", 26m), "Ada Miller");
            Bookings.Keep(site.Mill, new Booking("Y-CALLED", Instant.FromUtc(2025, 9, 10, 14, 40), "DS-2", "HW", 26m), "Ada Miller");
            Bookings.Keep(site.Mill, new Booking("Y-CALLED", Instant.FromUtc(2025, 9, 10, 14, 40), "DS-2", "HW", 26m, Cancelled: true), "Ada Miller");
            var first = await PostAsync(client, "arrivals", new() { ["at"] = "2025-09-10T09:00", ["key"] = "y1", ["plate"] = "trailer 1" });
            first = await PostAsync(client, first, "weigh-in", new() { ["at"] = "2025-09-10T09:05", ["gross"] = "38460" });
            first = await PostAsync(client, first, "send", new() { ["at"] = "2025-09-10T09:10", ["key"] = "d", ["decision"] = "accept", ["bin"] = "B90", ["way"] = "PIT1 | LEG1" });
            await PostAsync(client, first, "weigh-out", new() { ["at"] = "2025-09-10T09:17", ["tare"] = "12120" });
            await PostAsync(client, "arrivals", new() { ["at"] = "2025-09-10T09:10", ["key"] = "y2", ["plate"] = "trailer 2" });
        }
        finally
        {
            Once.Release();
        }

        return client;
    }

    private static Task<JsonElement> PostAsync(HttpClient client, JsonElement ticket, string step, Dictionary<string, string> body)
    {
        body["seen"] = ticket.GetProperty("newest").GetInt64().ToString(CultureInfo.InvariantCulture);
        return PostAsync(client, $"tickets/{ticket.GetProperty("ticket").GetString()}/{step}", body);
    }

    private static async Task<JsonElement> PostAsync(HttpClient client, string path, Dictionary<string, string> body)
    {
        foreach (var (field, value) in new[] { ("station", "yard test"), ("source", "DS-2"), ("class", "HW") })
        {
            body.TryAdd(field, value);
        }

        using var answer = await client.PostAsJsonAsync(new Uri($"/api/intake/{path}?by=Ada", UriKind.Relative), body);
        Assert.True(answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.Created, await answer.Content.ReadAsStringAsync());
        return await answer.Content.ReadFromJsonAsync<JsonElement>();
    }
}
