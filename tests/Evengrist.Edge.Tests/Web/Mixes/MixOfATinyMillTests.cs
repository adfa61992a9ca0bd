using System.Net;
using Evengrist.Bins;
using Evengrist.Bins.BestBin;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Intake.Deciding;
using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Mix.Relations;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using Evengrist.Records.Mix;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Edge.Tests.Web.Mixes;

/// <summary>The mix in a tiny mill of its own, invented: a bin above a market's limit on DON, and a limit on the flour's ash by a kept relation.</summary>
public sealed class MixOfATinyMillTests : IAsyncLifetime
{
    private readonly WebSite site = new();

    public async Task InitializeAsync()
    {
        await site.InitializeAsync();
        string[] trucks = ["25-0709-001", "25-0709-002", "25-0709-003"];
        var day = TinyMill.Morning - Duration.FromDays(60);
        site.Mill.Record([.. trucks.Select((t, i) => new Measure($"{t}-don", t, day + Duration.FromHours(2 * i), Property.Don, i < 2 ? 1.8m : 0.2m, "mg/kg", Basis.At12, "strip", "D1", 0.1m))], "Ada Miller", "test");
        site.Mill.Record([.. trucks.Select((t, i) => new Measure($"{t}-ash", t, day + Duration.FromHours(2 * i), Property.Ash, 1.60m, "%", Basis.At12, "furnace", "F1", 0.02m))], "Ada Miller", "test");
        site.Mill.Papers(SeasonTerms.Kind).Keep(SeasonTerms.Code, 1, new SeasonTerms { End = new LocalDate(2027, 6, 30), Currency = "USD", Units = [new UnitTerms("A", 5, 24)], Flours = [new FlourTerms("WB", "White bread", "A", 20, 0.7, 900)] }.ToJson(), "Ada Miller");
        site.Mill.Papers(BinPapers.Values).Keep(BinPapers.HouseValues, 1, BinPapers.Write(new BandValues("USD", new Dictionary<string, IReadOnlyList<ValuePoint>> { ["HW"] = [new(11, 240)] })), "Ada Miller");
        HouseRulesShelf.Keep(site.Mill, new HouseRules { Markets = ["EU"] }, "Ada Miller");
    }

    public Task DisposeAsync() => site.DisposeAsync();

    /// <summary>Flour ash = 0.05 + 0.25 · wheat: at most 0.46 is wheat of at most (0.46 − 0.05)/0.25 = 1.64; the wheat's 1.60 gives 0.45. At most 0.44 would be wheat of 1.56, which is not there.</summary>
    [Fact]
    public async Task Mix_WithALimitOnTheFloursAsh_CarriesItToTheWheatByTheKeptRelation()
    {
        var relation = new MillRelation("WB", new FlourRelation(Property.Ash, Basis.At12, Basis.At14, 0.05, 0.25, 0.004, false, "a book") { LeastWheat = 1.5, MostWheat = 1.7 });
        Assert.Empty(MillRelations.Keep(site.Mill, relation, "Ada Miller").Faults);
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/mix?flour=WB&hours=2&mix-down=on&sure=90&flour-most:Ash=0.46&asof=2025-09-15T06:00");
        Assert.Contains("as wheat at most 1.640: flour ash 14mb = 0.05 + 0.25 × wheat 12mb, ± 0.008 (not fitted on this mill: kept by Ada Miller, version 1; a book; for wheat of 1.5 to 1.7)", page, StringComparison.Ordinal);
        Assert.Contains("ash of the flour at most 0.46 % 14mb, 90 % sure", page, StringComparison.Ordinal);
        Assert.Contains("ash of the flour, expected: 0.450", page, StringComparison.Ordinal);
        Assert.Contains("No mix keeps all of these together.", await Tickets.TextAsync(client, "/mix?flour=WB&hours=2&mix-down=on&flour-most:Ash=0.44&asof=2025-09-15T06:00"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Mix_AndSheet_OfABinAboveTheLimit()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")]);
        const string moment = "asof=2025-09-15T06:00";
        var page = await Tickets.TextAsync(client, $"/mix?flour=WB&hours=2&{moment}");
        Assert.Contains("DON, at most 1 mg/kg", page, StringComparison.Ordinal);
        Assert.Contains("B01: its own DON is 1.8 mg/kg as it lies, above the limit of 1 mg/kg", page, StringComparison.Ordinal);
        Assert.Contains("mixing down is off.", page, StringComparison.Ordinal);
        Assert.Contains("Asked as if mixing down were allowed", await Tickets.TextAsync(client, $"/mix?flour=WB&hours=2&mix-down=on&{moment}"), StringComparison.Ordinal);

        var set = $"/mix/set?flour=WB&hours=2&mix-down=on&{moment}";
        async Task<string> SendAsync(string bin)
        {
            using var answer = await WebSite.PostAsync(client, set, set, [new("_handler", "sheet"), new("act", "keep"), new("line", "MXA"), new("from", "2025-09-16T06:00"), new("until", "2025-09-16T08:00"), new("rate", "5"), new($"share:{bin}", "100"), new("reason", "a test")]);
            return answer.StatusCode == HttpStatusCode.OK ? Tickets.Plain(await answer.Content.ReadAsStringAsync()) : $"{answer.StatusCode}";
        }

        Assert.Contains("have the limit's switch set under the limits of the market, with authority", await SendAsync("B01"), StringComparison.Ordinal);

        // Switched on, with a name, the same sheet can be kept.
        MarketShelf.Keep(site.Mill, Markets.EuropeanUnion with { Limits = [.. Markets.EuropeanUnion.Limits.Select(l => l with { BlendDown = true })] }, "Ada Miller");
        Assert.DoesNotContain("with authority. ", await SendAsync("B01"), StringComparison.Ordinal);
        Assert.Contains("MXA 2025-09-16 06:00", await Tickets.TextAsync(client, "/mix/sheets?asof=2025-09-17T06:00"), StringComparison.Ordinal);
    }
}
