using System.Net;
using System.Text.RegularExpressions;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Milling.Sheet;
using Evengrist.Records.Milling;

namespace Evengrist.Edge.Tests.Web;

/// <summary>Suggested moves on their page, and the trial they lead to.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class SuggestPageTests(WebSite site)
{
    private static readonly string Sheet = FlowSheetJson.Write(Evengrist.Demo.HouseFlowSheets.Of('A'));

    private const string Wish = "unit=W1&what=Yield&of=together&way=up&by=0.3&patent=1M 2M 1MF&keep-ash-rise=0&flour=430&feed=200&moisture=15.5";

    [Fact]
    public async Task Wish_IsAnsweredWithMovesCautionsAndATrialThatBearsThemOut()
    {
        Keep();
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, $"/milling/suggest?{Wish}");
        Assert.Contains("Found. The wish is met", page, StringComparison.Ordinal);
        Assert.Contains("Not tuned.", page, StringComparison.Ordinal);
        Assert.Contains("yield of 1M 2M 1MF", page, StringComparison.Ordinal);
        Assert.Contains("at least +0.30", page, StringComparison.Ordinal);
        Assert.Contains("at most 0.0000", page, StringComparison.Ordinal);
        Assert.Contains("Nobody reaches in", page, StringComparison.Ordinal);
        Assert.Contains("Make one move, let the mill settle", page, StringComparison.Ordinal);
        var html = await client.GetStringAsync(new Uri($"/milling/suggest?{Wish}", UriKind.Relative));
        var link = WebUtility.HtmlDecode(Regex.Match(html, "href=\"([^\"]*)\">Try it on paper").Groups[1].Value);
        Assert.Contains("moisture=15.5", link, StringComparison.Ordinal);
        Assert.Matches("(gap|air)-[A-Z0-9]+=", link);
        var trial = await Tickets.TextAsync(client, link);
        Assert.Contains("On paper, it would change", trial, StringComparison.Ordinal);
        var promised = Regex.Match(page, @"yield of 1M 2M 1MF [\d.]+ [\d.]+ (\+[\d.]+ ± [\d.]+)").Groups[1].Value;
        Assert.NotEmpty(promised);
        Assert.Contains($"yield of the streams together {promised}", trial, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_BeforeAWish_AsksForOne_AndAWishThatCannotBeMetSaysSo()
    {
        Keep();
        using var client = site.Client();
        var before = await Tickets.TextAsync(client, "/milling/suggest?unit=W1");
        Assert.Contains("Say what the mill should do otherwise", before, StringComparison.Ordinal);
        Assert.DoesNotContain("single moves were allowed", before, StringComparison.Ordinal);
        var far = await Tickets.TextAsync(client, $"/milling/suggest?{Wish.Replace("by=0.3", "by=30", StringComparison.Ordinal)}");
        Assert.Contains("Not met. No set of up to 3 moves was found that does all that is wished", far, StringComparison.Ordinal);
        Assert.Contains("at least +30.00: missed", far, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("what=Yield&by=-1", "an amount above 0")]
    [InlineData("what=Yield&by=much", "Amount: a number such as 12.5 is needed; read “much”.")]
    [InlineData("what=Taste&by=1", "Say which figure is meant")]
    [InlineData("what=Yield&by=1&of=together", "Name the streams that are meant")]
    [InlineData("what=Yield&by=1&of=together&patent=9Z", "there is no product 9Z")]
    [InlineData("what=Load&by=1", "one passage: name it")]
    [InlineData("what=MoneyPerDay&by=1", "needs the price of the products")]
    [InlineData("what=Yield&by=1&keep-ash-rise=-1", "is 0 or more; read “-1”")]
    [InlineData("what=Yield&by=1&sure=30", "above 50 %")]
    [InlineData("what=Yield&by=1&most=0", "A set has 1 to 6 moves")]
    [InlineData("what=Yield&by=1&step=", "Step of a gap: it is missing")]
    [InlineData("what=Yield&by=1&on-hand=fine", "Cloths on hand: openings in µm")]
    [InlineData("what=Yield&by=1&leave=Q9", "There is no passage Q9")]
    [InlineData("what=Yield&by=1&moisture=46", "from 10 to 20 %")]
    public async Task Wish_ThatCannotBeRead_IsSaidAndStaysTyped(string query, string says)
    {
        Keep();
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, $"/milling/suggest?unit=W1&fn=333&{query}");
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains("Not looked for; what you typed is still here.", page, StringComparison.Ordinal);
        Assert.Matches("name=\"fn\"[^>]*value=\"333\"", await client.GetStringAsync(new Uri($"/milling/suggest?unit=W1&fn=333&{query}", UriKind.Relative)));
    }

    // Directions: less air lifts less, so less leaves there; more wheat loads every passage more; common practice.
    [Fact]
    public async Task Trial_OfAirSpoutsAndAnotherWheat_IsReckoned_AndWhatCannotBeIsSaid()
    {
        Keep();
        using var client = site.Client();
        var sheet = Evengrist.Demo.HouseFlowSheets.Of('A');
        var purifier = sheet.Passages.First(p => p.AirMetresPerSecond is not null);
        foreach (var query in new[] { $"air-{purifier.Code}={purifier.AirMetresPerSecond - 0.2:0.00}", "then-moisture=15", "then-flow=12", "then-hardness=40", "spouts=B1 0 B3C 50 %, B2 50 %" })
        {
            var page = await Tickets.TextAsync(client, $"/milling/trial?unit=W1&{query}");
            Assert.True(page.Contains("On paper, it would change", StringComparison.Ordinal), $"{query}: {page[..Math.Min(page.Length, 1500)]}");
            Assert.Matches(@"the same for a tonne of wheat \S+ ± \S+ kWh/t", page);
        }

        foreach (var (query, says) in new[]
        {
            ("then-moisture=45", "Wheat tried: "), ("then-flow=-1", "Wheat tried: "), ($"air-{purifier.Code}=9", "at 0.2 to 3 m/s"), ("spouts=B1 x B2", "Spouts: a line with passage, number of the outlet"), ("spouts=B1 99 B2", "B1 has no outlet 99"),
            ("spouts=B1 0 Q9", "Q9"),
        })
        {
            var page = await Tickets.TextAsync(client, $"/milling/trial?unit=W1&{query}");
            Assert.Contains(says, page, StringComparison.Ordinal);
            Assert.Contains("Not reckoned; what you typed is still here.", page, StringComparison.Ordinal);
        }
    }

    private void Keep()
    {
        Assert.True(FlowSheetJson.TryRead(Sheet, out var sheet, out _));
        if (FlowSheets.Newest(site.Mill, "W1") is null)
        {
            Assert.Empty(FlowSheets.Keep(site.Mill, "W1", new("for a test", sheet), "Ada Miller", 0).Faults);
        }
    }
}
