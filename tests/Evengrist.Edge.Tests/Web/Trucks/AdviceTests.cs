using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using Evengrist.Edge.Tests.Cli;
using Evengrist.Intake.Deciding;
using Evengrist.Ledger;
using Evengrist.Records.Intake;

namespace Evengrist.Edge.Tests.Web.Trucks;

[Collection(TruckSiteCollection.Name)]
public sealed class AdviceTests(WebSite site)
{
    [Fact]
    public async Task Advice_TreatedSeedSeen_TurnsAwayAndAnOverrideDemandsAReasonThatStays()
    {
        using var client = await Tickets.NamedAsync(site);
        var ticket = await OpenAsync(client, "advice-1");
        Assert.Contains("what was smelt and seen at the probe", await Tickets.TextAsync(client, $"/intake/{ticket}/advice"), StringComparison.Ordinal);
        using (var seen = await PostAsync(client, ticket, "seen", new() { ["S.Signs"] = "treated seed" }))
        {
            Assert.Equal(HttpStatusCode.Redirect, seen.StatusCode);
        }

        var page = await Tickets.TextAsync(client, $"/intake/{ticket}");
        Assert.Contains("Advised: turn away", page, StringComparison.Ordinal);
        Assert.Contains("Do not tip or touch it", page, StringComparison.Ordinal);

        using (var refused = await DecideAsync(client, ticket, ""))
        {
            Assert.Equal(HttpStatusCode.Conflict, refused.StatusCode);
            Assert.Contains("against the advice to turn away", (await refused.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("detail").GetString(), StringComparison.Ordinal);
        }

        using var decided = await DecideAsync(client, ticket, "the quality manager looked: red paint, no dressing");
        Assert.Equal(HttpStatusCode.OK, decided.StatusCode);
        var said = site.Mill.Ask(view => view.Book.HappeningsOn(view.Book.Named(ticket).Id).Last(h => h.Kind == HappeningKind.Decided)).Words;
        Assert.Contains("against the advice to turn away", said, StringComparison.Ordinal);
        Assert.EndsWith("red paint, no dressing", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Advice_SoyBeforeAndOnlySwept_SetsAsideUntilWashed()
    {
        using var client = await Tickets.NamedAsync(site);
        var ticket = await OpenAsync(client, "advice-2");
        (await PostAsync(client, ticket, "loads", new() { ["L.Load1"] = "Soy", ["L.Cleaned"] = "Swept", ["L.Driver"] = "A. Driver" })).Dispose();
        Assert.Contains("Advised: set aside", await Tickets.TextAsync(client, $"/intake/{ticket}/advice"), StringComparison.Ordinal);
        (await PostAsync(client, ticket, "loads", new() { ["L.Load1"] = "Soy", ["L.Cleaned"] = "Washed", ["L.Driver"] = "A. Driver" })).Dispose();
        Assert.Contains("Advised: accept", await Tickets.TextAsync(client, $"/intake/{ticket}/advice"), StringComparison.Ordinal);
        using var nobody = await PostAsync(client, ticket, "loads", new() { ["L.Load1"] = "Soy", ["L.Cleaned"] = "Washed", ["L.Driver"] = "" });
        Assert.Contains("who declares it", await nobody.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Limits_ChangedByAPerson_AreAFurtherVersion()
    {
        using var client = await Tickets.NamedAsync(site);
        var codex = Markets.CodexAlimentarius;
        async Task<HttpResponseMessage> KeepAsync(string text) => await WebSite.PostAsync(client, "/intake/limits", "/intake/limits", [new("_handler", "market-CODEX"), new("Market", text)]);
        using (var kept = await KeepAsync((codex with { Limits = [.. codex.Limits.Select(l => l with { Most = l.Most / 2 })] }).ToJson()))
        {
            Assert.Equal(HttpStatusCode.Redirect, kept.StatusCode);
        }

        Assert.Equal(1m, MarketShelf.All(site.Mill).Single(m => m.Code == "CODEX").Limits[0].Most);
        using var wrong = await KeepAsync(codex.ToJson().Replace("mg/kg", "kg/mg", StringComparison.Ordinal));
        Assert.Contains("use mg/kg", await wrong.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task PosedCase_OverHttpAndOnTheCommandLine_IsTheSame()
    {
        foreach (var (verb, file, says) in new[] { ("decide", "decide.json", "set aside"), ("carry-over", "carry-over.json", "measured on this site") })
        {
            var path = Path.Combine(Plant.Repository.Root, "samples", "cases", file);
            using var client = site.Client();
            using var answer = await client.PostAsync(new Uri($"/api/intake/{verb}", UriKind.Relative), new StringContent(await File.ReadAllTextAsync(path), null, "application/json"));
            var web = JsonSerializer.Serialize(await answer.Content.ReadFromJsonAsync<JsonElement>());
            var (status, output, _) = Shell.Run("intake", verb, "--in", path, "--json");
            Assert.Equal((0, web), (status, JsonSerializer.Serialize(JsonSerializer.Deserialize<JsonElement>(output))));
            Assert.Contains(says, web, StringComparison.Ordinal);
        }
    }

    private static async Task<string> OpenAsync(HttpClient client, string key)
    {
        using var answer = await client.PostAsJsonAsync(new Uri("/api/intake/arrivals?by=Ada", UriKind.Relative), new Dictionary<string, string> { ["plate"] = "trailer 7", ["source"] = "DS-2", ["class"] = "HW", ["key"] = key, ["station"] = "test" });
        return (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("ticket").GetString()!;
    }

    private async Task<HttpResponseMessage> DecideAsync(HttpClient client, string ticket, string why) =>
        await client.PostAsJsonAsync(new Uri($"/api/intake/tickets/{ticket}/send?by=Ada", UriKind.Relative), new Dictionary<string, string>
        {
            ["decision"] = "accept", ["bin"] = "B90", ["way"] = "PIT1 | LEG1", ["why"] = why, ["key"] = "d" + why.Length, ["seen"] = $"{site.Mill.Ask(view => view.Book.Last.Value)}",
        });

    private static Task<HttpResponseMessage> PostAsync(HttpClient client, string ticket, string handler, Dictionary<string, string> form)
    {
        form["_handler"] = handler;
        var prefix = handler == "seen" ? "S" : "L";
        form[$"{prefix}.Key"] = Guid.NewGuid().ToString("N");
        return WebSite.PostAsync(client, $"/intake/{ticket}/advice", $"/intake/{ticket}/advice", form);
    }
}
