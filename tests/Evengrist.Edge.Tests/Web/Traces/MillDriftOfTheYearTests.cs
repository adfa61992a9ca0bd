using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The demonstration's hidden drifts on the page: the rolls of B3C wear, the flour cloth of M2 is torn, and the gap of M1, moved on purpose, is no drift.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class MillDriftOfTheYearTests(DemonstrationSite site)
{
    [Fact]
    public async Task Drift_IsFoundRankedAndShownAgainstItsBand()
    {
        using var client = site.Client();
        var page = await DoneAsync(client, "/milling/drift?unit=UA&flour=430&feed=200");
        Assert.Contains("Tuned. To 16 tests: tuned on 538 measured figures", page, StringComparison.Ordinal);
        var (worn, torn) = (page.IndexOf("B3C nips less and less: wear", StringComparison.Ordinal), page.IndexOf("cloth of 132 µm at M2 torn", StringComparison.Ordinal));
        Assert.True(worn > 0 && torn > worn, $"{worn} {torn}");
        Assert.DoesNotContain("M1 nips", page[..page.IndexOf("evidence", StringComparison.Ordinal)], StringComparison.Ordinal);
        Assert.Contains("B3C release against its own band", page, StringComparison.Ordinal);
        Assert.Contains("locked out", page, StringComparison.Ordinal);
        Assert.Contains("2M ash against its own band", await DoneAsync(client, "/milling/drift?unit=UA&show=2M%20ash"), StringComparison.Ordinal);
        Assert.Contains("t of flour", await DoneAsync(client, "/milling/drift?unit=UA&show=nothing"), StringComparison.Ordinal);
        var wrong = await client.GetStringAsync(new Uri("/milling/drift?unit=UA&flour=100&feed=200", UriKind.Relative));
        Assert.Contains("Flour brings no less than feed", wrong, StringComparison.Ordinal);
        Assert.Matches("name=\"flour\"[^>]*value=\"100\"", wrong);
        Assert.Contains("at most 1,000,000 a tonne", await Tickets.TextAsync(client, "/milling/drift?unit=UA&flour=1000000000000000000000000000000"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Drift_BeforeThereWereTests_SaysWhatToEnter()
    {
        using var client = site.Client();
        Assert.Contains("No test of UA stands by this moment", await Tickets.TextAsync(client, "/milling/drift?unit=UA&asof=2025-09-01T06:00"), StringComparison.Ordinal);
        Assert.Contains("3 tests are too few", await Tickets.TextAsync(client, "/milling/drift?unit=UA&asof=2025-10-07T06:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Trial_TunedToTheKeptTests_SaysSoAndIsSurerThanBefore()
    {
        using var client = site.Client();
        Assert.Contains("Not tuned.", await Tickets.TextAsync(client, "/milling/trial?unit=UA&survey=no"), StringComparison.Ordinal);
        Assert.Contains("Tuned on 538 measured figures", await DoneAsync(client, "/milling/trial?unit=UA&survey=no&tests=yes"), StringComparison.Ordinal);
        Assert.Contains("Tuned on 539 measured figures", await DoneAsync(client, "/milling/trial?unit=UA&survey=no&tests=yes&releases=B1%2027"), StringComparison.Ordinal);
        Assert.DoesNotContain("Tuned on 538", await Tickets.TextAsync(client, "/milling/trial?unit=UA&survey=no&tests=yes&asof=2025-09-01T06:00"), StringComparison.Ordinal);
    }

    private static async Task<string> DoneAsync(HttpClient client, string address)
    {
        for (var tries = 0; tries < 240; tries++)
        {
            var page = await Tickets.TextAsync(client, address);
            if (!page.Contains("See how far it is", StringComparison.Ordinal))
            {
                return page;
            }

            await Task.Delay(500);
        }

        throw new TimeoutException($"{address} was never done.");
    }
}
