using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Laboratory;

/// <summary>Tables of methods and instruments, and check samples, of a small mill: on the pages and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class LabTablesTests(WebSite site)
{
    private const string Oven = """{"instruments":[{"code":"oven 9","methods":["oven 105 °C"],"checkEveryHours":24,"tolerances":[{"what":"Moisture","within":0.12,"mark":"Mill","source":"test"}],"calibrations":[],"name":""}]}""";

    [Fact]
    public async Task Methods_StartTable_SaysWhatIsFromMemoryAndWhatIsEmpty()
    {
        using var client = await Tickets.NamedAsync(site);
        var page = await Tickets.TextAsync(client, "/laboratory/methods");
        Assert.Contains("from memory, check before use", page, StringComparison.Ordinal);
        Assert.Contains("not filled in", page, StringComparison.Ordinal);
        using var bad = await WebSite.PostAsync(client, "/laboratory/methods", "/laboratory/methods", [new("_handler", "methods"), new("Json", """{"methods":[]}""")]);
        var refused = WebUtility.HtmlDecode(await bad.Content.ReadAsStringAsync());
        Assert.Contains("There is no method in the table.", refused, StringComparison.Ordinal);
        Assert.Contains("""{"methods":[]}""", refused, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Instrument_Checked_StandsByItsCheckSamples()
    {
        using var client = await Tickets.NamedAsync(site);
        using var kept = await client.PostAsync(new Uri("/api/lab/instruments?by=Ada", UriKind.Relative), new StringContent(Oven, System.Text.Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.Created, kept.StatusCode);
        Assert.Contains("check overdue", await Tickets.TextAsync(client, "/laboratory/instruments"), StringComparison.Ordinal);
        Task<HttpResponseMessage> Post(string known, string found, string at = "2025-09-15T07:00", string sample = "CS-1") => WebSite.PostAsync(client, "/laboratory/instruments", "/laboratory/instruments",
            [new("_handler", "check"), new("Check.Instrument", "oven 9"), new("Check.What", "Moisture"), new("Check.At", at), new("Check.Known", known), new("Check.Found", found), new("Check.Sample", sample)]);
        foreach (var (known, found, at, sample, says) in new[]
        {
            ("14", "much", "2025-09-15T07:00", "CS-1", "\"much\" is no number"), ("14", "-3", "2025-09-15T07:00", "CS-1", "cannot be"), ("", "14", "2025-09-15T07:00", "CS-1", "nothing was typed"),
            ("14", "14", "soon", "CS-1", "give date and time"), ("14", "14", "2025-09-15T07:00", " ", "which check sample"), ("14", "14", "2199-09-15T07:00", "CS-1", "in the future"),
        })
        {
            using var bad = await Post(known, found, at, sample);
            Assert.Contains(says, WebUtility.HtmlDecode(await bad.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        }

        using var good = await Post("14.00", "14.10 14.08");
        Assert.Equal(HttpStatusCode.Redirect, good.StatusCode);
        var page = await Tickets.TextAsync(client, "/laboratory/instruments?asof=2025-09-15T08:00");
        Assert.Contains("in check", page, StringComparison.Ordinal);
        Assert.Contains("+0.09", page, StringComparison.Ordinal);
        using var wrong = await client.PostAsJsonAsync(new Uri("/api/lab/instruments/checks?by=Ada", UriKind.Relative), new { instrument = "oven 9", what = "Moisture", at = "2025-09-15T09:00", known = "14", found = "14.3", sample = "CS-1" });
        Assert.Equal(HttpStatusCode.Created, wrong.StatusCode);
        var states = JsonDocument.Parse(await client.GetStringAsync(new Uri("/api/lab/instruments?asof=2025-09-15T10:00", UriKind.Relative))).RootElement;
        Assert.Equal("Out", Assert.Single(states.EnumerateArray()).GetProperty("state").GetString());
        using var nobody = await client.PostAsync(new Uri("/api/lab/instruments", UriKind.Relative), new StringContent(Oven, System.Text.Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.BadRequest, nobody.StatusCode);
        Assert.Contains("oven 130", await client.GetStringAsync(new Uri("/api/lab/methods", UriKind.Relative)), StringComparison.Ordinal);
    }
}
