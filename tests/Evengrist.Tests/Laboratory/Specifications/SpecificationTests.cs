using Evengrist.Laboratory.Conformity;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Laboratory.Specifications;

public sealed class SpecificationTests
{
    private static readonly Specification White = new("WB-1", "WB",
    [
        new(Property.Protein, "%", "agreement") { Basis = Basis.At14, Lower = 11.7m, Upper = 12.1m, Target = 11.9m, Needed = 4, LotSpread = 0.05, BiasPart = 0.05, Customer = new CustomerLaboratory(0.2, 0.05) },
        new(Property.Ash, "%", "agreement") { Basis = Basis.At14, Upper = 0.46m, Decision = DecisionRule.GuardedForSafety, Safety = true, Method = "furnace" },
        new(Property.Moisture, "%", "agreement") { Upper = 14m, Decision = DecisionRule.GuardedForSafety, Required = false },
    ]) { Customer = "Orlawick", Market = "US", ValidFrom = new LocalDate(2025, 7, 1), Name = "White bread", Remark = "malted" };

    [Fact]
    public void Json_OfASpecification_ComesBackWhole()
    {
        Assert.Empty(White.Faults());
        Assert.True(SpecificationJson.TryRead(SpecificationJson.Write(White), out Specification? read, out var faults), string.Join(" ", faults));
        Assert.Equal(White.Items, read.Items);
        Assert.Equal(White, read with { Items = White.Items });
    }

    [Fact]
    public void Item_SaysItselfInWords()
    {
        Assert.Equal(("protein, % 14mb", "11.7 to 12.1", "mean of at least 4 results"), (White.Items[0].Title, White.Items[0].Limits, White.Items[0].RuleWords));
        Assert.Equal("at most 0.46", White.Items[1].Limits);
        Assert.StartsWith("simple acceptance", White.Items[0].DecisionWords, StringComparison.Ordinal);
        Assert.Contains("at most 5 %", White.Items[1].DecisionWords, StringComparison.Ordinal);
        Assert.StartsWith("simple", White.Items[2].DecisionWords, StringComparison.Ordinal); // guarded for safety only, and moisture is none
        Assert.Contains("0.02 % or more", (White.Items[1] with { Guard = 0.02m }).DecisionWords, StringComparison.Ordinal);
    }

    public static TheoryData<Func<SpecificationItem, SpecificationItem>, string> Wrong { get; } = new()
    {
        { i => i with { Basis = default }, "needs a moisture basis" },
        { i => i with { Unit = "s" }, "not in \"s\"" },
        { i => i with { Lower = 12.2m }, "lies below the upper" },
        { i => i with { Lower = null, Upper = null, Target = null }, "Give a lower limit" },
        { i => i with { Upper = 120m }, "cannot be" },
        { i => i with { Target = 13m }, "outside the limits" },
        { i => i with { Source = " " }, "say who asks for it" },
        { i => i with { Needed = 0 }, "A mean is of" },
        { i => i with { Rule = ResultRule.None }, "Say which rule" },
        { i => i with { Decision = DecisionRule.None }, "decided" },
        { i => i with { BuyersRisk = 0 }, "buyer's risk" },
        { i => i with { LotSpread = -1 }, "standard deviation" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Item_ThatCannotBe_SaysWhatToDo(Func<SpecificationItem, SpecificationItem> spoil, string says) =>
        Assert.Contains((White with { Items = [spoil(White.Items[0])] }).Faults(), f => f.Contains(says, StringComparison.Ordinal));

    [Fact]
    public void Specification_ThatCannotBe_SaysWhatToDo()
    {
        Assert.Contains((White with { Code = "WB 1" }).Faults(), f => f.Contains("letters, digits", StringComparison.Ordinal));
        Assert.Contains((White with { Flour = "" }).Faults(), f => f.Contains("which flour", StringComparison.Ordinal));
        Assert.Contains((White with { Items = [] }).Faults(), f => f.Contains("one line or more", StringComparison.Ordinal));
        Assert.Contains((White with { Items = [White.Items[0], White.Items[0]] }).Faults(), f => f.Contains("stands twice", StringComparison.Ordinal));
        Assert.False(SpecificationJson.TryRead("""{ "code": "WB-1", "flour": "WB", "items": [ { "what": "Protein", "unit": "%", "source": "x", "limit": 3 } ] }""", out Specification? _, out var faults));
        Assert.Contains(faults, f => f.Contains("limit", StringComparison.Ordinal));
    }
}
