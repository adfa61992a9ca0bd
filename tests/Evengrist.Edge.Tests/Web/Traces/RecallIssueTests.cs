using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Ledger;
using Evengrist.Plant.Cases;
using Evengrist.Records.Tracing;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>A site of its own: a recall holds what others would see.</summary>
public sealed class RecallIssueTests(WebSite site) : IClassFixture<WebSite>
{
    private const string Page = "/tracing/recall/issue?what=25-0709-001&asof=2025-09-16T00:00";

    [Fact]
    public async Task Issue_HoldsTheNet_KeepsThePaper_AndWritesNotices()
    {
        using var client = await Tickets.NamedAsync(site);
        using var without = await WebSite.PostAsync(client, Page, Page, [new("_handler", "issue"), new("H.Reason", " "), new("H.At", "2025-09-16T00:00")]);
        Assert.Contains("needs a reason", await without.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var when = await WebSite.PostAsync(client, Page, Page, [new("_handler", "issue"), new("H.Reason", "Treated seed."), new("H.At", "soon")]);
        Assert.Contains("no date and time", await when.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Empty(Recalls.All(site.Mill));

        using var answer = await WebSite.PostAsync(client, Page, Page, [new("_handler", "issue"), new("H.Reason", "Treated seed."), new("H.Contact", "Ada Miller, 555 0100"), new("H.At", "2025-09-16T00:00")]);
        Assert.Contains("Recall R-2025-001 issued by Ada Miller : 1 put on hold", Tickets.Plain(await answer.Content.ReadAsStringAsync()).Replace("Miller:", "Miller :", StringComparison.Ordinal), StringComparison.Ordinal);
        var hold = site.Mill.Ask(view => Assert.Single(view.Book.Happenings, h => h.Kind == HappeningKind.Held && view.Book[h.On].Code == "P-0001"));
        Assert.Equal("Recall R-2025-001: Treated seed.", hold.Text);
        var kept = Assert.Single(Recalls.All(site.Mill));
        Assert.Equal(("Ada Miller", "25-0709-001"), (kept.By, kept.Asked));
        Assert.Contains("R-2025-001", await Tickets.TextAsync(client, "/tracing/recalls"), StringComparison.Ordinal);

        // It had not left by then, so there is nobody to tell; a recall issued later has a notice.
        using var nobody = await client.GetAsync(new Uri("/tracing/recalls/R-2025-001/notices.pdf", UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, nobody.StatusCode);
        using var unknown = await client.GetAsync(new Uri("/tracing/recalls/R-1900-001/notices.pdf", UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, unknown.StatusCode);
        const string Later = "/tracing/recall/issue?what=25-0709-001&asof=2025-12-01T00:00";
        using var second = await WebSite.PostAsync(client, Later, Later, [new("_handler", "issue"), new("H.Reason", "Treated seed."), new("H.Contact", "Ada Miller, 555 0100"), new("H.At", "2025-12-01T00:00")]);
        Assert.Contains("Recall R-2025-002 issued", Tickets.Plain(await second.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        using var notices = PdfDocument.Open(await client.GetByteArrayAsync(new Uri("/tracing/recalls/R-2025-002/notices.pdf", UriKind.Relative)));
        var told = Assert.Single(notices.GetPages().Select(p => ContentOrderTextExtractor.GetText(p)), s => s.Contains("To: ", StringComparison.Ordinal));
        Assert.Contains("P-0001", told, StringComparison.Ordinal);
        Assert.Contains("Ada Miller, 555 0100", told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("what=ZZZ", "no pallet, lot or place")]
    [InlineData("what=25-0709-001&kg=much", "is no threshold")]
    [InlineData("what=25-0709-001&chance=200", "is no chance")]
    [InlineData("what=25-0709-001&net=fish", "is no net")]
    [InlineData("what=25-0709-001&prices=WB", "is no price")]
    [InlineData("what=UA", "from when to when")]
    [InlineData("what=UA+2025-09-17T20:00+2025-09-16T20:00", "end before they begin")]
    [InlineData("what=25-0709-001+2025-99-17T20:00", "no date and time")]
    [InlineData("what=instrument+NONE+2025-09-01T00:00+2025-09-02T00:00", "No reading of an instrument")]
    public async Task Ask_WhatCannotBe_SaysWhatToDo_AndKeepsWhatWasTyped(string query, string said)
    {
        using var client = site.Client();
        var page = await client.GetStringAsync(new Uri("/tracing/recall?" + query, UriKind.Relative));
        Assert.Contains(said, Tickets.Plain(page), StringComparison.Ordinal);
        Assert.Contains(WebUtility.HtmlEncode(Uri.UnescapeDataString(query.Split('&')[0]["what=".Length..].Replace('+', ' '))), page, StringComparison.Ordinal);
        using var api = await client.GetAsync(new Uri("/api/tracing/recall?" + query, UriKind.Relative));
        Assert.Equal(query.Contains("prices", StringComparison.Ordinal) ? HttpStatusCode.OK : HttpStatusCode.BadRequest, api.StatusCode);
    }

    [Fact]
    public async Task Posed_TheExample_GivesTheWorkedBounds()
    {
        using var client = site.Client();
        using var answer = await client.PostAsync(new Uri("/api/tracing/recall", UriKind.Relative), new StringContent(RecallCase.Help.Example, System.Text.Encoding.UTF8, "application/json"));
        var bound = (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("packages").EnumerateArray().Single().GetProperty("anyOutflowKilograms");

        // 60 t of A under 40 t of B, 50 t drawn: 10 to 50 t of A (derived).
        Assert.Equal((10_000, 50_000), (bound.GetProperty("least").GetDouble(), bound.GetProperty("most").GetDouble()));
    }
}
