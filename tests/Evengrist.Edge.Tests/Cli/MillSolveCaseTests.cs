using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>The mill on paper through the command line and over HTTP, on the demonstration's Unit A.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class MillSolveCaseTests(WebSite site)
{
    private static string Case(Action<JsonObject>? edit = null) => UnitACase.With(
        new JsonObject
        {
            ["sets"] = JsonNode.Parse("""[ { "name": "patent", "products": [ "1M", "2M", "1MF", "SZ1", "3M", "2B", "SZ2", "1B", "4M", "5M", "3B" ] } ]"""),
            ["try"] = JsonNode.Parse("""{ "gapMicrometres": { "B3C": 210 } }"""),
            ["tests"] = JsonNode.Parse("""[ { "name": "Monday", "releases": { "B1": 26, "B2": 52, "B3C": 48 } } ]"""),
        },
        edit);

    // Third break opened by 0.05 mm: directions are common practice.
    [Fact]
    public void Solve_ThirdBreakOpened_SaysWhatEveryStreamWouldDo()
    {
        var tuned = Solved(Case());
        var change = tuned.GetProperty("change");
        Assert.True(Of(change.GetProperty("passages"), "code", "B3C").GetProperty("releasePercent").GetProperty("value").GetDouble() < 0);
        Assert.True(Yield(change, "3B") < 0 && Yield(change, "4B") > 0 && Yield(change, "5B") > 0 && Yield(change, "BR") > 0 && Yield(change, "flour") < 0);
        Assert.True(Of(change.GetProperty("products"), "name", "patent").GetProperty("ashPercent").GetProperty("value").GetDouble() <= 0);
        Assert.All(change.GetProperty("products").EnumerateArray(), p => Assert.True(p.GetProperty("yieldPercent").GetProperty("half").GetDouble() >= 0));
        Assert.StartsWith("tuned on 3 measured figures", tuned.GetProperty("tuned").GetString(), StringComparison.Ordinal);
        Assert.Contains("guards", string.Concat(tuned.GetProperty("remarks").EnumerateArray().Select(r => r.GetString())), StringComparison.Ordinal);
        Assert.InRange(change.GetProperty("rollKilowatts").GetProperty("half").GetDouble(), 1e-6, 1000);
        Assert.Equal(change.GetProperty("rollKilowatts").GetProperty("value").GetDouble() / 17.5, change.GetProperty("rollKilowattHoursPerTonne").GetProperty("value").GetDouble(), 1e-6);
        Assert.InRange(tuned.GetProperty("closure").GetDouble(), 0, 1e-9);

        var not = Solved(Case(c => c.Remove("tests")));
        Assert.Equal("not tuned: enter a release test or a stream survey", not.GetProperty("tuned").GetString());
        Assert.True(Of(not.GetProperty("change").GetProperty("passages"), "code", "B3C").GetProperty("releasePercent").GetProperty("half").GetDouble()
            > Of(change.GetProperty("passages"), "code", "B3C").GetProperty("releasePercent").GetProperty("half").GetDouble());

        static double Yield(JsonElement change, string name) => Of(change.GetProperty("products"), "name", name).GetProperty("yieldPercent").GetProperty("value").GetDouble();
    }

    [Fact]
    public async Task Solve_WithSamples_PutsDrawsBesideTheFirstOrder()
    {
        var prices = new JsonObject { ["1M"] = 430, ["BR"] = 190 };
        string Drawn(long seed) => Case(c => (c["samples"], c["seed"], c["pricePerTonne"]) = (1000, seed, prices.DeepClone()));
        var draws = Solved(Drawn(5)).GetProperty("draws");
        Assert.Equal((1000, 0, 5, true), (draws.GetProperty("samples").GetInt32(), draws.GetProperty("unsolved").GetInt32(), draws.GetProperty("seed").GetInt64(), draws.GetProperty("isWhole").GetBoolean()));
        Assert.Matches("^Draws and first-order ± (say the same|differ)", draws.GetProperty("beside").GetString());
        var patent = Of(draws.GetProperty("products"), "name", "patent");
        foreach (var figure in (JsonElement[])[patent.GetProperty("yieldPercent"), patent.GetProperty("ashPercent"), patent.GetProperty("proteinPercent"), Of(draws.GetProperty("change"), "name", "flour").GetProperty("yieldPercent"), draws.GetProperty("moneyPerDay")])
        {
            var (mean, spread, low, middle, high) = (Number(figure, "mean"), Number(figure, "standardDeviation"), Number(figure, "p5"), Number(figure, "p50"), Number(figure, "p95"));
            Assert.True(low < middle && middle < high && Math.Abs(mean - middle) < spread);

            // 90 % of any spread that is near normal lie within ±1.645 deviations [tables of the normal]; the bounds leave room for bend.
            Assert.InRange((high - low) / spread, 2.9, 3.7);
            Assert.InRange(2 * spread / Number(figure.GetProperty("firstOrder"), "half"), 0.5, 2);
        }

        // The same seed over HTTP gives the same figures, another seed others.
        using var client = site.Client();
        using var body = new StringContent(Drawn(5), Encoding.UTF8, "application/json");
        using var reply = await client.PostAsync(new Uri("/api/milling/solve", UriKind.Relative), body);
        var again = JsonDocument.Parse(await reply.Content.ReadAsStringAsync()).RootElement.GetProperty("draws");
        Assert.True(JsonElement.DeepEquals(draws.GetProperty("products"), again.GetProperty("products")));
        Assert.False(JsonElement.DeepEquals(draws.GetProperty("products"), Solved(Drawn(6)).GetProperty("draws").GetProperty("products")));
        Assert.Equal(JsonValueKind.Null, Solved(Case()).GetProperty("draws").ValueKind);

        using var folder = new Folder();
        var (status, said, told) = Shell.Run("milling", "solve", "--in", folder.File("case.json", Drawn(5)));
        Assert.Equal(Exit.Done, status);
        Assert.Contains("1000 mills drawn from what is not known of this one and solved whole, seed 5", said, StringComparison.Ordinal);
        Assert.Contains("money in 24 h", said, StringComparison.Ordinal);
        Assert.Contains("1000 of 1000 mills drawn", told, StringComparison.Ordinal);

        static double Number(JsonElement of, string name) => of.GetProperty(name).GetDouble();
    }

    // Of these draws two make loops swing between two loads by themselves, cloths overloaded in turn: they are damped and solved.
    [Fact]
    public void Solve_OfMillsWhoseLoopsSwing_SolvesThemAll()
    {
        var posed = new JsonObject
        {
            ["sheet"] = JsonNode.Parse(File.ReadAllText(Repository.Sample("cases", "flow-sheet.json"))), ["samples"] = 300,
            ["wheat"] = JsonNode.Parse("""{ "tonnesPerHour": 10, "moisturePercent": 16, "ashPercent": 1.7, "proteinPercent": 14.4, "basis": "dry" }"""),
        };
        var draws = Solved(posed.ToJsonString()).GetProperty("draws");
        Assert.Equal((300, 0), (draws.GetProperty("samples").GetInt32(), draws.GetProperty("unsolved").GetInt32()));
    }

    [Fact]
    public void Fit_OfReleases_NamesWhatTheyTell()
    {
        using var folder = new Folder();
        var (status, output, _) = Shell.Run("milling", "fit", "--in", folder.File("case.json", Case()));
        Assert.Equal(Exit.Done, status);
        Assert.Contains("tuned on 3 figures", output, StringComparison.Ordinal);
        Assert.Contains("B3C release", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Solve_OverHttp_IsTheSame_AndWhatHasNoAnswerSaysWhy()
    {
        using var client = site.Client();
        using var body = new StringContent(Case(), Encoding.UTF8, "application/json");
        using var reply = await client.PostAsync(new Uri("/api/milling/solve", UriKind.Relative), body);
        Assert.Equal(HttpStatusCode.OK, reply.StatusCode);
        Assert.Equal("Converged", JsonDocument.Parse(await reply.Content.ReadAsStringAsync()).RootElement.GetProperty("exit").GetString());
        using var few = new StringContent(Case(c => c["tests"] = JsonNode.Parse("""[ { "name": "Monday", "releases": { "B1": 26 } } ]""")), Encoding.UTF8, "application/json");
        using var none = await client.PostAsync(new Uri("/api/milling/fit", UriKind.Relative), few);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, none.StatusCode);
        Assert.Contains("3 or more are needed", await none.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "try": { "gapMicrometres": { "P1": 20 } } }""", "P1 is no passage with rolls", Exit.BadInput)]
    [InlineData("""{ "try": { "cloths": [ { "passage": "B1", "fromMicrometres": 1120, "toMicrometres": 0 } ] } }""", "a cloth of 0 µm", Exit.BadInput)]
    [InlineData("""{ "try": { "outlets": [ { "passage": "M7", "outlet": 2, "to": [ { "to": "M7" } ] } ] } }""", "", Exit.Done)]
    [InlineData("""{ "tests": [ { "name": "Monday", "streams": [ { "product": "1M", "yieldPercent": 140 } ] } ] }""", "1M yields 140 %", Exit.BadInput)]
    [InlineData("""{ "tests": [ { "name": "Monday", "streams": [ { "product": "1M", "yieldPercent": 14, "ashPercent": -0.4 } ] } ] }""", "ash lies above 0", Exit.BadInput)]
    [InlineData("""{ "tests": [ { "name": "Monday", "releases": { "B1": 26 } } ] }""", "3 or more are needed", Exit.NoAnswer)]
    [InlineData("""{ "wheat": { "tonnesPerHour": 17.5, "moisturePercent": 46, "ashPercent": 1.7, "proteinPercent": 14.4, "basis": "dry" } }""", "from 10 to 20 %", Exit.BadInput)]
    [InlineData("""{ "samples": 0 }""", "200 to 100,000 mills can be drawn; asked for 0.", Exit.BadInput)]
    [InlineData("""{ "samples": -5 }""", "asked for -5.", Exit.BadInput)]
    [InlineData("""{ "samples": 100001 }""", "asked for 100,001.", Exit.BadInput)]
    [InlineData("""{ "samples": 2.5 }""", "samples", Exit.BadInput)]
    [InlineData("""{ "samples": "many" }""", "samples", Exit.BadInput)]
    [InlineData("""{ "sets": [ { "name": "patent", "products": [ "9M" ] } ] }""", "There is no product 9M", Exit.BadInput)]
    public void Solve_BadCase_SaysWhatIsWrong(string edit, string says, int exit)
    {
        using var folder = new Folder();
        var posed = Case(c =>
        {
            foreach (var (name, value) in JsonNode.Parse(edit)!.AsObject())
            {
                c[name] = value!.DeepClone();
            }
        });
        var (status, _, error) = Shell.Run("milling", "solve", "--in", folder.File("case.json", posed), "--json");
        Assert.Equal(exit, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    private static JsonElement Solved(string posed)
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("milling", "solve", "--in", folder.File("case.json", posed), "--json");
        Assert.True(status == Exit.Done, error);
        return JsonDocument.Parse(output).RootElement;
    }

    private static JsonElement Of(JsonElement list, string member, string name) => list.EnumerateArray().Single(e => e.GetProperty(member).GetString() == name);
}
