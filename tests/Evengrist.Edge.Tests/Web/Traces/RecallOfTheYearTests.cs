using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Json;
using System.Text.Json;
using System.Text.RegularExpressions;
using Evengrist.Edge.Tests.Web.Trucks;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

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

    [Fact]
    public async Task Recall_OfTheTreatedSeed_NetsBoundsBalanceAndWhatIsUnknown()
    {
        using var client = site.Client();
        var recall = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/tracing/recall?what=25-0709-061&kg=50&chance=50&net=wide", UriKind.Relative));
        JsonElement Net(string name) => recall.GetProperty("nets").EnumerateArray().Single(n => n.GetProperty("net").GetString() == name);
        int Packages(string name) => Net(name).GetProperty("packages").GetInt32();
        Assert.True(Packages("wide") > Packages("union") && Packages("union") > Packages("narrow"));
        Assert.Equal((0, 0), (Net("wide").GetProperty("chanceOfMissing").GetDouble(), Net("wide").GetProperty("canBeMissedUnderSomeOutflow").GetInt32()));
        Assert.Equal(0.3, Net("narrow").GetProperty("chanceOfMissing").GetDouble(), 1e-9);
        Assert.Equal(26_340, recall.GetProperty("tracedKilograms").GetProperty("expected").GetDouble(), 1.0);

        // What was made is held, in stock, shipped or used: at least 98 %, and no more than 100 %.
        Assert.All(recall.GetProperty("nets").EnumerateArray(), n => Assert.InRange(n.GetProperty("accountedForPercent").GetDecimal(), 98m, 100m));
        Assert.All(recall.GetProperty("accountedFor").EnumerateObject(), a => Assert.Equal(1, a.Value.GetDouble(), 1e-6));
        Assert.All(recall.GetProperty("packages").EnumerateArray(), p =>
        {
            var (each, bound) = (p.GetProperty("kilograms").GetProperty("each"), p.GetProperty("anyOutflowKilograms"));
            Assert.All(each.EnumerateObject(), kg => Assert.InRange(kg.Value.GetDouble(), bound.GetProperty("least").GetDouble() - 0.05, bound.GetProperty("most").GetDouble() + 0.05));
        });
        Assert.All(new[] { "NeverProvenEmpty", "SecondaryUse", "GoneAstray", "Rework" }, kind => Assert.Contains(kind, recall.GetProperty("unknown").EnumerateArray().Select(u => u.GetProperty("kind").GetString())));
    }

    [Fact]
    public async Task Recall_FromAnInstrumentsWindowAndBinHours_FindsPackages()
    {
        using var client = site.Client();
        var recall = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/tracing/recall?what=B14+2025-09-17T20:00+2025-09-18T02:00&kg=1", UriKind.Relative));
        Assert.NotEmpty(recall.GetProperty("packages").EnumerateArray());
        var instrument = site.AnyInstrument();
        var doubted = await client.GetFromJsonAsync<JsonElement>(new Uri($"/api/tracing/recall?what={Uri.EscapeDataString($"instrument {instrument} 2025-10-07T10:00 2025-10-07T18:00")}&kg=0", UriKind.Relative));
        Assert.NotEmpty(doubted.GetProperty("suspect").EnumerateArray());
    }

    [Fact]
    public async Task Recall_PackAsPdf_HasANoticeForEachCustomerWithinTenSeconds()
    {
        using var client = site.Client();
        var clock = Stopwatch.StartNew();
        var pdf = await client.GetByteArrayAsync(new Uri("/tracing/recall/pack.pdf?what=25-0709-061", UriKind.Relative));
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(10), $"The pack took {clock.Elapsed}.");
        using var document = PdfDocument.Open(pdf);
        string[] sheets = [.. document.GetPages().Select(p => ContentOrderTextExtractor.GetText(p))];
        var recall = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/tracing/recall?what=25-0709-061&kg=50", UriKind.Relative));
        var taken = recall.GetProperty("nets").EnumerateArray().Single(n => n.GetProperty("net").GetString() == "union");
        Assert.All(taken.GetProperty("consignees").EnumerateArray(), c => Assert.Contains(sheets, s => s.Contains($"To: {c.GetString()}", StringComparison.Ordinal)));
        string[] further = [.. sheets.Skip(1).TakeWhile(s => !s.Contains("Still unknown", StringComparison.Ordinal))];
        Assert.NotEmpty(further);
        Assert.All(further, s => Assert.Contains("product", s, StringComparison.Ordinal));
        using var bad = await client.GetAsync(new Uri("/tracing/recall/pack.pdf?what=25-0709-061&paper=a9", UriKind.Relative));
        Assert.Equal(System.Net.HttpStatusCode.BadRequest, bad.StatusCode);
    }

    [Fact]
    public async Task Recall_TakenOutBeforeItIsIssued_IsTheListsOfThePage()
    {
        using var client = site.Client();
        const string Asked = "what=25-0709-061&kg=50";
        var nets = (await client.GetFromJsonAsync<JsonElement>(new Uri($"/api/tracing/recall?{Asked}", UriKind.Relative))).GetProperty("nets").EnumerateArray().ToArray();
        async Task<string[]> Rows(string list) => (await client.GetStringAsync(new Uri($"/tracing/recall?what=25-0709-061&kg=50&as=csv&list={list}", UriKind.Relative))).Split("\r\n", StringSplitOptions.RemoveEmptyEntries)[1..];
        Assert.Equal(nets.Single(n => n.GetProperty("net").GetString() == "union").GetProperty("packages").GetInt32(), (await Rows("recall-packages")).Length);
        Assert.Equal(3, (await Rows("recall-nets")).Length);
        Assert.Equal(
            nets.Single(n => n.GetProperty("net").GetString() == "union").GetProperty("consignees").EnumerateArray().Select(c => c.GetString()!).Order(StringComparer.Ordinal),
            (await Rows("recall-customers")).Select(r => r.Split(',')[0]).Distinct().Order(StringComparer.Ordinal));
        Assert.NotEmpty(await Rows("recall-where"));
        Assert.NotEmpty(await Rows("recall-unknown"));
        using var unasked = await client.GetAsync(new Uri("/tracing/recall?as=csv&list=recall-nets", UriKind.Relative));
        Assert.Equal(System.Net.HttpStatusCode.BadRequest, unasked.StatusCode);
    }

    // In the table by product: union, then plug flow.
    private static int PlugFlowPallets(string page)
    {
        var row = Regex.Match(page, @"WB pallets (\d+) (\d+) ");
        Assert.True(row.Success, "The page has no row for pallets of WB.");
        return int.Parse(row.Groups[2].Value, CultureInfo.InvariantCulture);
    }
}
