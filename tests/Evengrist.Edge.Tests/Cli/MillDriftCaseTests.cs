using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Drift through the command line and over HTTP, on releases of the demonstration's Unit A that were made up so that third break's falls week by week.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class MillDriftCaseTests(WebSite site)
{
    private static string Case(double a_week, Action<JsonObject>? edit = null)
    {
        double[] scatter = [0.4, -0.6, 0.2, -0.3, 0.7, -0.1, -0.5, 0.3];
        return UnitACase.With(new JsonObject
        {
            ["prices"] = JsonNode.Parse("""{ "flour": 430, "feed": 200 }"""),
            ["tests"] = new JsonArray([.. Enumerable.Range(0, 8).Select(week => (JsonNode)new JsonObject
            {
                ["name"] = $"week {week}", ["at"] = $"2025-{9 + (week / 4):00}-{1 + (7 * (week % 4)):00}T06:00:00Z",
                ["releases"] = new JsonObject { ["B1"] = 26 + scatter[week], ["B2"] = 52 - scatter[(week + 3) % 8], ["B3C"] = 48 + scatter[(week + 5) % 8] - (a_week * week) },
            })]),
        }, edit);
    }

    [Fact]
    public void Drift_OfThirdBreak_IsNamedWithItsCostAndWhatToLookAt()
    {
        using var folder = new Folder();
        var (status, output, _) = Shell.Run("milling", "drift", "--in", folder.File("case.json", Case(1.5)));
        Assert.Equal(Exit.Done, status);
        Assert.Contains("B3C nips less and less: wear", output, StringComparison.Ordinal);
        Assert.Contains("in 24 h", output, StringComparison.Ordinal);
        Assert.Contains("locked out", output, StringComparison.Ordinal);
        Assert.Contains("B3C release: measured", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_OverHttp_IsSaid_AndWhatCannotBeLookedForSaysWhy()
    {
        using var client = site.Client();
        using var body = new StringContent(Case(0), Encoding.UTF8, "application/json");
        using var reply = await client.PostAsync(new Uri("/api/milling/drift", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.OK, reply.StatusCode);
        var answer = JsonDocument.Parse(await reply.Content.ReadAsStringAsync()).RootElement;
        Assert.Empty(answer.GetProperty("found").EnumerateArray());
        Assert.Equal(8, answer.GetProperty("series").EnumerateArray().First(s => s.GetProperty("what").GetString() == "B3C release").GetProperty("points").GetArrayLength());
        using var undated = new StringContent(Case(0, c => c["tests"]![0]!.AsObject().Remove("at")), Encoding.UTF8, "application/json");
        using var refused = await client.PostAsync(new Uri("/api/milling/drift", UriKind.Relative), undated);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Contains("when was it taken?", await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tests", """[ { "name": "one", "at": "2025-09-01T06:00:00Z", "releases": { "B1": 26, "B2": 52, "B3C": 48 } } ]""", "4 or more are needed to tell drift from scatter", Exit.NoAnswer)]
    [InlineData("prices", """{ "flour": 100, "feed": 200 }""", "Flour brings no less than feed", Exit.BadInput)]
    public void Drift_BadCase_SaysWhatIsWrong(string name, string value, string says, int exit)
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("milling", "drift", "--in", folder.File("case.json", Case(0, c => c[name] = JsonNode.Parse(value))));
        Assert.Equal(exit, status);
        Assert.Contains(says, output + error, StringComparison.Ordinal);
    }
}
