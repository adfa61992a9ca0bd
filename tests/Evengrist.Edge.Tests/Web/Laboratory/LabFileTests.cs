using System.Net;
using System.Net.Http.Json;
using System.Text;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Laboratory;

/// <summary>Results an instrument exported, on the page and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class LabFileTests(WebSite site)
{
    private const string Head = "sample;measured;property;value;method;instrument;unit;basis\n";

    [Fact]
    public async Task Api_AFile_IsTakenOnceOrRefusedWithLineAndColumn()
    {
        using var client = site.Client();
        using var taken = await client.PostAsJsonAsync(new Uri("/api/lab/samples?by=Ada", UriKind.Relative), new { code = "X-1", place = "L1", at = "2025-09-16T07:00", tests = "Falling number by falling number; Wet gluten by gluten washing" });
        Assert.Equal(HttpStatusCode.Created, taken.StatusCode);
        async Task<(HttpStatusCode Status, string Text)> Post(string csv, string query = "?by=Ada")
        {
            using var answer = await client.PostAsync(new Uri("/api/lab/results/file" + query, UriKind.Relative), new StringContent(csv, Encoding.UTF8, "text/csv"));
            return (answer.StatusCode, await answer.Content.ReadAsStringAsync());
        }

        const string Good = Head + "X-1;2025-09-16 09:00;falling number;318;falling number;;s;\nX-1;2025-09-16 09:00;falling number;326;falling number;;s;\nX-1;2025-09-16 09:00;wet gluten;28.4;gluten washing;;%;14mb\n";
        Assert.Equal((HttpStatusCode.OK, true), await Post(Good, "?look=true") is var look ? (look.Status, look.Text.Contains("\"added\":0", StringComparison.Ordinal)) : default);
        Assert.Equal((HttpStatusCode.Created, true), await Post(Good) is var first ? (first.Status, first.Text.Contains("\"added\":3", StringComparison.Ordinal)) : default);
        Assert.Equal((HttpStatusCode.OK, true), await Post(Good) is var again ? (again.Status, again.Text.Contains("\"added\":0,\"alreadyKnown\":3", StringComparison.Ordinal)) : default);
        foreach (var (csv, says) in new[]
        {
            ("", ""), (Head, "a heading alone"), ("sample;value\n", "headings are missing"), (Head + "X-1;soon;falling number;318;falling number;;s;\n", "line 2, column 2"),
            (Head + "X-1;2025-09-16 09:30;taste;318;falling number;;s;\n", "column 3"), (Head + "X-1;2025-09-16 09:30;falling number;many;falling number;;s;\n", "column 4"), (Head + "X-1;2025-09-16 09:30;wet gluten;28;gluten washing;;%;wet\n", "column 8"),
            (Head + "X-9;2025-09-16 09:30;falling number;318;falling number;;s;\n", "Line 2: There is no sample"), (Head + "X-1;2025-09-16 09:30;wet gluten;28;gluten washing;;%;\n", "moisture basis"),
            (Head + "X-1;2025-09-16 06:30;falling number;318;falling number;;s;\n", "before the sample"), (Head + "X-1;2025-09-16 09:00;falling number;400;falling number;;s;\n", ""), (Head + "X-1;2025-09-16 09:30;falling number;318;;;s;\n", "by which method"),
        })
        {
            var (status, text) = await Post(csv);
            Assert.Equal(HttpStatusCode.BadRequest, status);
            Assert.Contains(says, WebUtility.HtmlDecode(text), StringComparison.OrdinalIgnoreCase);
        }

        Assert.Equal(HttpStatusCode.BadRequest, (await Post(Good, "")).Status);
    }

    [Fact]
    public async Task Page_AFile_IsLookedAtFirst()
    {
        using var client = await Tickets.NamedAsync(site);
        using var taken = await client.PostAsJsonAsync(new Uri("/api/lab/samples?by=Ada", UriKind.Relative), new { code = "X-2", place = "TA", at = "2025-09-16T07:00", tests = "Falling number by falling number" });
        Task<HttpResponseMessage> Post(string act, string text) => WebSite.PostAsync(client, "/laboratory/file", "/laboratory/file", [new("_handler", "lab-file"), new("Lab.Do", act), new("Lab.Text", text)]);
        const string Good = Head + "X-2;2025-09-16 09:00;falling number;318;falling number;;s;\n";
        using var looked = await Post("look", Good);
        Assert.Contains("Read: 1 values of 1 samples. Nothing is recorded yet.", await looked.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var wrong = await Post("keep", Good.Replace("318", "5", StringComparison.Ordinal));
        Assert.Contains("Nothing was recorded; the text is below.", await wrong.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var kept = await Post("keep", Good);
        Assert.Contains("1 values added, 0 known already", await kept.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }
}
