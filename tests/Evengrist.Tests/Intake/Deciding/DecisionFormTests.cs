using Evengrist.Intake;
using Evengrist.Intake.Deciding;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tests.Intake.Deciding;

public sealed class DecisionFormTests
{
    [Fact]
    public void TrailerHistory_WrittenAndRead_IsTheSame()
    {
        var history = new TrailerHistory([new(CargoKind.Soy, new LocalDate(2025, 7, 8)), new(CargoKind.Wheat)], CleanOut.Washed, "A. Driver");
        var read = TrailerHistory.Read(new Happening(new FactId(1), new PlaceId(1), NodaConstants.UnixEpoch, HappeningKind.Declared, history.ToText()))!;
        Assert.Equal((history.Cleaned, history.By), (read.Cleaned, read.By));
        Assert.Equal(history.Loads, read.Loads);
    }

    [Theory]
    [InlineData("last loads: wheat")]
    [InlineData("words\nno json")]
    [InlineData("words\n{\"loads\":[{\"what\":\"Moonrock\"}],\"cleaned\":\"Swept\",\"by\":\"x\"}")]
    [InlineData("words\n{\"loads\":[1],\"cleaned\":\"Swept\",\"by\":\"x\"}")]
    [InlineData("words\n{\"loads\":[],\"cleaned\":\"Swept\",\"by\":\"x\"}")]
    public void TrailerHistory_ReadFromAnythingElse_IsNone(string text) =>
        Assert.Null(TrailerHistory.Read(new Happening(new FactId(1), new PlaceId(1), NodaConstants.UnixEpoch, HappeningKind.Declared, text)));

    [Fact]
    public void Market_WrittenAndRead_IsTheSame() => Assert.All(Markets.All, market =>
    {
        Assert.Empty(market.Faults());
        Assert.True(Market.TryRead(market.ToJson(), out var read, out _));
        Assert.Equal(market.Limits, read!.Limits);
    });

    [Theory]
    [InlineData("{}", "limits")]
    [InlineData("{\"code\":\"X\",\"name\":\"X\",\"limits\":[{\"what\":\"Don\",\"stage\":\"AsReceived\",\"most\":1,\"unit\":\"%\",\"source\":\"\",\"mark\":\"House\"}]}", "mg/kg")]
    [InlineData("{\"code\":\"X\",\"name\":\"X\",\"limits\":[],\"other\":1}", "other")]
    [InlineData("[", "not of the kind that belongs there")]
    public void Market_PaperThatCannotBe_SaysWhatIsWrong(string json, string says)
    {
        Assert.False(Market.TryRead(json, out _, out var faults));
        Assert.Contains(says, string.Join(" ", faults), StringComparison.Ordinal);
    }

    [Fact]
    public void HouseRules_WrittenAndRead_AreTheSame()
    {
        var rules = new HouseRules { Rules = [new(Property.FallingNumber, "s", LoadDecisionKind.Divert, "why") { Below = 250m }], DemandsLastLoads = true, Markets = ["US"] };
        Assert.True(HouseRules.TryRead(rules.ToJson(), out var read, out _));
        Assert.Equal(rules.Rules, read!.Rules);
        Assert.Equal((true, "US"), (read.DemandsLastLoads, read.Markets.Single()));
    }

    [Theory]
    [InlineData("{\"rules\":[{\"what\":\"Protein\",\"unit\":\"%\",\"kind\":\"Divert\",\"why\":\"x\",\"below\":12}]}", "basis")]
    [InlineData("{\"rules\":[{\"what\":\"FallingNumber\",\"unit\":\"s\",\"kind\":\"Divert\",\"why\":\"x\"}]}", "no bound")]
    public void HouseRules_RuleThatCannotBe_SaysWhatIsWrong(string json, string says)
    {
        Assert.False(HouseRules.TryRead(json, out _, out var faults));
        Assert.Contains(says, string.Join(" ", faults), StringComparison.Ordinal);
    }

    [Fact]
    public void LoadSigns_WordsOfAHappening_AreFoundWhateverTheCase() =>
        Assert.Equal(["musty", "treated seed"], LoadSigns.In("Musty; treated seed, nice weather"));
}
