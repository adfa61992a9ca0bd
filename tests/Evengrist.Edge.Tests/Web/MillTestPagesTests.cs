using System.Net;
using System.Net.Http.Json;
using System.Text;
using Evengrist.Demo;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Milling.Sheet;
using Evengrist.Plant.Cases;
using Evengrist.Records.Milling;

namespace Evengrist.Edge.Tests.Web;

/// <summary>Mill tests on their pages and over HTTP: the empty state, one typed, corrected, struck, a file looked at and kept, and all that cannot be.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class MillTestPagesTests(WebSite site)
{
    [Fact]
    public async Task Test_TypedCorrectedAndStruck()
    {
        using var client = await ClientAsync("K1");
        Assert.Contains("No test of K1 is kept: the model is not tuned.", await Tickets.TextAsync(client, "/milling/tests?unit=K1"), StringComparison.Ordinal);
        using var kept = await WebSite.PostAsync(client, "/milling/tests?unit=K1", "/milling/tests?unit=K1", Fields());
        var address = $"{kept.Headers.Location}";
        Assert.EndsWith("/milling/tests/test?code=K1-2025-09-10T0900&done=true", address, StringComparison.Ordinal);
        const string page = "/milling/tests/test?code=K1-2025-09-10T0900";
        var shown = await Tickets.TextAsync(client, page);
        Assert.Contains("B1 release 29.5", shown, StringComparison.Ordinal);
        Assert.Contains("1M yield 14.20 0.370 11.00", shown, StringComparison.Ordinal);
        Assert.Contains("B1 gap 480 µm", shown, StringComparison.Ordinal);

        // What the correction's form shows is what was kept: sent back as it is, nothing changes.
        var form = Fields();
        (form["_handler"], form["after"], form["releases"]) = ("correct", "1", "B1 30.5");
        using var corrected = await WebSite.PostAsync(client, page, page, form);
        Assert.Equal([29.5, 30.5], MillTests.Versions(site.Mill, "K1-2025-09-10T0900").Select(v => v.Paper.Releases["B1"]));
        using var late = await WebSite.PostAsync(client, page, page, form.Append(new("x", "")).Select(f => f.Key == "releases" ? new(f.Key, "B1 31") : f));
        Assert.Contains("stands already in version 2, kept by Ada Miller", await BodyAsync(late), StringComparison.Ordinal);
        using var why = await WebSite.PostAsync(client, page, page, new Dictionary<string, string> { ["_handler"] = "strike", ["after"] = "2", ["reason"] = "" });
        Assert.Contains("Say why the test is struck", await BodyAsync(why), StringComparison.Ordinal);
        using var struck = await WebSite.PostAsync(client, page, page, new Dictionary<string, string> { ["_handler"] = "strike", ["after"] = "2", ["reason"] = "the sieve was blind" });
        Assert.Contains("It counts no longer: the sieve was blind", await Tickets.TextAsync(client, page), StringComparison.Ordinal);
        Assert.Contains("0 that stand, 1 struck", await Tickets.TextAsync(client, "/milling/tests?unit=K1"), StringComparison.Ordinal);
        Assert.Contains("No mill test Q is kept", await Tickets.TextAsync(client, "/milling/tests/test?code=Q"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("taken", "soon", "a day and time such as 2025-09-22T09:00 is needed; read “soon”")]
    [InlineData("taken", "2040-01-01T09:00", "in the future")]
    [InlineData("by", "", "Say who took the test")]
    [InlineData("sheet", "7", "K2 has no flow sheet of version 7: it has 1 to 1.")]
    [InlineData("sheet", "1.5", "Version of the flow sheet: 1 to 1 are possible; read “1.5”")]
    [InlineData("flow", "", "Wheat to first break: it is missing; give a number.")]
    [InlineData("moisture", "-3", "moisture at first break lies from 10 to 20 %")]
    [InlineData("ash", "-1", "The ash of the wheat lies from 1 to 3 %")]
    [InlineData("wheat-basis", "wet", "dry, 12mb or 14mb are possible; read “wet”")]
    [InlineData("releases", "B1 140", "B1 tests 140 %")]
    [InlineData("releases", "Q9 30", "Q9 is no passage with rolls")]
    [InlineData("releases", "B1 30\nB1 31", "Release tests: B1 stands there twice")]
    [InlineData("releases", "B1 x", "Release tests: a line such as “B1 29.5” is needed; read “B1 x”")]
    [InlineData("streams", "1M 80 0.4\n2M 60 0.4", "the streams add up to 140 % of the wheat")]
    [InlineData("streams", "1M 14 -0.4", "ash lies above 0")]
    [InlineData("sieves", "B1 0 50", "apertures lie from 20 to 4000 µm")]
    [InlineData("gaps", "B1 -480", "a roll gap lies from 10 to 2000 µm")]
    [InlineData("cloths", "B1 7 8", "B1 has no cloth of 7 µm")]
    public async Task Test_WhatCannotBe_IsSaidAndStaysTyped(string field, string value, string says)
    {
        using var client = await ClientAsync("K2");
        var form = Fields();
        (form["remark"], form[field]) = ("a remark of mine", value);
        using var answer = await WebSite.PostAsync(client, "/milling/tests?unit=K2", "/milling/tests?unit=K2", form);
        var page = await BodyAsync(answer);
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains("Not kept; what you typed is still here.", page, StringComparison.Ordinal);
        Assert.Contains("value=\"a remark of mine\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain(MillTests.Newest(site.Mill), t => t.Paper.Unit == "K2");
    }

    [Fact]
    public async Task File_IsLookedAtFirst_ThenKeptAsAWhole()
    {
        using var client = await ClientAsync("K3");
        async Task<string> SendAsync(string act, string text)
        {
            using var answer = await WebSite.PostAsync(client, "/milling/tests?unit=K3", "/milling/tests?unit=K3", new Dictionary<string, string> { ["_handler"] = "tests-file", ["Tests.Do"] = act, ["Tests.Text"] = text });
            return answer.Headers.Location is { } to ? $"to {to}" : await BodyAsync(answer);
        }

        var sound = MillTestColumns.Example.Replace("1.46;12.4", "1.5;12.4", StringComparison.Ordinal);
        Assert.Contains("line 3, column 9 (value)", await SendAsync("look", sound.Replace("44.1", "much", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("From line 6: K3-2025-09-29T0900: B1 tests 312 %", await SendAsync("keep", sound.Replace("31.2", "312", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("the file is empty", await SendAsync("look", ""), StringComparison.Ordinal);
        Assert.Contains("Read: 2 tests. Nothing is kept yet.", await SendAsync("look", sound), StringComparison.Ordinal);
        Assert.DoesNotContain(MillTests.Newest(site.Mill), t => t.Paper.Unit == "K3");
        Assert.Contains("/milling/tests?unit=K3&done=true", await SendAsync("keep", sound), StringComparison.Ordinal);
        Assert.Equal(2, MillTests.Newest(site.Mill).Count(t => t.Paper.Unit == "K3"));
    }

    [Fact]
    public async Task Http_KeepsAFileListsCorrectsAndStrikes()
    {
        using var client = await ClientAsync("K4");
        Task<HttpResponseMessage> Post(string address, string body = "") => client.PostAsync(new Uri($"/api/milling/{address}", UriKind.Relative), new StringContent(body, Encoding.UTF8, address.StartsWith("units", StringComparison.Ordinal) ? "text/csv" : "application/json"));
        using var kept = await Post("units/K4/tests?by=Ada", MillTestColumns.Example);
        Assert.Equal(HttpStatusCode.Created, kept.StatusCode);
        var list = (await client.GetFromJsonAsync<System.Text.Json.JsonElement>(new Uri("/api/milling/tests?unit=k4", UriKind.Relative))).GetProperty("tests");
        Assert.Equal(2, list.GetArrayLength());
        var test = list[1].GetProperty("test").GetRawText();
        using var corrected = await Post("tests?by=Ada&after=1", test.Replace("31.2", "32.2", StringComparison.Ordinal));
        Assert.Contains("\"version\":2", await corrected.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var struck = await Post("tests/K4-2025-09-29T0900/strike?by=Ada&after=2&reason=blind");
        Assert.Equal(HttpStatusCode.Created, struck.StatusCode);
        foreach (var (address, body, says) in new[]
        {
            ("units/K4/tests", MillTestColumns.Example, "Say who you are"), ("units/Q/tests?by=Ada", "", "No flow sheet of a unit Q"), ("units/K4/tests?by=Ada", "x", "expected one of the headings"), ("tests?by=Ada", "null", "read null"), ("tests?by=Ada", "", "Not kept"),
            ("tests?by=Ada&after=x", test, "after is the number"), ("tests?by=Ada", test, "stands already in version 3"), ("tests/K4-1/strike?by=Ada&after=1&reason=x", "", "No mill test K4-1"), ("tests/K4-2025-09-22T0900/strike?by=Ada&reason=x", "", "after is the number of the version"),
        })
        {
            using var refused = await Post(address, body);
            Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
            Assert.Contains(says, await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Form_WithoutItsFields_IsAnsweredInWords()
    {
        using var client = await ClientAsync("K6");
        const string page = "/milling/tests?unit=K6";
        async Task<string> EmptyAsync(string address, string handler)
        {
            using var answer = await WebSite.PostAsync(client, address, address, new Dictionary<string, string> { ["_handler"] = handler });
            return await BodyAsync(answer);
        }

        Assert.Contains("Wheat to first break: it is missing", await EmptyAsync(page, "test"), StringComparison.Ordinal);
        Assert.Contains("the file is empty", await EmptyAsync(page, "tests-file"), StringComparison.Ordinal);
        using var kept = await WebSite.PostAsync(client, page, page, Fields());
        Assert.Contains("Say why the test is struck", await EmptyAsync("/milling/tests/test?code=K6-2025-09-10T0900", "strike"), StringComparison.Ordinal);
        Assert.DoesNotContain("Not kept", await EmptyAsync("/milling/tests/test?code=K6-2025-09-10T0900", "correct"), StringComparison.Ordinal);
        Assert.Single(MillTests.Versions(site.Mill, "K6-2025-09-10T0900")); // nothing said otherwise: nothing changes
    }

    [Fact]
    public async Task Drift_WithoutAHistory_SaysWhatToEnter()
    {
        using var client = await ClientAsync("K5");
        Assert.Contains("No test of K5 stands by this moment: there is no history to see drift in.", await Tickets.TextAsync(client, "/milling/drift?unit=K5"), StringComparison.Ordinal);
        Assert.Contains("There is no unit to look at.", await Tickets.TextAsync(client, "/milling/drift?unit=Q"), StringComparison.Ordinal);
        Assert.Contains("none: not tuned", await Tickets.TextAsync(client, "/milling"), StringComparison.Ordinal);
        foreach (var (address, status, says) in new[]
        {
            ("units/K5/drift", HttpStatusCode.UnprocessableEntity, "4 or more are needed"), ("units/K5/fit", HttpStatusCode.UnprocessableEntity, "the mill is not tuned"), ("units/Q/drift", HttpStatusCode.BadRequest, "No flow sheet of a unit Q"),
            ("units/K5/drift?flour=100&feed=200", HttpStatusCode.BadRequest, "Flour brings no less than feed"), ("units/K5/drift?asof=soon", HttpStatusCode.BadRequest, "is no moment"),
        })
        {
            using var answer = await client.GetAsync(new Uri($"/api/milling/{address}", UriKind.Relative));
            Assert.Equal(status, answer.StatusCode);
            Assert.Contains(says, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }
    }

    private static Dictionary<string, string> Fields() => new()
    {
        ["_handler"] = "test", ["taken"] = "2025-09-10T09:00", ["by"] = "Ben Roller", ["sheet"] = "1", ["flow"] = "17.5", ["moisture"] = "16", ["ash"] = "1.7", ["protein"] = "14.4", ["wheat-basis"] = "dry", ["hardness"] = "65", ["fn"] = "380",
        ["releases"] = "B1 29.5\r\nB2 44", ["sieves"] = "B1 1000 52", ["streams"] = "1M 14.2 0.37 11.0\n2M 12 - 11.2", ["basis"] = "14mb", ["gaps"] = "B1 480", ["cloths"] = "", ["airs"] = "", ["remark"] = "",
    };

    private async Task<HttpClient> ClientAsync(string unit)
    {
        FlowSheets.Keep(site.Mill, unit, new FlowSheetPaper("as it stands", HouseFlowSheets.Of('A')), "Ada Miller", 0);
        var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")]);
        return client;
    }

    private static async Task<string> BodyAsync(HttpResponseMessage answer) => WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
}
