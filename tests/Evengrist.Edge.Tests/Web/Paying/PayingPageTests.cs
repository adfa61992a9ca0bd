using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Paying;

/// <summary>A site without certificates until a test enters one.</summary>
public sealed class PayingPageTests : IAsyncLifetime
{
    private readonly WebSite site = new();

    public Task InitializeAsync() => site.InitializeAsync();

    public Task DisposeAsync() => site.DisposeAsync();

    [Fact]
    public async Task Ticket_WithoutCertificates_IsMarkedAndIsSettledOnceTheyAreEntered()
    {
        using var client = await site.WithTicketAsync("25-0914-301", certified: false);
        var page = await Tickets.TextAsync(client, "/intake/25-0914-301");
        Assert.Contains("Not for settlement. truck scale had no certificate in force on 2025-09-14", page, StringComparison.Ordinal);
        Assert.Contains("Not for settlement: truck scale had no certificate", await Tickets.TextAsync(client, "/intake/25-0914-301/print"), StringComparison.Ordinal);
        Assert.Contains("NIR-1 had no certificate", (await client.AnswerAsync("/api/intake/tickets/25-0914-301")).GetProperty("notForSettlement").ToString(), StringComparison.Ordinal);
        Assert.Contains("not for settlement", await Tickets.TextAsync(client, "/intake?day=2025-09-14"), StringComparison.Ordinal);
        Assert.Contains("had no certificate", await PostAsync(client, "pay", ("Pay.What", "settle")), StringComparison.Ordinal);

        await EnterAsync(client, "truck scale");
        await EnterAsync(client, "NIR-1");
        await EnterAsync(client, "dockage tester");
        var certificates = await Tickets.TextAsync(client, "/intake/certificates");
        Assert.Contains("truck scale", certificates, StringComparison.Ordinal);
        Assert.DoesNotContain("Not for settlement for want of a certificate of truck scale", certificates, StringComparison.Ordinal);
        Assert.Equal("", await PostAsync(client, "pay", ("Pay.What", "part"), ("Pay.Value", "70")));
        Assert.Contains("advance paid", await Tickets.TextAsync(client, "/intake/25-0914-301"), StringComparison.Ordinal);
        Assert.Equal("", await PostAsync(client, "pay", ("Pay.What", "settle")));
        var settled = await Tickets.TextAsync(client, "/intake/25-0914-301");
        Assert.All(["4,541.31 USD", "1,946.27 USD", "6,487.58 USD", "nothing left"], w => Assert.Contains(w, settled, StringComparison.Ordinal));

        var statement = await Tickets.TextAsync(client, "/intake/statement?grower=Drumsallow&from=2025-09-14&until=2025-09-14");
        Assert.All(["Statement of Drumsallow", "6,487.58 USD", "948.48", "DS-2 · HW", "25-0914-301"], w => Assert.Contains(w, statement, StringComparison.Ordinal));
        Assert.Contains("Statement of deliveries", await Tickets.TextAsync(client, "/intake/statement/print?grower=Drumsallow&from=2025-09-14&until=2025-09-14"), StringComparison.Ordinal);
        var csv = await client.GetStringAsync(new Uri("/intake/statement.csv?grower=Drumsallow&from=2025-09-14&until=2025-09-14", UriKind.Relative));
        Assert.Contains("Drumsallow,25-0914-301,2025-09-14,DS-2,,HW,26340,26023.920,", csv, StringComparison.Ordinal);
        Assert.Contains(",6487.58,4541.31,6487.58,0.00,USD,Settled,", csv, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Void_OnThePage_KeepsTheTicketAndSaysSo()
    {
        using var client = await site.WithTicketAsync("25-0914-301");
        Assert.Contains("say why it is voided", await PostAsync(client, "pay", ("Pay.What", "void")), StringComparison.Ordinal);
        Assert.Equal("", await PostAsync(client, "pay", ("Pay.What", "void"), ("Pay.Why", "weighed under the wrong number")));
        var page = await Tickets.TextAsync(client, "/intake/25-0914-301");
        Assert.Contains("Void since", page, StringComparison.Ordinal);
        Assert.Contains("weighed under the wrong number", page, StringComparison.Ordinal);
        Assert.Contains("VOID", await Tickets.TextAsync(client, "/intake/25-0914-301/print"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pay_WrongInput_SaysWhatAndLosesNothing()
    {
        using var client = await site.WithTicketAsync("25-0914-301");
        Assert.Contains("read “seventy”", await PostAsync(client, "pay", ("Pay.What", "part"), ("Pay.Value", "seventy")), StringComparison.Ordinal);
        Assert.Contains("at most 100 per cent", await PostAsync(client, "pay", ("Pay.What", "part"), ("Pay.Value", "120")), StringComparison.Ordinal);
        Assert.Contains("value=\"120\"", await RawAsync(client, "/intake/25-0914-301", "pay", ("Pay.What", "part"), ("Pay.Value", "120")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/intake/certificates", "certificate", "C.From", "yesterday", "is a date like")]
    [InlineData("/intake/parties", "party", "P.Code", "G1", "needs its name")]
    [InlineData("/intake/parties", "field", "F.Hectares", "many", "no number of hectares")]
    [InlineData("/intake/parties", "vehicle", "V.Code", "trailer 1", "needs its carrier")]
    public async Task Paper_WrongInput_SaysWhatAndKeepsWhatWasTyped(string page, string form, string field, string value, string reason)
    {
        using var client = await Tickets.NamedAsync(site);
        var html = await RawAsync(client, page, form, (field, value));
        Assert.Contains(reason, WebUtility.HtmlDecode(html), StringComparison.Ordinal);
        Assert.Contains($"value=\"{value}\"", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/intake/statement?grower=Nobody", "No load of “Nobody” came")]
    [InlineData("/intake/statement?from=yesterday", "“yesterday” is no date")]
    [InlineData("/intake/season?from=2025-09-02&until=2025-09-01", "before it begins")]
    [InlineData("/intake/season?from=2025-07-01&until=2026-06-30", "By district")]
    [InlineData("/intake/season/print", "Season report to growers")]
    [InlineData("/intake/statement?from=2025-07-01&until=2026-06-30", "Drumsallow")]
    [InlineData("/intake/parties", "Keep a party")]
    [InlineData("/intake/receipts?from=2025-07-01&until=2026-06-30", "telephone of the source (1.337(a)(1))")]
    [InlineData("/intake/certificates", "no certificate")]
    public async Task Page_OverATinyMill_AnswersAndShows(string address, string shows)
    {
        using var client = await site.WithTicketAsync("25-0914-301", certified: false);
        Assert.Contains(shows, await Tickets.TextAsync(client, address), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Receipts_AsCsv_HaveEveryItemAndWhatIsMissing()
    {
        using var client = await site.WithTicketAsync("25-0914-301");
        var csv = await client.GetStringAsync(new Uri("/intake/receipts.csv?from=2025-09-14&until=2025-09-14", UriKind.Relative));
        Assert.Contains("name of the source [21 CFR 1.337(a)(1)]", csv, StringComparison.Ordinal);
        Assert.Contains("25-0914-301", csv, StringComparison.Ordinal);
        Assert.Contains("no,name of the source (1.337(a)(1)); address of the source", csv, StringComparison.Ordinal);
    }

    // Empty where the form was taken and the page sends one on.
    private static async Task<string> PostAsync(HttpClient client, string form, params (string Key, string Value)[] fields) => Tickets.Plain(await RawAsync(client, "/intake/25-0914-301", form, fields));

    private static async Task<string> RawAsync(HttpClient client, string page, string form, params (string Key, string Value)[] fields)
    {
        using var answer = await WebSite.PostAsync(client, page, page, [new("_handler", form), .. fields.Select(f => KeyValuePair.Create(f.Key, f.Value))]);
        return answer.StatusCode == HttpStatusCode.Redirect ? "" : await answer.Content.ReadAsStringAsync();
    }

    private static async Task EnterAsync(HttpClient client, string instrument)
    {
        using var answer = await WebSite.PostAsync(client, "/intake/certificates", "/intake/certificates",
            [new("_handler", "certificate"), new("C.Code", instrument), new("C.Name", "instrument"), new("C.Number", "W-1"), new("C.Body", "County sealer"), new("C.From", "2025-01-01"), new("C.Until", "2025-12-31")]);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
    }
}
