using System.Net;
using System.Text;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>Bands, the change of crop and offered lots on their pages, with the demonstration's year, and posed over HTTP.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class SeasonHarvestTests(DemonstrationSite site)
{
    private const string Lot = "/season/lot?class=HS&tonnes=800&when=2026-04-01&protein=14&spread=0.3&moisture=12&falling=&weight=&ash=&gluten=&asked=";

    [Fact]
    public async Task Lot_OfSpringWheatInApril_IsWorthSomethingAndTellsWhereItGoes()
    {
        using var client = site.Client();
        var page = await UntilAsync(client, Lot + "260", "Where it would go");
        Assert.Contains("Most to pay, whole lot, USD/t", page, StringComparison.Ordinal);
        Assert.Contains("left at the end 800", page, StringComparison.Ordinal); // it stands in for the spring wheat in B11, which has to be left by the terms
        Assert.Matches(@"B11 \+800 ", page);
        Assert.Contains("Its falling number was not given: the usual 396 s of HS is supposed.", page, StringComparison.Ordinal);
        Assert.Matches("Worth its price|Not worth its price", page);
        Assert.Contains("What is an offered lot worth?", await Tickets.TextAsync(client, "/season/buying"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tonnes=-5&protein=14", "Tonnes: it is -5; a number above 0")]
    [InlineData("tonnes=&protein=14", "Tonnes: it is missing")]
    [InlineData("tonnes=800&protein=13,5", "a number such as 12.5 is needed; read “13,5”")]
    [InlineData("tonnes=800&protein=strong", "a number such as 12.5 is needed; read “strong”")]
    [InlineData("tonnes=800&protein=14&class=ZZ", "knows no wheat of class ZZ; it knows")]
    [InlineData("tonnes=800&protein=14&when=2027-04-01", "the year goes from 2026-01-14 to 2026-06-30")]
    [InlineData("tonnes=800&protein=14&when=April", "a day such as 2026-01-14 is needed; read “April”")]
    [InlineData("tonnes=800&protein=14&asked=-1", "Asked price: it is -1")]
    [InlineData("tonnes=800&protein=14&falling=20", "falling number: it is 20")]
    public async Task Lot_WhatCannotBe_IsSaidAndStaysTyped(string query, string says)
    {
        using var client = site.Client();
        var page = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/season/lot?moisture=12&spread=0.3&" + (query.Contains("class=", StringComparison.Ordinal) ? "" : "class=HS&") + query, UriKind.Relative)));
        Assert.Contains("Not reckoned.", page, StringComparison.Ordinal);
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains($"value=\"{query.Split('&').Last(q => q.StartsWith("protein", StringComparison.Ordinal)).Split('=')[1]}\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bands_OfTheNextHarvest_HaveEdgesBinsAndAPrint()
    {
        using var client = site.Client();
        var form = await Tickets.TextAsync(client, "/season/bands");
        Assert.Contains("asked is the next one", form, StringComparison.Ordinal);
        Assert.Contains("Northledge", await client.GetStringAsync(new Uri("/season/bands?class=HW", UriKind.Relative)), StringComparison.Ordinal);
        const string asked = "class=HW&most=3&reading=0.25&edge=&freading=15&step=0.5&trouble=0&bin=B01&bin=B02&bin=B03&bin=B04";
        var page = await UntilAsync(client, "/season/bands?" + asked, "Print for the scale house");
        Assert.Contains("one band more saves", page, StringComparison.Ordinal);
        Assert.Contains("3 not reckoned", System.Text.RegularExpressions.Regex.Replace(page, @" 3 [\d,]+ [\d,]+ not", " 3 not"), StringComparison.Ordinal);
        var print = await Tickets.TextAsync(client, $"/season/bands/print?{asked}&show=3");
        Assert.Contains("HW 3", print, StringComparison.Ordinal);
        Assert.Contains("decided by", print, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bands_BeforeTheHarvest_AreOfTheHarvestThatComes()
    {
        using var client = site.Client();
        Assert.Contains("The harvest that the terms expect, from 10 Jul 2025", await Tickets.TextAsync(client, "/season/bands?asof=2025-07-10T06:00"), StringComparison.Ordinal);
        await client.GetStringAsync(new Uri("/season?asof=2026-01-14T10:40", UriKind.Relative));
    }

    [Theory]
    [InlineData("most=3", "Bins: none is ticked")]
    [InlineData("most=0&bin=B01", "Most bands: it is 0")]
    [InlineData("most=3&bin=B01&t:0=-5", "-5 t cannot be")]
    [InlineData("most=3&bin=B01&p:0=", "Its protein is missing")]
    [InlineData("most=3&bin=B01&reading=x", "read “x”")]
    [InlineData("most=3&bin=B01&class=ZZ", "Nothing is expected")]
    public async Task Bands_WhatCannotBe_IsSaid(string query, string says)
    {
        using var client = site.Client();
        var page = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/season/bands?" + query, UriKind.Relative)));
        Assert.Contains("Not reckoned.", page, StringComparison.Ordinal);
        Assert.Contains(says, page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ChangeOver_OfAFlourThatIsNotThere_SaysWhichIsShown()
    {
        using var client = site.Client();
        Assert.Contains("There is no flour ZZ in the terms: choose one above. White bread is shown.", await Tickets.TextAsync(client, "/season/change-over?flour=ZZ"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task ChangeOver_OfTheDemonstration_IsLaidOutAndPrinted()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/season/change-over?flour=HG");
        Assert.Contains("Steps for High gluten", page, StringComparison.Ordinal);
        Assert.Contains("limits kept % sure", page, StringComparison.Ordinal);
        var typed = "flour=WB&first=2026-07-20&until=2026-08-30&step=20&days=5&old:Moisture=12&new:Moisture=12&old:Protein=13.4&old-spread:Protein=0.05&new:Protein=12.4&new-spread:Protein=0.1&old:FallingNumber=400&new:FallingNumber=220&old:TestWeight=&new:TestWeight=&move:Protein=0.25";
        var laid = await Tickets.TextAsync(client, "/season/change-over?" + typed);
        Assert.Contains("100 Sun 9 Aug 2026 12.40 ± 0.10 −0.20 0", laid, StringComparison.Ordinal); // five steps of five days: the last begins on the 21st day
        Assert.Contains("A limit is likely missed.", laid, StringComparison.Ordinal); // 12.4 % lies below the least of 13.1 %
        Assert.Contains("decided by", await Tickets.TextAsync(client, "/season/change-over/print?" + typed), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("first=2026-08-01&until=2026-07-01", "before the first day of new crop, 2026-08-01")]
    [InlineData("step=0", "give 1 to 100 % of the mix")]
    [InlineData("days=0", "a whole number from 1 to 60")]
    [InlineData("new:Protein=-1", "-1 ± ")]
    [InlineData("new:FallingNumber=40", "falling numbers lie above 60 s")]
    [InlineData("move:Protein=0", "0 is no move")]
    public async Task ChangeOver_WhatCannotBe_IsSaidAndStaysTyped(string query, string says)
    {
        using var client = site.Client();
        var page = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/season/change-over?flour=WB&" + query, UriKind.Relative)));
        Assert.Contains("Not laid out.", page, StringComparison.Ordinal);
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains($"value=\"{query.Split('=')[^1]}\"", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("value", "season-lot.json", "mostPerTonne")]
    [InlineData("bands", "season-bands.json", "savesAgainstOneLess")]
    [InlineData("change-over", "change-over.json", "largestStepPercent")]
    public async Task Api_SampleCase_AnswersAndRefusesInWords(string verb, string sample, string has)
    {
        using var client = site.Client();
        var text = await File.ReadAllTextAsync(Repository.Sample("cases", sample));
        using var body = new StringContent(text, Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri($"/api/season/{verb}", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains(has, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var broken = new StringContent(text.Replace("\"value\": 1", "\"value\": -1", StringComparison.Ordinal), Encoding.UTF8, "application/json");
        using var refused = await client.PostAsync(new Uri($"/api/season/{verb}", UriKind.Relative), broken);
        Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
        Assert.Contains("-1", await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private static async Task<string> UntilAsync(HttpClient client, string path, string holds)
    {
        for (var tries = 0; tries < 300; tries++)
        {
            if (await Tickets.TextAsync(client, path) is var page && page.Contains(holds, StringComparison.Ordinal))
            {
                return page;
            }

            await Task.Delay(400);
        }

        throw new TimeoutException($"{path} did not show “{holds}” in two minutes.");
    }
}
