using System.Net;
using System.Text;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The demonstration's stream survey, kept, on the curve and the divide; surveys and flours kept by hand for the other unit.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class StreamsOfTheYearTests(DemonstrationSite site)
{
    [Fact]
    public async Task Curve_BeginsWithTheKeptSurvey()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/streams?unit=UA");
        Assert.Contains("Seen: the survey of UA taken 16 Sep 2025 09:00 by Dr Anya Holt at 17.5 t/h", page, StringComparison.Ordinal);
        Assert.Contains("straight all 77.70 100.0 0.522 ± 0.007", page, StringComparison.Ordinal); // 77.7 % at 0.522 and its ±, reckoned apart from this program from 0.01 of ash and 2 % of each yield
        Assert.Contains("69.00 88.8 0.4455", page, StringComparison.Ordinal); // through 3B
        Assert.Contains("No survey yet", await Tickets.TextAsync(client, "/streams?survey="), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Divide_BeginsWithTheKeptSurveyAndFloursAndSaysWhatItBringsMore()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/streams/divide?unit=UA");
        Assert.Contains("Proven: no divide brings more.", page, StringComparison.Ordinal);
        Assert.Contains("As it is divided now: 5,644.45 an hour.", page, StringComparison.Ordinal); // 17.5·(0.69·430 + 0.046·330 + 0.041·260)
        Assert.Contains("all streams 77.70", page, StringComparison.Ordinal);
        var print = await Tickets.TextAsync(client, "/streams/divide/print?unit=UA");
        Assert.Contains("1M WB WB stays", print, StringComparison.Ordinal);
        Assert.Contains("CHANGE", print, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Survey_TypedInKilograms_IsKeptInPerCentAndFloursCanBeKept()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Osric Venn")]);
        KeyValuePair<string, string>[] survey =
        [
            new("_handler", "survey"), new("unit", "UB"), new("taken", "2026-01-12T09:00"), new("by", "Femi Strand"), new("rate", "7.5"), new("yield-in", "kg"), new("basis", "14mb"), new("survey", "stream,yield,ash,fn,flour\n1M,3000,0.4,350,HG\n2M,1500,0.8,300,HG"),
            new("u-ash", "0.01"), new("u-protein", "0.1"), new("u-fn", "5"), new("u-damage", "0.3"), new("u-yield", "2"),
        ];
        using var kept = await WebSite.PostAsync(client, "/streams/survey", "/streams/survey", survey);
        var page = Tickets.Plain(await kept.Content.ReadAsStringAsync());
        Assert.Contains("the survey of UB taken 12 Jan 2026 09:00 by Femi Strand at 7.5 t/h", page, StringComparison.Ordinal);
        Assert.Contains("straight all 60.00", page, StringComparison.Ordinal); // 4500 of 7500 kg/h
        Assert.Contains("Units", await client.GetStringAsync(new Uri("/streams", UriKind.Relative)), StringComparison.Ordinal);

        var divide = $"/streams/divide?unit=UB&survey={Uri.EscapeDataString("1M,40,0.4,,HG\n2M,20,0.8,,HG")}&rate=7.5&f0-code=HG&f0-price=450&f0-ash-most=0.55";
        using var flours = await WebSite.PostAsync(client, divide, divide, [new("_handler", "flours")]);
        var start = Tickets.Plain(await flours.Content.ReadAsStringAsync());
        Assert.Contains("The flours stand here from now on.", start, StringComparison.Ordinal);
        Assert.Contains("HG 1M 2M 60.00 0.533", start, StringComparison.Ordinal); // (3000·0.4 + 1500·0.8)/4500

        // By hand: 4.5 t/h of spouts, 2 % each, against 4.6 ± 0.5 %: variances 0.0036 + 0.0009 + 0.000529, so 1M takes 0.0716 of the 0.1 and 2M 0.0179; together 4.5895 of 7.5 t/h.
        const string Check = "/streams/survey/check?unit=UB&t-HG=4.6";
        Assert.Contains("They go together.", await Tickets.TextAsync(client, Check), StringComparison.Ordinal);
        using var reconciled = await WebSite.PostAsync(client, Check, Check, [new("_handler", "reconciled")]);
        var curve = Tickets.Plain(await reconciled.Content.ReadAsStringAsync());
        Assert.Contains("Reconciled with the weighers.", curve, StringComparison.Ordinal);
        Assert.Contains("straight all 61.19", curve, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("unit=UA", "They go together.")] // The ledger's own flows about that time.
    [InlineData("unit=UA&t-WB=12.6&a-WB=0.446&p-WB=12.0", "Look first at")]
    [InlineData("unit=UA&t-WB=-4", "WB: it lies above 0 and at most at 1000 t/h; got -4.")]
    [InlineData("unit=UA&t-WB=much", "WB, t/h: a number such as 12.5 is needed; read “much”.")]
    [InlineData("unit=UA&t-WB=12&u-WB=0", "its ± of one standard lies above 0")]
    [InlineData("unit=UA&t-WB=&t-C1=&t-C2=", "Nothing is there to hold the survey against")]
    public async Task Check_OfTheKeptSurvey_Says(string query, string says)
    {
        using var client = site.Client();
        Assert.Contains(says, await Tickets.TextAsync(client, "/streams/survey/check?" + query), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_OverHttp_NamesWhatDoesNotFit()
    {
        using var client = site.Client();
        var answer = JsonDocument.Parse(await client.GetStringAsync(new Uri("/api/streams/surveys/check?unit=ua&t-C1=1.2", UriKind.Relative))).RootElement;
        Assert.False(answer.GetProperty("fits").GetBoolean());
        Assert.NotEmpty(answer.GetProperty("check").GetProperty("suspects").EnumerateArray());
        using var nowhere = await client.GetAsync(new Uri("/api/streams/surveys/check?unit=zz", UriKind.Relative));
        using var bad = await client.GetAsync(new Uri("/api/streams/surveys/check?unit=UA&a-C1=x", UriKind.Relative));
        Assert.Equal((HttpStatusCode.NotFound, HttpStatusCode.BadRequest), (nowhere.StatusCode, bad.StatusCode));
    }

    [Theory]
    [InlineData("rate", "", "Wheat on the rolls: t/h above 0 are needed")]
    [InlineData("rate", "-7", "Wheat on the rolls: t/h above 0 are needed")]
    [InlineData("by", "", "Say who took it")]
    [InlineData("taken", "soon", "a day and time such as 2025-09-16T09:00 is needed; read “soon”")]
    [InlineData("survey", "1M,140,0.4", "more flour than wheat")]
    [InlineData("survey", "", "There are 0 streams")]
    [InlineData("unit", "UQ", "There is no unit UQ")]
    [InlineData("minutes", "-3", "got -3")]
    [InlineData("u-ash", "much", "± of ash: a number")]
    public async Task Survey_WhatCannotBe_IsSaidAndStaysTyped(string field, string value, string says)
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Osric Venn")]);
        var fields = new Dictionary<string, string> { ["_handler"] = "survey", ["unit"] = "UB", ["taken"] = "2026-01-12T09:00", ["by"] = "Femi Strand", ["rate"] = "7.5", ["survey"] = "1M,40,0.4", ["remark"] = "kept as typed", [field] = value };
        using var answer = await WebSite.PostAsync(client, "/streams/survey", "/streams/survey", [.. fields]);
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains("value=\"kept as typed\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Survey_ByNobody_IsNotKept()
    {
        using var client = site.Client();
        using var answer = await WebSite.PostAsync(client, "/streams/survey", "/streams/survey", [new("_handler", "survey"), new("unit", "UB"), new("taken", "2026-01-12T09:00"), new("by", "Femi Strand"), new("rate", "7.5"), new("survey", "1M,40,0.4")]);
        Assert.Contains("Nobody is named", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    // The demonstration's own source stops the malt of white bread on 2 December from 14:10 to 14:35.
    [Fact]
    public async Task Additions_FindTheStoppedMaltFeederAndItsLots()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/streams/additions?asof=2026-01-14T10:40");
        Assert.Contains("malted barley flour FMA F-WB 2 Dec 2025 14:10 2 Dec 2025 14:35 25 4.86 11.662 list them · trace", page, StringComparison.Ordinal);
        var link = System.Text.RegularExpressions.Regex.Match(await client.GetStringAsync(new Uri("/streams/additions", UriKind.Relative)), "href=\"(/streams/additions\\?stop=[^\"#]*)").Groups[1].Value;
        var lots = await Tickets.TextAsync(client, WebUtility.HtmlDecode(link));
        Assert.Contains("Lots that may hold flour without malted barley flour, from 2 Dec 2025 14:10", lots, StringComparison.Ordinal);
        Assert.Contains("P-WB-251202-", lots, StringComparison.Ordinal);
        Assert.Contains("None: whatever flour got an additive got it all the while", await Tickets.TextAsync(client, "/streams/additions?asof=2025-11-20T08:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task EnrichmentTables_AreKeptByVersionAndFaultsAreNamed()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Osric Venn")]);
        const string path = "/streams/additions/tables";
        Assert.Contains("the mill has kept none of its own", await Tickets.TextAsync(client, path), StringComparison.Ordinal);
        var json = """{"tables":[{"market":"United States","from":"1998-01-01","nutrients":[{"name":"iron","milligramsPerKg":44.1}],"mark":"House","source":"invented for this test"},{"market":"Elsewhere","from":"2020-01-01","nutrients":[{"name":"iron","milligramsPerKg":30}],"mark":"House","source":"invented for this test"}]}""";
        using var refused = await WebSite.PostAsync(client, path, path, [new("_handler", "tables"), new("Json", json.Replace("44.1", "-1", StringComparison.Ordinal))]);
        Assert.Contains("its aim lies above 0", await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var kept = await WebSite.PostAsync(client, path, path, [new("_handler", "tables"), new("Json", json)]);
        Assert.Contains("Enrichment is reckoned by version 1", await kept.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains("120.0 g/t of the premix", await Tickets.TextAsync(client, "/streams/additions?e-market=Elsewhere&e-c:iron=25"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Api_ListsAndKeepsSurveys()
    {
        using var client = site.Client();
        var survey = JsonDocument.Parse(await client.GetStringAsync(new Uri("/api/streams/surveys?unit=ua", UriKind.Relative))).RootElement.GetProperty("surveys")[0];
        Assert.Equal(("UA", 18, "WB"), (survey.GetProperty("unit").GetString(), survey.GetProperty("streams").GetArrayLength(), survey.GetProperty("streams")[0].GetProperty("wentTo").GetString()));
        var json = """{"unit":"FMB","takenAt":"2026-01-10T09:00:00Z","takenBy":"Femi Strand","wheatTonnesPerHour":7.5,"table":{"basis":"14mb","streams":[{"code":"1M","yield":40,"ashPercent":0.4}]}}""";
        Task<HttpResponseMessage> Post(string text, string query) => client.PostAsync(new Uri($"/api/streams/surveys?{query}", UriKind.Relative), new StringContent(text, Encoding.UTF8, "application/json"));
        using var kept = await Post(json, "by=Osric+Venn");
        Assert.Equal(HttpStatusCode.Created, kept.StatusCode);
        foreach (var (text, query, says) in new[] { (json, "", "Say who you are"), (json.Replace("FMB", "QQ", StringComparison.Ordinal), "by=x", "There is no unit QQ"), (json.Replace("0.4}", "-0.4}", StringComparison.Ordinal), "by=x", "ash lies above 0"), ("null", "by=x", "read null"), ("", "by=x", "Not kept") })
        {
            using var refused = await Post(text, query);
            Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
            Assert.Contains(says, await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }
    }
}
