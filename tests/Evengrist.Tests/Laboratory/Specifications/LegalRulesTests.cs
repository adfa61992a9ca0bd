using Evengrist.Laboratory;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Quantities;
using NodaTime;

namespace Evengrist.Tests.Laboratory.Specifications;

public sealed class LegalRulesTests
{
    private static readonly LocalDate Day = new(2025, 10, 7);

    // 21 CFR 137.105 at 14 % moisture: protein/20 + 0.35 × 0.86. The five flours are common practice of a mill; limits derived from the rule, to 0.002.
    [Theory]
    [InlineData("11.9", "0.50", "0.896", true)]
    [InlineData("14.2", "0.80", "1.011", true)]
    [InlineData("13.77", "0.930", "0.989", true)]
    [InlineData("14.6", "1.22", "1.031", false)]
    [InlineData("14.89", "1.359", "1.046", false)]
    public void AshOfFlour_FiveFlours_IsJudgedByTheirProtein(string protein, string ash, string limit, bool keeps)
    {
        var rule = Assert.Single(LegalRules.Start.Rules, r => r.IsAshByProtein);
        var verdict = LegalVerdict.Of(rule, Results((Property.Protein, Num.Of(protein)), (Property.Ash, Num.Of(ash))));
        Assert.Equal(keeps, verdict.Keeps);
        Num.Near(Num.Of(limit), FlourAshLimit.For(SolidsShare.Percent(Num.Of(protein), Basis.At14)).ValueOn(Basis.At14), 0.002m);
        Assert.Contains("% 14mb) at protein", verdict.Words, StringComparison.Ordinal);
        Assert.Equal("cannot be labelled flour for the US market; other markets use their own table", rule.Otherwise);
    }

    [Fact]
    public void SecondClear_ElsewhereThanInTheUnitedStates_IsNotJudgedByThatRule() =>
        Assert.DoesNotContain(LegalRules.Start.Of("EU", Day), r => r.IsAshByProtein);

    // FDA guidance of July 2010: 1 ppm finished products; Regulation (EU) 2024/1022: 600 µg/kg milling products, 1000 unprocessed wheat, from July 2024; Codex Stan 152-1985: 15.5 %.
    [Theory]
    [InlineData("US", Property.Don, "0.9", true)]
    [InlineData("EU", Property.Don, "0.9", false)]
    [InlineData("EU", Property.Don, "0.6", true)]
    [InlineData("CODEX", Property.Don, "0.9", true)] // 1 mg/kg, from memory
    [InlineData("US", Property.Moisture, "15.2", false)]
    [InlineData("CODEX", Property.Moisture, "15.2", true)]
    public void Market_HasItsOwnLimits(string market, Property what, string value, bool keeps)
    {
        var rule = Assert.Single(LegalRules.Start.Of(market, Day), r => r.What == what);
        Assert.Equal(keeps, LegalVerdict.Of(rule, Results((what, Num.Of(value)))).Keeps);
    }

    [Fact]
    public void Rule_BeforeItsDate_DoesNotHoldYet()
    {
        Assert.DoesNotContain(LegalRules.Start.Of("EU", new LocalDate(2024, 6, 30)), r => r.What == Property.Don);
        Assert.Contains(LegalRules.Start.Of("eu", new LocalDate(2024, 7, 1)), r => r.What == Property.Don);
        Assert.Empty(LegalRules.Start.Of("nowhere", Day));
    }

    [Fact]
    public void Verdict_WithoutAResult_IsNoneAndSaysOfWhat()
    {
        var rule = Assert.Single(LegalRules.Start.Rules, r => r.IsAshByProtein);
        Assert.Equal((null, "no result of protein"), Seen(LegalVerdict.Of(rule, Results((Property.Ash, 0.5m)))));
        Assert.Equal((null, "no result of ash"), Seen(LegalVerdict.Of(rule, Results((Property.Protein, 12m)))));
        Assert.All(LegalRules.Start.Rules.Where(r => r.What is null), r => Assert.Null(LegalVerdict.Of(r, Results()).Keeps));
    }

    [Fact]
    public void Start_IsWithoutFaults_AndComesBackFromJson()
    {
        Assert.Empty(LegalRules.Start.Faults());
        Assert.True(SpecificationJson.TryRead(SpecificationJson.Write(LegalRules.Start), out LegalRules? read, out _));
        Assert.Equal(LegalRules.Start.Rules, read.Rules);
        Assert.All(LegalRules.Start.Rules, r => Assert.NotEmpty(r.Source));
        Assert.True(Assert.Single(LegalRules.Start.Rules, r => r is { Market: "US", What: Property.Moisture }).FromMemory);
    }

    [Theory]
    [InlineData("""{ "rules": [] }""", "one rule or more")]
    [InlineData("""{ "rules": [ null ] }""", "null")]
    [InlineData("""{ "rules": [ { "market": "US", "of": "ash", "source": "x", "fromMemory": true, "what": "Ash", "unit": "s", "upper": 1 } ] }""", "not in “s”")]
    [InlineData("""{ "rules": [ { "market": "US", "of": "ash", "source": "x", "fromMemory": true, "lower": 2, "upper": 1 } ] }""", "lies below the upper")]
    [InlineData("""{ "rules": [ { "market": "", "of": "ash", "source": "x", "fromMemory": true, "upper": 1 } ] }""", "names its market")]
    [InlineData("""{ "rules": [ { "market": "US", "of": "protein", "source": "x", "fromMemory": true, "what": "Protein", "unit": "%", "isAshByProtein": true } ] }""", "only ash")]
    [InlineData("""null""", "read null")]
    public void Json_ThatCannotBe_NamesTheFault(string json, string says)
    {
        Assert.False(SpecificationJson.TryRead(json, out LegalRules? _, out var faults));
        Assert.Contains(faults, f => f.Contains(says, StringComparison.Ordinal));
    }

    private static (bool?, string) Seen(LegalVerdict verdict) => (verdict.Keeps, verdict.Words);

    // Values at 14mb; moisture and toxins as they lie.
    private static Func<Property, Basis, decimal?> Results(params (Property What, decimal Value)[] at14) => (what, basis) =>
        at14.Where(r => r.What == what).Select(r => (decimal?)(basis.IsStated ? SolidsShare.Percent(r.Value, Basis.At14).ValueOn(basis) : r.Value)).FirstOrDefault();
}
