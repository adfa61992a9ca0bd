using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Laboratory;

/// <summary>Acceptance sampling on its page.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class PlansPageTests(WebSite site)
{
    // 110 with 3, and 41 measured: R 4.2.2; letter J, 80 with 2, tightened 1: MIL-STD-105E; 59 units: R 4.2.2.
    [Fact]
    public async Task Page_AsItOpens_ShowsPlansAndTheCaution()
    {
        using var client = await Tickets.NamedAsync(site);
        var page = await Tickets.TextAsync(client, "/laboratory/plans");
        foreach (var part in new[] { "by attributes 110 with up to 3 bad", "of the sample 41", "Of the table: letter J", "normal 80 2 3", "tightened 80 1 2", "59", "A negative test does not make a lot free" })
        {
            Assert.Contains(part, page, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("good=x", "Good lots: a number such as 1 is needed; read “x”")]
    [InlineData("good=7", "the bad share above the good one")]
    [InlineData("size=5", "or both left empty")]
    [InlineData("size=5&accept=5", "fewer bad ones accepted")]
    [InlineData("lot=1", "2 units or more")]
    [InlineData("lot=-4", "a whole number is needed")]
    [InlineData("level=IV", "The level is one of")]
    [InlineData("share=0", "lie between 0 and 100 %")]
    [InlineData("grams=0", "Grams are above 0")]
    public async Task Page_AskedWhatCannotBe_SaysWhatToDo(string query, string says)
    {
        using var client = await Tickets.NamedAsync(site);
        Assert.Contains(says, await Tickets.TextAsync(client, "/laboratory/plans?" + query), StringComparison.Ordinal);
    }
}
