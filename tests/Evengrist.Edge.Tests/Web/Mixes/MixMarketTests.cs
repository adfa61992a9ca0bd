using Evengrist.Bins;
using Evengrist.Bins.BestBin;
using Evengrist.Intake.Deciding;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.Terms;
using Evengrist.Web.Sights.Mix;
using NodaTime;

namespace Evengrist.Edge.Tests.Web.Mixes;

/// <summary>The market's switch for mixing down, in the mix of the page: two bins, one of them above a limit on DON.</summary>
public sealed class MixMarketTests
{
    private static MixSight Sight(bool blendDown, bool asked)
    {
        var flour = new FlourTerms("WB", "White bread", "A", 100, 0.7, 900);
        var terms = new SeasonTerms { End = new LocalDate(2026, 6, 30), Currency = "USD", Units = [new UnitTerms("A", 5, 24)], Flours = [flour] };
        SeasonWheat Wheat(string code, double protein) => new(code, "HW", 1000, 12, SeasonQuality.Unknown.With(Property.Protein, new SeasonValue(protein, 0.1, Basis.At12)));
        return MixSight.Of(
            MixAsk.Of(terms, flour, ["B1", "B2"], [], key => key == "mix-down" && asked ? "on" : null), [Wheat("B1", 12), Wheat("B2", 13)],
            new BandValues("USD", new Dictionary<string, IReadOnlyList<ValuePoint>> { ["HW"] = [new(12, 240), new(13, 220)] }), null, "USD", null, [new MarketLimit(Property.Don, LimitStage.AsReceived, 1m, "mg/kg", "EU", SourceMark.Read, blendDown)],
            new Dictionary<string, IReadOnlyList<BlendSolids>> { ["B1"] = [new(Property.Don, 0.2 / 0.88, 0.1, 1)], ["B2"] = [new(Property.Don, 1.4 / 0.88, 0.1, 0.4)] });
    }

    [Fact]
    public void Of_ABinAboveTheLimit_IsLeftOutWhileTheSwitchIsOff()
    {
        var solved = Assert.IsType<MixSolved>(Sight(blendDown: false, asked: false).Outcome);
        Assert.Equal("B1", Assert.Single(solved.Gates).Bin.Code);
        Assert.Contains("its own DON is 1.4 mg/kg as it lies", Assert.Single(solved.LeftOut).Reason, StringComparison.Ordinal); // at 12 % moisture a value on 12mb is one as it lies
        Assert.Contains("mixing down is off", solved.LeftOut[0].Reason, StringComparison.Ordinal);
        Assert.Contains(Sight(blendDown: false, asked: false).Remarks, r => r.Contains("Not every truck was tested for DON; those that were stand for the rest: B2 40 %", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_AskedAsIfItWereOn_TakesItAndBarsItFromASheet()
    {
        var sight = Sight(blendDown: false, asked: true);
        Assert.Equal("B2", Assert.Single(Assert.IsType<MixSolved>(sight.Outcome).Gates).Bin.Code); // the cheaper one
        Assert.Contains(sight.Remarks, r => r.StartsWith("Asked as if mixing down were allowed", StringComparison.Ordinal));
        Assert.Equal("B2", Assert.Single(sight.Barred).Bin);
    }

    [Fact]
    public void Of_WithTheSwitchOn_TakesItAndBarsNothing()
    {
        var sight = Sight(blendDown: true, asked: false);
        Assert.Equal("B2", Assert.Single(Assert.IsType<MixSolved>(sight.Outcome).Gates).Bin.Code);
        Assert.Contains(((MixSolved)sight.Outcome).Remarks, r => r.Contains("the market's switch allows it", StringComparison.Ordinal));
        Assert.Empty(sight.Barred);
    }
}
