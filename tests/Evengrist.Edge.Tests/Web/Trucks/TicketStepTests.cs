using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Edge.Tests.Web.Trucks;

[Collection(TruckSiteCollection.Name)]
public sealed class TicketStepTests(WebSite site)
{
    private static readonly Dictionary<string, string> Decision = new() { ["decision"] = "accept", ["bin"] = "B90", ["way"] = "PIT1 | LEG1" };

    [Fact]
    public async Task Steps_OverTheApi_EndInTheBinAndCanBeRepeated()
    {
        using var client = await Tickets.NamedAsync(site);
        var opened = await OpenAsync(client, "api-1");
        Assert.Equal("at gate", opened.GetProperty("state").GetString());
        Assert.Equal("DS-2", opened.GetProperty("from").GetString());
        var ticket = opened.GetProperty("ticket").GetString()!;
        var before = site.Mill.Ask(view => view.Book.StockOf(view.Book.Named("B90").Id));

        var weighed = await StepAsync(client, opened, "weigh-in", new() { ["gross"] = "38460" });
        Assert.Equal("weighed", weighed.GetProperty("state").GetString());
        var graded = await StepAsync(client, weighed, "sample", new() { ["protein"] = "13.1", ["proteinBasis"] = "12mb", ["key"] = "s1" });
        var sent = await StepAsync(client, graded, "send", new(Decision) { ["key"] = "d1" });
        Assert.Equal("sent to B90", sent.GetProperty("state").GetString());
        var empty = await StepAsync(client, sent, "weigh-out", new() { ["tare"] = "12120" });
        Assert.Equal(("empty", 26_340m, "B90"), (empty.GetProperty("state").GetString(), empty.GetProperty("netKg").GetDecimal(), empty.GetProperty("bin").GetString()));
        Assert.Equal(Mass.FromKilograms(26_340m), site.Mill.Ask(view => view.Book.StockOf(view.Book.Named("B90").Id)) - before);

        // An answer was lost: every request once more, with what the sender had seen then.
        var last = site.Mill.Ask(view => view.Book.Last);
        Assert.Equal(ticket, (await OpenAsync(client, "api-1", HttpStatusCode.OK)).GetProperty("ticket").GetString());
        await StepAsync(client, opened, "weigh-in", new() { ["gross"] = "38460" });
        await StepAsync(client, graded, "send", new(Decision) { ["key"] = "d1" });
        await StepAsync(client, sent, "weigh-out", new() { ["tare"] = "12120" });
        Assert.Equal(last, site.Mill.Ask(view => view.Book.Last));
    }

    [Fact]
    public async Task Api_TicketChangedByAnother_IsAConflictThatSaysWhat()
    {
        using var client = await Tickets.NamedAsync(site);
        var seen = await OpenAsync(client, "api-2");
        await StepAsync(client, seen, "sample", new() { ["moisture"] = "14.2", ["key"] = "s1" }, by: "Bea");
        var before = site.Mill.Ask(view => view.Book.Last);
        using var answer = await SendAsync(client, seen, "weigh-in", new() { ["gross"] = "38460" }, "Ada");
        var problem = await answer.Content.ReadFromJsonAsync<JsonElement>();
        Assert.Equal((HttpStatusCode.Conflict, "ChangedMeanwhile", before), (answer.StatusCode, problem.GetProperty("rule").GetString(), site.Mill.Ask(view => view.Book.Last)));
        var change = Assert.Single(problem.GetProperty("changes").EnumerateArray());
        Assert.Equal("Bea", change.GetProperty("by").GetString());
        Assert.Contains("moisture 14.2 %", change.GetProperty("says").GetString(), StringComparison.Ordinal);
        Assert.Equal(before.Value, problem.GetProperty("newest").GetInt64());
    }

    [Theory]
    [InlineData("weigh-in", "gross", "38,460", "which may mean thousands")]
    [InlineData("weigh-in", "gross", "38.46", "Were tonnes typed")]
    [InlineData("weigh-in", "gross", "", "Still needed: the gross")]
    [InlineData("weigh-in", "seen", "many", "is no number of a fact")]
    [InlineData("weigh-in", "seen", "", "Still needed: the number of the newest fact")]
    [InlineData("weigh-in", "at", "2925-01-01T00:00", "has not come yet")]
    [InlineData("weigh-in", "at", "noon", "is no date and time")]
    [InlineData("sample", "protein", "13.1", "has no moisture basis")]
    [InlineData("sample", "key", "", "at least one reading")]
    [InlineData("send", "decision", "perhaps", "is no decision")]
    [InlineData("send", "decision", "accept", "Still needed: the bin")]
    [InlineData("send", "decision", "turn away", "the reason")]
    public async Task Api_AStepThatCannotBe_IsRefusedInWords(string step, string field, string value, string says)
    {
        using var client = await Tickets.NamedAsync(site);
        var opened = await OpenAsync(client, "api-3", anyStatus: true);
        var before = site.Mill.Ask(view => view.Book.Last);
        using var answer = await SendAsync(client, opened, step, new() { ["gross"] = "38460", ["tare"] = "12120", ["key"] = "k", [field] = value }, "Ada");
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(says, (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal(before, site.Mill.Ask(view => view.Book.Last));
    }

    [Fact]
    public async Task Api_UnknownTicket_IsNotFound()
    {
        using var client = await Tickets.NamedAsync(site);
        using var answer = await client.PostAsJsonAsync(new Uri("/api/intake/tickets/25-0101-777/weigh-in?by=Ada", UriKind.Relative), new { gross = "38460", seen = "1" });
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task Page_StepByStep_TakesATruckFromTheGateToTheBin()
    {
        using var client = await Tickets.NamedAsync(site);
        using var opened = await WebSite.PostAsync(client, "/intake/arrive", "/intake/arrive",
            [new("_handler", "arrive"), new("A.Key", Guid.NewGuid().ToString("N")), new("A.Station", "desk"), new("A.Plate", "trailer 8"), new("A.Source", "DS-2"), new("A.Class", "HW")]);
        var page = opened.Headers.Location!.AbsolutePath;
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(client, page, "weigh-in", "I", new() { ["Gross"] = "38460" })).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(client, page, "readings", "P", new() { ["Protein"] = "13.1", ["ProteinBasis"] = "12mb", ["Moisture"] = "14.2" })).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(client, page, "send", "D", new() { ["Decision"] = "accept", ["Bin"] = "B90", ["Way"] = "PIT1 | LEG1" })).StatusCode);
        Assert.Contains("sent to B90", await Tickets.TextAsync(client, page), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Redirect, (await PostAsync(client, page, "weigh-out", "O", new() { ["Tare"] = "12120" })).StatusCode);
        var text = await Tickets.TextAsync(client, page);
        Assert.Contains("26,340", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Weigh in", text, StringComparison.Ordinal);
    }

    // Two people open the same ticket; the second one's form is refused, shows what the first one did, and keeps what was typed.
    [Fact]
    public async Task Page_TicketChangedByTwoPeople_ShowsTheOthersChangeAndKeepsWhatWasTyped()
    {
        using var ada = await Tickets.NamedAsync(site);
        using var bea = await Tickets.NamedAsync(site);
        var page = "/intake/" + (await OpenAsync(ada, "api-5")).GetProperty("ticket").GetString();
        var (adas, beas) = (await ada.GetStringAsync(new Uri(page, UriKind.Relative)), await bea.GetStringAsync(new Uri(page, UriKind.Relative)));
        using var first = await FillAsync(bea, page, beas, "readings", "P", new() { ["Moisture"] = "13.7" });
        Assert.Equal(HttpStatusCode.Redirect, first.StatusCode);
        var before = site.Mill.Ask(view => view.Book.Last);
        using var second = await FillAsync(ada, page, adas, "weigh-in", "I", new() { ["Gross"] = "38460" });
        var html = await second.Content.ReadAsStringAsync();
        Assert.Equal((HttpStatusCode.Conflict, before), (second.StatusCode, site.Mill.Ask(view => view.Book.Last)));
        Assert.Contains("somebody else changed this ticket", html, StringComparison.Ordinal);
        Assert.Contains("moisture 13.7 %", Tickets.Plain(html), StringComparison.Ordinal);
        Assert.Contains("value=\"38460\"", html, StringComparison.Ordinal);
        using var again = await FillAsync(ada, page, html, "weigh-in", "I", new() { ["Gross"] = "38460" });
        Assert.Equal((HttpStatusCode.Redirect, 38_460m), (again.StatusCode, site.Mill.ReadingOf(page[8..], Property.GrossWeight)!.Value));
    }

    // The form that the second person sends is no longer on the page: it is answered all the same.
    [Fact]
    public async Task Page_AStepThatAnotherTookMeanwhile_IsAnsweredInWordsAndKeepsWhatWasTyped()
    {
        using var client = await Tickets.NamedAsync(site);
        var opened = await OpenAsync(client, "api-8");
        var page = "/intake/" + opened.GetProperty("ticket").GetString();
        var old = await client.GetStringAsync(new Uri(page, UriKind.Relative));
        var weighed = await StepAsync(client, opened, "weigh-in", new() { ["gross"] = "38460" }, by: "Bea");
        using var full = await FillAsync(client, page, old, "weigh-in", "I", new() { ["Gross"] = "38000" });
        var html = await full.Content.ReadAsStringAsync();
        Assert.Contains("was weighed full at 38460 kg already", html, StringComparison.Ordinal);
        Assert.Contains("value=\"38000\"", html, StringComparison.Ordinal);

        var sent = await StepAsync(client, weighed, "send", new(Decision) { ["key"] = "d1" });
        var older = await client.GetStringAsync(new Uri(page, UriKind.Relative));
        await StepAsync(client, sent, "weigh-out", new() { ["tare"] = "12120" }, by: "Bea");
        using var empty = await FillAsync(client, page + "?done=true", older, "weigh-out", "O", new() { ["Tare"] = "12000" });
        var text = Tickets.Plain(await empty.Content.ReadAsStringAsync());
        Assert.Contains("was weighed empty at 12120 kg already", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Recorded. It stands", text, StringComparison.Ordinal);
        using var sample = await FillAsync(client, page, older, "readings", "P", new() { ["Moisture"] = "13.7" });
        Assert.Equal(HttpStatusCode.Conflict, sample.StatusCode);
        Assert.Contains("tare 12,120 kg", Tickets.Plain(await sample.Content.ReadAsStringAsync()), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ no", "It is no JSON at line 1")]
    [InlineData("{ \"seen\": \"1\", \"gross\": 38460 }", "gross (line 1): write a text in quotes")]
    [InlineData("", "The body is missing")]
    public async Task Api_BodyThatCannotBeRead_IsRefusedInWords(string body, string says)
    {
        using var client = site.Client();
        using var answer = await client.PostAsync(new Uri("/api/intake/tickets/25-0101-777/weigh-in?by=Ada", UriKind.Relative), new StringContent(body, System.Text.Encoding.UTF8, "application/json"));
        var problem = await answer.Content.ReadFromJsonAsync<JsonElement>();
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(says, problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("Evengrist.", problem.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Weighings_NameTheirScale()
    {
        using var client = await Tickets.NamedAsync(site);
        var opened = await OpenAsync(client, "api-9");
        var weighed = await StepAsync(client, opened, "weigh-in", new() { ["gross"] = "38460", ["scale"] = "scale 2" });
        Assert.Equal("scale 2", weighed.GetProperty("readings")[0].GetProperty("instrument").GetString());
        var graded = await StepAsync(client, weighed, "sample", new() { ["key"] = "s", ["moisture"] = "12", ["dockage"] = "0.8", ["instrument"] = "NIR-9", ["dockageTester"] = "DK-9" });
        Assert.Equal(["scale 2", "NIR-9", "DK-9"], graded.GetProperty("readings").EnumerateArray().Select(r => r.GetProperty("instrument").GetString()).Order(StringComparer.Ordinal).Reverse());
        var page = await client.GetStringAsync(new Uri("/intake/" + opened.GetProperty("ticket").GetString(), UriKind.Relative));
        Assert.Contains("name=\"P.DockageTester\" type=\"text\" value=\"DK-9\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task PutRight_OfATicketChangedByAnother_IsRefused()
    {
        using var client = await Tickets.NamedAsync(site);
        var opened = await OpenAsync(client, "api-6");
        var page = "/intake/" + opened.GetProperty("ticket").GetString();
        await StepAsync(client, opened, "weigh-in", new() { ["gross"] = "38460" });
        var html = await client.GetStringAsync(new Uri(page, UriKind.Relative));
        await StepAsync(client, await client.GetFromJsonAsync<JsonElement>(new Uri("/api" + page.Replace("intake/", "intake/tickets/", StringComparison.Ordinal) + "?asof=2999-01-01T00:00", UriKind.Relative)), "sample", new() { ["moisture"] = "13.7", ["key"] = "m" });
        using var right = await FillAsync(client, page, html, "right", "R", new() { ["What"] = "GrossWeight", ["Value"] = "38440", ["Why"] = "Misread." });
        Assert.Equal(HttpStatusCode.Conflict, right.StatusCode);
        Assert.Equal(38_460m, site.Mill.ReadingOf(page[8..], Property.GrossWeight)!.Value);
    }

    [Fact]
    public async Task SampleTaken_OfATicketChangedByAnother_IsRefusedAndSaysWhat()
    {
        using var client = await Tickets.NamedAsync(site);
        var opened = await OpenAsync(client, "api-7");
        var page = "/intake/" + opened.GetProperty("ticket").GetString();
        var html = await client.GetStringAsync(new Uri(page, UriKind.Relative));
        await StepAsync(client, opened, "weigh-in", new() { ["gross"] = "38460" }, by: "Bea");
        var before = site.Mill.Ask(view => view.Book.Last);
        using var answer = await FillAsync(client, page, html, "sample-taken", "S", new() { ["Pattern"] = "us-hopper-bottom", ["Cuts"] = "6", ["Kilograms"] = "2.0", ["At"] = "2026-01-01T10:00" });
        var text = await answer.Content.ReadAsStringAsync();
        Assert.Equal((HttpStatusCode.Conflict, before), (answer.StatusCode, site.Mill.Ask(view => view.Book.Last)));
        Assert.Contains("gross 38,460 kg", Tickets.Plain(text), StringComparison.Ordinal);
    }

    [Fact]
    public async Task NewTicket_WithoutANumber_GetsTheNextAndTheSameFormTwiceIsOne()
    {
        using var client = await Tickets.NamedAsync(site);
        var form = Tickets.Worked("");
        (form["T.Key"], form["T.At"]) = ("one-form", "2025-09-12T09:00");
        using var first = await Tickets.SendAsync(client, form);
        using var second = await Tickets.SendAsync(client, form);
        Assert.Equal("/intake/25-0912-001?done=true", first.Headers.Location?.PathAndQuery);
        Assert.Equal(first.Headers.Location, second.Headers.Location);
    }

    private static async Task<JsonElement> OpenAsync(HttpClient client, string key, HttpStatusCode expected = HttpStatusCode.Created, bool anyStatus = false)
    {
        var body = new { station = "scale 1", key, plate = "trailer 7", source = "DS-2", @class = "HW" };
        using var answer = await client.PostAsJsonAsync(new Uri("/api/intake/arrivals?by=Ada", UriKind.Relative), body);
        Assert.True(anyStatus || answer.StatusCode == expected, await answer.Content.ReadAsStringAsync());
        return await answer.Content.ReadFromJsonAsync<JsonElement>();
    }

    private static async Task<JsonElement> StepAsync(HttpClient client, JsonElement seen, string step, Dictionary<string, string> body, string by = "Ada")
    {
        using var answer = await SendAsync(client, seen, step, body, by);
        Assert.True(answer.StatusCode == HttpStatusCode.OK, await answer.Content.ReadAsStringAsync());
        return await answer.Content.ReadFromJsonAsync<JsonElement>();
    }

    private static Task<HttpResponseMessage> SendAsync(HttpClient client, JsonElement seen, string step, Dictionary<string, string> body, string by)
    {
        body.TryAdd("seen", seen.GetProperty("newest").GetInt64().ToString(System.Globalization.CultureInfo.InvariantCulture));
        return client.PostAsJsonAsync(new Uri($"/api/intake/tickets/{seen.GetProperty("ticket").GetString()}/{step}?by={by}", UriKind.Relative), body);
    }

    private static async Task<HttpResponseMessage> PostAsync(HttpClient client, string page, string handler, string prefix, Dictionary<string, string> fields) =>
        await FillAsync(client, page, await client.GetStringAsync(new Uri(page, UriKind.Relative)), handler, prefix, fields);

    // Posts a form of a page as it was fetched: with the token, the key and the newest fact that stand in it.
    private static async Task<HttpResponseMessage> FillAsync(HttpClient client, string page, string html, string handler, string prefix, Dictionary<string, string> fields)
    {
        string Hidden(string name) => Regex.Match(html, $"name=\"{Regex.Escape(name)}\" value=\"([^\"]+)\"").Groups[1].Value;
        using var content = new FormUrlEncodedContent(fields.Select(f => KeyValuePair.Create($"{prefix}.{f.Key}", f.Value))
            .Concat([new("_handler", handler), new($"{prefix}.Seen", Hidden($"{prefix}.Seen")), new($"{prefix}.Key", Hidden($"{prefix}.Key")), new("__RequestVerificationToken", Hidden("__RequestVerificationToken"))]));
        return await client.PostAsync(new Uri(page, UriKind.Relative), content);
    }
}
