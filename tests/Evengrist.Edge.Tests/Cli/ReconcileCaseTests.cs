using System.Net;
using System.Text;
using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Streams reconciled through the command line and over HTTP.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class ReconcileCaseTests(WebSite site)
{
    private static string Sample => File.ReadAllText(Repository.Sample("cases", "mill-reconcile.json"));

    [Fact]
    public void Reconcile_Sample_IsTheWorkedCaseOfTheModelPage()
    {
        var (status, output, _) = Shell.Run("milling", "reconcile", "--in", Repository.Sample("cases", "mill-reconcile.json"), "--json");
        Assert.Equal(Exit.Done, status);
        var answer = JsonDocument.Parse(output).RootElement;
        Assert.True(answer.GetProperty("fits").GetBoolean());
        Assert.Equal(1.1777, answer.GetProperty("check").GetProperty("squares").GetDouble(), 1e-4);
        Assert.Equal(7.58965, answer.GetProperty("check").GetProperty("values")[1].GetProperty("reconciled").GetDouble(), 1e-5);
    }

    [Fact]
    public void Reconcile_AWrongWeight_IsNamedAndSetAside()
    {
        using var folder = new Folder();
        var (status, output, _) = Shell.Run("milling", "reconcile", "--in", folder.File("case.json", Sample.Replace("7.62", "8.62", StringComparison.Ordinal)));
        Assert.Equal(Exit.Done, status);
        Assert.Contains("do NOT go together", output, StringComparison.Ordinal);
        Assert.Contains("look first at flour", output, StringComparison.Ordinal);
        Assert.Contains("the table is without what was named", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Reconcile_OverHttp_AnswersOrSaysWhyNot()
    {
        using var client = site.Client();
        async Task<(HttpStatusCode, string)> Ask(string body)
        {
            using var content = new StringContent(body, Encoding.UTF8, "application/json");
            using var reply = await client.PostAsync(new Uri("/api/milling/reconcile", UriKind.Relative), content);
            return (reply.StatusCode, await reply.Content.ReadAsStringAsync());
        }

        Assert.Equal(HttpStatusCode.OK, (await Ask(Sample)).Item1);
        var (clash, why) = await Ask("""{ "flows": [ { "name": "a", "amount": 1, "uncertainty": 0 }, { "name": "b", "amount": 2, "uncertainty": 0 } ], "nodes": [ { "name": "n", "in": ["a"], "out": ["b"] } ] }""");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, clash);
        Assert.Contains("known exactly does not go together: mass at n", why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"amount\": 9.95", "\"amount\": -9.95", "wheat: an amount is 0 or more")]
    [InlineData("\"percent\": 6.40", "\"percent\": 140", "bran, ash: a share lies from 0 to 100 %")]
    [InlineData("\"shorts\", \"germ\"]", "\"shorts\", \"dust\"]", "mill: there is no stream dust.")]
    [InlineData("\"nodes\"", "\"level\": 2, \"nodes\"", "a chance above 0 and below 1")]
    [InlineData("\"nodes\"", "\"places\"", "\"places\" (line")]
    public void Reconcile_BadCase_SaysWhatIsWrong(string was, string becomes, string says)
    {
        using var folder = new Folder();
        Assert.Contains(was, Sample, StringComparison.Ordinal);
        var (status, output, error) = Shell.Run("milling", "reconcile", "--in", folder.File("case.json", Sample.Replace(was, becomes, StringComparison.Ordinal)), "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(says, error, StringComparison.Ordinal);
    }
}
