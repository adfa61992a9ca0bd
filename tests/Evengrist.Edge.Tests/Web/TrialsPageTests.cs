using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Milling.Sheet;
using Evengrist.Records.Milling;

namespace Evengrist.Edge.Tests.Web;

/// <summary>Trials on paper kept by a name: listed, opened, changed, compared, struck.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class TrialsPageTests(WebSite site)
{
    [Fact]
    public async Task Trial_IsKeptListedOpenedChangedComparedAndStruck()
    {
        using var client = await NamedAsync("W2");
        Assert.Contains("No trial is kept.", await Tickets.TextAsync(client, "/milling/trials?unit=W2"), StringComparison.Ordinal);
        var untried = await Tickets.TextAsync(client, "/milling/trial?unit=W2");
        Assert.Contains("Trials kept of unit W2 None yet.", untried, StringComparison.Ordinal);
        Assert.DoesNotContain("Keep this trial as", untried, StringComparison.Ordinal);

        const string Wider = "/milling/trial?unit=W2&gap-B3C=210&releases=B1 26%0AB2 52%0AB3C 48&flour=430&feed=200";
        Assert.Contains("Give the trial a name", await BodyAsync(await KeepAsync(client, Wider, " ", "x")), StringComparison.Ordinal);
        var kept = Where(await KeepAsync(client, Wider, "wider third break", "for Monday"));
        var opened = await Tickets.TextAsync(client, kept);
        Assert.Contains("Kept. “wider third break”, version 1, by Ada Miller.", opened, StringComparison.Ordinal);
        Assert.Contains("B3C gap 160 → 210 µm", opened, StringComparison.Ordinal);
        Assert.Contains("on 3 measured figures", opened, StringComparison.Ordinal); // its releases came back with it

        // The same name, from the page that was opened: the next version; from a page that knows of none: refused, and the name stays typed.
        Assert.NotEmpty(Where(await KeepAsync(client, kept.Replace("gap-B3C=210", "gap-B3C=220", StringComparison.Ordinal), "wider third break", "more")));
        var late = await BodyAsync(await KeepAsync(client, Wider, "wider third break", "mine"));
        Assert.Contains("stands already in version 2, kept by Ada Miller", late, StringComparison.Ordinal);
        Assert.Contains("value=\"mine\"", late, StringComparison.Ordinal);

        Assert.NotEmpty(Where(await KeepAsync(client, "/milling/trial?unit=W2&air-P2=1.1&then-moisture=15.5", "less air, drier", "")));
        var compared = await Tickets.TextAsync(client, "/milling/trials?unit=W2&one=wider third break&other=less air, drier");
        Assert.Contains("other less one", compared, StringComparison.Ordinal);
        Assert.Contains("P2 air 1.2 → 1.1 m/s; moisture 16 → 15.5 %", compared, StringComparison.Ordinal);
        Assert.Contains("Not from the same start.", compared, StringComparison.Ordinal);
        Assert.Contains("no prices", compared, StringComparison.Ordinal);
        Assert.Contains("No trial “Q” of W2 stands", await Tickets.TextAsync(client, "/milling/trials?unit=W2&one=Q&other=wider third break"), StringComparison.Ordinal);

        Assert.Contains("Say why the trial is struck", await BodyAsync(await StrikeAsync(client, "2 wider third break", "")), StringComparison.Ordinal);
        Assert.Contains("stands already in version 2", await BodyAsync(await StrikeAsync(client, "1 wider third break", "old")), StringComparison.Ordinal);
        var struck = await Tickets.TextAsync(client, Where(await StrikeAsync(client, "2 wider third break", "tried in the mill")));
        Assert.Contains("Struck. It stays in the records", struck, StringComparison.Ordinal);
        Assert.Equal(["less air, drier"], MillTrials.Of(site.Mill, "W2").Select(t => t.Paper.Name));
        Assert.Equal(3, MillTrials.Versions(site.Mill, "W2", "wider third break").Count);
    }

    // A trial of a comparison with itself differs by nothing, ± nothing.
    [Fact]
    public async Task Trial_AgainstItself_DiffersByNothing()
    {
        using var client = await NamedAsync("W3");
        Assert.NotEmpty(Where(await KeepAsync(client, "/milling/trial?unit=W3&gap-B1=520", "B1 wider", "")));
        Assert.Matches(@"yield of all flour \S+ ± \S+ \S+ ± \S+ 0\.00 ± 0\.00 points", await Tickets.TextAsync(client, "/milling/trials?unit=W3&one=B1 wider&other=B1 wider"));
    }

    [Fact]
    public async Task Trial_NamedByNobody_IsNotKept()
    {
        Keep("W3");
        using var client = site.Client();
        Assert.Contains("Nobody is named", await BodyAsync(await KeepAsync(client, "/milling/trial?unit=W3&gap-B1=530", "nobody's", "")), StringComparison.Ordinal);
    }

    private static Task<HttpResponseMessage> KeepAsync(HttpClient client, string page, string name, string remark)
        => WebSite.PostAsync(client, page, page, [new("_handler", "trial-keep"), new("name", name), new("remark", remark), .. page.Contains("trial=", StringComparison.Ordinal) ? [new KeyValuePair<string, string>("after", "1")] : Array.Empty<KeyValuePair<string, string>>()]);

    private static Task<HttpResponseMessage> StrikeAsync(HttpClient client, string trial, string reason)
        => WebSite.PostAsync(client, "/milling/trials?unit=W2", "/milling/trials?unit=W2", [new("_handler", "trial-strike"), new("trial", trial), new("reason", reason)]);

    private async Task<HttpClient> NamedAsync(string unit)
    {
        Keep(unit);
        var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")]);
        return client;
    }

    private void Keep(string unit)
    {
        if (FlowSheets.Newest(site.Mill, unit) is null)
        {
            Assert.Empty(FlowSheets.Keep(site.Mill, unit, new FlowSheetPaper("for a test", Evengrist.Demo.HouseFlowSheets.Of('A')), "Ada Miller", 0).Faults);
        }
    }

    private static string Where(HttpResponseMessage answer)
    {
        using (answer)
        {
            Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
            return answer.Headers.Location is { IsAbsoluteUri: true } whole ? whole.PathAndQuery : answer.Headers.Location!.OriginalString;
        }
    }

    private static async Task<string> BodyAsync(HttpResponseMessage answer)
    {
        using (answer)
        {
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        }
    }
}
