using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Plant.Cases;

namespace Evengrist.Edge.Tests.Web.Bins;

[Collection(WebSiteCollection.Name)]
public sealed class BinsApiTests(WebSite site)
{
    [Fact]
    public async Task Sound_ExampleOfTheHelp_IsAnswered()
    {
        var (status, answer) = await PostAsync("/api/bins/sound", SoundingCase.Help.Example);
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.True(answer.GetProperty("tonnes").GetDouble() > 1000);
        Assert.Contains("1.292", answer.GetProperty("densityFrom").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Best_ExampleOfTheHelp_RanksTheBandFirst()
    {
        var (status, answer) = await PostAsync("/api/bins/best", BestBinCase.Help.Example);
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal("B05", answer.GetProperty("ranked")[0].GetProperty("bin").GetString());
    }

    [Fact]
    public async Task Calibrate_ExampleOfTheHelp_IsAnswered()
    {
        var (status, answer) = await PostAsync("/api/bins/calibrate", WeighOutCase.Help.Example);
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal(1.0399, answer.GetProperty("packFactor").GetDouble(), 1e-4);
    }

    [Fact]
    public async Task Sound_TapeThatCannotBe_IsNotAnsweredAndSaysWhy()
    {
        var (status, answer) = await PostAsync("/api/bins/sound", SoundingCase.Help.Example.Replace("3.5", "99", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        Assert.Contains("Sound in the middle", answer.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.BadRequest, (await PostAsync("/api/bins/sound", "{}")).Status);
    }

    private async Task<(HttpStatusCode Status, JsonElement Answer)> PostAsync(string path, string body)
    {
        using var client = site.Client();
        using var content = new StringContent(body, System.Text.Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri(path, UriKind.Relative), content);
        return (answer.StatusCode, await answer.Content.ReadFromJsonAsync<JsonElement>());
    }
}
