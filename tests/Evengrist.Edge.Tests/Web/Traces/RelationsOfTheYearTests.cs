using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>How the demonstration's flours follow from their wheat: fitted, kept, used in the mix, with wrong input too. White bread is left alone here: the tests of its mix want nothing kept.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class RelationsOfTheYearTests(DemonstrationSite site)
{
    private const string Moment = "asof=2026-01-14T10:40";

    private async Task<HttpClient> NamedAsync()
    {
        var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Osric Venn")]);
        return client;
    }

    private static async Task<string> SendAsync(HttpClient client, string flour, string handler, params (string Field, string Value)[] typed)
    {
        var path = $"/mix/relations?flour={flour}&{Moment}";
        using var answer = await WebSite.PostAsync(client, path, path, [new("_handler", handler), .. typed.Select(t => KeyValuePair.Create(t.Field, t.Value))]);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
    }

    /// <summary>The demonstration's source alone says by how many points its flour lies below the wheat, slope 1: the fits find it, at the middle of their runs within 0.1 points.</summary>
    [Theory]
    [InlineData("WB", 1.3)]
    [InlineData("AP", 1.3)]
    [InlineData("HG", 1.0)]
    public async Task Fits_OfTheYear_FindWhatTheFlourReallyIs(string flour, double below)
    {
        using var client = site.Client();
        var fit = JsonDocument.Parse(await client.GetStringAsync(new Uri($"/api/mix/relations?{Moment}", UriKind.Relative))).RootElement.GetProperty("relations").EnumerateArray()
            .Single(r => r.GetProperty("flour").GetString() == flour && r.GetProperty("what").GetString() == "protein").GetProperty("fit");
        double Of(string name) => fit.GetProperty(name).GetDouble();
        Assert.InRange(Of("slope"), 1 - Of("slopePlusMinus"), 1 + Of("slopePlusMinus"));
        var middle = (Of("leastWheat") + Of("mostWheat")) / 2;
        Assert.InRange(Of("intercept") + (Of("slope") * middle), middle - below - 0.1, middle - below + 0.1);
        Assert.InRange(Of("standardUncertainty"), 0.02, 0.2);
        Assert.Equal(fit.GetProperty("runs").GetInt32(), fit.GetProperty("points").GetArrayLength());
    }

    [Theory]
    [InlineData("flour=WB", "Newest fit")]
    [InlineData("flour=WB", "None is kept.")]
    [InlineData("flour=PA", "The wheat hardly differed")]
    [InlineData("flour=PA", "Too few: 0 of at least 5 runs with a sheet that says the wheat's ash")]
    [InlineData("flour=QQ", "There is no flour QQ in the terms")]
    public async Task Page_SaysWhatIsKnown(string query, string says)
    {
        using var client = site.Client();
        Assert.Contains(says, WebUtility.HtmlDecode(await client.GetStringAsync(new Uri($"/mix/relations?{query}&{Moment}", UriKind.Relative))), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_BeforeAnyRun_SaysWhatToDo()
    {
        using var client = site.Client();
        Assert.Contains("No run of White bread tells anything yet.", await Tickets.TextAsync(client, "/mix/relations?flour=WB&asof=2025-09-01T08:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Fit_Kept_IsTakenByTheMixAndTypedOverByHand()
    {
        using var client = await NamedAsync();
        Assert.Contains("Kept, fitted.", Tickets.Plain(await SendAsync(client, "HG", "fit", ("fit", "Protein"))), StringComparison.Ordinal);

        // The runs' wheat is weaker than the limit asks for, and that is said.
        var page = await Tickets.TextAsync(client, $"/mix?flour=HG&flour-least:Protein=13.2&{Moment}");
        Assert.Contains("(fitted: kept by Osric Venn, version 1; ", page, StringComparison.Ordinal);
        Assert.Contains("protein of the flour at least 13.2 % 14mb", page, StringComparison.Ordinal);
        Assert.Contains("Beyond the runs.", page, StringComparison.Ordinal);
        var typed = await Tickets.TextAsync(client, $"/mix?flour=HG&flour-least:Protein=13.2&flour-slope:Protein=1&flour-intercept:Protein=-1&{Moment}");
        Assert.Contains("as wheat at least 14.20: flour protein 14mb = -1 + 1 × wheat 12mb", typed, StringComparison.Ordinal);
        Assert.Contains("not fitted on this mill: as typed for this mix", typed, StringComparison.Ordinal);

        // Sent back as the page shows them, to four decimals, the figures are still the kept ones.
        var shown = System.Text.RegularExpressions.Regex.Matches(await client.GetStringAsync(new Uri($"/mix?flour=HG&{Moment}", UriKind.Relative)), "name=\"(flour-[a-z]+:Protein)\"[^>]*value=\"([^\"]*)\"");
        Assert.Equal(5, shown.Count);
        Assert.Contains("(fitted: kept by", await Tickets.TextAsync(client, $"/mix?flour=HG&{string.Join("&", shown.Select(m => $"{m.Groups[1].Value}={WebUtility.HtmlDecode(m.Groups[2].Value)}"))}&{Moment}"), StringComparison.Ordinal);

        // The sheet's own paper says by what relation the flour was expected.
        var set = $"/mix/set?flour=HG&flour-least:Protein=13.2&{Moment}";
        var shares = System.Text.RegularExpressions.Regex.Matches(await client.GetStringAsync(new Uri(set, UriKind.Relative)), "name=\"(share:[^\"]+)\"[^>]*value=\"([^\"]*)\"").Select(m => KeyValuePair.Create(m.Groups[1].Value, m.Groups[2].Value));
        using var looked = await WebSite.PostAsync(client, set, set, [new("_handler", "sheet"), new("act", "look"), new("line", "MXB"), new("from", "2026-10-02T06:00"), new("until", "2026-10-03T06:00"), new("rate", "7.5"), .. shares]);
        var paper = Tickets.Plain(await looked.Content.ReadAsStringAsync());
        Assert.Contains("as typed for this mix; flour protein 14mb = ", paper, StringComparison.Ordinal);
        Assert.DoesNotContain("as changed for this mix", paper, StringComparison.Ordinal); // the wheat's own limit is as the terms have it
    }

    [Theory]
    [InlineData("slope", "0", "a slope other than 0")]
    [InlineData("slope", "", "The slope is missing")]
    [InlineData("uncertainty", "-0.2", "an uncertainty of 0 or more")]
    [InlineData("intercept", "low", "The intercept is a number")]
    [InlineData("what", "Colour", "A relation is kept for protein, ash")]
    [InlineData("wheat-basis", "wet", "The basis of the wheat is dry, 12mb")]
    [InlineData("source", "", "Say where it comes from")]
    [InlineData("least", "15", "from a least to a most")]
    public async Task Typed_WhatCannotBe_IsSaidAndStaysTyped(string field, string value, string says)
    {
        using var client = await NamedAsync();
        var fields = new Dictionary<string, string> { ["what"] = "Protein", ["intercept"] = "-1.17", ["slope"] = "1", ["uncertainty"] = "0.2", ["least"] = "9", ["most"] = "12", ["wheat-basis"] = "12mb", ["flour-basis"] = "14mb", ["source"] = "a book", [field] = value };
        var page = await SendAsync(client, "PA", "typed", [.. fields.Select(f => (f.Key, f.Value))]);
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains("Not kept.", page, StringComparison.Ordinal);
        Assert.Contains(field == "intercept" ? "value=\"low\"" : "value=\"-1.17\"", page, StringComparison.Ordinal);
        using var nobody = site.Client();
        Assert.Contains("Nobody is named", await SendAsync(nobody, "PA", "typed", [.. fields.Select(f => (f.Key, f.Key == field ? "1" : f.Value)).Where(f => f.Item1 is not ("what" or "wheat-basis" or "least"))]), StringComparison.Ordinal);
        Assert.Contains("The wheat hardly differed", await SendAsync(client, "PA", "fit", ("fit", "Protein")), StringComparison.Ordinal);
        Assert.Contains("Say of which property", await SendAsync(client, "PA", "fit"), StringComparison.Ordinal);
        Assert.Contains("is missing", await SendAsync(client, "PA", "typed"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Api_KeepsAndTheMixHasAFieldForIt()
    {
        using var client = site.Client();
        var relation = """{"flour":"AP","relation":{"what":"Ash","wheatBasis":"12mb","flourBasis":"14mb","intercept":0.05,"slope":0.27,"uncertainty":0.02,"isFitted":false,"source":"invented for this test"}}""";
        Task<HttpResponseMessage> Post(string json, string query) => client.PostAsync(new Uri($"/api/mix/relations?{query}", UriKind.Relative), new StringContent(json, Encoding.UTF8, "application/json"));
        using var kept = await Post(relation, "by=Osric+Venn");
        Assert.Equal(HttpStatusCode.Created, kept.StatusCode);
        using var again = await Post(relation.Replace("0.27", "0.26", StringComparison.Ordinal), "by=Osric+Venn");
        Assert.Contains("\"version\":2", await again.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        foreach (var (json, query, says) in new[] { (relation.Replace("0.27", "0", StringComparison.Ordinal), "by=x", "a slope other than 0"), (relation, "", "Say who you are first"), (relation.Replace("AP", "QQ", StringComparison.Ordinal), "by=x", "no flour QQ"), ("[]", "by=x", "Not kept"), ("", "by=x", "Not kept"), ("null", "by=x", "read null"), ("""{"flour":null,"relation":null}""", "by=x", "is null and has to be something") })
        {
            using var refused = await Post(json, query);
            Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
            Assert.Contains(says, await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }

        // No ash of the demonstration's wheat is ever read: a limit on the flour's cannot be carried over, and says what is missing.
        Assert.Contains("The flour has to keep: ash", await Tickets.TextAsync(client, $"/mix?flour=AP&{Moment}"), StringComparison.Ordinal);
        Assert.Contains("has no ash, on which the flour has a limit: test it, or leave the bin out", await Tickets.TextAsync(client, $"/mix?flour=AP&flour-most:Ash=0.46&{Moment}"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("flour-slope:Protein=0&flour-least:Protein=12", "a slope other than 0")]
    [InlineData("flour-uncertainty:Protein=-1&flour-least:Protein=12", "an uncertainty of 0 or more")]
    [InlineData("flour-least:Protein=13&flour-most:Protein=12", "cross")]
    [InlineData("flour-least:Protein=strong", "a number such as 12.5 is needed; read “strong”")]
    public async Task Mix_WithARelationThatCannotBe_SaysSo(string query, string says)
    {
        using var client = site.Client();
        Assert.Contains(says, WebUtility.HtmlDecode(await client.GetStringAsync(new Uri(string.Create(CultureInfo.InvariantCulture, $"/mix?flour=WB&{query}&{Moment}"), UriKind.Relative))), StringComparison.Ordinal);
    }
}
