using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Records.Milling;

namespace Evengrist.Edge.Tests.Web;

/// <summary>Flow sheets on their pages: the empty state, a sheet sent as a file, a passage changed in the form, and all that cannot be.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class MillingPageTests(WebSite site)
{
    private static readonly string Sheet = File.ReadAllText(Repository.Sample("cases", "flow-sheet.json"));

    [Fact]
    public async Task Unit_FromNothingToItsSecondVersion()
    {
        using var client = await NamedAsync();
        Assert.Contains("No flow sheet of a unit A is kept", await Tickets.TextAsync(client, "/milling/sheet?unit=A"), StringComparison.Ordinal);

        Assert.Equal("/milling/sheet?unit=A&done=1", Where(await UploadAsync(client, "/milling", "A", "as it stands", Sheet)));
        var page = await Tickets.TextAsync(client, "/milling/sheet?unit=A&done=1");
        Assert.Contains("Version 1 stands", page, StringComparison.Ordinal);
        Assert.Contains("11.67 mm for each 100 kg in 24 h", page, StringComparison.Ordinal);
        Assert.Contains("Roll nips draw in", page, StringComparison.Ordinal);
        Assert.Contains("lock out and tag out", page, StringComparison.Ordinal);
        Assert.Contains("A has a sheet already, version 1", await BodyAsync(await UploadAsync(client, "/milling", "A", "again", Sheet)), StringComparison.Ordinal);

        // The file that is downloaded is the file that was sent.
        Assert.Equal(Sheet, await client.GetStringAsync(new Uri("/api/milling/units/A/sheet", UriKind.Relative)));

        var form = await FormAsync(client, "A", "B1");
        form["gap"] = "580";
        form["reason"] = "rolls were ground";
        Assert.Equal("/milling/sheet?unit=A&done=2", Where(await SendAsync(client, "A", "B1", form)));
        Assert.Contains("B1 gap: 550 µm, now 580 µm", await Tickets.TextAsync(client, "/milling/sheet?unit=A"), StringComparison.Ordinal);
        Assert.Contains("not the newest: that is 2", await Tickets.TextAsync(client, "/milling/sheet?unit=A&version=1"), StringComparison.Ordinal);
        Assert.Equal((2, "Ada Miller", "rolls were ground", 580), FlowSheets.Newest(site.Mill, "A") is { } kept ? (kept.Version, kept.By, kept.Reason, kept.Sheet.Passages[0].Rolls!.GapMicrometres) : default);

        // From a page that was opened before: nobody's change is lost.
        form["gap"] = "600";
        Assert.Contains("Version 2 of A was kept meanwhile by Ada Miller", await BodyAsync(await SendAsync(client, "A", "B1", form)), StringComparison.Ordinal);
        Assert.Contains("Nothing differs.", await BodyAsync(await SendAsync(client, "A", "B1", await FormAsync(client, "A", "B1"))), StringComparison.Ordinal);
        Assert.Contains("flow sheet", await Tickets.TextAsync(client, "/milling/sheet/print?unit=A"), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("A has no version 9: it has 1 to 2.", await Tickets.TextAsync(client, "/milling/sheet?unit=A&version=9"), StringComparison.Ordinal);
        Assert.Contains("has no passage Q9", await Tickets.TextAsync(client, "/milling/sheet/passage?unit=A&code=Q9"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gap", "-5", "S9: a roll gap lies from 10 to 2000 µm.")]
    [InlineData("gap", "wide", "Gap: a number such as 12.5 is needed; read “wide”.")]
    [InlineData("gap", "", "Rolls: give both gap and length")]
    [InlineData("area", "", "Cloth area: it is missing; give a number.")]
    [InlineData("kind", "Grinding", "Kind: choose one of those offered; read “Grinding”.")]
    [InlineData("disposition", "None", "S9: fluted rolls have a disposition and smooth rolls have none.")]
    [InlineData("aperture0", "0", "S9: a cloth of 0 µm")]
    [InlineData("aperture1", "900", "S9: cloth 900 µm stands after 750 µm")]
    [InlineData("aperture3", "90", "S9: cloth 90 µm: say whether its overs or its throughs leave.")]
    [InlineData("to0", "9Z", "S9: overs of 750 µm: 9Z is no passage and no product.")]
    [InlineData("to0", "G1, S2", "Cloth 1, to: give the shares of G1, S2")]
    [InlineData("to0", "G1 70 %, S2 70 %", "add up to 1.4.")]
    [InlineData("to3", "G1", "Cloth 4: give its aperture in µm")]
    [InlineData("rest", "", "S9: the rest: leads nowhere.")]
    [InlineData("reason", " ", "Say why this version is made")]
    public async Task Passage_WhatCannotBe_IsSaidAndStaysTyped(string field, string value, string says)
    {
        using var client = await NamedAsync();
        KeepWhereNoneIs("T1");
        var form = await FormAsync(client, "T1", "S9");
        form["note0"] = "a note of mine";
        form["reason"] = "trial";
        form[field] = value;
        var page = await BodyAsync(await SendAsync(client, "T1", "S9", form));
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains("Not kept; what you typed is still here.", page, StringComparison.Ordinal);
        Assert.Matches("name=\"note0\"[^>]*value=\"a note of mine\"", page);
        Assert.Equal(1, FlowSheets.Newest(site.Mill, "T1")!.Version);
    }

    [Theory]
    [InlineData("T 2", "x", "A unit has a code of 1 to 12 letters")]
    [InlineData("T2", "", "Say why this version is made")]
    [InlineData("T2", "x", "Choose a file, or write the sheet", "")]
    [InlineData("T2", "x", "products (line", "{ \"name\": \"n\", \"firstBreak\": \"B1\", \"passages\": [], \"products\": 5 }")]
    [InlineData("T2", "x", "It is no JSON at", "hello")]
    [InlineData("T2", "x", "There are 0 passages", "{ \"name\": \"n\", \"firstBreak\": \"B1\", \"passages\": [], \"products\": [] }")]
    public async Task File_ThatCannotBe_IsSaidAndItsTextStays(string unit, string reason, string says, string? text = null)
    {
        using var client = await NamedAsync();
        var page = await BodyAsync(await UploadAsync(client, "/milling", unit, reason, text ?? Sheet));
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains(text is null ? "\"firstBreak\": \"B1\"" : text, page, StringComparison.Ordinal);
        Assert.Null(FlowSheets.Newest(site.Mill, unit));
    }

    [Fact]
    public async Task Trial_OfAGap_SaysWhatItWouldChange_AndWhatCannotBeStaysTyped()
    {
        using var client = await NamedAsync();
        KeepWhereNoneIs("T4");
        var gap = FlowSheets.Newest(site.Mill, "T4")!.Sheet.Passages.First(p => p.Rolls is not null);
        var untried = await Tickets.TextAsync(client, "/milling/trial?unit=T4");
        Assert.Contains("Not tuned.", untried, StringComparison.Ordinal);
        Assert.DoesNotContain("On paper, it would change", untried, StringComparison.Ordinal);
        var tried = await Tickets.TextAsync(client, $"/milling/trial?unit=T4&gap-{gap.Code}={gap.Rolls!.GapMicrometres + 50}&flour=430&feed=200");
        Assert.Contains("On paper, it would change", tried, StringComparison.Ordinal);
        Assert.Contains("money in 24 h", tried, StringComparison.Ordinal);
        Assert.Contains("Nobody reaches in", tried, StringComparison.Ordinal);

        // The curve ends where all flour does, and stands there as it is set and as tried.
        var drawn = await client.GetStringAsync(new Uri($"/milling/trial?unit=T4&gap-{gap.Code}={gap.Rolls!.GapMicrometres + 50}", UriKind.Relative));
        var end = Regex.Match(drawn, @"now: [\d.]+ at [\d.]+, [\d.]+ at ([\d.]+); on paper: [\d.]+ at");
        Assert.Equal(double.Parse(Regex.Match(tried, @"\bflour ([\d.]+) ±").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), double.Parse(end.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), 0.06);
        foreach (var (query, says) in new[]
        {
            ($"gap-{gap.Code}=wide", "a number such as 12.5 is needed; read “wide”"), ($"gap-{gap.Code}=-5", "a roll gap lies from 10 to 2000 µm"), ("moisture=46", "from 10 to 20 %"), ("releases=Q9 30", "Q9 is no passage with rolls"),
            ("releases=B1", "Release tests: a line such as “B1 29.5” is needed; read “B1”"), ("cloths=B1 7 8", "B1 has no cloth of 7 µm"), ("patent=9Z", "there is no product 9Z"), ("draws=0", "200 to 100,000 mills can be drawn; asked for 0."), ("draws=-7", "asked for -7."), ("draws=2.5", "asked for 2.5."), ("draws=1e5", "Mills drawn: a number such as 12.5 is needed"),
            ("draws=100001", "asked for 100,001."),
        })
        {
            var page = await Tickets.TextAsync(client, $"/milling/trial?unit=T4&fn=333&{query}");
            Assert.Contains(says, page, StringComparison.Ordinal);
            Assert.Contains("Not reckoned; what you typed is still here.", page, StringComparison.Ordinal);
            Assert.Matches("name=\"fn\"[^>]*value=\"333\"", await client.GetStringAsync(new Uri($"/milling/trial?unit=T4&fn=333&{query}", UriKind.Relative)));
        }
    }

    [Fact]
    public async Task Trial_Drawn_StandsBesideTheFirstOrder_AndCanBeStopped()
    {
        using var client = await NamedAsync();
        KeepWhereNoneIs("T4");
        var gap = FlowSheets.Newest(site.Mill, "T4")!.Sheet.Passages.First(p => p.Rolls is not null);
        var trial = $"/milling/trial?unit=T4&gap-{gap.Code}={gap.Rolls!.GapMicrometres + 50}&flour=430&feed=200";
        Assert.Contains($"{trial.Replace("&", "&amp;", StringComparison.Ordinal)}&amp;draws=10000#drawn", await client.GetStringAsync(new Uri(trial, UriKind.Relative)), StringComparison.Ordinal);
        var page = await DrawnAsync(client, $"{trial}&draws=400");
        Assert.Contains("change of money in 24 h", page, StringComparison.Ordinal);
        Assert.Contains("400 mills, seed 1, in", page, StringComparison.Ordinal);
        Assert.Matches("Draws and first-order ± (say the same|differ)", page);

        // A hundred thousand take long enough to be stopped, where the form's token comes from a page that is there at once; what was drawn by then counts, or is said to be too little, and can be begun anew.
        var most = $"{trial}&draws=100000";
        Assert.Contains("of 100,000 mills drawn", await Tickets.TextAsync(client, most), StringComparison.Ordinal);
        using var stopped = await WebSite.PostAsync(client, "/who", most, new Dictionary<string, string> { ["_handler"] = "reckoning", ["Reckoning"] = "stop" });
        page = await DrawnAsync(client, most);
        Assert.Contains("Stopped by a person.", page, StringComparison.Ordinal);
        Assert.Matches("it was stopped early: the first mills alone are counted|mills are too few to say anything", page);
        using var again = await WebSite.PostAsync(client, most, most, new Dictionary<string, string> { ["_handler"] = "reckoning", ["Reckoning"] = "again" });
        Assert.Contains("of 100,000 mills drawn", await Tickets.TextAsync(client, most), StringComparison.Ordinal);
        using var end = await WebSite.PostAsync(client, most, most, new Dictionary<string, string> { ["_handler"] = "reckoning", ["Reckoning"] = "stop" });
    }

    // The page once nothing goes on there any more.
    private static async Task<string> DrawnAsync(HttpClient client, string address)
    {
        for (var tries = 0; tries < 120; tries++)
        {
            var page = await Tickets.TextAsync(client, address);
            if (!page.Contains("See how far it is", StringComparison.Ordinal))
            {
                return page;
            }

            await Task.Delay(250);
        }

        throw new TimeoutException($"{address} was never done.");
    }

    [Fact]
    public async Task Keep_OverHttp_NeedsWhoAndWhy()
    {
        using var client = site.Client();
        using var nameless = await PostAsync(client, "/api/milling/units/T3/sheet?reason=x");
        Assert.Equal(HttpStatusCode.BadRequest, nameless.StatusCode);
        Assert.Contains("Say who you are", await nameless.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var odd = await PostAsync(client, "/api/milling/units/T3/sheet?by=Ada&reason=x&after=first");
        Assert.Equal(HttpStatusCode.BadRequest, odd.StatusCode);
        using var kept = await PostAsync(client, "/api/milling/units/T3/sheet?by=Ada&reason=x");
        Assert.Equal(HttpStatusCode.Created, kept.StatusCode);
        using var none = await client.GetAsync(new Uri("/api/milling/units/T3/sheet?version=7", UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
        Assert.Contains("\"unit\":\"T3\",\"version\":1,\"by\":\"Ada\"", await client.GetStringAsync(new Uri("/api/milling/units", UriKind.Relative)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/milling/sheet?unit=T4&done=much&version=")]
    [InlineData("/milling/sheet?unit=T4&version=much")]
    [InlineData("/milling/sheet?unit=%22%3E%3Cscript%3E")]
    [InlineData("/milling/sheet?unit=T4&version=99999999999")]
    [InlineData("/milling/sheet/passage?unit=T4&code=%00")]
    [InlineData("/milling/sheet/print?unit=T4&version=-1")]
    public async Task Page_AskedOddly_IsAnswered(string address)
    {
        using var client = site.Client();
        KeepWhereNoneIs("T4");
        using var answer = await client.GetAsync(new Uri(address, UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.DoesNotContain("<script>", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private static async Task<HttpResponseMessage> PostAsync(HttpClient client, string address)
    {
        using var body = new StringContent(Sheet, Encoding.UTF8, "application/json");
        return await client.PostAsync(new Uri(address, UriKind.Relative), body);
    }

    // The sample with its first sizing renamed, so that its faults are not those of another passage.
    private void KeepWhereNoneIs(string unit)
    {
        var renamed = Sheet.Replace("\"S1\"", "\"S9\"", StringComparison.Ordinal);
        Assert.True(Evengrist.Milling.Sheet.FlowSheetJson.TryRead(renamed, out var sheet, out _));
        if (FlowSheets.Newest(site.Mill, unit) is null)
        {
            Assert.Empty(FlowSheets.Keep(site.Mill, unit, new("for a test", sheet), "Ada Miller", 0).Faults);
        }
    }

    private async Task<HttpClient> NamedAsync()
    {
        var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")]);
        return client;
    }

    // What the form shows, as a browser would send it.
    private static async Task<Dictionary<string, string>> FormAsync(HttpClient client, string unit, string code)
    {
        var page = await client.GetStringAsync(new Uri($"/milling/sheet/passage?unit={unit}&code={code}", UriKind.Relative));
        var fields = new Dictionary<string, string> { ["_handler"] = "passage" };
        foreach (Match input in Regex.Matches(page, "<input[^>]*name=\"([a-z]+[0-9]*)\"[^>]*>"))
        {
            if (!input.Value.Contains("checkbox", StringComparison.Ordinal) || input.Value.Contains("checked", StringComparison.Ordinal))
            {
                fields[input.Groups[1].Value] = WebUtility.HtmlDecode(Regex.Match(input.Value, "value=\"([^\"]*)\"").Groups[1].Value) is { Length: > 0 } value ? value : input.Value.Contains("checkbox", StringComparison.Ordinal) ? "on" : "";
            }
        }

        foreach (Match select in Regex.Matches(page, "<select[^>]*name=\"([a-z]+[0-9]*)\"[^>]*>(.*?)</select>", RegexOptions.Singleline))
        {
            var options = Regex.Matches(select.Groups[2].Value, "<option value=\"([^\"]*)\"( selected)?");
            fields[select.Groups[1].Value] = (options.FirstOrDefault(o => o.Groups[2].Success) ?? options[0]).Groups[1].Value;
        }

        return fields;
    }

    private static Task<HttpResponseMessage> SendAsync(HttpClient client, string unit, string code, Dictionary<string, string> form)
    {
        var page = $"/milling/sheet/passage?unit={unit}&code={code}";
        return WebSite.PostAsync(client, page, page, form);
    }

    private static async Task<HttpResponseMessage> UploadAsync(HttpClient client, string page, string unit, string reason, string text)
    {
        var form = await client.GetStringAsync(new Uri(page, UriKind.Relative));
        using var content = new MultipartFormDataContent
        {
            { new StringContent(Regex.Match(form, "name=\"__RequestVerificationToken\" value=\"([^\"]+)\"").Groups[1].Value), "__RequestVerificationToken" },
            { new StringContent("sheet-file"), "_handler" }, { new StringContent(unit), "Sheet.Unit" }, { new StringContent(reason), "Sheet.Reason" }, { new StringContent("0"), "Sheet.After" },
            { new StringContent(""), "Sheet.Text" }, { new ByteArrayContent(Encoding.UTF8.GetBytes(text)), "Sheet.File", "sheet.json" },
        };
        return await client.PostAsync(new Uri(page, UriKind.Relative), content);
    }

    private static string? Where(HttpResponseMessage answer)
    {
        using (answer)
        {
            Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
            return answer.Headers.Location is { IsAbsoluteUri: true } whole ? whole.PathAndQuery : answer.Headers.Location?.OriginalString;
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

/// <summary>The page of a mill that has kept no flow sheet.</summary>
[Collection(TruckSiteCollection.Name)]
public sealed class MillingWithoutASheetTests(WebSite site)
{
    [Fact]
    public async Task Page_SaysWhatToDo()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/milling");
        Assert.Contains("No flow sheet is kept. Write down one unit of the mill", page, StringComparison.Ordinal);
        Assert.Contains("lock out and tag out", page, StringComparison.Ordinal);
    }
}
