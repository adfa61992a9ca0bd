using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Edge.Tests.Web;

/// <summary>The page of events: check, take in, list, write.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class EventsPageTests(WebSite site)
{
    // Invented: a customer's receipt, with the hash left to the program.
    private const string Receipt = """
        { "@context": ["https://ref.gs1.org/standards/epcis/2.0.0/epcis-context.jsonld"], "type": "EPCISDocument", "schemaVersion": "2.0", "creationDate": "2025-09-18T10:00:00Z",
          "epcisBody": { "eventList": [ { "type": "ObjectEvent", "eventTime": "2025-09-18T09:00:00Z", "eventTimeZoneOffset": "+00:00", "action": "OBSERVE", "bizStep": "receiving", "disposition": "in_progress", "epcList": ["urn:x-mill:little:unit:P-0001"] } ] } }
        """;

    private static readonly Instant Hour = Instant.FromUtc(2025, 9, 17, 12, 0);

    [Fact]
    public async Task Document_CheckedThenTakenIn_StandsInTheListWithALinkAndIsTakenOut()
    {
        using var client = await Tickets.NamedAsync(site);
        var checkedOnly = await Post(client, Receipt, "check");
        Assert.Contains("No fault found.", checkedOnly, StringComparison.Ordinal);
        Assert.DoesNotContain("Taken in. ", Tickets.Plain(checkedOnly), StringComparison.Ordinal);
        var taken = await Post(client, Receipt, "take");
        Assert.Contains("1 new events, 0 known ones now declared wrong, 0 known already", Tickets.Plain(taken), StringComparison.Ordinal);
        Assert.Contains("href=\"/tracing?code=P-0001\"", taken, StringComparison.Ordinal);
        Assert.Contains("0 new events, 0 known ones now declared wrong, 1 known already", Tickets.Plain(await Post(client, Receipt, "take")), StringComparison.Ordinal);
        var list = await client.GetStringAsync(new Uri("/ledger/events?as=csv", UriKind.Relative));
        Assert.Contains("urn:x-mill:little:unit:P-0001", list, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("receiving", "unloading_the_truck", "$.epcisBody.eventList[0].bizStep")]
    [InlineData("\"eventTimeZoneOffset\": \"+00:00\", ", "", "$.epcisBody.eventList[0]")]
    [InlineData("\"epcisBody\"", "epcisBody", "line 2")]
    public async Task Document_Wrong_ShowsThePlaceAndKeepsWhatWasPasted(string from, string to, string place)
    {
        using var client = await Tickets.NamedAsync(site);
        var said = await Post(client, Receipt.Replace(from, to, StringComparison.Ordinal), "take");
        Assert.Contains("It cannot be taken.", said, StringComparison.Ordinal);
        Assert.Contains(place, WebUtility.HtmlDecode(said), StringComparison.Ordinal);
        Assert.Contains("2025-09-18T09:00:00Z", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Document_Deep_Nothing_AndTooLarge_AreAnsweredInWords()
    {
        using var client = await Tickets.NamedAsync(site);
        Assert.Contains("64 levels", await Post(client, string.Concat(Enumerable.Repeat("[", 10_000)), "check"), StringComparison.Ordinal);
        Assert.Contains("a file, or its text pasted", WebUtility.HtmlDecode(await Post(client, "", "check")), StringComparison.Ordinal);
        using var large = new ByteArrayContent(new byte[50_000_000]);
        using var answer = await client.PostAsync(new Uri("/api/epcis/check", UriKind.Relative), large);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        Assert.Contains("At most 33 MB", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);

        // What the command line reads, the web reads too: nothing of 25 MB is refused for its size.
        using var fits = new ByteArrayContent(Encoding.UTF8.GetBytes(new string(' ', 25_000_000) + "{}"));
        using var read = await client.PostAsync(new Uri("/api/epcis/check", UriKind.Relative), fits);
        Assert.Equal(HttpStatusCode.BadRequest, read.StatusCode);
        Assert.Contains("$", await read.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Document_TakenInByNobody_SaysWho()
    {
        using var client = site.Client();
        Assert.Contains("Say who you are", await client.GetStringAsync(new Uri("/ledger/events", UriKind.Relative)), StringComparison.Ordinal);
        Assert.Contains("Nobody is named", WebUtility.HtmlDecode(await Post(client, Receipt.Replace("09:00:00Z", "09:30:00Z", StringComparison.Ordinal), "take")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("code=P-0001", null)]
    [InlineData("from=2025-07-01&until=2025-09-30", null)]
    [InlineData("code=NOWHERE", "no place with the code")]
    [InlineData("code=B01", "only a truck")]
    [InlineData("code=P-0001&from=2025-07-01", "not both")]
    [InlineData("from=2025-09-30&until=2025-07-01", "lies before the first")]
    [InlineData("from=yesterday", "Give two days")]
    public async Task Written_ForOthers_IsADocumentOrSaysWhyNot(string query, string? why)
    {
        using var client = site.Client();
        var page = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/ledger/events?" + query, UriKind.Relative)));
        if (why is not null)
        {
            Assert.Contains(why, page, StringComparison.Ordinal);
            Assert.DoesNotContain("/api/epcis/export?", page, StringComparison.Ordinal);
            return;
        }

        var address = Regex.Match(page, "href=\"(/api/epcis/export[^\"]+)\"").Groups[1].Value;
        using var document = JsonDocument.Parse(await client.GetStringAsync(new Uri(address, UriKind.Relative)));
        Assert.True(document.RootElement.GetProperty("epcisBody").GetProperty("eventList").GetArrayLength() > 0);
    }

    [Fact]
    public async Task Sent_ToSomebody_IsKeptAndWhatTurnsOutWrongIsShownThenDeclaredOnce()
    {
        using var client = await Tickets.NamedAsync(site);
        const string Page = "/ledger/events?code=P-0001&to=County+inspector";
        var hold = site.Mill.Record([new Happen("smell of P-0001", "P-0001", Hour, HappeningKind.Held, "Smell.")], "Ada Miller", "test").First!.Value;
        Assert.Contains("Nothing yet: a first document to County inspector", Tickets.Plain(await client.GetStringAsync(new Uri(Page, UriKind.Relative))), StringComparison.Ordinal);
        var first = await Send(client, Page);
        Assert.Equal("County inspector", first.GetProperty("receiver").GetString());
        var page = Tickets.Plain(await client.GetStringAsync(new Uri(Page, UriKind.Relative)));
        Assert.Contains("All of them hold.", page, StringComparison.Ordinal);
        Assert.Contains("County inspector , no. 1 the way of P-0001", page, StringComparison.Ordinal);

        site.Mill.Record([new Happen("no smell of P-0001", "P-0001", Hour, HappeningKind.Note, "Another pallet.") { Corrects = hold, Note = "another pallet" }], "Ada Miller", "test");
        page = Tickets.Plain(await client.GetStringAsync(new Uri("/ledger/events?to=county+INSPECTOR", UriKind.Relative)));
        Assert.Contains("1 does not hold any more:", page, StringComparison.Ordinal);
        Assert.Contains("nothing: it did not occur", page, StringComparison.Ordinal);
        Assert.Contains("Not written.", Tickets.Plain(await client.GetStringAsync(new Uri(Page + "&outflow=core", UriKind.Relative))), StringComparison.Ordinal);
        Assert.Single(Declared(await Send(client, Page)));
        page = Tickets.Plain(await client.GetStringAsync(new Uri(Page, UriKind.Relative)));
        Assert.Contains("All of them hold.", page, StringComparison.Ordinal);
        Assert.Contains("Declared wrong so far: 1", page, StringComparison.Ordinal);
        Assert.Empty(Declared(await Send(client, Page)));
    }

    [Fact]
    public async Task Sent_ByNobodyOrToNobody_IsRefusedAndKeepsNothing()
    {
        using var client = site.Client();
        using var nobody = await WebSite.PostAsync(client, "/ledger/events", "/ledger/events/send", [new("code", "P-0001"), new("to", "Nobody's")]);
        Assert.Equal(HttpStatusCode.BadRequest, nobody.StatusCode);
        using var named = await Tickets.NamedAsync(site);
        using var nowhere = await WebSite.PostAsync(named, "/ledger/events", "/ledger/events/send", [new("code", "P-0001"), new("to", " ")]);
        Assert.Contains("Say to whom it goes", await nowhere.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var forged = await named.PostAsync(new Uri("/ledger/events/send", UriKind.Relative), new FormUrlEncodedContent([new("code", "P-0001"), new("to", "Nobody's")]));
        Assert.Equal(HttpStatusCode.BadRequest, forged.StatusCode);
        Assert.DoesNotContain("Nobody's", await named.GetStringAsync(new Uri("/api/epcis/sent", UriKind.Relative)), StringComparison.Ordinal);
    }

    private static IEnumerable<JsonElement> Declared(JsonElement document) => document.GetProperty("epcisBody").GetProperty("eventList").EnumerateArray().Where(e => e.TryGetProperty("errorDeclaration", out _));

    private static async Task<JsonElement> Send(HttpClient client, string page)
    {
        var html = await client.GetStringAsync(new Uri(page, UriKind.Relative));
        var form = html[html.IndexOf("action=\"/ledger/events/send\"", StringComparison.Ordinal)..];
        var fields = Regex.Matches(form[..form.IndexOf("</form>", StringComparison.Ordinal)], "type=\"hidden\" name=\"([a-z]+)\" value=\"([^\"]*)\"").Select(m => KeyValuePair.Create(m.Groups[1].Value, WebUtility.HtmlDecode(m.Groups[2].Value)));
        using var answer = await WebSite.PostAsync(client, page, "/ledger/events/send", fields);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement;
    }

    private static async Task<string> Post(HttpClient client, string text, string act)
    {
        using var answer = await WebSite.PostAsync(client, "/ledger/events", "/ledger/events", [new("_handler", "events"), new("E.Text", text), new("E.Act", act)]);
        return await answer.Content.ReadAsStringAsync();
    }
}
