using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>Certificates of the demonstration's lots: issued over HTTP, read back from the PDF by another library, checked.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class CertificatesOfTheYearTests(DemonstrationSite site)
{
    private const string Issue = "/api/lab/lots/WB-251007-2/certificates?specification=WB-ORLAWICK&by=Dr%20Anya%20Holt&at=2025-10-13T09:00";

    [Theory]
    [InlineData("a4", 595, 842)]
    [InlineData("letter", 612, 792)]
    public async Task Pdf_OfACertificate_SaysWhatTheTwinSays(string paper, double width, double height)
    {
        using var client = site.Client();
        var issued = await IssueAsync(client);
        var (number, version) = (issued.GetProperty("number").GetString()!, issued.GetProperty("version").GetInt32());
        Assert.Equal("WB-251007-2.WB-ORLAWICK", number);
        var twin = JsonDocument.Parse(await client.GetStringAsync(new Uri($"/api/lab/certificates/{number}?version={version}", UriKind.Relative))).RootElement;
        Assert.Equal("combustion", twin.GetProperty("lines")[0].GetProperty("method").GetString()); // the instrument's readings of that lot were found wrong
        using var document = PdfDocument.Open(await client.GetByteArrayAsync(new Uri($"/laboratory/certificates/{number}/certificate.pdf?version={version}&paper={paper}", UriKind.Relative)));
        Assert.All(document.GetPages(), p => Assert.Equal((width, height), (p.Width, p.Height)));
        var text = string.Join(' ', string.Join('\n', document.GetPages().Select(p => ContentOrderTextExtractor.GetText(p))).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.All(["Certificate of analysis", "Sennorby Mill (an invented mill)", "WB-251007-2", "Orlawick", "US", "WB-ORLAWICK version 1", "Sampling:", "simple acceptance", "No typical", "Dr Anya Holt", "page 1 of 1", issued.GetProperty("shortCode").GetString()!, issued.GetProperty("code").GetString()!],
            words => Assert.Contains(words, text, StringComparison.Ordinal));
        Assert.All(twin.GetProperty("lines").EnumerateArray(), line => Assert.All(
            [line.GetProperty("words").GetString()!, line.GetProperty("result").GetRawText(), $"{line.GetProperty("unit").GetString()} {line.GetProperty("basis").GetString()}", line.GetProperty("method").GetString()!], words => Assert.Contains(words, text, StringComparison.Ordinal)));
        Assert.All(document.GetPages(), p => Assert.All(p.Letters, l => Assert.InRange(l.Location.X, 40, p.Width - 40)));
    }

    [Fact]
    public async Task Check_OfTheCodeAndTheTwin_TellsIssuedFromAltered()
    {
        using var client = site.Client();
        var issued = await IssueAsync(client);
        var number = issued.GetProperty("number").GetString();
        var twin = await client.GetStringAsync(new Uri($"/laboratory/certificates/{number}/certificate.json", UriKind.Relative));
        async Task<string> VerdictAsync(string query, string body)
        {
            using var content = new StringContent(body, Encoding.UTF8, "application/json");
            using var answer = await client.PostAsync(new Uri("/api/lab/certificates/check" + query, UriKind.Relative), content);
            return (await answer.Content.ReadFromJsonAsync<JsonElement>()).TryGetProperty("verdict", out var verdict) ? verdict.GetString()! : answer.StatusCode.ToString();
        }

        Assert.Equal("issued", await VerdictAsync($"?code={issued.GetProperty("shortCode").GetString()}", ""));
        Assert.Equal("issued", await VerdictAsync("", twin));
        Assert.Equal("notIssued", await VerdictAsync("", twin.Replace("\"upper\": 12.1", "\"upper\": 12.2", StringComparison.Ordinal)));
        Assert.Equal("BadRequest", await VerdictAsync("", "{ }"));
        Assert.Contains("Issued: WB-251007-2.WB-ORLAWICK", await Tickets.TextAsync(client, $"/laboratory/certificates?code={issued.GetProperty("shortCode").GetString()}"), StringComparison.Ordinal);
        Assert.Contains("Not issued by this mill.", await Tickets.TextAsync(client, "/laboratory/certificates?code=12"), StringComparison.Ordinal);
        Assert.Contains("signed by Dr Anya Holt", await Tickets.TextAsync(client, $"/laboratory/certificates/{number}?asof=2026-01-14T10:40"), StringComparison.Ordinal);
        using var schema = JsonDocument.Parse(await client.GetStringAsync(new Uri("/api/lab/certificates/schema", UriKind.Relative)));
        Assert.All(JsonDocument.Parse(twin).RootElement.EnumerateObject(), member => Assert.True(schema.RootElement.GetProperty("properties").TryGetProperty(member.Name, out _), member.Name));
    }

    [Theory]
    [InlineData("/api/lab/lots/WB-260114-1/certificates?by=Dr%20Anya%20Holt&at=2026-01-14T10:40", "is not released")]
    [InlineData("/api/lab/lots/WB-251007-2/certificates?by=Piet&at=2025-10-13T09:00", "not among those who may sign")]
    [InlineData("/api/lab/lots/WB-251007-2/certificates?by=Femi%20Strand&specification=HG&at=2025-10-13T09:00", "No specification HG")]
    [InlineData("/api/lab/lots/NOPE/certificates?by=Femi%20Strand", "There is no lot NOPE")]
    [InlineData("/api/lab/lots/WB-251007-2/certificates?by=Femi%20Strand&at=noon", "is no moment")]
    public async Task Issue_ThatCannotBe_IsRefusedInWords(string path, string says)
    {
        using var client = site.Client();
        using var answer = await client.PostAsync(new Uri(path, UriKind.Relative), null);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(says, (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Issue_OnThePage_SaysWhyItIsRefused()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Piet Larkin")]);
        const string Page = "/laboratory/lots/WB-251007-2?spec=WB-ORLAWICK&asof=2025-10-13T09:00";
        using var refused = await WebSite.PostAsync(client, Page, Page, [new("_handler", "certify")]);
        Assert.Contains("Piet Larkin is not among those who may sign", Tickets.Plain(await refused.Content.ReadAsStringAsync()), StringComparison.Ordinal);
    }

    private static async Task<JsonElement> IssueAsync(HttpClient client)
    {
        using var answer = await client.PostAsync(new Uri(Issue, UriKind.Relative), null);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.Created, text);
        return JsonDocument.Parse(text).RootElement;
    }
}
