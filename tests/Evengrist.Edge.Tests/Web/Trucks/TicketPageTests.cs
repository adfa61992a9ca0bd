using System.Net;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Edge.Tests.Web.Trucks;

[Collection(TruckSiteCollection.Name)]
public sealed class TicketPageTests(WebSite site)
{
    [Fact]
    public async Task Day_WithTrucks_ListsThemWithSumsAndMarks()
    {
        using var client = await Tickets.NamedAsync(site);
        var page = await Tickets.TextAsync(client, "/intake?day=2025-07-17");
        Assert.All(["25-0709-001", "25-0709-002", "25-0709-003", "75.4", "not settled", "12.4", "DS-2"], word => Assert.Contains(word, page, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Day_BeforeTheFirstTruckAsOf_SaysWhatToDo()
    {
        using var client = site.Client();
        Assert.Contains("No truck has come by this moment.", await Tickets.TextAsync(client, "/intake?asof=2025-01-01T00:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Day_ThatIsNone_IsToldAndTheNewestShown()
    {
        using var client = site.Client();
        Assert.Contains("is no date", await Tickets.TextAsync(client, "/intake?day=julember"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ticket_Unknown_IsNotFound()
    {
        using var client = site.Client();
        using var answer = await client.GetAsync(new Uri("/intake/25-0101-001", UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task Print_OfATicket_CarriesWhatATicketMust()
    {
        using var client = await Tickets.NamedAsync(site);
        using var answer = await Tickets.SendAsync(client, Tickets.Worked("25-0914-010"));
        var page = await Tickets.TextAsync(client, "/intake/25-0914-010/print");
        Assert.All(["25-0914-010", "26,340 kg", "13.1", "12mb", "6,487.58", "B90", "KC-HARD-WINTER-2021-EXAMPLE v1, HRW-FIFTHS v1", "Driver", "Printed", "nobody's present price"], word => Assert.Contains(word, page, StringComparison.Ordinal));
    }

    [Fact]
    public async Task PutRight_Protein_StandsInForTheFirstAndSettlesAnew()
    {
        using var client = await Tickets.NamedAsync(site);
        using var answer = await Tickets.SendAsync(client, Tickets.Worked("25-0914-011"));
        using var right = await Right(client, "25-0914-011", "Protein", "12.4", "12mb", "Read again on the bench.");
        Assert.Equal(HttpStatusCode.Redirect, right.StatusCode);
        var page = await Tickets.TextAsync(client, "/intake/25-0914-011");
        Assert.Contains("0.44", page, StringComparison.Ordinal);
        Assert.DoesNotContain("6,487.58", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task PutRight_ProteinWithoutABasis_IsRefused()
    {
        using var client = await Tickets.NamedAsync(site);
        using var answer = await Tickets.SendAsync(client, Tickets.Worked("25-0914-012"));
        using var right = await Right(client, "25-0914-012", "Protein", "12.4", "", "Read again on the bench.");
        Assert.Contains("has no moisture basis", await right.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(13.1m, site.Mill.ReadingOf("25-0914-012", Property.Protein)!.Value);
    }

    [Fact]
    public async Task PutRight_Gross_CarriesTheLoadWithItAndTheBalanceHolds()
    {
        using var client = await Tickets.NamedAsync(site);
        using var answer = await Tickets.SendAsync(client, Tickets.Worked("25-0914-013"));
        using var right = await Right(client, "25-0914-013", "GrossWeight", "38440", "", "Digits changed about; the strip says 38 440.");
        Assert.Equal(HttpStatusCode.Redirect, right.StatusCode);
        Assert.Contains("26,320", await Tickets.TextAsync(client, "/intake/25-0914-013"), StringComparison.Ordinal);
        Assert.Equal((0L, 0L), site.Mill.Ask(view => (view.Book.StockOf(view.Book.Named("25-0914-013").Id).Grams, view.Book.Places.Sum(p => view.Book.StockOf(p.Id).Grams))));
        Assert.Equal(Mass.FromKilograms(26_320m), site.Mill.Ask(view => view.Book.ThroughputOf(view.Book.Named("25-0914-013").Id, TinyMill.Morning).In));
    }

    [Fact]
    public async Task PutRight_WithoutAReason_IsRefused()
    {
        using var client = await Tickets.NamedAsync(site);
        using var answer = await Tickets.SendAsync(client, Tickets.Worked("25-0914-014"));
        using var right = await Right(client, "25-0914-014", "bin", "B03", "", "");
        Assert.Contains("Give the right value and the reason", await right.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private static Task<HttpResponseMessage> Right(HttpClient client, string ticket, string what, string value, string basis, string why) => WebSite.PostAsync(
        client, $"/intake/{ticket}", $"/intake/{ticket}",
        [new("_handler", "right"), new("R.Key", Guid.NewGuid().ToString("N")), new("R.What", what), new("R.Value", value), new("R.ValueBasis", basis), new("R.Why", why)]);
}
