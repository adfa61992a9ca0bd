using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Laboratory;

/// <summary>Many mills on their page.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class MillsPageTests(WebSite site)
{
    private const string Page = "/laboratory/mills", Mills = "mill;laboratory;mean;deviation;count\nM03;L3;11.95;0.09;60\n", Ring = "laboratory;sample;value\nL3;f1;11.9\nbrand;f1;11.8\n";

    // Limits 11.7 to 12.1: 11.95/0.09 has Cpk 0.56 and 5.1 % out, 11.78/0.07 has 0.38 and 12.7 %, by the normal distribution. L7 reads 0.12125 low in the example, by the mean of its paired differences: its flour has 11.90125.
    [Fact]
    public async Task Example_SortsTheWorstFirst_AndTellsFlourFromLaboratory()
    {
        using var client = await Tickets.NamedAsync(site);
        Assert.Contains("Nothing is compared yet", await Tickets.TextAsync(client, Page), StringComparison.Ordinal);
        var page = await Tickets.TextAsync(client, $"{Page}?example=true");
        foreach (var part in new[] { "12.7", "0.56", "5.1", "11.901", "its laboratory reads 0.12 low against brand", "no ring test: flour and laboratory cannot be told apart", "−0.121" })
        {
            Assert.Contains(part, page, StringComparison.Ordinal);
        }

        Assert.True(page.IndexOf("M07 L7", StringComparison.Ordinal) < page.IndexOf("M03 L3", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("mill;laboratory;mean;deviation;count\nM03;L3;11.95;-0.09;60", Ring, "11.7", "12.1", "", "The mills, line 2, column 4 (deviation): read \"-0.09\"; expected a standard deviation above 0")]
    [InlineData("mill;laboratory;mean;deviation;count\nM03;L3;11.95;0.09;1", Ring, "11.7", "12.1", "", "The mills, line 2, column 5 (count): read \"1\"; expected a whole number of results, 2 or more")]
    [InlineData("mill;laboratory;mean;deviation;count\nM03;L3;11.95;0.09;60\nM03;L3;11.9;0.1;60", Ring, "11.7", "12.1", "", "The mills, line 3, column 1 (mill): read \"M03\"; expected each mill once; it stands in line 2 too")]
    [InlineData("mill;laboratory;mean\nM03;L3;11.95", Ring, "11.7", "12.1", "", "headings are missing: deviation, count")]
    [InlineData(Mills, "laboratory;sample;value\nL3;f1;11,9x", "11.7", "12.1", "", "The ring test, line 2, column 3 (value): read \"11,9x\"")]
    [InlineData(Mills, "laboratory;sample;value\nL3;;11.9", "11.7", "12.1", "", "The ring test, line 2, column 2 (sample): read nothing; expected a name")]
    [InlineData(Mills, Ring, "12.1", "11.7", "", "The lower limit lies below the upper")]
    [InlineData(Mills, Ring, "", "", "", "Give a lower limit, an upper limit, or both")]
    [InlineData(Mills, Ring, "x", "", "", "The lower limit is a number with a point")]
    [InlineData(Mills, Ring, "11.7", "", "brnad", "The reference laboratory brnad has no ring result")]
    [InlineData("", Ring, "11.7", "", "", "There are no mills")]
    public async Task Page_SentWhatCannotBe_NamesTheRow(string mills, string ring, string lower, string upper, string reference, string says)
    {
        using var client = await Tickets.NamedAsync(site);
        using var answer = await WebSite.PostAsync(client, Page, Page, [new("_handler", "mills"), new("Mills.Mills", mills), new("Mills.Ring", ring), new("Mills.Lower", lower), new("Mills.Upper", upper), new("Mills.Reference", reference)]);
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains("what you sent is below", page, StringComparison.Ordinal);
    }
}
