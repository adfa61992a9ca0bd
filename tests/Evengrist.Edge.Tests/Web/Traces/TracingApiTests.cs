using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Plant.Cases;

namespace Evengrist.Edge.Tests.Web.Traces;

[Collection(TraceSiteCollection.Name)]
public sealed class TracingApiTests(WebSite site)
{
    [Fact]
    public async Task Reach_OnTheRecords_ListsThePallet()
    {
        using var client = site.Client();
        var reach = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/tracing/reach?code=25-0709-001&kg=50", UriKind.Relative));
        Assert.Equal("P-0001", Assert.Single(reach.GetProperty("packages").EnumerateArray()).GetProperty("code").GetString());
    }

    [Fact]
    public async Task Roots_OnTheRecords_SumToOneUnderEveryHypothesis()
    {
        using var client = site.Client();
        var roots = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/tracing/roots?code=P-0001", UriKind.Relative));
        Assert.Equal(1, roots.GetProperty("roots").EnumerateArray().Sum(r => r.GetProperty("share").GetProperty("expected").GetDouble()), 9);
    }

    [Theory]
    [InlineData("/api/tracing/reach")]
    [InlineData("/api/tracing/roots")]
    public async Task Posed_TheExampleOfTheHelp_IsAnswered(string path)
    {
        using var client = site.Client();
        using var answer = await client.PostAsync(new Uri(path, UriKind.Relative), new StringContent(TraceCase.Help.Example, System.Text.Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("P2", (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("code").GetString());
    }

    [Theory]
    [InlineData("not json")]
    [InlineData("{}")]
    public async Task Posed_WhatIsNoCase_IsRefusedWithItsPath(string body)
    {
        using var client = site.Client();
        using var answer = await client.PostAsync(new Uri("/api/tracing/reach", UriKind.Relative), new StringContent(body, System.Text.Encoding.UTF8, "application/json"));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("expected", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?code=ZZZ")]
    [InlineData("?code=P-0001&kg=much")]
    [InlineData("?code=P-0001&asof=never")]
    [InlineData("")]
    public async Task Records_BadQuestion_IsAProblem(string query)
    {
        using var client = site.Client();
        using var answer = await client.GetAsync(new Uri("/api/tracing/reach" + query, UriKind.Relative));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }
}
