using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The drought wheat of Scarrow Rim: its bin is B05, kept by itself (docs/demonstration.md).</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class BestBinOfTheYearTests(DemonstrationSite site)
{
    [Fact]
    public async Task Best_ThinStrongTruckOfScarrowRim_RanksB05FirstByBandAndClass()
    {
        using var client = site.Client();
        var tickets = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/intake/tickets?day=2025-07-24", UriKind.Relative));

        // What the story is about: thin kernels and protein near the district's 14.0. A Scarrow truck that is neither belongs elsewhere.
        var scarrow = tickets.EnumerateArray().Where(t => t.GetProperty("from").GetString() is { } field && (field.StartsWith("LE-", StringComparison.Ordinal) || field.StartsWith("CT-", StringComparison.Ordinal)))
            .Select(t => t.GetProperty("ticket").GetString()!).ToArray();
        Assert.True(scarrow.Length > 40);
        var (typical, first) = (0, 0);
        foreach (var ticket in scarrow.Take(15))
        {
            var ranked = (await client.GetFromJsonAsync<JsonElement>(new Uri($"/api/bins/best?ticket={ticket}", UriKind.Relative))).GetProperty("ranked").EnumerateArray().ToArray();
            var b05 = ranked.Single(r => r.GetProperty("bin").GetString() == "B05");
            if (b05.GetProperty("chanceOfBandPercent").GetDouble() > 90)
            {
                typical++;
                first += ranked[0].GetProperty("bin").GetString() == "B05" ? 1 : 0;
                Assert.Equal("belongs", b05.GetProperty("standing").GetString());
                Assert.DoesNotContain(ranked, r => r.GetProperty("bin").GetString() is "B08" or "B10" or "B13");
            }
        }

        Assert.True(typical >= 8, $"Only {typical} of 15 are thin and strong.");
        Assert.Equal(typical, first);
    }

    [Fact]
    public async Task BinPage_UnderGasOnTheOpeningMorning_SaysSoEverywhere()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/bins/B16");
        Assert.Contains("Under gas", page, StringComparison.Ordinal);
        Assert.Contains("Edda Marlin", page, StringComparison.Ordinal);
        Assert.Contains("UNDER GAS: weevils under the hatch", await Tickets.TextAsync(client, "/intake/new"), StringComparison.Ordinal);
        Assert.Contains("✖ UNDER GAS", await Tickets.TextAsync(client, "/bins/wall"), StringComparison.Ordinal);
        Assert.Contains("within ±", await Tickets.TextAsync(client, "/bins/B05"), StringComparison.Ordinal);
    }
}
