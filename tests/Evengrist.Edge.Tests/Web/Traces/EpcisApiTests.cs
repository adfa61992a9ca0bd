using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;

namespace Evengrist.Edge.Tests.Web.Traces;

[Collection(TraceSiteCollection.Name)]
public sealed class EpcisApiTests(WebSite site)
{
    [Fact]
    public async Task Export_OfATruck_CanBeCheckedAndTakenInOnce()
    {
        using var client = site.Client();
        var document = await client.GetStringAsync(new Uri("/api/epcis/export?code=25-0709-001", UriKind.Relative));
        Assert.Equal(document, await client.GetStringAsync(new Uri("/api/epcis/export?code=25-0709-001", UriKind.Relative)));
        var events = (await Answer(client, "/api/epcis/check", document)).GetProperty("events").GetArrayLength();
        Assert.True(events > 0);
        Assert.Equal(events, (await Answer(client, "/api/epcis/import?by=Ada", document)).GetProperty("added").GetInt32());
        Assert.Equal(events, (await Answer(client, "/api/epcis/import?by=Ada", document)).GetProperty("alreadyKnown").GetInt32());
        Assert.Equal(events, (await client.GetFromJsonAsync<JsonElement>(new Uri("/api/epcis/events", UriKind.Relative))).GetArrayLength());
    }

    [Fact]
    public async Task Export_Sent_IsKeptAndALookIsNot()
    {
        using var client = site.Client();
        const string To = "An authority";
        var address = $"/api/epcis/export?code=25-0709-001&to={Uri.EscapeDataString(To)}";
        var looked = await client.GetStringAsync(new Uri(address, UriKind.Relative));
        Assert.DoesNotContain((await client.GetFromJsonAsync<JsonElement>(new Uri("/api/epcis/sent", UriKind.Relative))).EnumerateArray(), s => s.GetProperty("to").GetString() == To);
        using var nobody = await client.PostAsync(new Uri(address, UriKind.Relative), null);
        Assert.Equal(HttpStatusCode.BadRequest, nobody.StatusCode);
        using var unknown = await client.GetAsync(new Uri("/api/epcis/wrong?to=nobody", UriKind.Relative));
        Assert.Equal(HttpStatusCode.BadRequest, unknown.StatusCode);
        using var answer = await client.PostAsync(new Uri(address + "&by=Ada", UriKind.Relative), null);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var sent = JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement;
        Assert.Equal(To, sent.GetProperty("receiver").GetString());
        Assert.Equal(JsonDocument.Parse(looked).RootElement.GetProperty("epcisBody").GetRawText(), sent.GetProperty("epcisBody").GetRawText());
        var kept = Assert.Single((await client.GetFromJsonAsync<JsonElement>(new Uri("/api/epcis/sent", UriKind.Relative))).EnumerateArray(), s => s.GetProperty("to").GetString() == To);
        Assert.Equal((1, "Ada", "25-0709-001"), (kept.GetProperty("number").GetInt32(), kept.GetProperty("by").GetString(), kept.GetProperty("what").GetString()));
        var wrong = await client.GetFromJsonAsync<JsonElement>(new Uri($"/api/epcis/wrong?to={Uri.EscapeDataString("AN AUTHORITY")}", UriKind.Relative));
        Assert.Equal((kept.GetProperty("new").GetInt32(), 0), (wrong.GetProperty("standing").GetInt32(), wrong.GetProperty("wrong").GetArrayLength()));
    }

    [Theory]
    [InlineData("code=25-0709-001&from=2025-07-01T00:00Z")]
    [InlineData("from=2025-07-02T00:00Z&until=2025-07-01T00:00Z")]
    [InlineData("from=yesterday&until=today")]
    [InlineData("code=25-0709-001&outflow=up")]
    [InlineData("code=nobody")]
    [InlineData("code=25-0709-001&to=%0A")]
    [InlineData("")]
    public async Task Export_AskedWrongly_IsRefusedInWords(string query)
    {
        using var client = site.Client();
        using var answer = await client.GetAsync(new Uri("/api/epcis/export?" + query, UriKind.Relative));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.NotEmpty((await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("detail").GetString()!);
    }

    [Fact]
    public async Task Import_FaultyOrNobody_TakesNothing()
    {
        using var client = site.Client();
        using var faulty = await client.PostAsync(new Uri("/api/epcis/import?by=Ada", UriKind.Relative), Body("""{"type":"ObjectEvent"}"""));
        Assert.Equal(HttpStatusCode.BadRequest, faulty.StatusCode);
        Assert.Contains("eventTime", await faulty.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        using var nobody = await client.PostAsync(new Uri("/api/epcis/import", UriKind.Relative), Body("{}"));
        Assert.Equal(HttpStatusCode.BadRequest, nobody.StatusCode);
    }

    private static async Task<JsonElement> Answer(HttpClient client, string path, string document)
    {
        using var answer = await client.PostAsync(new Uri(path, UriKind.Relative), Body(document));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadFromJsonAsync<JsonElement>();
    }

    private static StringContent Body(string json) => new(json, Encoding.UTF8, "application/json");
}
