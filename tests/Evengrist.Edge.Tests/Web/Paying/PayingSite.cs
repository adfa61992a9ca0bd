using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Paying;

/// <summary>A site of their own for tests that pay.</summary>
[CollectionDefinition(Name)]
public sealed class PayingSiteCollection : ICollectionFixture<WebSite>
{
    public const string Name = "paying site";
}

/// <summary>What tests of payments have in common.</summary>
internal static class PayingSite
{
    /// <summary>Writes the worked ticket (6,487.58 USD) under a number of its own.</summary>
    public static async Task<HttpClient> WithTicketAsync(this WebSite site, string ticket, bool certified = true)
    {
        var client = await Tickets.NamedAsync(site);
        using var sent = await Tickets.SendAsync(client, Tickets.Worked(ticket));
        Assert.True(sent.StatusCode == HttpStatusCode.Redirect, await sent.Content.ReadAsStringAsync());
        if (certified)
        {
            await client.KeepAsync("certificates", new { code = "truck scale", instrument = "truck scale", number = "W-1", body = "County sealer", from = "2025-01-01", until = "2025-12-31" });
            await client.KeepAsync("certificates", new { code = "dockage tester", instrument = "sieve", number = "none needed", body = "site policy", from = "2025-01-01", until = "2025-12-31" });
            await client.KeepAsync("certificates", new { code = "NIR-1", instrument = "moisture meter", number = "M-1", body = "County sealer", from = "2025-01-01", until = "2025-12-31" });
        }

        return client;
    }

    public static async Task KeepAsync(this HttpClient client, string kind, object paper)
    {
        using var answer = await client.PostAsJsonAsync(new Uri($"/api/intake/{kind}?by=Ada+Miller", UriKind.Relative), paper);
        Assert.True(answer.StatusCode == HttpStatusCode.Created, await answer.Content.ReadAsStringAsync());
    }

    public static async Task<(HttpStatusCode Status, JsonElement Body)> SendAsync(this HttpClient client, string address, object body)
    {
        using var answer = await client.PostAsJsonAsync(new Uri(address, UriKind.Relative), body);
        return (answer.StatusCode, await answer.Content.ReadFromJsonAsync<JsonElement>());
    }

    public static async Task<JsonElement> AnswerAsync(this HttpClient client, string address) => await client.GetFromJsonAsync<JsonElement>(new Uri(address, UriKind.Relative));
}
