using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web;
using Evengrist.Tests.Intake.Grading;

namespace Evengrist.Edge.Tests.Grades;

/// <summary>Posed samples over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class GradeApiTests(WebSite site)
{
    [Fact]
    public async Task Grade_EveryVector_GivesGradeDecidingFactorAndDefects()
    {
        using var client = site.Client();
        foreach (var vector in GradeVectors.All)
        {
            using var answer = await PostAsync(client, vector.Json());
            Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{vector}: {await answer.Content.ReadAsStringAsync()}");
            Vectors.Check(vector, await answer.Content.ReadFromJsonAsync<JsonElement>());
        }
    }

    [Fact]
    public async Task Grade_EditionNotHeld_IsRefusedInWords()
    {
        using var client = site.Client();
        using var answer = await PostAsync(client, File.ReadAllText(Repository.Sample("cases", "grade-hrw.json")).Replace("\"2015\"", "\"2020\"", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("held in the edition 2015 and no other", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Grade_FactorMissing_IsNotGradedAndNamed()
    {
        using var client = site.Client();
        using var answer = await PostAsync(client, File.ReadAllText(Repository.Sample("cases", "grade-hrw.json")).Replace("\"damaged [%]\": 1.2,", "", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var problem = await answer.Content.ReadFromJsonAsync<JsonElement>();
        Assert.Contains("damaged kernels", problem.GetProperty("missing").EnumerateArray().Select(m => m.GetString()));
        Assert.Equal("U.S. No. 2", problem.GetProperty("atBest").GetString());
    }

    [Fact]
    public async Task Grade_Factors_CarryTheWayToTheNextGrades()
    {
        using var client = site.Client();
        using var answer = await PostAsync(client, GradeVectors.Of("G2").Json());
        var factor = (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("factors").EnumerateArray().Single(f => f.GetProperty("factor").GetString() == "test weight");
        Assert.Equal((59.94m, 59.9m), (factor.GetProperty("found").GetDecimal(), factor.GetProperty("recorded").GetDecimal()));
        Assert.Equal(("U.S. No. 1", 0.1m), (factor.GetProperty("better").GetProperty("grade").GetString(), factor.GetProperty("better").GetProperty("by").GetDecimal()));
        Assert.Equal(("U.S. No. 3", 1.9m), (factor.GetProperty("worse").GetProperty("grade").GetString(), factor.GetProperty("worse").GetProperty("by").GetDecimal()));
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData(null)]
    public async Task HouseClass_NotSentAsJson_IsNotTaken(string? type)
    {
        using var client = site.Client();
        using var content = new ByteArrayContent(System.Text.Encoding.UTF8.GetBytes(House("HY")));
        content.Headers.ContentType = type is null ? null : new(type);
        using var answer = await client.PostAsync(new Uri("/api/intake/house-classes?by=Mallory", UriKind.Relative), content);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
        Assert.Empty(site.Mill.Papers("house-class").All());
    }

    [Fact]
    public async Task HouseClass_WithoutANameOrWithFaults_IsRefusedInWords()
    {
        using var client = site.Client();
        using var content = new StringContent(House("HY").Replace("\"%\"", "\"t\"", StringComparison.Ordinal), System.Text.Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri("/api/intake/house-classes", UriKind.Relative), content);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var problem = await answer.Content.ReadAsStringAsync();
        Assert.All(["is not read in", "Say who decided it"], said => Assert.Contains(said, problem, StringComparison.Ordinal));
    }

    private static string House(string code) => $$"""{ "code": "{{code}}", "version": 1, "name": "", "bands": [ "one" ], "limits": [ { "factor": "Damaged", "unit": "%", "decimals": 1, "atMost": [ 3 ] } ] }""";

    private static async Task<HttpResponseMessage> PostAsync(HttpClient client, string text)
    {
        using var content = new StringContent(text, System.Text.Encoding.UTF8, "application/json");
        return await client.PostAsync(new Uri("/api/intake/grade", UriKind.Relative), content);
    }
}
