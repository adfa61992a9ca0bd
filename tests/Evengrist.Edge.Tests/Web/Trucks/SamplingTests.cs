using System.Net;
using System.Text;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Edge.Tests.Web.Trucks;

[Collection(TruckSiteCollection.Name)]
public sealed class SamplingTests(WebSite site)
{
    [Theory]
    [InlineData("probe", "probe.json", "us-hopper")]
    [InlineData("edge", "edge.json", "0.72574")]
    [InlineData("test", "test-don.json", "buyersRiskAtLimit")]
    [InlineData("screen", "screen.json", "does not clear all")]
    public async Task Api_SampleCase_IsAnsweredAsOnTheCommandLine(string verb, string sample, string said)
    {
        using var client = site.Client();
        using var answer = await client.PostAsync(new Uri($"/api/intake/{verb}", UriKind.Relative), new StringContent(await File.ReadAllTextAsync(Repository.Sample("cases", sample)), Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.Contains(verb == "probe" ? "low confidence" : said, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("edge", "{}", HttpStatusCode.BadRequest, "$.sd")]
    [InlineData("screen", "[]", HttpStatusCode.BadRequest, "an object")]
    [InlineData("probe", """{ "rule": "static-by-mass", "vehicle": "flatBottom", "load": { "t": 80 }, "depthM": 2 }""", HttpStatusCode.UnprocessableEntity, "ends at 50 t")]
    public async Task Api_CaseThatCannotBeAnswered_SaysWhy(string verb, string body, HttpStatusCode expected, string said)
    {
        using var client = site.Client();
        using var answer = await client.PostAsync(new Uri($"/api/intake/{verb}", UriKind.Relative), new StringContent(body, Encoding.UTF8, "application/json"));
        Assert.Equal(expected, answer.StatusCode);
        Assert.Contains(said, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "6 probes by the rule")]
    [InlineData("?part=plan&rule=static-by-mass&vehicle=flat&mass=80", "ends at 50 t")]
    [InlineData("?part=plan&mass=1,5", "has a comma")]
    [InlineData("?part=plan&rule=stream-cuts", "Cut the whole stream")]
    [InlineData("?part=edge", "72.6")]
    [InlineData("?part=edge&ticket=nowhere", "There is no ticket “nowhere”")]
    [InlineData("?part=edge&reads=x", "is no number")]
    [InlineData("?part=edge&reads=13&sd=0&edges=13&sure=80", "above 0")]
    [InlineData("?part=test&ticket=nowhere", "")]
    [InlineData("?part=screen&tickets=25-0709-001+25-0709-002&composite=0.4", "Clears all")]
    [InlineData("?part=screen&tickets=25-0709-001+25-0709-002&composite=0.6", "Does not clear all")]
    [InlineData("?part=screen&tickets=25-0709-001+25-0709-002&composite=0.8&limit=1", "could hold up to")]
    [InlineData("?part=screen&tickets=nowhere", "There is no ticket “nowhere”")]
    [InlineData("?part=shelf&which=gone", "Nothing here")]
    [InlineData("?part=risks", "23.3")]
    [InlineData("?part=risks&accept=0", "lie above 0")]
    [InlineData("?part=risks&accept=1,0", "has a comma")]
    [InlineData("?part=papers", "sureFrom")]
    [InlineData("?part=else", "Plan a sample")]
    public async Task Page_Part_AnswersOrSaysWhatToDo(string query, string said)
    {
        using var client = site.Client();
        Assert.Contains(said, await Tickets.TextAsync(client, "/intake/sampling" + query), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sample_RecordedOnItsTicket_StandsThereAndOnTheShelf()
    {
        using var client = await Tickets.NamedAsync(site);
        using var ticket = await Tickets.SendAsync(client, Tickets.Worked("25-0914-071"));
        using var wrong = await Record(client, "25-0914-071", "six", "R-71");
        Assert.Contains("is no number of probes", Tickets.Plain(await wrong.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        using var right = await Record(client, "25-0914-071", "6", "R-71");
        Assert.Equal(HttpStatusCode.Redirect, right.StatusCode);
        Assert.Contains("kept as R-71 on shelf A7 until 2026-03-13", await Tickets.TextAsync(client, "/intake/25-0914-071"), StringComparison.Ordinal);
        Assert.Contains("R-71", await Tickets.TextAsync(client, "/intake/sampling?part=shelf&words=R-71"), StringComparison.Ordinal);

        using var second = await Tickets.SendAsync(client, Tickets.Worked("25-0914-072"));
        using var taken = await Record(client, "25-0914-072", "6", "R-71");
        Assert.Contains("stands on the sample of 25-0914-071 already", Tickets.Plain(await taken.Content.ReadAsStringAsync()), StringComparison.Ordinal);

        using var gone = await WebSite.PostAsync(client, "/intake/sampling?part=shelf&words=R-71", "/intake/sampling?part=shelf&words=R-71", [new("_handler", "gone"), new("gone", "R-71")]);
        Assert.Equal(HttpStatusCode.Redirect, gone.StatusCode);
        Assert.NotNull(Assert.Single(site.Mill.Ask(v => RetainedSample.All(v.Book, Instant.MaxValue)), s => s.Taken.RetainedId == "R-71").Discarded);
    }

    [Fact]
    public async Task Papers_KeptOnThePageAndOverHttp_AreTheNextVersionOrTellTheFault()
    {
        using var client = await Tickets.NamedAsync(site);
        using var wrong = await WebSite.PostAsync(client, "/intake/sampling?part=papers", "/intake/sampling?part=papers", [new("_handler", "policy"), new("Json", "{ \"keepDays\": 0 }")]);
        Assert.Contains("is kept 1 to 3660 days", Tickets.Plain(await wrong.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        using var right = await WebSite.PostAsync(client, "/intake/sampling?part=papers", "/intake/sampling?part=papers", [new("_handler", "policy"), new("Json", "{ \"keepDays\": 200 }")]);
        Assert.Equal((HttpStatusCode.Redirect, 200), (right.StatusCode, SamplingPapers.PolicyOf(site.Mill).Policy.KeepDays));
        using var nobody = await client.PostAsync(new Uri("/api/intake/sampling/policy", UriKind.Relative), new StringContent("{}", Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.BadRequest, nobody.StatusCode);
        using var sent = await client.PostAsync(new Uri("/api/intake/sampling/policy?by=Ada", UriKind.Relative), new StringContent("{ \"keepDays\": 180 }", Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.NoContent, sent.StatusCode);
        Assert.Contains("180", await client.GetStringAsync(new Uri("/api/intake/sampling/policy", UriKind.Relative)), StringComparison.Ordinal);
    }

    // Seven earlier trucks from the district, four of them below 300 s: worth a test when nobody waits, not when a hundred do.
    [Fact]
    public async Task TestOrNot_WithHistory_TurnsWithTheQueue()
    {
        using var client = await Tickets.NamedAsync(site);
        site.Mill.Papers(TestCosts.Kind).Keep(TestCosts.Code, 1, new TestCosts
        {
            Currency = "USD", CostPerMinute = 1.33, HistoryDays = 30, Source = "posed", Tests = [new(Property.FallingNumber, default, 300, 8, 4) { WrongBinPerTonne = 18, DivertedGoodPerTonne = 7 }],
        }.ToJson(), "Ada Miller");
        var at = TinyMill.Morning - Duration.FromDays(3);
        site.Mill.Record([.. new[] { 250m, 270m, 280m, 290m, 320m, 350m, 380m }.SelectMany((seconds, i) => new Draft[]
        {
            new OpenPlace($"fn{i}", $"25-0901-00{i}", PlaceKind.Truck, "", "HW"), new Move($"fn{i} net", "DS-2", $"25-0901-00{i}", Mass.FromTonnes(26m), at),
            new Measure($"fn{i} fn", $"25-0901-00{i}", at, Property.FallingNumber, seconds, "s", default, "falling number", "", 8m),
        })], "Ada Miller", "sampling test");
        using var ticket = await Tickets.SendAsync(client, Tickets.Worked("25-0914-073"));
        Assert.Contains("Test now.", await Tickets.TextAsync(client, "/intake/sampling?part=test&ticket=25-0914-073"), StringComparison.Ordinal);
        Assert.Contains("7 of", await Tickets.TextAsync(client, "/intake/sampling?part=test&ticket=25-0914-073&waiting=1"), StringComparison.Ordinal);
        Assert.Contains("Go without.", await Tickets.TextAsync(client, "/intake/sampling?part=test&ticket=25-0914-073&waiting=100"), StringComparison.Ordinal);
        Assert.Contains("is no number of trucks", await Tickets.TextAsync(client, "/intake/sampling?part=test&ticket=25-0914-073&waiting=many"), StringComparison.Ordinal);
        Assert.Contains("test or not", await Tickets.TextAsync(client, "/intake/25-0914-073"), StringComparison.Ordinal);
    }

    private static Task<HttpResponseMessage> Record(HttpClient client, string ticket, string cuts, string number) => WebSite.PostAsync(client, $"/intake/{ticket}", $"/intake/{ticket}",
    [
        new("_handler", "sample-taken"), new("S.Pattern", "us-hopper-bottom"), new("S.Cuts", cuts), new("S.Kilograms", "2.4"), new("S.RetainedId", number), new("S.Shelf", "A7"),
        new("S.KeepUntil", "2026-03-13"), new("S.At", "2025-09-14T09:05"),
    ]);
}
