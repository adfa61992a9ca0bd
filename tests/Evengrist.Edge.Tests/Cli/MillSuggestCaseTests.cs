using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Suggested moves through the command line and over HTTP, on the demonstration's Unit A.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class MillSuggestCaseTests(WebSite site)
{
    private const string Patent = """[ "1M", "2M", "1MF", "SZ1", "3M", "2B", "SZ2", "1B", "4M", "5M", "3B" ]""";

    private static string Case(Action<JsonObject>? edit = null) => UnitACase.With(
        new JsonObject
        {
            ["suggest"] = JsonNode.Parse($$"""{ "wish": { "what": "Yield", "products": {{Patent}}, "raise": true, "by": 0.3 }, "keep": [ { "what": "Ash", "products": {{Patent}}, "mostChange": 0 } ], "sets": 2 }"""),
            ["tests"] = JsonNode.Parse("""[ { "name": "Monday", "releases": { "B1": 26, "B2": 52, "B3C": 48 } } ]"""),
        },
        edit);

    [Fact]
    public void Suggest_MorePatentAtTheSameAsh_NamesMovesThatATrialOnPaperBearsOut()
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("milling", "suggest", "--in", folder.File("case.json", Case()), "--json");
        Assert.True(status == Exit.Done, error);
        var answer = JsonDocument.Parse(output).RootElement;
        Assert.True(answer.GetProperty("met").GetBoolean());
        Assert.StartsWith("tuned on 3 measured figures", answer.GetProperty("tuned").GetString(), StringComparison.Ordinal);
        Assert.Contains("guards", string.Concat(answer.GetProperty("remarks").EnumerateArray().Select(r => r.GetString())), StringComparison.Ordinal);
        var set = answer.GetProperty("sets")[0];
        var wish = set.GetProperty("wish");
        Assert.InRange(wish.GetProperty("change").GetDouble(), 0.3, 1);
        Assert.InRange(set.GetProperty("keep")[0].GetProperty("change").GetDouble(), -0.1, 1e-6);

        var (_, solved, _) = Shell.Run("milling", "solve", "--json", "--in", folder.File("try.json", Case(c =>
        {
            c.Remove("suggest");
            c["try"] = JsonNode.Parse(set.GetProperty("try").GetRawText());
            c["sets"] = JsonNode.Parse($$"""[ { "name": "patent", "products": {{Patent}} } ]""");
        })));
        var change = JsonDocument.Parse(solved).RootElement.GetProperty("change").GetProperty("products").EnumerateArray().Single(p => p.GetProperty("name").GetString() == "patent").GetProperty("yieldPercent");
        Assert.Equal(change.GetProperty("value").GetDouble(), wish.GetProperty("change").GetDouble(), 1e-5);
        Assert.Equal(change.GetProperty("half").GetDouble(), wish.GetProperty("half").GetDouble(), 1e-5);
    }

    [Fact]
    public void Suggest_InWords_ListsMovesFiguresAndCautions_AndSaysWhenNotTuned()
    {
        using var folder = new Folder();
        var (status, output, _) = Shell.Run("milling", "suggest", "--in", folder.File("case.json", Case(c => c.Remove("tests"))));
        Assert.Equal(Exit.Done, status);
        Assert.Contains("not tuned", output, StringComparison.Ordinal);
        Assert.Contains("best:", output, StringComparison.Ordinal);
        Assert.Contains(" from ", output, StringComparison.Ordinal);
        Assert.Contains("Roll nips crush", output, StringComparison.Ordinal);
        Assert.Contains("not proven", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Suggest_OverHttp_IsAnswered_AndWithoutAWishSaysWhatToGive()
    {
        using var client = site.Client();
        using var body = new StringContent(Case(), Encoding.UTF8, "application/json");
        using var reply = await client.PostAsync(new Uri("/api/milling/suggest", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.OK, reply.StatusCode);
        Assert.True(JsonDocument.Parse(await reply.Content.ReadAsStringAsync()).RootElement.GetProperty("met").GetBoolean());
        using var without = new StringContent(Case(c => c.Remove("suggest")), Encoding.UTF8, "application/json");
        using var none = await client.PostAsync(new Uri("/api/milling/suggest", UriKind.Relative), without);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, none.StatusCode);
        Assert.Contains("Say what is wished", await none.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "wish": { "what": "Yield", "raise": true, "by": -0.3 } }""", "an amount above 0", Exit.BadInput)]
    [InlineData("""{ "wish": { "what": "Yield", "raise": true, "products": [ "9M" ] } }""", "There is no product 9M", Exit.BadInput)]
    [InlineData("""{ "wish": { "what": "Taste", "raise": true } }""", "suggest.wish.what", Exit.BadInput)]
    [InlineData("""{ "wish": { "what": "MoneyPerDay", "raise": true } }""", "needs the price", Exit.BadInput)]
    [InlineData("""{ "wish": { "what": "Yield", "raise": true }, "keep": [ null ] }""", "null in a list", Exit.BadInput)]
    [InlineData("""{ "wish": { "what": "Yield", "raise": true }, "keep": [ { "what": "Ash", "leastChange": 1, "mostChange": 0 } ] }""", "turn them round", Exit.BadInput)]
    [InlineData("""{ "wish": { "what": "Yield", "raise": true }, "rules": { "most": 40 } }""", "1 to 6 moves", Exit.BadInput)]
    [InlineData("""{ "wish": { "what": "Yield", "raise": true }, "rules": { "clothsOnHand": [ 0 ] } }""", "above 0 and at most 4000", Exit.BadInput)]
    [InlineData("""{ "wish": { "what": "Yield", "raise": true }, "rules": { "mostSteps": 1, "airStepMetresPerSecond": 0, "leastGapMicrometres": 1999, "mostGapMicrometres": 2000 } }""", "Nothing may be moved", Exit.NoAnswer)]
    [InlineData("""{ "keep": [] }""", "wish", Exit.BadInput)]
    public void Suggest_BadCase_SaysWhatIsWrong(string suggest, string says, int exit)
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("milling", "suggest", "--in", folder.File("case.json", Case(c => c["suggest"] = JsonNode.Parse(suggest))));
        Assert.Equal(exit, status);
        Assert.Contains(says, output + error, StringComparison.Ordinal);
    }
}
