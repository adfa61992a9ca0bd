using System.Net;
using System.Text;
using System.Text.RegularExpressions;

namespace Evengrist.Edge.Tests.Web;

[Collection(WebSiteCollection.Name)]
public sealed class ImportTests(WebSite site)
{
    [Fact]
    public async Task Upload_WithFaults_ListsThemWithLineAndColumnAndRecordsNothing()
    {
        using var client = site.Client();
        var before = site.Mill.Ask(view => view.Book.Last);
        var page = await DryRunAsync(client, "readings", "on,at [ISO 8601 with offset],method,protein [% 12mb]\nB01,2025-09-16T05:00-05:00,NIR,twelve\nB99,2025-09-16T05:00-05:00,NIR,12.1\n");
        Assert.Contains("twelve", page, StringComparison.Ordinal);
        Assert.Matches("<td class=\"num\">2</td><td class=\"num\">4</td>", page);
        Assert.Equal(before, site.Mill.Ask(view => view.Book.Last));
    }

    [Fact]
    public async Task Upload_Sound_IsRecordedOnlyOnceConfirmed()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")]);
        var before = site.Mill.Ask(view => view.Book.Readings.Count);
        var page = await DryRunAsync(client, "readings", "on,at [ISO 8601 with offset],method,temperature [°C]\nB01,2025-09-16T05:00-05:00,cable,21.5\n");
        Assert.Contains("found no fault", page, StringComparison.Ordinal);
        Assert.Equal(before, site.Mill.Ask(view => view.Book.Readings.Count));

        var key = Regex.Match(page, "name=\"ConfirmKey\" value=\"([^\"]+)\"").Groups[1].Value;
        using var answer = await WebSite.PostAsync(client, "/import", "/import", [new("_handler", "confirm"), new("ConfirmKey", key)]);
        Assert.Contains("Recorded.", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(before + 1, site.Mill.Ask(view => view.Book.Readings.Count));
    }

    private static async Task<string> DryRunAsync(HttpClient client, string kind, string csv)
    {
        var form = await client.GetStringAsync(new Uri("/import", UriKind.Relative));
        using var content = new MultipartFormDataContent
        {
            { new StringContent(Regex.Match(form, "name=\"__RequestVerificationToken\" value=\"([^\"]+)\"").Groups[1].Value), "__RequestVerificationToken" },
            { new StringContent("upload"), "_handler" },
            { new StringContent(kind), "Upload.Kind" },
            { new StringContent(""), "Upload.Decimal" },
            { new StringContent("America/Chicago"), "Upload.Zone" },
            { new ByteArrayContent(Encoding.UTF8.GetBytes(csv)), "Upload.File", "readings.csv" },
        };
        using var answer = await client.PostAsync(new Uri("/import", UriKind.Relative), content);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync();
    }
}
