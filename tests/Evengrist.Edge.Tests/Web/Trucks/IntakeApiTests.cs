using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Intake;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Edge.Tests.Web.Trucks;

[Collection(TruckSiteCollection.Name)]
public sealed class IntakeApiTests(WebSite site)
{
    // The worked ticket of the acceptance list, from independent scripts over the notice's table.
    [Fact]
    public async Task Settle_TheWorkedTicketPosed_IsPaidToTheCent()
    {
        using var client = site.Client();
        using var answer = await client.PostAsync(new Uri("/api/intake/settle", UriKind.Relative), Json(Case("38460")));
        var settled = await answer.Content.ReadFromJsonAsync<JsonElement>();
        Assert.Equal(
            (26_340m, 26_023.92m, 6.84m, 6_487.58m),
            (settled.GetProperty("netKg").GetDecimal(), settled.GetProperty("cleanKg").GetDecimal(), settled.GetProperty("price").GetDecimal(), settled.GetProperty("pay").GetDecimal()));
        Assert.Equal(25_813.3m, Math.Round(settled.GetProperty("settledKg").GetDecimal(), 1));
        Assert.Equal(948.48m, Math.Round(settled.GetProperty("bushels").GetDecimal(), 2));
    }

    [Theory]
    [InlineData("-1", "$.gross")]
    [InlineData("12000", "$.tare")]
    public async Task Settle_WeightsThatCannotBe_AreFaultsAtTheirPath(string gross, string path)
    {
        using var client = site.Client();
        using var answer = await client.PostAsync(new Uri("/api/intake/settle", UriKind.Relative), Json(Case(gross)));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(path, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tickets_PostedTwice_AreOneAndListed()
    {
        using var client = await Tickets.NamedAsync(site);
        var body = Body("25-0914-021");
        using var first = await client.PostAsJsonAsync(new Uri("/api/intake/tickets?by=Ada+Miller", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.Created, first.StatusCode);
        using var second = await client.PostAsJsonAsync(new Uri("/api/intake/tickets?by=Ada+Miller", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.OK, second.StatusCode);
        var day = await client.GetFromJsonAsync<JsonElement>(new Uri("/api/intake/tickets?day=2025-09-14", UriKind.Relative));
        var ticket = Assert.Single(day.EnumerateArray(), t => t.GetProperty("ticket").GetString() == "25-0914-021");
        Assert.Equal(6_487.58m, ticket.GetProperty("settlement").GetProperty("pay").GetDecimal());
    }

    [Fact]
    public async Task Tickets_WithoutABasisOrAName_AreRefusedInWords()
    {
        using var client = await Tickets.NamedAsync(site);
        var body = Body("25-0914-022");
        body["proteinBasis"] = "";
        using var answer = await client.PostAsJsonAsync(new Uri("/api/intake/tickets", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var problem = await answer.Content.ReadAsStringAsync();
        Assert.Contains("has no moisture basis", problem, StringComparison.Ordinal);
        Assert.Contains("Say who records it", problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tickets_WithOtherContent_Conflict()
    {
        using var client = await Tickets.NamedAsync(site);
        var body = Body("25-0914-023");
        using var first = await client.PostAsJsonAsync(new Uri("/api/intake/tickets?by=Ada", UriKind.Relative), body);
        body["gross"] = "38440";
        using var second = await client.PostAsJsonAsync(new Uri("/api/intake/tickets?by=Ada", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.Conflict, second.StatusCode);
    }

    [Fact]
    public async Task Tickets_PostedAsAFormFromElsewhere_AreNotTaken()
    {
        using var client = await Tickets.NamedAsync(site);
        using var content = new FormUrlEncodedContent(Tickets.Worked("25-0914-024"));
        using var answer = await client.PostAsync(new Uri("/api/intake/tickets?by=Mallory", UriKind.Relative), content);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
    }

    [Fact]
    public async Task Document_OfTheApi_NamesIntakeAndTracing()
    {
        using var client = site.Client();
        var document = await client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative));
        Assert.All(["/api/intake/tickets", "/api/intake/settle", "/api/tracing/reach", "/api/tracing/roots"], path => Assert.Contains($"\"{path}\"", document, StringComparison.Ordinal));
    }

    private static Dictionary<string, string> Body(string ticket) => Tickets.Worked(ticket).Where(f => f.Key.StartsWith("T.", StringComparison.Ordinal))
        .ToDictionary(f => char.ToLowerInvariant(f.Key[2]) + f.Key[3..], f => f.Value);

    private static string Case(string gross) => $$"""
        { "gross": { "kg": {{gross}} }, "tare": { "kg": 12120 }, "on": "2025-07-09",
          "findings": { "dockage [%]": 1.2, "moisture [%]": 14.2, "protein [% 12mb]": 13.1 }, "contract": {{TermsJson.Write(ExampleContract.Terms)}} }
        """;

    private static StringContent Json(string text) => new(text, System.Text.Encoding.UTF8, "application/json");
}
