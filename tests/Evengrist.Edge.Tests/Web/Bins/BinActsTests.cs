using Evengrist.Ledger;

namespace Evengrist.Edge.Tests.Web.Bins;

[Collection(WebSiteCollection.Name)]
public sealed class BinActsTests(WebSite site)
{
    [Fact]
    public async Task Act_GasAndItsClearance_StandOnThePageAndInTheLists()
    {
        using var client = await VisitorAsync();
        await ActAsync(client, "F-WB", "gas-1", "gas", "2025-09-20T05:00", "placards up, applied by R. Voss");
        var page = await client.GetStringAsync(new Uri("/bins/F-WB?asof=2025-09-21T05:00", UriKind.Relative));
        Assert.Contains("under gas", page, StringComparison.Ordinal);
        Assert.Contains("Only the licensed applicator clears it", page, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?i)\\bsafe\\b", page);
        Assert.Contains("placards up", await client.GetStringAsync(new Uri("/api/bins?asof=2025-09-21T05:00", UriKind.Relative)), StringComparison.Ordinal);

        var without = await ActAsync(client, "F-WB", "clear-1", "cleared", "2025-09-23T05:00", "");
        Assert.Contains("licence number", without, StringComparison.Ordinal);
        await ActAsync(client, "F-WB", "clear-2", "cleared", "2025-09-23T05:00", "", new("Act.Person", "R. Voss"), new("Act.Licence", "4711"));
        Assert.False(site.Mill.Ask(v => v.Book.BarsOn(v.Book.Named("F-WB").Id, NodaTime.Instant.FromUtc(2025, 9, 24, 0, 0))).IsAny);
        await client.GetStringAsync(new Uri("/?asof=newest", UriKind.Relative));
    }

    [Fact]
    public async Task Act_PersonWhileDrawing_IsRefusedAndWhatWasTypedStays()
    {
        using var client = await VisitorAsync();
        var page = await ActAsync(client, "B01", "in-1", "inside", "2025-09-15T07:00", "sweeping, permit 12");
        Assert.Contains("Not recorded.", page, StringComparison.Ordinal);
        Assert.Contains("goes from B01 to MXA", page, StringComparison.Ordinal);
        Assert.Contains("sweeping, permit 12", page, StringComparison.Ordinal);
        await ActAsync(client, "B01", "in-2", "inside", "2025-09-16T07:00", "sweeping, permit 12", new KeyValuePair<string, string>("Act.Until", "2025-09-16T08:00"));
        Assert.Contains("person inside", await client.GetStringAsync(new Uri("/bins/B01?asof=2025-09-16T07:30", UriKind.Relative)), StringComparison.Ordinal);
        Assert.Equal(HappeningKind.PersonOut, site.Mill.Ask(v => v.Book.HappeningsOn(v.Book.Named("B01").Id)[^1].Kind));
    }

    [Fact]
    public async Task NewTicket_HeldBin_CannotBeChosenAndSaysWhy()
    {
        using var client = await VisitorAsync();
        await client.GetStringAsync(new Uri("/?asof=2025-09-16T05:00", UriKind.Relative));
        var page = await client.GetStringAsync(new Uri("/intake/new", UriKind.Relative));
        Assert.Matches("<option value=\"B02\"[^>]*disabled[^>]*>[^<]*ON HOLD: Smell", page);
        Assert.DoesNotMatch("<option value=\"B01\"[^>]*disabled", page);
    }

    private async Task<HttpClient> VisitorAsync()
    {
        var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")]);
        return client;
    }

    private static async Task<string> ActAsync(HttpClient client, string bin, string key, string what, string at, string text, params KeyValuePair<string, string>[] more)
    {
        using var answer = await WebSite.PostAsync(client, $"/bins/{bin}", $"/bins/{bin}", [new("_handler", "act"), new("Act.Key", key), new("Act.What", what), new("Act.At", at), new("Act.Text", text), .. more]);
        return await answer.Content.ReadAsStringAsync();
    }
}
