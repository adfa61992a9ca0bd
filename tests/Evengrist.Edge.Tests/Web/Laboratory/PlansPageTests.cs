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
        foreach (var part in new[] { "by attributes 110 with up to 3 bad", "of the sample 41", "Of the table: letter J", "normal 80 2 3", "tightened 80 1 2", "By variables: letter K", "n 60, c 0", "With 95 % confidence it finds a lot of which 4.87 % of such portions", "59", "A negative test does not make a lot free" })
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
    [InlineData("vlevel=II&level=II&limit=1.1", "The quality limit is one of")]
    [InlineData("vlevel=S-1", "The level by variables is one of I, II")]
    [InlineData("portions=5&positive=5", "fewer positive ones accepted")]
    [InlineData("grams=0", "Grams are above 0")]
    public async Task Page_AskedWhatCannotBe_SaysWhatToDo(string query, string says)
    {
        using var client = await Tickets.NamedAsync(site);
        Assert.Contains(says, await Tickets.TextAsync(client, "/laboratory/plans?" + query), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "100 of about 100 g")] // 401/2006 from memory: a lot of 25 t.
    [InlineData("maximum=1000&accept=750&kg=0.454&portion=25&n=1", "1000 34.35 23.3 seller's: 76.7 %")] // The worked case of docs/model/sampling.md: 0.233 at the limit of 1 ppm.
    [InlineData("toxin=ota", "No chance is stated.")]
    [InlineData("toxin=ota&was=don&maximum=600", "No chance is stated.")]
    [InlineData("toxin=ota&sampling=40&preparation=0&analysis=30&kg=1&n=1", "3 50 59.3 seller's: 40.7 %")] // R 4.2.2, plnorm.
    [InlineData("toxin=x", "The toxin is one of don, ota")]
    [InlineData("maximum=-1", "above 0 and at most")]
    [InlineData("n=0.5", "a whole number from 1 to 100")]
    [InlineData("kg=0", "The sample is above 0")]
    [InlineData("toxin=ota&sampling=400&preparation=0&analysis=30", "from 0 to 300 %")]
    public async Task ToxinPlans_Asked_SayChancesOrWhatToDo(string query, string says)
    {
        using var client = await Tickets.NamedAsync(site);
        Assert.Contains(says, await Tickets.TextAsync(client, "/laboratory/plans/toxins?" + query), StringComparison.Ordinal);
    }
}
