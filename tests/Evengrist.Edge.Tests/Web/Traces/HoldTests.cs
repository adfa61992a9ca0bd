using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Ledger;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>A site of its own: holds change what others would see.</summary>
public sealed class HoldTests(WebSite site) : IClassFixture<WebSite>
{
    // The pallet was packed on 15 September 20:20 mill time and left on the 17th at 08:00.
    private const string Page = "/tracing/hold?code=25-0709-001&asof=2025-09-16T00:00";

    [Fact]
    public async Task Hold_WhatIsHereAndWhatHasGone_AreToldApart()
    {
        using var client = await Tickets.NamedAsync(site);
        var gone = await Tickets.TextAsync(client, "/tracing/hold?code=25-0709-001&asof=2025-12-01T00:00");
        Assert.Contains("Still here: 0", gone, StringComparison.Ordinal);
        Assert.Contains("ORLAWICK : 1 package,", gone, StringComparison.Ordinal);

        Assert.Contains("Still here: 1", await Tickets.TextAsync(client, Page), StringComparison.Ordinal);
        using var answer = await WebSite.PostAsync(client, Page, Page, [new("_handler", "hold"), new("H.Reason", "Treated seed."), new("H.At", "2025-09-16T00:00")]);
        Assert.Contains("1 put on hold by Ada Miller", Tickets.Plain(await answer.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        var hold = site.Mill.Ask(view => Assert.Single(view.Book.Happenings, h => h.Kind == HappeningKind.Held && view.Book[h.On].Code == "P-0001"));
        Assert.Equal("Treated seed.", hold.Text);
    }

    [Fact]
    public async Task Hold_WithoutAReason_IsRefused()
    {
        using var client = await Tickets.NamedAsync(site);
        var before = site.Mill.Ask(view => view.Book.Last);
        using var answer = await WebSite.PostAsync(client, Page, Page, [new("_handler", "hold"), new("H.Reason", " "), new("H.At", "2025-09-16T00:00")]);
        Assert.Contains("A hold needs a name and a reason.", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(before, site.Mill.Ask(view => view.Book.Last));
    }

    [Fact]
    public async Task Hold_ForgedFromElsewhere_IsRefused()
    {
        using var client = await Tickets.NamedAsync(site);
        var before = site.Mill.Ask(view => view.Book.Last);
        using var content = new FormUrlEncodedContent([new("_handler", "hold"), new("H.Reason", "forged"), new("H.At", "2025-09-16T00:00")]);
        using var answer = await client.PostAsync(new Uri(Page, UriKind.Relative), content);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(before, site.Mill.Ask(view => view.Book.Last));
    }

    [Fact]
    public async Task Hold_OfNothing_SaysWhatToDo()
    {
        using var client = site.Client();
        Assert.Contains("Nothing to hold.", await Tickets.TextAsync(client, "/tracing/hold?code=ZZZ"), StringComparison.Ordinal);
    }
}
