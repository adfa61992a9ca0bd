using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web;

/// <summary>The page of additions, with good and bad input.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class StreamsAdditionsPageTests(WebSite site)
{
    [Fact]
    public async Task Page_Empty_AsksForNothingAndSaysWhatIsNotRecorded()
    {
        var page = await PageAsync("");
        Assert.Contains("No additive was recorded in that time", page, StringComparison.Ordinal);
        Assert.DoesNotContain("role=\"alert\"", page, StringComparison.Ordinal);
        Assert.Contains("local food law", page, StringComparison.Ordinal);
    }

    // The worked case of docs/model/additions.md.
    [Theory]
    [InlineData("flow=12.075&s-minutes=25", "<strong>5.03 t</strong> of flour ran without")]
    [InlineData("m0-dose=0&m0-seconds=410&m1-dose=20&m1-seconds=300&m-wanted=250&flow=12.075", "<strong>36.4 ± ")]
    [InlineData("g-base=11&g-wanted=12.5&g-gluten=77", "<strong>2.3256 kg to 100 kg</strong>")]
    [InlineData("a-ppm=250&a-content=10", "more than 200 ppm")]
    [InlineData("l-from=40&l-until=24&l-flour=12.075&l-set=1500", "look at the feeder")]
    [InlineData("l-from=40&l-until=21.9&l-flour=12.075&l-set=1500", "Within what the weighing can be wrong")]
    [InlineData("h-ash=0.474&h-dose=400&h-content=60", "<strong>0.450 %</strong> before")]
    [InlineData("r-into=WB&r-of=WB&r-percent=5&r-protein-run=11.65&r-protein-rework=12.85", "<td class=\"num\">11.710</td>")]
    [InlineData("r-into=WB&r-of=AP&r-percent=8&r-allergens=soy", "It has soy, which the label of WB does not name.")]
    [InlineData("r-into=WB&r-of=WB&r-percent=5&r-enriched=yes", "gives its nutrients twice")]
    public async Task Part_Asked_IsAnsweredByItself(string query, string says) => Assert.Contains(says, await PageAsync("?" + query), StringComparison.Ordinal);

    [Theory]
    [InlineData("flow=0", "Flour: tonnes an hour lie above 0")]
    [InlineData("flow=fast", "Flour: a number such as 12.5 is needed; read “fast”.")]
    [InlineData("s-minutes=25", "tonnes of flour an hour are needed")]
    [InlineData("m-wanted=250", "trials at two different doses")]
    [InlineData("m0-dose=0&m-wanted=250", "malt and falling number belong together")]
    [InlineData("m0-dose=0&m0-seconds=410", "the falling number wanted is missing")]
    [InlineData("g-base=11", "Gluten, protein wanted is missing")]
    [InlineData("g-base=11&g-wanted=10&g-gluten=77", "gluten cannot lower it")]
    [InlineData("a-ppm=-5&a-content=10", "a dose above 0 ppm")]
    [InlineData("e-c:iron=25", "thiamin: what of the premix it is must be said")]
    [InlineData("e-c:iron=25&e-market=Nowhere", "no table of Nowhere")]
    [InlineData("l-from=20&l-until=40&l-flour=10", "say what was filled in")]
    [InlineData("r-percent=5", "which flour is fed back into which")]
    [InlineData("r-into=WB&r-of=WB&r-percent=500", "below 100 % of a run; got 500")]
    public async Task Part_ThatCannotBe_IsNamedAndStaysTyped(string query, string says)
    {
        var page = await PageAsync("?" + query);
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains("what you typed is still here", page, StringComparison.Ordinal);
        var value = WebUtility.UrlDecode(query.Split('&')[0].Split('=')[1]);
        Assert.Contains($"value=\"{value}\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stock_OfALotThatIsDelivered_IsListedAndBadEntriesStayTyped()
    {
        using var client = await Tickets.NamedAsync(site);
        Task<HttpResponseMessage> Post(string lot, string kilograms, string how, string at = "2025-09-15T07:00") => WebSite.PostAsync(client, "/streams/additions", "/streams/additions",
            [new("_handler", "lot"), new("Lot.Key", "page-" + lot), new("Lot.Lot", lot), new("Lot.At", at), new("Lot.Kilograms", kilograms), new("Lot.How", how), new("Lot.Additive", "malt")]);
        foreach (var (lot, kilograms, how, at, says) in new[]
        {
            ("", "5", "weighed", "2025-09-15T07:00", "give the code on the bag"), ("L-1", "", "weighed", "2025-09-15T07:00", "What was found, kg, is missing"), ("L-1", "five", "weighed", "2025-09-15T07:00", "read \"five\""),
            ("L-1", "-5", "weighed", "2025-09-15T07:00", "from 0 to 1000000; read -5"), ("L-1", "5", " ", "2025-09-15T07:00", "say how it was found"), ("L-1", "5", "weighed", "soon", "When: give date and time"), ("B01", "5", "weighed", "2025-09-15T07:00", "is no lot of an additive"),
        })
        {
            using var bad = await Post(lot, kilograms, how, at);
            var page = WebUtility.HtmlDecode(await bad.Content.ReadAsStringAsync());
            Assert.Contains("Not recorded; what you typed is still here.", page, StringComparison.Ordinal);
            Assert.Contains(says, page, StringComparison.Ordinal);
            Assert.Contains($"value=\"{kilograms}\"", page, StringComparison.Ordinal);
        }

        using var good = await Post("L-1", "500", "maker's note");
        Assert.Equal(HttpStatusCode.Redirect, good.StatusCode);
        Assert.Contains("maker's note", await Tickets.TextAsync(client, "/streams/additions?asof=2025-09-15T08:00"), StringComparison.Ordinal);
        using var counted = await client.PostAsJsonAsync(new Uri("/api/streams/additions/stock?by=Ben", UriKind.Relative), new { key = "api", lot = "l-1", at = "2025-09-15T09:00", kilograms = "480", plusMinus = "4", how = "bags counted" });
        Assert.Equal(HttpStatusCode.Created, counted.StatusCode);
        var stock = JsonDocument.Parse(await client.GetStringAsync(new Uri("/api/streams/additions/stock?asof=2025-09-15T10:00", UriKind.Relative))).RootElement[0];
        Assert.Equal(("malt", 480.0, 4.0), (stock.GetProperty("additive").GetString(), stock.GetProperty("leftKilograms").GetDouble(), stock.GetProperty("lots")[0].GetProperty("plusMinus").GetDouble()));
        using var nameless = await client.PostAsJsonAsync(new Uri("/api/streams/additions/stock", UriKind.Relative), new { key = "x", lot = "L-1", kilograms = "1", how = "x" });
        Assert.Equal(HttpStatusCode.BadRequest, nameless.StatusCode);
    }

    private async Task<string> PageAsync(string query)
    {
        using var client = site.Client();
        return WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/streams/additions" + query, UriKind.Relative)));
    }
}
