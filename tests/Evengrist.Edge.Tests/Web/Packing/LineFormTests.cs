using System.Net;
using System.Text.RegularExpressions;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Packing.Products;
using Evengrist.Records.Packing;

namespace Evengrist.Edge.Tests.Web.Packing;

/// <summary>Lines and campaigns by their forms: a row for each; what is wrong stands beside its field, and nobody's version is overwritten unseen.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class LineFormTests(WebSite site)
{
    private const string Book = "/packing/lines/book", Campaigns = "/packing/lines/campaigns";

    [Fact]
    public async Task Book_ByItsForm_IsChangedRowByRow()
    {
        Assert.Empty(Products.Keep(site.Mill, new Product("LF-25", "Flour of the lines' form", "LF", PackKind.Bag, 25_000) { PerPallet = 40, PackedAs = "40 × 25 kg" }, "Ada").Faults);
        using var client = await Tickets.NamedAsync(site);
        var (before, version, _) = KeepLineBook.Newest(site.Mill);
        var n = before.Lines.Count;

        // A row more is a change of the page alone.
        var more = await Answer(client, Book, "B", "line+", version, []);
        Assert.Contains("name=\"B.Lines[0].Code\"", more, StringComparison.Ordinal);
        Assert.Contains("nothing is kept yet", more, StringComparison.Ordinal);
        Assert.Equal(version, KeepLineBook.Newest(site.Mill).Version);

        // Each fault beside its field; what was typed stays.
        var bad = await Answer(client, Book, "B", "keep", version,
        [
            ("Lines[0].Code", "L1"), ("Lines[0].Crew", "x2"), ("Lines[0].Makes[0].Product", "LF-25"), ("Lines[0].Makes[0].Rate", "0"), ("Lines[0].Makes[0].Bin", "Y-BR"), ("Lines[0].Makes[1].Product", "NONE-1"), ("Lines[0].Makes[1].Rate", "12"),
            ("Lines[1].Code", "l1"), ("Lines[1].Crew", "2"), ("Rules[0].After", "NOFLOUR"), ("Rules[0].Minutes", "7.5"), ("Rules[0].Flush", "1"), ("Shifts[0].From", "25:00"), ("Shifts[0].Until", "14:00"), ("Shifts[0].People", "9"),
            ("PackChange", "25"), ("Late", "-1"), ("Change", "120"), ("Flush", "150"),
        ]);
        foreach (var (field, says) in new[]
        {
            ("Lines-0-Crew", "“x2” is no number"), ("Lines-0-Makes-0-Rate", "A rate is above 0"), ("Lines-0-Makes-0-Bin", "Y-BR is not connected to L1"), ("Lines-0-Makes-1-Product", "There is no product NONE-1"), ("Lines-1-Code", "L1 stands above already"),
            ("Rules-0-After", "no flour and no product NOFLOUR"), ("Rules-0-Minutes", "whole number"), ("Rules-0-FlushTo", "Say where"), ("Shifts-0-From", "A time is like 06:00"), ("Late", "It lies from 0"),
        })
        {
            Assert.Matches($"aria-describedby=\"B-{field}-fault\"", bad);
            Assert.Matches($"id=\"B-{field}-fault\">[^<]*{Regex.Escape(says)}", bad);
        }

        Assert.Contains("Tick the days", bad, StringComparison.Ordinal);
        Assert.Contains("value=\"x2\"", bad, StringComparison.Ordinal);
        Assert.Contains("<option value=\"NONE-1\" selected", bad, StringComparison.Ordinal);
        Assert.Equal(version, KeepLineBook.Newest(site.Mill).Version);

        // All of it right.
        (string, string)[] good =
        [
            ("Lines[0].Code", "l1"), ("Lines[0].Crew", "3"), ("Lines[0].Makes[0].Product", "LF-25"), ("Lines[0].Makes[0].Rate", "20.5"), ("Lines[0].Makes[0].Bin", "F-WB"), ("Lines[0].Makes[1].Product", ""),
            ("Rules[0].After", "LF"), ("Rules[0].Minutes", "45"), ("Rules[0].Flush", "0.3"), ("Rules[0].FlushTo", "rework tote"), ("Rules[0].CleanDown", "true"), ("Shifts[0].From", "22:00"), ("Shifts[0].Until", "06:00"), ("Shifts[0].People", "9"), ("Shifts[0].Days", "Monday"), ("Shifts[0].Days", "Sunday"),
            ("Signers[0].Name", " Ada Miller "), ("PackChange", "25"), ("MayCleanDown", "true"), ("Late", "1000"), ("Change", "120"), ("Flush", "150"),
        ];
        using var kept = await Post(client, Book, "B", "keep", version, good);
        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        var (book, next, by) = KeepLineBook.Newest(site.Mill);
        Assert.Equal((version + 1, "L1", 3, 1), (next, book.Lines.Single().Code, book.Lines[0].Crew, book.Lines[0].Makes.Count));
        Assert.Equal(("LF-25", 20.5, "F-WB"), (book.Lines[0].Makes[0].Product, book.Lines[0].Makes[0].TonnesPerHour, book.Lines[0].Makes[0].Bin));
        Assert.Equal(("LF", null, 45, 0.3, true), (book.Rules[0].After, book.Rules[0].Into, book.Rules[0].Minutes, book.Rules[0].FlushTonnes, book.Rules[0].IsCleanDown));
        Assert.Equal([NodaTime.IsoDayOfWeek.Monday, NodaTime.IsoDayOfWeek.Sunday], book.Shifts[0].Days);
        Assert.Equal(["Ada Miller"], book.Signers);
        Assert.Contains($">{by}<", await client.GetStringAsync(new Uri(Book, UriKind.Relative)), StringComparison.Ordinal);

        // Sent from the page as it was before: another's version stands.
        Assert.Contains("was kept meanwhile", await Answer(client, Book, "B", "keep", version, [.. good[..^1], ("Flush", "151")]), StringComparison.Ordinal);
        Assert.Contains("Nothing is changed", await Answer(client, Book, "B", "keep", next, good), StringComparison.Ordinal);
        Assert.Equal(next, KeepLineBook.Newest(site.Mill).Version);

        // As a file over HTTP: the same table, held against the version it follows.
        var json = await client.GetStringAsync(new Uri("/api/packing/lines", UriKind.Relative));
        Assert.Equal(HttpStatusCode.BadRequest, (await Send($"/api/packing/lines?by=Ada&after={version}", json.Replace("20.5", "21", StringComparison.Ordinal))).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await Send("/api/packing/lines", json.Replace("20.5", "21", StringComparison.Ordinal))).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await Send("/api/packing/lines?by=Ada", "{}")).StatusCode);
        Assert.Equal(HttpStatusCode.Created, (await Send($"/api/packing/lines?by=Ada&after={next}", json.Replace("20.5", "21", StringComparison.Ordinal))).StatusCode);
        Assert.Equal(21, KeepLineBook.Newest(site.Mill).Book.Lines[0].Makes[0].TonnesPerHour);
        KeepLineBook.Keep(site.Mill, before, "Ada"); // other tests find what they left
        Assert.Equal(n, KeepLineBook.Newest(site.Mill).Book.Lines.Count);

        Task<HttpResponseMessage> Send(string address, string body) => client.PostAsync(new Uri(address, UriKind.Relative), new StringContent(body, System.Text.Encoding.UTF8, "application/json"));
    }

    [Fact]
    public async Task Campaigns_ByTheirForm_AreKeptOrSaidWhyNot()
    {
        using var client = await Tickets.NamedAsync(site);
        var (before, version, _) = KeepMillCampaigns.Newest(site.Mill);
        var bad = await Answer(client, Campaigns, "C", "keep", version,
            [("Rows[0].Bin", "B01"), ("Rows[0].From", "2026-01-14T06:00"), ("Rows[0].Until", "2026-01-13T06:00"), ("Rows[0].Rate", "a lot"), ("Rows[1].Rate", "3"), ("Rows[1].Until", "tomorrow")]);
        foreach (var (field, says) in new[] { ("0-Bin", "No flour bin B01"), ("0-Until", "It ends after it begins"), ("0-Rate", "“a lot” is no number"), ("1-Bin", "Choose the bin"), ("1-From", "Missing"), ("1-Until", "“tomorrow” is no day") })
        {
            Assert.Matches($"id=\"C-Rows-{field}-fault\">[^<]*{Regex.Escape(says)}", bad);
        }

        Assert.Equal(version, KeepMillCampaigns.Newest(site.Mill).Version);
        using var kept = await Post(client, Campaigns, "C", "keep", version, [("Rows[0].Bin", "f-wb"), ("Rows[0].From", "2026-01-14T06:00"), ("Rows[0].Until", "2026-01-15T06:00"), ("Rows[0].Rate", "12.5")]);
        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        var campaign = KeepMillCampaigns.Newest(site.Mill).Campaigns.Campaigns.Single();
        Assert.Equal(("F-WB", NodaTime.Instant.FromUtc(2026, 1, 14, 12, 0), 12.5), (campaign.Bin, campaign.From, campaign.TonnesPerHour)); // the mill's clock is six hours behind UTC in winter
        Assert.DoesNotContain("name=\"C.Rows[0].Bin\"", await Answer(client, Campaigns, "C", "row-:0", version + 1, [("Rows[0].Bin", "F-WB")]), StringComparison.Ordinal);
        KeepMillCampaigns.Keep(site.Mill, before, "Ada");
    }

    private static Task<HttpResponseMessage> Post(HttpClient client, string page, string form, string act, int seen, IEnumerable<(string Field, string Value)> fields) =>
        WebSite.PostAsync(client, page, page, [new("_handler", page.Split('/')[^1]), new($"{form}.Do", act), new($"{form}.Seen", $"{seen}"), .. fields.Select(f => KeyValuePair.Create($"{form}.{f.Field}", f.Value))]);

    private static async Task<string> Answer(HttpClient client, string page, string form, string act, int seen, IEnumerable<(string Field, string Value)> fields)
    {
        using var answer = await Post(client, page, form, act, seen, fields);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }
}
