using System.Net;
using System.Text;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>What can be promised of the crop year: its page with the demonstration's year, and posed over HTTP.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class PromiseOfTheYearTests(DemonstrationSite site)
{
    [Fact]
    public async Task Promise_Reckoned_SaysThroughWhichDayAndGivesTheSeasonItsBand()
    {
        using var client = site.Client();
        var before = await Tickets.TextAsync(client, "/season/promise?asof=2026-02-03T08:00");
        Assert.Contains("Nothing has been reckoned for the plan as it stands.", before, StringComparison.Ordinal);
        Assert.Contains("Not calibrated to this mill.", before, StringComparison.Ordinal);
        Assert.Contains("Demand, High gluten the year 1 %, a week 3 % beside it", before, StringComparison.Ordinal);
        Assert.Contains("once one has been reckoned", await Tickets.TextAsync(client, "/season?asof=2026-02-03T08:00"), StringComparison.Ordinal);
        await PostAsync(client, new() { ["_handler"] = "promise", ["Work"] = "reckon", ["Futures"] = "300", ["Seed"] = "5" });
        var page = await UntilAsync(client, text => text.Contains("300 futures, seed 5", StringComparison.Ordinal));
        Assert.Contains("Stated at 85 %", page, StringComparison.Ordinal);
        Assert.Matches("High gluten (is on target|cannot be promised)", page);
        Assert.Contains("not against this mill's own history", page, StringComparison.Ordinal);
        Assert.Contains("(seed 5)", await Tickets.TextAsync(client, "/season?asof=2026-02-03T08:00"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0", "1", "Futures: a whole number from 300 to 20,000 is needed; read “0”.")]
    [InlineData("many", "1", "read “many”")]
    [InlineData("99999999", "1", "read “99999999”")]
    [InlineData("1000", "one", "Seed: a whole number such as 1 is needed; read “one”.")]
    public async Task Promise_WhatCannotBe_IsSaidAndStaysTyped(string futures, string seed, string says)
    {
        using var client = site.Client();
        using var answer = await WebSite.PostAsync(client, "/season/promise", "/season/promise", new Dictionary<string, string> { ["_handler"] = "promise", ["Work"] = "reckon", ["Futures"] = futures, ["Seed"] = seed });
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains($"value=\"{(futures == "1000" ? seed : futures)}\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Promise_Stopped_SaysSoOrShowsTheFirstFutures()
    {
        using var client = site.Client();
        await client.GetStringAsync(new Uri("/season/promise?asof=2026-02-10T08:00", UriKind.Relative));
        await PostAsync(client, new() { ["_handler"] = "promise", ["Work"] = "reckon", ["Futures"] = "20000", ["Seed"] = "1" });
        Assert.Contains("20,000 futures", await UntilAsync(client, text => text.Contains("of 20,000 futures", StringComparison.Ordinal)), StringComparison.Ordinal);
        await PostAsync(client, new() { ["_handler"] = "promise", ["Work"] = "stop" });
        var page = await UntilAsync(client, text => text.Contains("It was stopped early", StringComparison.Ordinal) || text.Contains("too few to say anything", StringComparison.Ordinal));
        Assert.Contains("Reckon", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Promise_AfterTheCropYear_SaysWhatToDo()
    {
        using var client = site.Client();
        Assert.Contains("enter terms for the next one", await Tickets.TextAsync(client, "/season/promise?asof=2026-07-02T08:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Terms_ForAPromise_AskByHowMuchTheYearMayDiffer()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/season/terms");
        Assert.Contains("How far Northledge HW may differ", page, StringComparison.Ordinal);
        Assert.Contains("protein between trucks points, standard deviation", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"stated\": 0.85", "\"stated\": 0.85", HttpStatusCode.OK, "HG is on target through")]
    [InlineData("\"spread\": 0.6", "\"spread\": -0.6", HttpStatusCode.BadRequest, "A spread of -0.6 cannot be; give 0 or more.")]
    [InlineData("\"stated\": 0.85", "\"stated\": 1", HttpStatusCode.BadRequest, "give a probability between 0 and 1")]
    [InlineData("\"wheat\": \"H1\"", "\"wheat\": \"H2\"", HttpStatusCode.BadRequest, "No delivery of such a wheat is in the plan")]
    [InlineData("\"currency\": \"USD\"", "\"currency\": \"USD\", \"carryOut\": [ { \"wheatClass\": \"HS\", \"leastTonnes\": 20000 } ]", HttpStatusCode.UnprocessableEntity, "at least 20000 t of HS left at the end")]
    public async Task Api_PosedCase_IsAnsweredOrSaysWhatToDo(string was, string becomes, HttpStatusCode status, string says)
    {
        using var client = site.Client();
        var text = await File.ReadAllTextAsync(Repository.Sample("cases", "season-promise.json"));
        Assert.Contains(was, text, StringComparison.Ordinal);
        using var content = new StringContent(text.Replace(was, becomes, StringComparison.Ordinal).Replace("\"futures\": 1000", "\"futures\": 100", StringComparison.Ordinal), Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri("/api/season/promise", UriKind.Relative), content);
        Assert.Equal(status, answer.StatusCode);
        Assert.Contains(says, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private static async Task PostAsync(HttpClient client, Dictionary<string, string> fields)
    {
        using var answer = await WebSite.PostAsync(client, "/season/promise", "/season/promise", fields);
        Assert.True((int)answer.StatusCode < 400, $"{answer.StatusCode}");
    }

    private static async Task<string> UntilAsync(HttpClient client, Func<string, bool> holds)
    {
        for (var tries = 0; tries < 600; tries++)
        {
            if (await Tickets.TextAsync(client, "/season/promise") is var page && holds(page))
            {
                return page;
            }

            await Task.Delay(200);
        }

        throw new TimeoutException("Nothing came of it in two minutes.");
    }
}
