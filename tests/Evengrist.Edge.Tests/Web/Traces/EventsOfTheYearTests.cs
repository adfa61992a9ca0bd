using System.Net.Http.Json;
using System.Text;
using System.Text.Json;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>Events written from the demonstration's year, and its lists.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class EventsOfTheYearTests(DemonstrationSite site)
{
    [Theory]
    [InlineData("25-0709-061")]
    [InlineData("P-WB-250917-0100")]
    public async Task Export_OfAWay_HasNoFaultAndNothingBelowZero(string code)
    {
        // Shares of what flowed at even rates once came out some 1e-15 below zero on such a way, and their kilograms with them.
        using var client = site.Client();
        var document = await client.GetStringAsync(new Uri($"/api/epcis/export?code={code}", UriKind.Relative));
        Assert.DoesNotContain("\"quantity\":-", document, StringComparison.Ordinal);
        using var content = new StringContent(document, Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri("/api/epcis/check", UriKind.Relative), content);
        var read = await answer.Content.ReadFromJsonAsync<JsonElement>();
        Assert.True(read.GetProperty("events").GetArrayLength() > 50, read.ToString()[..Math.Min(400, read.ToString().Length)]);
    }

    [Theory]
    [InlineData("mix-sheets")]
    [InlineData("specifications")]
    [InlineData("products")]
    [InlineData("mill-tests")]
    [InlineData("stream-surveys")]
    [InlineData("lab-results")]
    [InlineData("lot-results")]
    [InlineData("certificates")]
    [InlineData("accounts")]
    public async Task Lists_OfTheRooms_AreNotEmpty(string name)
    {
        using var client = site.Client();
        var lines = (await client.GetStringAsync(new Uri($"/api/lists/{name}", UriKind.Relative))).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.True(lines.Length > 2, $"{name}: {lines.Length} lines");
    }
}
