using System.Net;
using System.Text.RegularExpressions;
using Evengrist.Edge.Tests.Cli;
using Evengrist.Ledger;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace Evengrist.Edge.Tests.Web.Trucks;

/// <summary>Tickets as PDF, read back by another library than the one that wrote them.</summary>
[Collection(TruckSiteCollection.Name)]
public sealed partial class TicketPdfTests(WebSite site)
{
    // The worked ticket of the acceptance list. Sizes: A4 210 × 297 mm (ISO 216) and Letter 8.5 × 11 in (ANSI/ASME Y14.1) in whole points of 1/72 in.
    [Theory]
    [InlineData("a4", 595, 842)]
    [InlineData("letter", 612, 792)]
    public async Task Pdf_OfTheWorkedTicket_SaysEveryNumberOnThePaperAskedFor(string paper, double width, double height)
    {
        using var client = await Tickets.NamedAsync(site);
        using var recorded = await Tickets.SendAsync(client, Tickets.Worked("25-0914-070"));
        using var document = await ReadAsync(client, $"/intake/25-0914-070/ticket.pdf?paper={paper}");
        Assert.All(document.GetPages(), p => Assert.Equal((width, height), (p.Width, p.Height)));
        var text = Text(document);
        Assert.All([
            "Receiving ticket 25-0914-070", "Little Mill", "trailer 7", "DS-2 Drumsallow · Northledge", "B90", "38,460", "12,120", "26,340 kg", "26,023.9", "25,813.3", "948.48", "6.84", "6,487.58",
            "% 12mb", "60.0 lb/bu", "KC-HARD-WINTER-2021-EXAMPLE v1, HRW-FIFTHS v1", "Scale house", "Driver", "NOT FOR SETTLEMENT", "nobody's present price", "page 1 of 1", "data up to fact ", "Printed "],
            words => Assert.Contains(words, text, StringComparison.Ordinal));
        Assert.Contains($"data up to fact {site.Mill.Ask(v => v.Book.Last.Value)}.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("VOID", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pdf_Fonts_AreEmbedded()
    {
        using var client = await Tickets.NamedAsync(site);
        using var recorded = await Tickets.SendAsync(client, Tickets.Worked("25-0914-071"));
        var bytes = await client.GetByteArrayAsync(new Uri("/intake/25-0914-071/ticket.pdf", UriKind.Relative));
        using var document = PdfDocument.Open(bytes);
        Assert.All(document.GetPage(1).Letters.Select(l => l.FontName).Distinct(), name => Assert.Matches(@"^[A-Z]{6}\+DejaVu Sans Condensed", name));
        Assert.Contains("/FontFile2", System.Text.Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pdf_OfAVoidedTicketWithMuchToSay_MarksItAndCountsItsPages()
    {
        using var client = await Tickets.NamedAsync(site);
        using var recorded = await Tickets.SendAsync(client, Tickets.Worked("25-0914-072"));
        var at = NodaTime.Instant.FromUtc(2025, 9, 14, 15, 0);
        site.Mill.Record([
            .. Enumerable.Range(1, 45).Select(n => new Happen($"072 note {n}", "25-0914-072", at, HappeningKind.Note, $"Remark number {n}: the driver says that the load was under a sheet all night and that the sheet was wet on one side.")),
            new Happen("072 void", "25-0914-072", at, HappeningKind.Voided, "wrong truck")], "Ada Miller", "test");
        using var document = await ReadAsync(client, "/intake/25-0914-072/ticket.pdf?paper=letter");
        var text = Text(document);
        Assert.True(document.NumberOfPages > 1);
        Assert.All(Enumerable.Range(1, document.NumberOfPages), n => Assert.Contains($"page {n} of {document.NumberOfPages}", ContentOrderTextExtractor.GetText(document.GetPage(n)), StringComparison.Ordinal));
        Assert.Contains("VOID", text, StringComparison.Ordinal);
        Assert.All([1, 45], n => Assert.Contains($"Remark number {n}:", text, StringComparison.Ordinal));
        Assert.All(document.GetPages(), p => Assert.All(p.Letters, l => Assert.InRange(l.Location.X, 40, p.Width - 40)));
    }

    [Fact]
    public async Task Pdf_OfNoTicketOrNoPaper_IsRefused()
    {
        using var client = await Tickets.NamedAsync(site);
        using var none = await client.GetAsync(new Uri("/intake/25-0101-001/ticket.pdf", UriKind.Relative));
        using var recorded = await Tickets.SendAsync(client, Tickets.Worked("25-0914-073"));
        using var paper = await client.GetAsync(new Uri("/intake/25-0914-073/ticket.pdf?paper=a3", UriKind.Relative));
        Assert.Equal((HttpStatusCode.NotFound, HttpStatusCode.BadRequest), (none.StatusCode, paper.StatusCode));
    }

    [Fact]
    public void Cli_Ticket_WritesTheSameSheet()
    {
        using var folder = new Folder();
        var file = Path.Combine(folder.Path, "mill.db");
        TinyMill.Open(file).Dispose();
        var target = Path.Combine(folder.Path, "ticket.pdf");
        var (status, output, error) = Shell.Run("intake", "ticket", "25-0709-001", "--data", file, "--pdf", target, "--paper", "letter", "--us");
        Assert.Equal((0, ""), (status, error));
        Assert.Contains("25-0709-001", output, StringComparison.Ordinal);
        using var document = PdfDocument.Open(target);
        Assert.Equal((612, 792), (document.GetPage(1).Width, document.GetPage(1).Height));
        Assert.Contains("58,070 lb", Text(document), StringComparison.Ordinal); // 26 340 kg / 0.45359237
        Assert.Equal(2, Shell.Run("intake", "ticket", "25-0709-777", "--data", file, "--pdf", target).Status);
    }

    private static async Task<PdfDocument> ReadAsync(HttpClient client, string address)
    {
        using var answer = await client.GetAsync(new Uri(address, UriKind.Relative));
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType?.MediaType);
        return PdfDocument.Open(await answer.Content.ReadAsByteArrayAsync());
    }

    private static string Text(PdfDocument document) => Space().Replace(string.Join('\n', document.GetPages().Select(p => ContentOrderTextExtractor.GetText(p))), " ");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();
}
