using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Rework;
using Evengrist.Streams.Additions;

namespace Evengrist.Tests.Packing.Rework;

/// <summary>Figures derived by hand; 5 % of 12.85 into 11.65 comes to 11.71, as in the worked case of additions.</summary>
public sealed class ReworkModelTests
{
    private static readonly ReworkRules Rules = ReworkRules.Start;
    private static readonly ReworkTote Tote = new("R-1", "WB", 6_000_000, 12) { Reason = "ash above the limit" };
    private static readonly ReworkRun Run = new("WB") { TonnesPerHour = 12.075, Values = [new("protein", 11.65, 12.85) { Least = 11.6, Most = 12.1 }] };

    [Fact]
    public void Of_FivePercentOfARun_GivesGramsAnHourAndHowLong()
    {
        var choice = ReworkModel.Of(Tote, Run, Rules);
        Assert.Empty(choice.Findings);
        Assert.Equal(5, choice.MostPercent);
        Assert.Equal(12.075e6 * 5 / 95, choice.GramsPerHour!.Value, 1e-6); // 635,526 g/h: 5 % of run and rework together
        Assert.Equal(9.441, choice.Hours!.Value, 3); // 6 t
        Assert.Equal(11.71, Run.Values[0].With(choice.MostPercent), 1e-9);
        Assert.Equal(0.05, choice.GramsPerHour.Value / (choice.GramsPerHour.Value + 12.075e6), 1e-12); // what is fed is that share of all
        Assert.Null(ReworkModel.Of(Tote, Run with { TonnesPerHour = null }, Rules).GramsPerHour);
    }

    [Fact]
    public void Of_AnEndOfTheFlour_BoundsTheDose_AndAtTheEndThereIsNone()
    {
        Assert.Equal(2.5, ReworkModel.Of(Tote, Run with { Values = [new ReworkedValue("protein", 11.65, 12.85) { Most = 11.68 }] }, Rules).MostPercent, 1e-9); // 0.03 of 1.20
        var none = ReworkModel.Of(Tote, Run with { Values = [new ReworkedValue("protein", 11.65, 12.85) { Most = 11.6 }] }, Rules);
        Assert.Contains(none.Findings, f => f.Weight == FindingWeight.Stop);
        Assert.Null(none.GramsPerHour);
        Assert.Equal(3, ReworkModel.Of(Tote, Run, Rules with { Doses = [new("wb", 3)] }).MostPercent);
    }

    [Fact]
    public void Of_AnAllergenOfAnyPart_StopsItForAFlourWithoutIt_AndReasonsDoNotHelp()
    {
        var soy = Tote with { Allergens = ["soy"] };
        Assert.Contains("has soy, which the label of WB does not name", Assert.Single(ReworkModel.Of(soy, Run, Rules).Findings, f => f.Weight == FindingWeight.Stop).Words, StringComparison.Ordinal);
        Assert.DoesNotContain(ReworkModel.Of(soy with { Flour = "SM" }, new ReworkRun("SM") { Allergens = ["Soy"] }, Rules).Findings, f => f.Weight == FindingWeight.Stop);
        Assert.Contains(ReworkModel.Of(Tote with { Hold = "looked at" }, Run, Rules).Findings, f => f is { Weight: FindingWeight.Stop });
    }

    [Fact]
    public void Of_WhatAPersonMayAnswerFor_IsAsked()
    {
        string[] Asked(ReworkTote tote, ReworkRun run, ReworkRules rules) => [.. ReworkModel.Of(tote, run, rules).Findings.Where(f => f.Weight == FindingWeight.Ask).Select(f => f.Words)];
        Assert.Empty(Asked(Tote with { AgeDays = 30 }, Run, Rules));
        Assert.Contains("31 days old, more than 30", Assert.Single(Asked(Tote with { AgeDays = 31 }, Run, Rules)), StringComparison.Ordinal);
        Assert.Contains("AP in R-1 is not WB", Assert.Single(Asked(Tote with { AlsoOf = ["AP"] }, Run, Rules)), StringComparison.Ordinal);
        Assert.Empty(Asked(Tote with { AlsoOf = ["AP"] }, Run, Rules with { Matches = [new("AP", "WB")] }));
        Assert.Contains("Up to 40 % of R-1 is enriched, and WB is not", Assert.Single(Asked(Tote with { MostEnriched = 0.4 }, Run, Rules)), StringComparison.Ordinal);
        Assert.Contains("Nobody has said why", Assert.Single(Asked(Tote with { Reason = "" }, Run, Rules)), StringComparison.Ordinal);
        var enriched = ReworkModel.Of(Tote with { LeastEnriched = 0.2, MostEnriched = 0.4 }, Run with { IsEnriched = true }, Rules);
        Assert.Equal(2, enriched.OverEnrichedPercent, 1e-9); // 5 % × 0.4
        Assert.Equal(FindingWeight.Caution, Assert.Single(enriched.Findings).Weight);
    }

    [Fact]
    public void Of_SeveralTotes_FeedsTheOldestThatMayGo_WhicheverOrderTheyCameIn()
    {
        ReworkTote[] totes = [Tote with { Code = "young", AgeDays = 3 }, Tote with { Code = "old", AgeDays = 40 }, Tote with { Code = "soy", AgeDays = 20, Allergens = ["soy"] }, Tote with { Code = "middle", AgeDays = 9 }, Tote with { Code = "empty", Grams = 0, AgeDays = 50 }];
        var choices = ReworkModel.Of(totes, Run, Rules);
        Assert.Equal(["old", "soy", "middle", "young"], choices.Select(c => c.Tote.Code));
        Assert.Equal("middle", Assert.Single(choices, c => c.IsNext).Tote.Code);
        Assert.Equal(choices.Select(c => (c.Tote.Code, c.IsNext)), ReworkModel.Of(totes.Reverse(), Run, Rules).Select(c => (c.Tote.Code, c.IsNext)));
    }

    [Fact]
    public void Rules_ThroughJsonAndBack_AreTheSame_AndBadOnesAreRefused()
    {
        var rules = Rules with { Doses = [new("PA", 2)], Premixes = [new("premix", 400)] };
        Assert.True(ReworkRules.TryRead(ReworkRules.Write(rules), out var read, out _));
        Assert.Equal(ReworkRules.Write(rules), ReworkRules.Write(read));
        Assert.Equal(5, (rules with { MostDays = 0, MostPercent = 100, Doses = [new("PA", 0)], Carriers = [new("x", [])], Premixes = [new("", 1)] }).Faults().Count);
    }
}
