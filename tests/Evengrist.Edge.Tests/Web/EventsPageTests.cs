using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Evengrist.Edge.Tests.Web.Trucks;

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

    private static async Task<string> Post(HttpClient client, string text, string act)
    {
        using var answer = await WebSite.PostAsync(client, "/ledger/events", "/ledger/events", [new("_handler", "events"), new("E.Text", text), new("E.Act", act)]);
        return await answer.Content.ReadAsStringAsync();
    }
}
