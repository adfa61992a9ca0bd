using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The crop year on its pages, with the demonstration's year from its opening moment on.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class SeasonOfTheYearTests(DemonstrationSite site)
{
    [Fact]
    public async Task Season_OfTheDemonstration_IsPlannedAndOpened()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/season");
        Assert.Contains("From 14 Jan 2026 to 30 Jun 2026", page, StringComparison.Ordinal);
        Assert.Contains("On target to the end.", page, StringComparison.Ordinal);
        Assert.Contains("High gluten", page, StringComparison.Ordinal);
        Assert.Contains("its falling number was not read; 385 s is supposed", page, StringComparison.Ordinal); // bought trucks carry none
    }

    [Fact]
    public async Task Season_AfterTheCropYear_SaysWhatToDo()
    {
        using var client = site.Client();
        Assert.Contains("enter terms for the next one", await Tickets.TextAsync(client, "/season?asof=2026-07-02T08:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Paper_MoreHighGluten_CostsMoreAndKeepsNothing()
    {
        using var client = site.Client();
        var before = await Tickets.TextAsync(client, "/season/terms");
        var page = await Tickets.TextAsync(client, "/season/paper?demand:HG=430");
        Assert.Contains("High gluten, demand: 391 → 430 t flour/week", page, StringComparison.Ordinal);
        Assert.Contains("on paper", page, StringComparison.Ordinal);
        Assert.Contains("Version 1", before, StringComparison.Ordinal);
        Assert.Contains("Version 1", await Tickets.TextAsync(client, "/season/terms"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("demand:HG=lots", "a number such as 391 is needed")]
    [InlineData("demand:HG=-5", "0 t a week or more")]
    [InlineData("least:WB:Protein=15", "least above its most")]
    [InlineData("price:E1%20strong:0=900", "cheapest first")]
    public async Task Paper_WhatCannotBe_IsSaidAndStaysTyped(string query, string says)
    {
        using var client = site.Client();
        var page = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/season/paper?" + query, UriKind.Relative)));
        Assert.Contains("Not planned.", page, StringComparison.Ordinal);
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains($"value=\"{query[(query.IndexOf('=', StringComparison.Ordinal) + 1)..]}\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Paper_SomethingDecided_IsPlannedAround()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/season/paper?kind0=buy&wheat0=E1%20strong&from0=2026-02-20&until0=2026-03-10&most0=0&kind1=share&wheat1=B05&flour1=WB&least1=10&most1=20");
        Assert.Contains("decided: E1 strong bought: at most 0 t/week, 2026-02-20 to 2026-03-10", page, StringComparison.Ordinal);
        Assert.Contains("decided: B05 of the mix of WB: 10 to 20 %, 2026-01-14 to 2026-01-14", page, StringComparison.Ordinal);
        Assert.Contains("Costs count from", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Paper_DecidedWhatCannotBe_NamesTheClashAndWhatWouldHaveToYield()
    {
        // The dearest tier of the offer ends at 700 t a week: 100 t a day.
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/season/paper?kind0=buy&wheat0=E1%20strong&from0=2026-01-20&least0=9000");
        Assert.Contains("at least 1285.714 t of E1 strong bought, from 2026-01-20: short by", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("kind0=share&wheat0=B05&flour0=WB&least0=120", "at most 100 %")]
    [InlineData("kind0=buy&wheat0=B05&least0=10", "is not on offer")]
    [InlineData("kind0=use&wheat0=B05&flour0=WB&from0=2026-01-10&least0=10", "give days from 2026-01-14")]
    [InlineData("kind0=use&wheat0=B05&flour0=WB&from0=2026-01-18&least0=10", "stands still")]
    [InlineData("kind0=use&wheat0=B05&flour0=XX&least0=10", "Into which flour?")]
    [InlineData("kind0=use&wheat0=B05&flour0=WB", "At least or at most how much?")]
    [InlineData("kind0=use&wheat0=B05&flour0=WB&least0=many", "a number such as 12.5 is needed")]
    [InlineData("kind0=use&wheat0=B05&flour0=WB&from0=soon&least0=1", "a day such as 2026-01-14 is needed")]
    [InlineData("kind0=eat&wheat0=B05&flour0=WB&least0=1", "nothing that can be decided here")]
    public async Task Paper_DecidedWrongly_SaysWhatToDo(string query, string says)
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/season/paper?" + query);
        Assert.Contains("Not planned.", page, StringComparison.Ordinal);
        Assert.Contains(says, page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Buying_OfTheDemonstration_NamesDaysAndPrices()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/season/buying");
        Assert.Contains("pay no more than", page, StringComparison.Ordinal);
        Assert.Contains("E2 spring", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Terms_WithoutAName_AreShownAndNotKept()
    {
        using var client = site.Client();
        using var page = await client.GetAsync(new Uri("/season/terms", UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        Assert.Contains("Say who you are", await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Plan_MilledAndKept_StandsBesideWhatWasDone()
    {
        using var client = site.Client();
        await PostAsync(client, "/who", "/choose", new() { ["name"] = "Ada Miller", ["back"] = "/season" });
        await PostAsync(client, "/season", "/season", new() { ["_handler"] = "work", ["Work"] = "mill" });
        var page = await UntilAsync(client, text => text.Contains("Look for a better one", StringComparison.Ordinal));
        Assert.Contains("Can be milled as it stands yes", page, StringComparison.Ordinal);
        await PostAsync(client, "/season", "/season", new() { ["_handler"] = "work", ["Work"] = "keep" });
        var kept = await Tickets.TextAsync(client, "/season/kept?plan=2026-01-14%2010:40.1&asof=2026-02-14T06:00");
        Assert.Contains("Ada Miller", kept, StringComparison.Ordinal);
        Assert.Matches(@"B09 SW [\d,]+ [1-9][\d,]+ ", kept); // soft wheat was drawn in that month, and the plan said how much
        Assert.Contains("There is no kept plan of that name", await Tickets.TextAsync(client, "/season/kept?plan=none"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Keep_WithoutAName_IsRefused()
    {
        using var client = site.Client();
        Assert.Contains("Say who you are first", await PostAsync(client, "/season", "/season", new() { ["_handler"] = "work", ["Work"] = "keep" }), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Truck_OfTheHarvest_IsWorthSomethingToTheYearInEveryBinOfItsClass()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/season/truck?ticket=25-0724-004&asof=2025-07-24T18:00");
        Assert.Contains("In a bin of its own the load is worth", page, StringComparison.Ordinal);
        Assert.Contains("it holds SW, the truck is HW", page, StringComparison.Ordinal);
        Assert.Contains("planned anew with the load in them", page, StringComparison.Ordinal);
        Assert.Contains("worth to the year", await Tickets.TextAsync(client, "/intake/25-0724-004?asof=2025-07-24T18:00"), StringComparison.Ordinal); // the plan is at hand now
        Assert.Contains("There is no ticket", await Tickets.TextAsync(client, "/season/truck?ticket=nope"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Truck_WithoutAPlanOfItsWeek_IsRankedByTheValuesKept()
    {
        using var client = site.Client();
        Assert.Contains("what a tonne is worth to the whole year is not in it", await Tickets.TextAsync(client, "/intake/25-0709-061?asof=2025-07-09T18:00"), StringComparison.Ordinal);
    }

    private static async Task<string> UntilAsync(HttpClient client, Func<string, bool> holds)
    {
        for (var tries = 0; tries < 600; tries++)
        {
            if (await Tickets.TextAsync(client, "/season") is var page && holds(page))
            {
                return page;
            }

            await Task.Delay(200);
        }

        throw new TimeoutException("The plan was not finished in two minutes.");
    }

    private static async Task<string> PostAsync(HttpClient client, string page, string to, Dictionary<string, string> fields)
    {
        using var answer = await WebSite.PostAsync(client, page, to, fields);
        return Tickets.Plain(await answer.Content.ReadAsStringAsync());
    }
}
