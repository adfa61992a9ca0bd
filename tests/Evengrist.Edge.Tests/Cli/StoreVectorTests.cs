using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>
/// Single points of the models of bins, through the command line and over HTTP. B1, B2: textbook solids [derived]. E1 to E3: constants from memory (the last read), so that
/// agreement shows the arithmetic. S2: equation from memory, 15 days read in an abstract (safe storage time of high moisture wheat, 2001). A1: rule of thumb of a weak source.
/// </summary>
[Collection(WebSiteCollection.Name)]
public sealed class StoreVectorTests(WebSite site)
{
    public static TheoryData<string, string, string, string, double, double> Vectors => new()
    {
        { "B1", "sound", """{ "shape": { "diameterMetres": 10, "wallMetres": 20, "heapDegrees": 25, "hopperDegrees": 45, "outletMetres": 0.6 }, "sounding": { "ullage": 0, "surface": "heaped" }, "density": { "kgPerM3": 785 }, "packFactor": { "value": 1.04, "uncertainty": 0 } }""", "tonnes", 1439.1, 0.05 },
        { "B2", "sound", """{ "shape": { "diameterMetres": 9.144, "wallMetres": 7.3152 }, "sounding": { "ullage": 0, "surface": "level" }, "density": { "kgPerM3": 785 } }""", "volumeM3", 16_964.6 * 0.3048 * 0.3048 * 0.3048, 0.005 },
        { "E1", "equilibrium", """{ "wheat": "hard", "equation": "Henderson", "celsius": 25, "humidityPercent": 65 }""", "answers.moisturePercent", 13.79, 0.005 },
        { "E2", "equilibrium", """{ "wheat": "soft", "equation": "Henderson", "celsius": 32.2222, "humidityPercent": 50 }""", "answers.moisturePercent", 10.78, 0.005 },
        { "E3", "equilibrium", """{ "wheat": "hard red spring", "equation": "ChungPfost", "celsius": 15, "moisturePercent": 14 }""", "answers.humidityPercent", 63.7, 0.05 },
        { "S2, equation", "storage", Layer, "layersBottomFirst.daysByEquation", 20.7, 0.05 },
        { "S2, measured", "storage", Layer, "layersBottomFirst.daysMeasured", 15, 1e-9 },
        { "A1", "aeration", """{ "wheat": "hard", "grain": { "celsius": 25, "moisturePercent": 13 }, "airflow": { "cfmPerBushel": 0.1 }, "airs": [] }""", "ruleHours", 150, 1e-9 },
        { "A1, fast", "aeration", """{ "wheat": "hard", "grain": { "celsius": 25, "moisturePercent": 13 }, "airflow": { "cfmPerBushel": 0.5 }, "airs": [] }""", "ruleHours", 30, 1e-9 },
    };

    private const string Layer = """{ "wheat": "hard", "asOf": "2025-09-01T08:00-06:00", "layers": [ { "name": "x", "t": 100, "moisturePercent": 17, "arrived": "2025-08-27T08:00-06:00", "temperatures": [ { "at": "2025-08-28T08:00-06:00", "celsius": 25 } ] } ] }""";

    [Theory]
    [MemberData(nameof(Vectors))]
    public async Task Vector_ThroughCommandLineAndHttp_IsMet(string id, string verb, string posed, string path, double expected, double within)
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("bins", verb, "--in", folder.File("case.json", posed), "--json");
        Assert.True(status == 0, $"{id}: {error}");
        Assert.Equal(expected, Number(JsonDocument.Parse(output).RootElement, path), within);

        using var client = site.Client();
        using var content = new StringContent(posed, System.Text.Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri($"/api/bins/{verb}", UriKind.Relative), content);
        Assert.Equal(expected, Number(await answer.Content.ReadFromJsonAsync<JsonElement>(), path), within);
    }

    private static double Number(JsonElement answer, string path) => path.Split('.').Aggregate(answer, (at, name) => (at.ValueKind == JsonValueKind.Array ? at[0] : at).GetProperty(name)).GetDouble();
}
