using System.Net;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Edge.Tests.Web.Trucks;

[Collection(TruckSiteCollection.Name)]
public sealed class NewTicketTests(WebSite site)
{
    // Worked by independent scripts from the notice's table; see docs/model/settlement.md.
    [Fact]
    public async Task Record_TheWorkedTicket_IsPaidToTheCent()
    {
        using var client = await Tickets.NamedAsync(site);
        using var answer = await Tickets.SendAsync(client, Tickets.Worked("25-0914-001"));
        Assert.EndsWith("/intake/25-0914-001?done=true", answer.Headers.Location?.ToString(), StringComparison.Ordinal);

        var page = await Tickets.TextAsync(client, "/intake/25-0914-001");
        Assert.All(["26,340", "26,023.9", "25,813.3", "948.48", "0.64", "6.84", "6,487.58 USD"], figure => Assert.Contains(figure, page, StringComparison.Ordinal));
        Assert.Equal(Mass.FromKilograms(26_340m), site.Mill.Ask(view => view.Book.StockOf(view.Book.Named("25-0914-001").Id, TinyMill.Morning)) + Tipped("25-0914-001"));
    }

    // Carried by X_t = X_i (100 − M_t)/(100 − M_i): 13.1 at 12mb is 14.89 dry, 12.88 at 13.5mb, 12.80 at 14mb. 60.0 lb/bu is 78.9 kg/hL (FGIS-PN-97-5).
    [Fact]
    public async Task Record_Protein_IsShownOnEveryBasisAndStaysAsItWasRead()
    {
        using var client = await Tickets.NamedAsync(site);
        using var answer = await Tickets.SendAsync(client, Tickets.Worked("25-0914-002"));
        var page = await Tickets.TextAsync(client, "/intake/25-0914-002");
        Assert.All(["14.89 % dry", "12.88 % 13.5mb", "12.80 % 14mb", "78.9"], figure => Assert.Contains(figure, page, StringComparison.Ordinal));

        var before = site.Mill.ReadingOf("25-0914-002", Property.Protein)!;
        using var us = await WebSite.PostAsync(client, "/intake/25-0914-002", "/choose", [new("units", "us"), new("back", "/intake/25-0914-002")]);
        Assert.Contains("84,790 lb", await Tickets.TextAsync(client, "/intake/25-0914-002"), StringComparison.Ordinal);
        using var si = await WebSite.PostAsync(client, "/intake/25-0914-002", "/choose", [new("units", "si"), new("back", "/intake/25-0914-002")]);
        var after = site.Mill.ReadingOf("25-0914-002", Property.Protein)!;
        Assert.Equal(decimal.GetBits(before.Value), decimal.GetBits(after.Value));
        Assert.Equal((13.1m, Basis.At12), (after.Value, after.Basis));
    }

    [Theory]
    [InlineData("T.Gross", "-38460", "cannot be below zero")]
    [InlineData("T.Gross", "384600", "above 120,000 kg nothing runs on a road")]
    [InlineData("T.Gross", "38.46", "Were tonnes typed")]
    [InlineData("T.Gross", "99999999999", "Were grams typed")]
    [InlineData("T.Gross", "38,460", "which may mean thousands or decimals")]
    [InlineData("T.Tare", "39000", "is above the gross")]
    [InlineData("T.Tare", "heavy", "is no number of kg")]
    [InlineData("T.ProteinBasis", "", "has no moisture basis")]
    [InlineData("T.Protein", "13.1 % 14mb", "and 12mb is chosen beside it")]
    [InlineData("T.Protein", "131", "cannot be")]
    [InlineData("T.Moisture", "142", "cannot be")]
    [InlineData("T.At", "2925-07-09T10:40", "has not come yet")]
    [InlineData("T.At", "yesterday", "is no date and time")]
    [InlineData("T.Bin", "B99", "There is no place with the code “B99”")]
    [InlineData("T.Bin", "PIT1", "not a wheat bin")]
    [InlineData("T.Source", "XX-1", "There is no place with the code “XX-1”")]
    [InlineData("T.Contract", "NONE v7", "There is no contract")]
    [InlineData("T.Ticket", "61", "is no ticket number")]
    [InlineData("T.Way", "LEG1 | PIT1", "are not connected")]
    [InlineData("T.Plate", "", "Still needed: the plate")]
    public async Task Record_OneFieldThatCannotBe_IsRefusedInWordsAndNothingIsLost(string field, string value, string says)
    {
        using var client = await Tickets.NamedAsync(site);
        var form = Tickets.Worked("25-0914-050");
        form[field] = value;
        var before = site.Mill.Ask(view => view.Book.Last);

        using var answer = await Tickets.SendAsync(client, form);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var html = await answer.Content.ReadAsStringAsync();
        Assert.Contains(says, Tickets.Plain(html), StringComparison.Ordinal);
        Assert.Contains("Not recorded; what you typed is still here.", html, StringComparison.Ordinal);
        Assert.All(form.Where(f => f.Value.Length > 0 && f.Key is not ("_handler" or "T.Act")), typed => Assert.Contains($"value=\"{typed.Value}\"", html, StringComparison.Ordinal));
        Assert.Equal(before, site.Mill.Ask(view => view.Book.Last));
    }

    [Fact]
    public async Task Record_MoreThanTheBinHolds_IsRefusedByTheLedger()
    {
        using var client = await Tickets.NamedAsync(site);
        var form = Tickets.Worked("25-0914-051");
        (form["T.Bin"], form["T.Gross"], form["T.Class"]) = ("B03", "60000", "SW");
        var before = site.Mill.Ask(view => view.Book.Last);
        using var answer = await Tickets.SendAsync(client, form);
        var page = Tickets.Plain(await answer.Content.ReadAsStringAsync());
        Assert.Contains("more than its capacity", page, StringComparison.Ordinal);
        Assert.Contains("does not fit", page, StringComparison.Ordinal);
        Assert.Equal(before, site.Mill.Ask(view => view.Book.Last));
    }

    [Fact]
    public async Task Record_TheSameTicketTwice_IsOneTicket_WithOtherContentRefused()
    {
        using var client = await Tickets.NamedAsync(site);
        var form = Tickets.Worked("25-0914-003");
        using var first = await Tickets.SendAsync(client, form);
        var last = site.Mill.Ask(view => view.Book.Last);
        using var second = await Tickets.SendAsync(client, form);
        Assert.Equal(HttpStatusCode.Redirect, second.StatusCode);
        Assert.Equal(last, site.Mill.Ask(view => view.Book.Last));

        form["T.Gross"] = "38480";
        using var other = await Tickets.SendAsync(client, form);
        Assert.Contains("is recorded already, with other content", Tickets.Plain(await other.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        Assert.Equal(last, site.Mill.Ask(view => view.Book.Last));
    }

    [Fact]
    public async Task Record_ForgedFromElsewhere_IsRefused()
    {
        using var client = await Tickets.NamedAsync(site);
        var before = site.Mill.Ask(view => view.Book.Last);
        using var content = new FormUrlEncodedContent(Tickets.Worked("25-0914-052"));
        using var answer = await client.PostAsync(new Uri("/intake/new", UriKind.Relative), content);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(before, site.Mill.Ask(view => view.Book.Last));
    }

    [Fact]
    public async Task Record_ByNobody_IsRefused()
    {
        ExampleContract.KeepWhereNoneIs(site.Mill);
        using var client = site.Client();
        var before = site.Mill.Ask(view => view.Book.Last);
        using var answer = await Tickets.SendAsync(client, Tickets.Worked("25-0914-053"));
        Assert.Contains("every record carries a name", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(before, site.Mill.Ask(view => view.Book.Last));
    }

    [Fact]
    public async Task Reckon_Only_ShowsThePayAndRecordsNothing()
    {
        using var client = await Tickets.NamedAsync(site);
        var form = Tickets.Worked("25-0914-054");
        form["T.Act"] = "reckon";
        var before = site.Mill.Ask(view => view.Book.Last);
        using var answer = await Tickets.SendAsync(client, form);
        Assert.Contains("6,487.58 USD", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(before, site.Mill.Ask(view => view.Book.Last));
    }

    private Mass Tipped(string ticket) => site.Mill.Ask(view =>
    {
        var truck = view.Book.Named(ticket).Id;
        return Mass.FromGrams(view.Book.MovementsOf(truck).Select(i => view.Book.Movements[i]).Where(m => m.From == truck).Sum(m => m.Mass.Grams));
    });
}
