using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The two traces of the acceptance list through the page, against the demonstration as it opens on 14 January 2026.</summary>
/// <remarks>Expected: worked by independent scripts from the posed bin, draw and temper stage (plug flow).</remarks>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class RecallOfTheYearTests(DemonstrationSite site)
{
    [Fact]
    public async Task Reach_OfTheTreatedSeed_Finds109PalletsAnd18TonnesWithinFiveSeconds()
    {
        using var client = site.Client();
        var clock = Stopwatch.StartNew();
        var page = await Tickets.TextAsync(client, "/tracing?code=25-0709-061&kg=50");
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5), $"The page took {clock.Elapsed}.");

        Assert.InRange(PlugFlowPallets(page), 108, 110);
        Assert.Contains("Union, the cautious scope", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("10", 179, 181)]
    [InlineData("1", 276, 278)]
    public async Task Reach_AtALowerThreshold_FindsMore(string kilograms, int least, int most)
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, $"/tracing?code=25-0709-061&kg={kilograms}");
        Assert.InRange(PlugFlowPallets(page), least, most);
    }

    [Fact]
    public async Task Reach_OfTheTreatedSeed_Puts18TonnesIntoPatent()
    {
        using var client = site.Client();
        var reach = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/tracing/reach?code=25-0709-061&kg=0&fifo=1", UriKind.Relative));
        var packed = reach.GetProperty("packages").EnumerateArray().Where(p => p.GetProperty("code").GetString()!.StartsWith("P-WB", StringComparison.Ordinal)).Sum(p => p.GetProperty("kilograms").GetProperty("expected").GetDouble());
        Assert.InRange(packed / 1000, 18.12, 18.22);
    }

    [Fact]
    public async Task Roots_OfABagOf17September18_SumToAHundredWithinFiveSeconds()
    {
        using var client = site.Client();
        var reach = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/tracing/reach?code=25-0709-061&kg=50&fifo=1", UriKind.Relative));
        var pallet = reach.GetProperty("packages").EnumerateArray().Select(p => p.GetProperty("code").GetString()!).First(c => c.StartsWith("P-WB", StringComparison.Ordinal));
        var clock = Stopwatch.StartNew();
        var page = await Tickets.TextAsync(client, $"/tracing?code={pallet}");
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5), $"The page took {clock.Elapsed}.");
        Assert.Contains("Shares sum to 100.0 / 100.0 / 100.0", page, StringComparison.Ordinal);
        Assert.All(["Drumsallow", "Readings on the way", "Who recorded it", "water", "field unknown", "malted barley flour"], word => Assert.Contains(word, page, StringComparison.Ordinal));
    }

    // In the table by product: union, then plug flow.
    private static int PlugFlowPallets(string page)
    {
        var row = Regex.Match(page, @"WB pallets (\d+) (\d+) ");
        Assert.True(row.Success, "The page has no row for pallets of WB.");
        return int.Parse(row.Groups[2].Value, CultureInfo.InvariantCulture);
    }
}
