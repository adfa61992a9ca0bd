using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The incident of the flour NIR in the demonstration's year: twelve pairs of 6 to 8 October 2025, the lamp changed between the fourth and the fifth.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class WatchOfTheYearTests(DemonstrationSite site)
{
    private const string Watched = "watch=UA%7CProtein%7Ccombustion,%20watch%20on%20N-1%7CNIR,%20watch%20on%20NIR-2%7C14mb";

    [Fact]
    public async Task Page_AfterTheTwelfthPair_ConvictsTheInstrument()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, $"/laboratory/watch?{Watched}&k=0.05&h=0.4&asof=2025-10-08T12:30");
        Assert.Contains("The instrument Started between pairs 4 and 5, 7 Oct 2025 08:00 to 7 Oct 2025 12:00", page, StringComparison.Ordinal); // The lamp was changed at 10:20.
        Assert.Contains("The verdict stands since pair 8.", page, StringComparison.Ordinal);
        Assert.Contains("mean difference goes from +0.008 to +0.279, the mean reference from 11.875 to 11.881", page, StringComparison.Ordinal);
        Assert.Contains("rings at pair 6, with 0.46", page, StringComparison.Ordinal);
        Assert.Contains("It changes no reading", page, StringComparison.Ordinal);
        Assert.Contains("/laboratory/rejudge?instrument=NIR-2&property=Protein&from=2025-10-07T08:00&until=2025-10-08T12:00&bias=0.27", WebUtility.HtmlDecode(await client.GetStringAsync(new Uri($"/laboratory/watch?{Watched}&asof=2025-10-08T12:30", UriKind.Relative))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2025-10-07T16:30", "Not sure yet: take ")] // Six pairs: the plain sum rings, the verdict waits.
    [InlineData("2025-10-07T20:30", "Not sure yet: take ")]
    [InlineData("2025-10-08T00:30", "The instrument Started between pairs 4 and 5")] // Eight pairs.
    public async Task Page_AsOfAMoment_SaysWhatThePairsSaidThen(string moment, string says)
    {
        using var client = site.Client();
        Assert.Contains(says, await Tickets.TextAsync(client, $"/laboratory/watch?{Watched}&k=0.05&h=0.4&asof={moment}"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("span=-1", "from 0 to 1440")]
    [InlineData("pair=wide", "a number such as 12.5 is needed")]
    [InlineData("quiet=3", "A quiet period is 4 to")]
    [InlineData("from=soon", "give date and time")]
    [InlineData("watch=UA%7CAsh", "cannot be watched by then")]
    public async Task Page_WhatCannotBe_IsSaidAndKept(string query, string says)
    {
        using var client = site.Client();
        var page = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri($"/laboratory/watch?{query}&asof=2025-10-08T12:30", UriKind.Relative)));
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.Contains("what you typed is still here", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Api_OfTheLedgersPairs_SaysTheSame_AndABiasIsRecordedByAName()
    {
        using var client = site.Client();
        var answer = JsonDocument.Parse(await client.GetStringAsync(new Uri($"/api/lab/watch?{Watched}&asof=2025-10-08T12:30", UriKind.Relative))).RootElement;
        Assert.Equal(("the instrument", 4, 12), (answer.GetProperty("judged").GetProperty("verdict").GetString(), answer.GetProperty("judged").GetProperty("startedAfter").GetInt32(), answer.GetProperty("at").GetArrayLength()));
        async Task<HttpResponseMessage> Post(object bias, string by) => await client.PostAsJsonAsync(new Uri($"/api/lab/biases{by}", UriKind.Relative), bias);
        object Bias(string old, string next, string reason, string at = "2025-10-08T13:00") => new Dictionary<string, string> { ["instrument"] = "NIR-9", ["what"] = "Protein", ["at"] = at, ["old"] = old, ["new"] = next, ["pairs"] = "8", ["reason"] = reason };
        using var nameless = await Post(Bias("0", "-0.28", "lamp changed"), "");
        using var silent = await Post(Bias("0", "-0.28", ""), "?by=Ada");
        using var same = await Post(Bias("0", "0", "x"), "?by=Ada");
        using var good = await Post(Bias("0", "-0.28", "lamp changed 7 October"), "?by=Ada");
        using var wrongOld = await Post(Bias("0.1", "-0.2", "again", "2025-10-09T13:00"), "?by=Ada");
        Assert.Equal([HttpStatusCode.BadRequest, HttpStatusCode.BadRequest, HttpStatusCode.BadRequest, HttpStatusCode.Created, HttpStatusCode.BadRequest], new[] { nameless, silent, same, good, wrongOld }.Select(r => r.StatusCode));
        Assert.Contains("The bias was set to -0.28", await wrongOld.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains("lamp changed 7 October", await client.GetStringAsync(new Uri("/api/lab/biases", UriKind.Relative)), StringComparison.Ordinal);
    }
}
