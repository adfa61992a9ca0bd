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
    public async Task Api_YardQueueAndBookings_SayTheSame()
    {
        using var client = await FilledAsync();
        var yard = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/intake/yard?asof=2025-09-10T09:20", UriKind.Relative));
        Assert.Equal(("25-0910-002", 12d, 26_340m), (yard.GetProperty("inYard")[0].GetProperty("ticket").GetString(), yard.GetProperty("comesNow").GetProperty("waitMinutes").GetDouble(), yard.GetProperty("netKg").GetDecimal()));
        using var body = new StringContent("""{ "service": 12, "arrivals": [ -10, 0, 10 ] }""", System.Text.Encoding.UTF8, "application/json");
        using var queue = await client.PostAsync(new Uri("/api/intake/queue", UriKind.Relative), body);
        Assert.Equal([10d, 12, 14], (await queue.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("waits").EnumerateArray().Select(w => w.GetProperty("waitMinutes").GetDouble()));

        var slot = new { key = "k", at = "2025-09-08T09:30", source = "DS-2", @class = "HW", tonnes = "26" };
        using var booked = await client.PostAsJsonAsync(new Uri("/api/intake/bookings?by=Ada", UriKind.Relative), slot);
        using var again = await client.PostAsJsonAsync(new Uri("/api/intake/bookings?by=Ada", UriKind.Relative), slot);
        using var off = await client.PostAsync(new Uri("/api/intake/bookings/S-250908-001/call-off?by=Ada", UriKind.Relative), null);
        using var none = await client.PostAsync(new Uri("/api/intake/bookings/S-250908-002/call-off?by=Ada", UriKind.Relative), null);
        Assert.Equal([HttpStatusCode.Created, HttpStatusCode.Created, HttpStatusCode.OK, HttpStatusCode.NotFound], new[] { booked, again, off, none }.Select(a => a.StatusCode));
        var day = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/intake/bookings?day=2025-09-08", UriKind.Relative));
        Assert.Equal("called off", Assert.Single(day.EnumerateArray()).GetProperty("state").GetString());
    }

    // The worked truck under way of docs/model/yard.md's tests: 8 and 17 min.
    [Fact]
    public void Cli_Yard_AnswersThePosedCase()
    {
        var (status, output, error) = Cli.Shell.Run("intake", "yard", "--in", Plant.Repository.Sample("cases", "yard.json"), "--json");
        Assert.Equal((0, ""), (status, error));
        Assert.Equal([8d, 17], JsonSerializer.Deserialize<JsonElement>(output).GetProperty("waits").EnumerateArray().Select(w => w.GetProperty("waitMinutes").GetDouble()));
    }

    [Fact]
    public async Task Arrive_APlateThatStandsInTheYard_IsAskedAboutFirst()
    {
        using var client = await Tickets.NamedAsync(site);
        Dictionary<string, string> form = new() { ["_handler"] = "arrive", ["A.Key"] = "first form", ["A.Station"] = "desk", ["A.Plate"] = "trailer 99", ["A.Source"] = "DS-2", ["A.Class"] = "HW", ["A.At"] = "2025-09-06T09:00" };
        using var first = await WebSite.PostAsync(client, "/intake/arrive", "/intake/arrive", form);
        using var again = await WebSite.PostAsync(client, "/intake/arrive", "/intake/arrive", form);
        form["A.Key"] = "second form";
        using var asked = await WebSite.PostAsync(client, "/intake/arrive", "/intake/arrive", form);
        Assert.Equal([HttpStatusCode.Redirect, HttpStatusCode.Redirect, HttpStatusCode.OK], new[] { first, again, asked }.Select(a => a.StatusCode));
        Assert.Contains("trailer 99 stands in the yard already", await asked.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        form["A.Another"] = "true";
        using var another = await WebSite.PostAsync(client, "/intake/arrive", "/intake/arrive", form);
        Assert.EndsWith("25-0906-002", another.Headers.Location!.AbsolutePath, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wall_ShowsTheThreeFacts()
    {
        using var client = await FilledAsync();
        var page = await Tickets.TextAsync(client, "/intake/yard/wall?asof=2025-09-10T09:20");
        Assert.Matches(@"in the yard 1 here longest, min 10 comes now: waits, min 12", page);
        Assert.Matches(@"2 at gate trailer 2 10 min", page);
    }

    [Fact]
    public async Task Bookings_BookedTwiceWithOneFormAndCalledOff_AreOneAndStay()
    {
        using var client = await Tickets.NamedAsync(site);
        Dictionary<string, string> form = new() { ["_handler"] = "book", ["B.Key"] = "one", ["B.At"] = "2025-09-11T09:30", ["B.Source"] = "ds-2", ["B.Class"] = "HW", ["B.Tonnes"] = "26" };
        using var first = await WebSite.PostAsync(client, "/intake/bookings", "/intake/bookings", form);
        using var again = await WebSite.PostAsync(client, "/intake/bookings", "/intake/bookings", form);
        form["B.Key"] = "another";
        using var second = await WebSite.PostAsync(client, "/intake/bookings", "/intake/bookings", form);
        Assert.All([first, again, second], a => Assert.Equal(HttpStatusCode.Redirect, a.StatusCode));
        using var off = await WebSite.PostAsync(client, "/intake/bookings?day=2025-09-11", "/intake/bookings?day=2025-09-11", [new("_handler", "call-off"), new("Slot", "S-250911-002")]);
        var page = await Tickets.TextAsync(client, "/intake/bookings?day=2025-09-11");
        Assert.Matches(@"S-250911-001 09:30 DS-2 HW 26\.0 ◆ booked", page);
        Assert.Matches(@"S-250911-002 09:30 DS-2 HW 26\.0 ✖ called off", page);
        Assert.DoesNotContain("S-250911-003", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("B.At", "soon", "is no date and time")]
    [InlineData("B.Source", "B01", "neither a field nor an elevator")]
    [InlineData("B.Tonnes", "26000", "on one truck cannot be")]
    [InlineData("B.Class", "", "Still needed: the wheat class")]
    public async Task Booking_ThatCannotBe_IsRefusedInWords(string field, string value, string says)
    {
        using var client = await Tickets.NamedAsync(site);
        Dictionary<string, string> form = new() { ["_handler"] = "book", ["B.Key"] = "bad", ["B.At"] = "2025-09-12T09:30", ["B.Source"] = "DS-2", ["B.Class"] = "HW", ["B.Tonnes"] = "26", [field] = value };
        using var answer = await WebSite.PostAsync(client, "/intake/bookings", "/intake/bookings", form);
        Assert.Contains(says, Tickets.Plain(await answer.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        Assert.DoesNotContain("S-250912-001", await Tickets.TextAsync(client, "/intake/bookings?day=2025-09-12"), StringComparison.Ordinal);
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
