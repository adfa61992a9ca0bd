using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>A site of their own for tests that trace and hold.</summary>
[CollectionDefinition(Name)]
public sealed class TraceSiteCollection : ICollectionFixture<WebSite>
{
    public const string Name = "trace site";
}

[Collection(TraceSiteCollection.Name)]
public sealed class TracingPageTests(WebSite site)
{
    [Fact]
    public async Task Reach_OfATruck_ListsItsPalletAndCustomer()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/tracing?code=25-0709-001");
        Assert.All(["What 25-0709-001 (truck) has reached", "Union, the cautious scope 1", "P-0001", "ORLAWICK", "100.0 / 100.0 / 100.0", "assumed until the site has made its own tracer trial"], word => Assert.Contains(word, page, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Roots_OfAPallet_SumToAHundredPerCent()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/tracing?code=P-0001");
        Assert.All(["Where P-0001 (pallet) came from", "25-0709-001", "25-0709-002", "Drumsallow · Northledge", "water", "Shares sum to 100.0 / 100.0 / 100.0"], word => Assert.Contains(word, page, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Threshold_AboveWhatAnyHolds_ListsNone()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/tracing?code=25-0709-001&kg=5000");
        Assert.Contains("Union, the cautious scope 0", page, StringComparison.Ordinal);
        Assert.Contains("Lower the threshold", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?code=25-0709", "Near it: 25-0709-001")]
    [InlineData("?code=ZZZ", "Nothing has the code “ZZZ”")]
    [InlineData("?code=B01&from=noon", "is no date and time")]
    [InlineData("?code=B01&from=2025-09-16T06:00&until=2025-09-15T06:00", "end before they begin")]
    [InlineData("?code=P-0001&kg=-4", "is no threshold")]
    [InlineData("?code=P-0001&fifo=0&core=0&stirred=0", "one of them above 0")]
    [InlineData("?code=P-0001&fifo=a", "The beliefs are numbers")]
    [InlineData("?code=UA&way=reach", "over a span of hours")]
    [InlineData("?code=ORLAWICK&way=reach", "ask for its roots")]
    public async Task Question_ThatCannotBeAnswered_SaysWhatToDo(string query, string says)
    {
        using var client = site.Client();
        Assert.Contains(says, await Tickets.TextAsync(client, "/tracing" + query), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Beliefs_ChangedToOneAlone_LeaveOneColumnAtWork()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/tracing?code=P-0001&fifo=1&core=0&stirred=0");
        Assert.DoesNotContain("assumed until", page, StringComparison.Ordinal);
        Assert.Contains("first in, first out", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Csv_OfReachAndRoots_NamesUnitsAndHoldsEveryRow()
    {
        using var client = site.Client();
        var reach = await client.GetStringAsync(new Uri("/tracing/reach.csv?code=25-0709-001", UriKind.Relative));
        Assert.Contains("expected [kg]", reach, StringComparison.Ordinal);
        Assert.Contains("P-0001,pallet,WB,", reach, StringComparison.Ordinal);
        var roots = await client.GetStringAsync(new Uri("/tracing/roots.csv?code=P-0001", UriKind.Relative));
        Assert.Contains("25-0709-001,DS-2,field,Drumsallow · Northledge,HW,", roots, StringComparison.Ordinal);
        using var bad = await client.GetAsync(new Uri("/tracing/reach.csv?code=ZZZ", UriKind.Relative));
        Assert.Equal(HttpStatusCode.BadRequest, bad.StatusCode);
    }

    [Fact]
    public async Task Print_OfARecall_CarriesScopeBalanceUnknownsAndCautions()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/tracing/print?code=25-0709-001&reason=Treated+seed");
        Assert.All(
            ["Treated seed", "Recall report", "any hypothesis (the union)", "Accounted for", "100.00 %", "Consignees", "ORLAWICK", "Still unknown", "The trace took", "not safe to eat raw", "does not clear a lot", "named person decides", "Local law"],
            word => Assert.Contains(word, page, StringComparison.Ordinal));
    }
}
