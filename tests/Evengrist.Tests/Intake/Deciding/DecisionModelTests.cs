using CsCheck;
using Evengrist.Intake;
using Evengrist.Intake.Deciding;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Quantities;

namespace Evengrist.Tests.Intake.Deciding;

public sealed class DecisionModelTests
{
    private static readonly HouseRules NoRules = new();
    private static readonly TrailerHistory Clean = new([new(CargoKind.Wheat), new(CargoKind.Wheat), new(CargoKind.Wheat)], CleanOut.Nothing, "the driver");

    // 7 CFR 810.107, 2015 edition: infested from two live weevils, one and another insect, or two other insects. That a mill sets even one aside is common practice.
    [Theory]
    [InlineData(0, 0, LoadDecisionKind.Accept, "")]
    [InlineData(1, 0, LoadDecisionKind.SetAside, "not yet infested")]
    [InlineData(0, 1, LoadDecisionKind.SetAside, "not yet infested")]
    [InlineData(2, 0, LoadDecisionKind.SetAside, "Infested")]
    [InlineData(1, 1, LoadDecisionKind.SetAside, "Infested")]
    [InlineData(0, 2, LoadDecisionKind.SetAside, "Infested")]
    public void Advise_LiveInsects_SetsAsideAndSaysWhetherInfested(int weevils, int others, LoadDecisionKind kind, string says)
    {
        var advice = Advise([new(Property.LiveWeevils, weevils, "/sample"), new(Property.OtherLiveInsects, others, "/sample")]);
        Assert.Equal(kind, advice.Kind);
        Assert.Contains(says, advice.Words, StringComparison.Ordinal);
        Assert.All(advice.Rulings, r => Assert.Contains("licensed applicator", r.Caution, StringComparison.Ordinal));
    }

    // 7 CFR 810.2204, 2015 edition, table of grades: glass, maximum count 0.
    [Fact]
    public void Advise_OnePieceOfGlass_TurnsAway() => Assert.Equal(LoadDecisionKind.TurnAway, Advise([new(Property.Glass, 1m, "/kg")]).Kind);

    [Theory]
    [InlineData("treated seed", LoadDecisionKind.TurnAway)]
    [InlineData("musty", LoadDecisionKind.SetAside)]
    [InlineData("heating", LoadDecisionKind.SetAside)]
    [InlineData("Smut Odour", LoadDecisionKind.Divert)]
    public void Advise_SignSeen_IsAtLeastWhatItDemands(string sign, LoadDecisionKind kind) => Assert.Equal(kind, Advise([], seen: [sign]).Kind);

    // Regulation (EU) 2023/915 as amended: deoxynivalenol in unprocessed cereals 1,000 µg/kg from 1 July 2024; nothing may be blended down to a limit (from memory).
    [Theory]
    [InlineData("1.00", LoadDecisionKind.Accept)]
    [InlineData("1.01", LoadDecisionKind.TurnAway)]
    public void Advise_DonAgainstTheEuropeanLimit_JudgesTheLoadAsItLies(string don, LoadDecisionKind kind) =>
        Assert.Equal(kind, Advise([Don(don, Basis.At(13m)), Moisture], [RawOnly(Markets.EuropeanUnion)]).Kind);

    // 1.12 mg/kg dry is 0.974 at 13 % moisture: below the limit of the goods as they lie.
    [Fact]
    public void Advise_DonOnADryBasis_IsCarriedToTheMoistureFound()
    {
        Assert.Equal(LoadDecisionKind.Accept, Advise([Don("1.12", Basis.Dry), Moisture], [RawOnly(Markets.EuropeanUnion)]).Kind);
        Assert.Equal(LoadDecisionKind.TurnAway, Advise([Don("1.12", Basis.Dry)], [RawOnly(Markets.EuropeanUnion)]).Kind);
    }

    [Fact]
    public void Advise_BlendDownSwitchedOn_DivertsInstead()
    {
        var market = RawOnly(Markets.EuropeanUnion);
        var open = market with { Limits = [.. market.Limits.Select(l => l with { BlendDown = true })] };
        Assert.Equal(LoadDecisionKind.Divert, Advise([Don("1.5", Basis.At(13m)), Moisture], [open]).Kind);
    }

    // Cereal Chem. 63:146 (1986): cleaned 48 to 86 % of uncleaned, straight flour 75 % of cleaned. The FDA's 1 mg/kg holds of the product.
    // 1.55 × 0.86 × 0.75 = 0.99975; 2.77 × 0.48 × 0.75 = 0.9972, 2.78 × 0.36 = 1.0008.
    [Theory]
    [InlineData("1.55", LoadDecisionKind.Accept)]
    [InlineData("1.56", LoadDecisionKind.Divert)]
    [InlineData("2.77", LoadDecisionKind.Divert)]
    [InlineData("2.78", LoadDecisionKind.SetAside)]
    public void Advise_DonAgainstALimitOfProducts_EstimatesWhatMillingLeaves(string don, LoadDecisionKind kind)
    {
        var advice = Advise([Don(don, Basis.At(13m)), Moisture], [Markets.UnitedStates]);
        Assert.Equal(kind, advice.Kind);
        Assert.All(advice.Rulings, r => Assert.Contains("estimate", r.Source, StringComparison.Ordinal));
    }

    // Duties after earlier loads are common practice.
    [Theory]
    [InlineData(CargoKind.Wheat, CleanOut.Nothing, LoadDecisionKind.Accept)]
    [InlineData(CargoKind.OtherCereal, CleanOut.Nothing, LoadDecisionKind.SetAside)]
    [InlineData(CargoKind.OtherCereal, CleanOut.Swept, LoadDecisionKind.Accept)]
    [InlineData(CargoKind.Soy, CleanOut.Swept, LoadDecisionKind.SetAside)]
    [InlineData(CargoKind.Soy, CleanOut.Washed, LoadDecisionKind.Accept)]
    [InlineData(CargoKind.TreatedSeed, CleanOut.Washed, LoadDecisionKind.SetAside)]
    [InlineData(CargoKind.TreatedSeed, CleanOut.WashedAndInspected, LoadDecisionKind.Accept)]
    [InlineData(CargoKind.AnimalMatter, CleanOut.WashedAndInspected, LoadDecisionKind.TurnAway)]
    public void Advise_EarlierLoad_DemandsItsCleaning(CargoKind cargo, CleanOut cleaned, LoadDecisionKind kind) =>
        Assert.Equal(kind, Advise([], trailer: new([new(CargoKind.Wheat), new(cargo), new(CargoKind.Wheat)], cleaned, "the driver")).Kind);

    [Fact]
    public void Advise_LoadFourTripsAgo_DemandsNothingAnyMore() =>
        Assert.Equal(LoadDecisionKind.Accept, Advise([], trailer: Clean with { Loads = [.. Clean.Loads, new(CargoKind.AnimalMatter)] }).Kind);

    [Fact]
    public void Advise_LastLoadsNotDeclared_AsksAndSetsAsideWhereTheHouseDemandsThem()
    {
        Assert.Contains("the last 3 loads of the trailer", Advise([]).StillToAsk);
        Assert.Equal(LoadDecisionKind.Accept, Advise([]).Kind);
        Assert.Equal(LoadDecisionKind.SetAside, DecisionModel.Advise(new LoadToDecide([]), new HouseRules { DemandsLastLoads = true }, []).Kind);
    }

    [Theory]
    [InlineData("249", LoadDecisionKind.Divert)]
    [InlineData("250", LoadDecisionKind.Accept)]
    public void Advise_HouseRule_SpeaksBelowItsBoundOnly(string seconds, LoadDecisionKind kind)
    {
        var house = new HouseRules { Rules = [new(Property.FallingNumber, "s", LoadDecisionKind.Divert, "it would spoil a bread mix") { Below = 250m }] };
        Assert.Equal(kind, DecisionModel.Advise(new LoadToDecide([new(Property.FallingNumber, Num.Of(seconds), "s")]), house, []).Kind);
    }

    [Fact]
    public void Advise_HouseRuleOnAnotherBasis_CarriesTheFinding()
    {
        var house = new HouseRules { Rules = [new(Property.Protein, "%", LoadDecisionKind.Divert, "too weak for its bin") { Below = 12m, Basis = "12mb" }] };
        LoadAdvice Of(string dry) => DecisionModel.Advise(new LoadToDecide([new(Property.Protein, Num.Of(dry), "%", Basis.Dry)]), house, []);
        Assert.Equal(LoadDecisionKind.Divert, Of("13.6").Kind);
        Assert.Equal(LoadDecisionKind.Accept, Of("13.7").Kind);
    }

    [Fact]
    public void Advise_MoreRulings_NeverMakesItMilder() => Gen.Int[0, LoadSigns.All.Count - 1].Array[0, 6].Sample(picks =>
    {
        var signs = picks.Distinct().Select(i => LoadSigns.All[i].Words).ToArray();
        var all = Advise([], seen: signs);
        Assert.Equal(signs.Length == 0 ? LoadDecisionKind.Accept : signs.Max(s => LoadSigns.Find(s)!.Kind), all.Kind);
        Assert.Equal(all.Kind, Advise([], seen: [.. signs.Reverse()]).Kind);
    });

    [Theory]
    [InlineData("musty", LoadDecisionKind.Accept, true)]
    [InlineData("musty", LoadDecisionKind.SetAside, false)]
    [InlineData("musty", LoadDecisionKind.TurnAway, false)]
    [InlineData("garlic odour", LoadDecisionKind.Accept, true)]
    public void IsOverriddenBy_MilderDecision_IsAnOverride(string sign, LoadDecisionKind decided, bool against) =>
        Assert.Equal(against, Advise([], seen: [sign]).IsOverriddenBy(decided));

    [Fact]
    public void Advise_LoadThatCannotBe_NamesEveryFault()
    {
        var fault = Assert.Throws<ArgumentException>(() => Advise([new(Property.Protein, 13m, "%"), new(Property.Glass, 1.5m, "/kg")], seen: ["purple"], trailer: new([], CleanOut.Never, "")));
        Assert.All(["basis", "whole number", "purple", "last loads", "who declares"], w => Assert.Contains(w, fault.Message, StringComparison.Ordinal));
    }

    private static Finding Moisture => new(Property.Moisture, 13m, "%");

    private static Finding Don(string value, Basis basis) => new(Property.Don, Num.Of(value), "mg/kg", basis);

    private static Market RawOnly(Market market) => market with { Limits = [.. market.Limits.Where(l => l.Stage == LimitStage.AsReceived)] };

    private static LoadAdvice Advise(IReadOnlyList<Finding> findings, IReadOnlyList<Market>? markets = null, IReadOnlyList<string>? seen = null, TrailerHistory? trailer = null) =>
        DecisionModel.Advise(new LoadToDecide(findings) { Seen = seen, Trailer = trailer }, NoRules, markets ?? []);
}
