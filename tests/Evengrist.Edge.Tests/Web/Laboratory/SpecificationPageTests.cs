using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Laboratory.Conformity;
using Evengrist.Records.Laboratory;

namespace Evengrist.Edge.Tests.Web.Laboratory;

/// <summary>A specification typed line by line, of a flour that the tiny mill does not have.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class SpecificationPageTests(WebSite site)
{
    private const string New = "/laboratory/specifications/new";

    [Fact]
    public async Task Lines_ThatCannotBe_AreRefusedWithEveryWordKept()
    {
        using var client = await Tickets.NamedAsync(site);
        foreach (var (field, typed, says) in new[]
        {
            ("Lower", "much", "the least is a number"), ("Lower", "12.5", "lies below the upper"), ("Target", "13", "lies outside the limits"), ("Basis", "wet", "“wet” is no basis"), ("Basis", "", "basis"), ("What", "", "choose the property"),
            ("What", "FallingNumber", "falling numbers never average"), ("Needed", "2.5", "whole number of results"), ("Source", " ", "who asks for it"), ("Risk", "80", "at most 0.5"), ("CustomerBias", "0.1", "uncertainty of the customer's laboratory"),
        })
        {
            using var answer = await PostAsync(client, New, [.. Line(0).Where(f => f.Key != $"S.Rows[0].{field}"), new($"S.Rows[0].{field}", typed), new("S.ValidFrom", "2026-01-01"), new("S.Remark", "<i>as agreed</i>")]);
            var html = await answer.Content.ReadAsStringAsync();
            Assert.Contains(says, WebUtility.HtmlDecode(html), StringComparison.OrdinalIgnoreCase);
            Assert.Contains("&lt;i&gt;as agreed", html, StringComparison.Ordinal);
            Assert.Contains($"value=\"{(typed.Length > 1 && field == "Lower" ? typed : "12.1")}\"", html, StringComparison.Ordinal);
        }

        using var day = await PostAsync(client, New, [.. Line(0), new("S.ValidFrom", "soon")]);
        Assert.Contains("“soon” is no day", WebUtility.HtmlDecode(await day.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        using var none = await WebSite.PostAsync(client, New, New, [new("_handler", "lines"), new("S.Do", "keep")]);
        Assert.Contains("Give one line or more", Tickets.Plain(await none.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        Assert.DoesNotContain(FlourSpecifications.Newest(site.Mill), k => k.Specification.Code == "LINES");
    }

    [Fact]
    public async Task Lines_AddedAndTakenOut_AreKeptAsVersions()
    {
        using var client = await Tickets.NamedAsync(site);
        using var more = await PostAsync(client, New, [.. Line(0), new("S.Rows[0].Out", "true"), .. Line(1, "Moisture", "", "13.0", "14.0")], "lines");
        var html = await more.Content.ReadAsStringAsync();
        Assert.DoesNotContain("value=\"11.7\"", html, StringComparison.Ordinal);
        Assert.Contains("value=\"14.0\"", html, StringComparison.Ordinal);
        Assert.Contains("S.Rows[1].What", html, StringComparison.Ordinal); // an empty line in place of the one taken out
        using var kept = await PostAsync(client, New, [.. Line(0), .. Line(1, "Moisture", "", "", "14.0"), new("S.Rows[1].Optional", "true"), .. Line(2, "", "", "", "")], code: "LINES2");
        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        var first = Assert.Single(FlourSpecifications.Versions(site.Mill, "LINES2")).Specification;
        Assert.Equal((2, 11.7m, ResultRule.MeanOf, 4, false), (first.Items.Count, first.Items[0].Lower, first.Items[0].Rule, first.Items[0].Needed, first.Items[1].Required));

        const string Page = "/laboratory/specifications/LINES2";
        Assert.Contains("value=\"12.1\"", await client.GetStringAsync(new Uri(Page, UriKind.Relative)), StringComparison.Ordinal);
        using var second = await PostAsync(client, Page, [.. Line(0, upper: "12.2")], code: "LINES2", seen: "1");
        Assert.Equal(HttpStatusCode.Redirect, second.StatusCode);
        using var late = await PostAsync(client, Page, [.. Line(0, upper: "12.3")], code: "LINES2", seen: "1");
        Assert.Contains("was changed meanwhile", Tickets.Plain(await late.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        Assert.Equal([12.1m, 12.2m], FlourSpecifications.Versions(site.Mill, "LINES2").Select(v => v.Specification.Items[0].Upper!.Value));
    }

    [Theory]
    [InlineData("/laboratory/specifications/NOPE", "None of that code is kept")]
    [InlineData("/laboratory/lots/NOPE", "No lot NOPE")]
    [InlineData("/laboratory/certificates/NOPE", "No certificate NOPE")]
    public async Task Page_OfWhatIsNotThere_AnswersSoInItsStatusAndInWords(string path, string says)
    {
        using var client = site.Client();
        using var answer = await client.GetAsync(new Uri(path, UriKind.Relative));
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains(says, Tickets.Plain(await answer.Content.ReadAsStringAsync()), StringComparison.Ordinal);
    }

    private static Task<HttpResponseMessage> PostAsync(HttpClient client, string page, KeyValuePair<string, string>[] fields, string what = "keep", string code = "LINES", string seen = "0") =>
        WebSite.PostAsync(client, page, page, [new("_handler", "lines"), new("S.Do", what), new("S.Seen", seen), new("S.Code", code), new("S.Flour", "XX"), .. fields]);

    private static KeyValuePair<string, string>[] Line(int row, string what = "Protein", string basis = "14mb", string lower = "11.7", string upper = "12.1") =>
        [.. new[] { ("What", what), ("Basis", basis), ("Lower", lower), ("Upper", upper), ("Rule", "MeanOf"), ("Needed", "4"), ("Decision", "Simple"), ("Source", "posed") }.Select(f => KeyValuePair.Create($"S.Rows[{row}].{f.Item1}", f.Item2))];
}
