using System.Net;
using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Edge.Tests.Web.Paying;

[Collection(PayingSiteCollection.Name)]
public sealed class PayingApiTests(WebSite site)
{
    // Practice A1: the worked ticket is worth 6,487.58 USD; 70 % of it is 4,541.31.
    [Fact]
    public async Task Pay_AdvanceThenFinal_SumToThePayAndStandInTheStatement()
    {
        using var client = await site.WithTicketAsync("25-0914-201");
        var (status, advance) = await client.SendAsync("/api/intake/tickets/25-0914-201/payments?by=Ines", new { advancePercent = 70 });
        Assert.Equal((HttpStatusCode.Created, 4_541.31m, "Advanced"), (status, advance.GetProperty("paid").GetDecimal(), advance.GetProperty("stage").GetString()));
        var (_, final) = await client.SendAsync("/api/intake/tickets/25-0914-201/payments?by=Ines", new { });
        Assert.Equal((6_487.58m, 0m, "Settled"), (final.GetProperty("paid").GetDecimal(), final.GetProperty("left").GetDecimal(), final.GetProperty("stage").GetString()));
        var (again, refused) = await client.SendAsync("/api/intake/tickets/25-0914-201/payments?by=Ines", new { });
        Assert.Equal(HttpStatusCode.Conflict, again);
        Assert.Contains("It is settled", refused.GetProperty("detail").GetString(), StringComparison.Ordinal);

        var statement = Assert.Single((await client.AnswerAsync("/api/intake/statement?grower=Drumsallow&from=2025-09-14&until=2025-09-14")).EnumerateArray());
        var tickets = statement.GetProperty("tickets").EnumerateArray().ToArray();
        Assert.Contains(tickets, t => t.GetProperty("ticket").GetString() == "25-0914-201" && t.GetProperty("payments").GetArrayLength() == 2);
        Assert.Equal(tickets.Where(t => t.GetProperty("pay").ValueKind == JsonValueKind.Number).Sum(t => t.GetProperty("pay").GetDecimal()), statement.GetProperty("all").GetProperty("gross").GetDecimal());
    }

    [Fact]
    public async Task Void_ATicket_TakesItsGrainBackAndStandsInTheStatement()
    {
        using var client = await site.WithTicketAsync("25-0914-202");
        Mass Stock() => site.Mill.Ask(v => v.Book.StockOf(v.Book.Named("B90").Id));
        var before = Stock();
        var (bad, _) = await client.SendAsync("/api/intake/tickets/25-0914-202/void?by=Ada", new { reason = "" });
        Assert.Equal(HttpStatusCode.BadRequest, bad);
        var (status, voided) = await client.SendAsync("/api/intake/tickets/25-0914-202/void?by=Ada", new { reason = "weighed under the wrong number" });
        Assert.Equal((HttpStatusCode.OK, "Voided"), (status, voided.GetProperty("stage").GetString()));
        Assert.Equal(Mass.FromKilograms(26_340m), before - Stock());
        Assert.Contains("voided: weighed under the wrong number", voided.GetProperty("whyNotSettled")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Papers_Posted_TellGrowerVarietyAndReceipt()
    {
        using var client = await site.WithTicketAsync("25-0914-203");
        await client.KeepAsync("parties", new { code = "G7", name = "Wickenlow", address = "1 Mere Road", phone = "555-0111" });
        await client.KeepAsync("parties", new { code = "H7", name = "Pell Haulage", address = "2 Yard Lane", phone = "555-0112" });
        await client.KeepAsync("fields", new { code = "WL-1", grower = "G7", variety = "Quillet", district = "Lowmere", hectares = 61.5 });
        await client.KeepAsync("vehicles", new { code = "trailer 7", carrier = "H7" });
        var receipts = await client.AnswerAsync("/api/intake/receipts?from=2025-09-14&until=2025-09-14");
        var record = receipts.EnumerateArray().First(r => r.GetProperty("ticket").GetString() == "25-0914-203");
        Assert.False(record.GetProperty("isComplete").GetBoolean()); // field DS-2 has no sheet, so its grower is not named
        Assert.Contains(record.GetProperty("missing").EnumerateArray(), m => m.GetString() == "name of the source (1.337(a)(1))");
        Assert.Contains(record.GetProperty("items").EnumerateArray(), i => i.GetProperty("text").GetString() == "Pell Haulage");
        var season = await client.AnswerAsync("/api/intake/season-report?from=2025-07-01&until=2026-06-30");
        Assert.Contains(season.EnumerateArray().SelectMany(r => r.GetProperty("varieties").EnumerateArray()), v => v.GetProperty("group").GetProperty("name").GetString() == "Quillet · HW");
    }

    [Theory]
    [InlineData("/api/intake/statement", "Say which grower")]
    [InlineData("/api/intake/statement?grower=Drumsallow&from=yesterday", "is no date")]
    [InlineData("/api/intake/season-report?from=2026-01-01&until=2025-01-01", "before it begins")]
    [InlineData("/api/intake/certificates?asof=never", "is no moment")]
    public async Task Ask_Wrongly_SaysWhat(string address, string reason)
    {
        using var client = site.Client();
        using var answer = await client.GetAsync(new Uri(address, UriKind.Relative));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(reason, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Statement_OfNobody_IsNotFound()
    {
        using var client = site.Client();
        using var answer = await client.GetAsync(new Uri("/api/intake/statement?grower=Nobody", UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Theory]
    [InlineData("certificates", """{"code":"x","instrument":"scale","number":"1","body":"b","from":"2025-02-30","until":"2025-12-31"}""", "A date is written")]
    [InlineData("certificates", """{"code":"x","instrument":"scale","number":"1","body":"b","from":"2025-12-31","until":"2025-01-31"}""", "before it begins")]
    [InlineData("parties", """{"code":"x"}""", "name")]
    [InlineData("fields", """{"code":"x","grower":"g","hectares":-1}""", "more than 0")]
    [InlineData("vehicles", "{", "")]
    public async Task Post_ABrokenPaper_IsRefusedInWords(string kind, string json, string reason)
    {
        using var client = site.Client();
        using var content = new StringContent(json, System.Text.Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri($"/api/intake/{kind}?by=Ada", UriKind.Relative), content);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(reason, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Post_APaperOfNobody_IsRefused()
    {
        using var client = site.Client();
        var (status, body) = await client.SendAsync("/api/intake/parties", new { code = "G8", name = "x" });
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Contains("Say who keeps it", body.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pay_InACurrencyThatIsNoneOrATicketThatIsNone_IsRefused()
    {
        using var client = await site.WithTicketAsync("25-0914-204");
        Assert.Equal(HttpStatusCode.BadRequest, (await client.SendAsync("/api/intake/tickets/25-0914-204/payments?by=Ines", new { advancePerTonne = 100, currency = "dollars" })).Status);
        Assert.Equal(HttpStatusCode.BadRequest, (await client.SendAsync("/api/intake/tickets/25-0914-204/payments", new { advancePercent = 70 })).Status);
        Assert.Equal(HttpStatusCode.Conflict, (await client.SendAsync("/api/intake/tickets/25-0914-999/payments?by=Ines", new { advancePercent = 70 })).Status);
        Assert.Equal(HttpStatusCode.Conflict, (await client.SendAsync("/api/intake/tickets/25-0914-204/payments?by=Ines", new { advancePercent = 170 })).Status);
    }
}
