using System.Net;
using System.Net.Http.Headers;
using Evengrist.Ledger;
using Evengrist.Web.Security;

namespace Evengrist.Edge.Tests.Web;

[Collection(WebSiteCollection.Name)]
public sealed class SafetyTests(WebSite site)
{
    [Theory]
    [InlineData("/")]
    [InlineData("/evengrist.css")]
    [InlineData("/nowhere")]
    [InlineData("/api/bins")]
    [InlineData("/api/bins/B99/content")]
    public async Task Answer_Any_CarriesStrictHeadersAndNoServerName(string path)
    {
        using var client = site.Client();
        using var answer = await client.GetAsync(new Uri(path, UriKind.Relative));
        Assert.Equal(StrictHeaders.ContentPolicy, answer.Headers.GetValues("Content-Security-Policy").Single());
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal("DENY", answer.Headers.GetValues("X-Frame-Options").Single());
        Assert.Equal("same-origin", answer.Headers.GetValues("Referrer-Policy").Single());
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/bins")]
    [InlineData("/bins/B01")]
    [InlineData("/ledger")]
    public async Task Page_Any_HasNothingInline(string path)
    {
        using var client = site.Client();
        var page = await client.GetStringAsync(new Uri(path, UriKind.Relative));
        Assert.DoesNotContain(" style=", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<style", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>", page, StringComparison.Ordinal);
        Assert.DoesNotMatch(" on[a-z]+=\"", page);
    }

    [Theory]
    [InlineData("/choose")]
    [InlineData("/bins/B01")]
    [InlineData("/import")]
    public async Task Form_ForgedWithoutToken_IsRefusedAndNothingRecorded(string path)
    {
        using var client = site.Client();
        var before = site.Mill.Ask(view => view.Book.Last);
        using var content = new FormUrlEncodedContent([new("_handler", "act"), new("Act.What", "hold"), new("Act.Text", "forged"), new("Act.Key", "k"), new("Act.At", "2025-09-16T05:00"), new("name", "Mallory")]);
        using var answer = await client.PostAsync(new Uri(path, UriKind.Relative), content);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("The form was not taken", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(before, site.Mill.Ask(view => view.Book.Last));
    }

    [Fact]
    public async Task Host_OfAnotherName_IsRefused()
    {
        using var client = site.Client();
        client.DefaultRequestHeaders.Host = "mill.example";
        using var answer = await client.GetAsync(new Uri("/", UriKind.Relative));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Fact]
    public async Task Choose_BackToElsewhere_StaysHere()
    {
        using var client = site.Client();
        using var answer = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller"), new("back", "//evil.example/")]);
        Assert.Equal("/", answer.Headers.Location?.ToString());
    }

    [Fact]
    public async Task Upload_OverTheBound_IsRefused()
    {
        using var client = site.Client();
        client.DefaultRequestHeaders.ExpectContinue = true;
        using var content = new ByteArrayContent(new byte[UploadBound.Bytes + 1]);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/x-www-form-urlencoded");
        using var answer = await client.PostAsync(new Uri("/import", UriKind.Relative), content);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        Assert.Contains(UploadBound.Advice, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hold_ByANamedPerson_IsRecordedOnceEvenIfSentTwice()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Björn Müller")]);
        KeyValuePair<string, string>[] form =
            [new("_handler", "act"), new("Act.Key", "hold-once"), new("Act.What", "hold"), new("Act.At", "2025-09-17T05:00"), new("Act.Text", "Wet spot at the hatch.")];
        using var first = await WebSite.PostAsync(client, "/bins/B03", "/bins/B03", form);
        using var second = await WebSite.PostAsync(client, "/bins/B03", "/bins/B03", form);
        Assert.Equal(HttpStatusCode.Redirect, first.StatusCode);
        var holds = site.Mill.Ask(view => view.Book.Happenings.Where(h => h.Kind == HappeningKind.Held && view.Book[h.On].Code == "B03").ToArray());
        Assert.Equal("Wet spot at the hatch.", Assert.Single(holds).Text);
    }

    [Fact]
    public async Task Hold_WithoutAReason_IsRefusedInWords()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")]);
        using var answer = await WebSite.PostAsync(client, "/bins/B01", "/bins/B01", [new("_handler", "act"), new("Act.Key", "no-reason"), new("Act.What", "hold"), new("Act.At", "2025-09-16T05:00")]);
        Assert.Contains("Not recorded.", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }
}
