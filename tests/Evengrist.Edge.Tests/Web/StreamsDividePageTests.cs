using System.Net;

namespace Evengrist.Edge.Tests.Web;

/// <summary>The page of the best divide, with good and bad questions.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class StreamsDividePageTests(WebSite site)
{
    private const string Two = "survey=1M,10,0.4,11,patent%0A2M,5,0.9,13,clear&rate=10";

    [Fact]
    public async Task Page_WithoutASurvey_SaysWhatToDo() => Assert.Contains("Paste one below", await PageAsync(""), StringComparison.Ordinal);

    [Fact]
    public async Task Divide_OfTwoStreams_IsTheOneWorkedByHand()
    {
        // 10 t/h of wheat: 1 t/h of 1M at 400 and 0.5 t/h of 2M at 300, since 0.9 is above the patent's ash; 550 an hour. Both in the patent would bring 50 more.
        var page = await PageAsync($"?{Two}&f0-code=patent&f0-price=400&f0-ash-most=0.5&f1-code=clear&f1-price=300&rest-price=100");
        Assert.Contains("550.00 USD an hour", page, StringComparison.Ordinal);
        Assert.Contains("13,200.00 in a day of 24 h. Proven", page, StringComparison.Ordinal);
        Assert.Contains("+50.00<div class=\"note\">misses patent ash", page, StringComparison.Ordinal);
        Assert.Contains("As it is divided now: 550.00 an hour. This one brings <strong>0.00</strong>", page, StringComparison.Ordinal);
    }

    // 2M at 0.6 beside 1M at 0.4, twice as much: 0.467 at the most 0.47 by the mean, but to 90 % the patent has 1M alone.
    [Fact]
    public async Task Limits_ThatHaveToBeKeptSurely_LeaveTheNextStreamOut()
    {
        var query = $"?survey={Uri.EscapeDataString("1M,10,0.4,11,patent\n2M,5,0.6,13,clear")}&rate=10&f0-code=patent&f0-price=400&f0-ash-most=0.47&f1-code=clear&f1-price=300&rest-price=100";
        Assert.Contains("600.00 USD an hour", await PageAsync(query), StringComparison.Ordinal);
        var sure = await PageAsync(query + "&sure=90");
        Assert.Contains("550.00 USD an hour", sure, StringComparison.Ordinal);
        Assert.Contains("Each limit is kept to 90.0 %, each by itself.", sure, StringComparison.Ordinal);
        Assert.Contains("got 40 %", await PageAsync(query + "&sure=40"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Headings_CarryFallingNumberAndSpouts()
    {
        // LN of 300 s and 200 s are 24 and 40; at least 250 s is at most 30: 2M, half as much as 1M, may give x with 10·(30 − 24) ≥ 5·x·(40 − 30): all of it, and then 250·… at 13.33 t: FN = 50 + 6000/29.33 = 254.5.
        var survey = Uri.EscapeDataString("stream,yield,ash,fn,splits\n1M,10,0.4,300,\n2M,5,0.5,200,yes");
        var page = await PageAsync($"?survey={survey}&f0-code=bread&f0-price=400&f0-fn-least=250");
        Assert.Contains("255 ± ", page, StringComparison.Ordinal);
        var strict = await PageAsync($"?survey={survey}&f0-code=bread&f0-price=400&f0-fn-least=275");
        // At least 275 s is LN 26.667: 10·2.667 = 5·x·13.333, x = 0.4.
        Assert.Contains("2M (40.0 %)", strict, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("&f0-code=patent&f0-price=400&f0-ash-most=0.3&f0-yield-least=5", "These cannot be kept together")]
    [InlineData("&f0-code=patent&f0-price=400&f0-ash-most=-1", "a limit on ash lies from 0 to 10 %; got -1")]
    [InlineData("&f0-code=patent&f0-price=400&f0-ash-least=0.5&f0-ash-most=0.4", "ash at least 0.5 is more than at most 0.4")]
    [InlineData("&f0-code=patent&f0-price=400&f0-fn-least=250", "patent has a limit on falling number, which was not read for 1M, 2M")]
    [InlineData("&f0-code=patent&f0-price=much", "patent, price: a number such as 12.5 is needed; read “much”")]
    [InlineData("&f0-code=patent", "patent: what a tonne brings is missing")]
    [InlineData("&f0-price=400", "Flour 1 has figures and no name")]
    [InlineData("&f0-code=a&f0-price=1&f1-code=a&f1-price=2", "a stands there 2 times")]
    [InlineData("", "Say below which flours you want")]
    [InlineData("&f0-code=WB&f0-price=1", "1M may go to patent, and there is no such flour")]
    [InlineData("&f0-code=patent&f0-price=1&f1-code=clear&f1-price=1&u-ash=-1", "its standard uncertainty lies from 0 to 1; got -1")]
    [InlineData("&f0-code=patent&f0-price=99999999999999999999999", "a price lies between -100000 and 100000")]
    public async Task Questions_ThatCannotBe_AreNamedAndStayTyped(string query, string says)
    {
        var page = await PageAsync($"?{Two}{(query.Contains("f1", StringComparison.Ordinal) || query.Length == 0 || query.Contains("WB", StringComparison.Ordinal) ? query : query + "&f1-code=clear&f1-price=300")}");
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains("1M,10,0.4,11,patent", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("stream,ash%0A1M,0.4", "headings are stream, yield, ash")]
    [InlineData("stream,yield,ash,colour%0A1M,5,0.4,2", "read “colour”")]
    [InlineData("stream,yield,ash,splits%0A1M,5,0.4,maybe", "yes or no is needed; read “maybe”")]
    [InlineData("stream,yield,ash,fn%0A1M,5,0.4,20", "a falling number lies from 60 to 1000 s")]
    public async Task Surveys_ThatCannotBe_AreNamed(string survey, string says) =>
        Assert.Contains(says, await PageAsync($"?survey={survey}&f0-code=patent&f0-price=400"), StringComparison.Ordinal);

    [Fact]
    public async Task Survey_OfAsManyStreamsAsThereCanBe_IsStillAnswered()
    {
        var survey = string.Join("\n", Enumerable.Range(0, 200).Select(i => FormattableString.Invariant($"S{i:000},0.35,{0.40 + (0.005 * i):0.000},{11 + (0.01 * i):0.00},patent flour")));
        Assert.InRange(Uri.EscapeDataString(survey).Length, 8193, 30_000); // longer than servers usually take
        Assert.Contains("USD an hour", await PageAsync($"?survey={Uri.EscapeDataString(survey)}&rate=10&f0-code=patent%20flour&f0-price=400&f0-ash-most=0.6"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Print_NamesEverySpoutAndWhatChanges()
    {
        using var client = site.Client();
        var print = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri($"/streams/divide/print?{Two}&f0-code=patent&f0-price=400&f0-ash-most=0.9&f1-code=clear&f1-price=300", UriKind.Relative)));
        Assert.Contains("CHANGE", print, StringComparison.Ordinal);
        Assert.Contains("stays", print, StringComparison.Ordinal);
        Assert.Contains("lock out and tag out", print, StringComparison.Ordinal);
        Assert.Contains("There is nothing to set", await client.GetStringAsync(new Uri("/streams/divide/print", UriKind.Relative)), StringComparison.Ordinal);
    }

    private async Task<string> PageAsync(string query)
    {
        using var client = site.Client();
        return WebUtility.HtmlDecode(await client.GetStringAsync(new Uri("/streams/divide" + query, UriKind.Relative)));
    }
}
