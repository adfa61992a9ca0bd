using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Cli;
using Evengrist.Intake;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Edge.Tests.Web.Trucks;

[Collection(TruckSiteCollection.Name)]
public sealed class ContractsTests(WebSite site)
{
    [Fact]
    public async Task Contract_KeptOnThePage_IsShownAndSettlesATicket()
    {
        using var client = await Tickets.NamedAsync(site);
        using var kept = await KeepAsync(client, Json("PAGE", 1));
        Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        var page = await Tickets.TextAsync(client, "/intake/contracts?code=PAGE%20v1");
        Assert.All(["PAGE v1", "6.20 USD/bu", "0.05", "a part of a step is not credited", "by Ada Miller", "The next version of PAGE", "\"version\": 2"], said => Assert.Contains(said, page, StringComparison.Ordinal));
        using var recorded = await Tickets.SendAsync(client, new Dictionary<string, string>(Tickets.Worked("25-0916-031")) { ["T.Contract"] = "PAGE v1" });
        Assert.Equal(HttpStatusCode.Redirect, recorded.StatusCode);
        Assert.Contains("Under PAGE v1", await Tickets.TextAsync(client, "/intake/25-0916-031"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{", "It is no JSON at line 1")]
    [InlineData("""{ "code": "X" }""", "must be there and is missing")]
    [InlineData("overlap", "two steps begin at 11: they overlap|two steps begin at 11")]
    [InlineData("factor", "write one of Moisture, Protein")]
    [InlineData("blank", "A contract's code has no blank")]
    public async Task Contract_ThatCannotBe_IsRefusedInWordsAndWhatWasWrittenStays(string written, string says)
    {
        using var client = await Tickets.NamedAsync(site);
        var json = written switch
        {
            "overlap" => Json("BAD", 1).Replace("11.2", "11", StringComparison.Ordinal),
            "factor" => Json("BAD", 1).Replace("\"Protein\"", "\"Proteine\"", StringComparison.Ordinal),
            "blank" => Json("BAD ONE", 1),
            _ => written,
        };
        using var answer = await KeepAsync(client, json);
        var html = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("Not kept; what you wrote is still here.", html, StringComparison.Ordinal);
        Assert.Contains(says.Split('|'), said => html.Contains(said, StringComparison.Ordinal));
        Assert.Contains(json.Trim(), html.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Null(site.Mill.Contracts.Newest("BAD"));
    }

    [Fact]
    public async Task Contract_OverTheApi_IsKeptOnceAndNeverChanged()
    {
        using var client = site.Client();
        Assert.Equal(HttpStatusCode.Created, (await PostAsync(client, Json("HTTP", 1))).StatusCode);
        Assert.Equal(HttpStatusCode.Created, (await PostAsync(client, Json("HTTP", 1))).StatusCode);
        using var changed = await PostAsync(client, Json("HTTP", 1).Replace("6.20", "6.30", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.Conflict, changed.StatusCode);
        Assert.Contains("Keep a change as version 2", (await changed.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Contains((await client.GetFromJsonAsync<JsonElement>(new Uri("/api/intake/contracts", UriKind.Relative))).EnumerateArray(), c => c.GetProperty("code").GetString() == "HTTP");
        using var nobody = await client.PostAsync(new Uri("/api/intake/contracts", UriKind.Relative), new StringContent("{}", System.Text.Encoding.UTF8, "application/json"));
        var problem = await nobody.Content.ReadAsStringAsync();
        Assert.All(["must be there and is missing", "Say who agreed it"], said => Assert.Contains(said, problem, StringComparison.Ordinal));
    }

    [Fact]
    public void Contract_OnTheCommandLine_IsKeptAndListed()
    {
        using var folder = new Folder();
        var data = Path.Combine(folder.Path, "mill.db");
        Assert.Equal(Exit.Done, Shell.Run("mill", "new", "--data", data, "--name", "Little Mill").Status);
        Assert.Equal(Exit.Done, Shell.Run("intake", "contract", "--in", folder.File("c.json", Json("CLI", 1)), "--by", "Ada", "--data", data).Status);
        Assert.Contains("CLI version 1, kept by Ada", Shell.Run("intake", "contract", "--data", data).Output, StringComparison.Ordinal);
        var (status, _, error) = Shell.Run("intake", "contract", "--in", folder.File("d.json", Json("CLI", 1).Replace("11.2", "11", StringComparison.Ordinal)), "--by", "Ada", "--data", data);
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains("two steps begin at 11", error, StringComparison.Ordinal);
    }

    private static string Json(string code, int version) => TermsJson.Write(ExampleContract.Terms with
    {
        Code = code, Version = version, Name = "a test",
        Scales = [ReferenceScales.KansasCityHardWinter with { Code = "P", Steps = [new(11m, 0m), new(11.2m, 0.05m), new(12.8m, 0.64m)], End = 16m }],
    });

    private static Task<HttpResponseMessage> KeepAsync(HttpClient client, string json) => WebSite.PostAsync(client, "/intake/contracts", "/intake/contracts", [new("_handler", "contract"), new("Json", json)]);

    private static Task<HttpResponseMessage> PostAsync(HttpClient client, string json) =>
        client.PostAsync(new Uri("/api/intake/contracts?by=Ada", UriKind.Relative), new StringContent(json, System.Text.Encoding.UTF8, "application/json"));
}
