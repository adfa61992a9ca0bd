using CsCheck;
using Evengrist.Intake;
using Evengrist.Intake.Grading;
using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Tests.Intake.Sampling;

public sealed class EdgeModelTests
{
    private static readonly Edge Band = new(13.0, "band 13.0");

    // Acceptance scenario of the design: combined SD 0.25, edge 13.0; Φ(0.6) and Φ(0.2) by any normal table.
    [Theory]
    [InlineData(13.15, 0.726, 1)]
    [InlineData(13.05, 0.579, 17)] // (0.8416 · 0.25/0.05)² = 17.7: eighteen samples, seventeen more (derived)
    public void Doubts_WorkedReading_IsNotSureEnoughAndSaysHowManyMore(double read, double chance, int more)
    {
        var doubt = Assert.Single(EdgeModel.Doubts(new EdgeSpec(read, 0.25, [Band])));
        Assert.Equal(chance, doubt.ChanceAtLeast, 3);
        Assert.Equal(doubt.ChanceAtLeast, doubt.ChanceRightSide);
        Assert.False(doubt.Settled);
        Assert.Equal(more, doubt.MoreProbes);
        Assert.Equal(more, Assert.IsType<ProbeAgain>(EdgeAdvice.Of([doubt])).More);
    }

    [Fact]
    public void Doubts_FarFromTheEdge_TakesTheBand()
    {
        var doubt = Assert.Single(EdgeModel.Doubts(new EdgeSpec(13.3, 0.25, [Band])));
        Assert.True(doubt is { Settled: true, MoreProbes: 0 });
        Assert.IsType<TakeTheBand>(EdgeAdvice.Of([doubt]));
        Assert.IsType<TakeTheBand>(EdgeAdvice.Of(EdgeModel.Doubts(new EdgeSpec(14, 0.25, [Band]))));
    }

    [Fact]
    public void Doubts_BelowTheEdge_TellsTheChanceOfItsOwnSide()
    {
        var doubt = Assert.Single(EdgeModel.Doubts(new EdgeSpec(12.85, 0.25, [Band])));
        Assert.False(doubt.ReadsAbove);
        Assert.Equal(0.726, doubt.ChanceRightSide, 3);
    }

    [Fact]
    public void Doubts_OnTheEdge_NoProbeSettlesIt()
    {
        var doubts = EdgeModel.Doubts(new EdgeSpec(13.0, 0.25, [Band]));
        Assert.Null(doubts[0].MoreProbes);
        Assert.IsType<NoProbeSettles>(EdgeAdvice.Of(doubts));
    }

    // s_b/√7 = 0.20 within 0.25 leaves 0.15; 0.2/0.8416 = 0.2376 is wanted, so s_b²/n ≤ 0.05647 − 0.0225: n ≥ 0.28/0.03397 = 8.24 (derived).
    [Fact]
    public void Doubts_KnownShareOfTheProbes_CountsOnlyWhatProbesCanMend()
    {
        var spec = new EdgeSpec(13.2, 0.25, [Band]) { Probes = 7, FromProbes = 0.20, SureFrom = 0.8 };
        Assert.True(EdgeModel.Doubts(spec)[0].Settled == false || EdgeModel.Doubts(spec)[0].ChanceAtLeast >= 0.8);
        Assert.Equal(0.7881, EdgeModel.Doubts(spec)[0].ChanceAtLeast, 4);
        Assert.Equal(2, EdgeModel.Doubts(spec)[0].MoreProbes);
        Assert.Null(EdgeModel.Doubts(spec with { FromProbes = 0.01 })[0].MoreProbes);
    }

    [Fact]
    public void Doubts_Law_MoreProbesAdvisedDoSettleIt() => Gen.Select(Gen.Double[-0.7, 0.7], Gen.Double[0.05, 0.5], Gen.Double[0.01, 0.99], Gen.Int[1, 20], Gen.Double[0.55, 0.99])
        .Sample((off, sd, share, probes, sure) =>
        {
            var spec = new EdgeSpec(13 + off, sd, [Band]) { Probes = probes, FromProbes = sd * share, SureFrom = sure };
            foreach (var doubt in EdgeModel.Doubts(spec))
            {
                Assert.InRange(doubt.ChanceRightSide, 0.5 - 1e-9, 1);
                if (doubt is { Settled: false, MoreProbes: { } more })
                {
                    double Sd(int n) => Math.Sqrt(sd * sd * (1 - share * share) + sd * sd * share * share * probes / n);
                    double Chance(int n) => EdgeModel.Doubts(spec with { StandardDeviation = Sd(n), FromProbes = null, Within = 1000 })[0].ChanceRightSide;
                    Assert.True(Chance(probes + more) >= sure - 1e-6);
                    Assert.True(more == 1 || Chance(probes + more - 1) < sure + 1e-6);
                }
            }
        });

    [Fact]
    public void Doubts_Law_ChanceRisesWithTheReading() => Gen.Select(Gen.Double[12, 14], Gen.Double[0, 1], Gen.Double[0.01, 1]).Sample((read, up, sd) =>
        Assert.True(EdgeModel.Doubts(new EdgeSpec(read + up, sd, [Band]) { Within = 1e9 })[0].ChanceAtLeast >= EdgeModel.Doubts(new EdgeSpec(read, sd, [Band]) { Within = 1e9 })[0].ChanceAtLeast - 1e-12));

    // The uneven hard winter scale (USDA notice AMS_3419): 12.6 pays 0.44, 12.8 to the end 0.64; recorded at one decimal, 12.8 counts from 12.75.
    [Fact]
    public void ScaleEdges_HardWinter_AreThoseWhereMoneyHangs()
    {
        var edges = ScaleEdges.Near(ReferenceScales.KansasCityHardWinter, 12.9m, 0.75m);
        Assert.Equal([12.35, 12.75, 13.55], edges.Select(e => Math.Round(e.At, 9)));
        Assert.Equal(("0.44 USD/bu", "0.64 USD/bu"), (edges[1].Below, edges[1].Above));
        Assert.Equal("nothing agreed", edges[2].Above);
    }

    [Fact]
    public void ScaleEdges_Law_TheAnswerChangesAtEachEdgeAndNowhereElse() => Gen.Select(Gen.Decimal[10m, 17m], Gen.Int[0, 3]).Sample((value, which) =>
    {
        ContractScale[] scales =
        [
            ReferenceScales.KansasCityHardWinter, ReferenceScales.SpringQuarters with { Rounding = StepRounding.Nearest, RejectBelow = 11.4m },
            ReferenceScales.SpringFifths with { Rounding = StepRounding.Begun, Cap = 0.3m }, ReferenceScales.SpringQuarters with { Below = new Beyond(BeyondRule.PerStep, 0.07m, 0.3m), RejectAbove = 15m },
        ];
        var scale = scales[which];
        var edges = ScaleEdges.Near(scale, value, 1m).Select(e => (decimal)Math.Round(e.At, 6)).ToList();
        for (var r = Math.Ceiling((value - 0.9m) * 10) / 10; r <= value + 0.9m; r += 0.1m)
        {
            var (below, above) = (scale.Ask(r - 0.1m), scale.Ask(r));
            var changes = below.GetType() != above.GetType() || below is ScaleEffectOf b && above is ScaleEffectOf a && a.Effect != b.Effect;
            Assert.Equal(changes, edges.Contains(r - 0.05m));
        }
    });

    [Fact]
    public void LoadEdges_OfATicket_CarriesTheReadingToTheBasisOfTheEdges()
    {
        var terms = Loads.HardWinter;
        var policy = new SamplingPolicy { Spreads = [new PropertySpread(Property.Protein, 0.6, 0.1, 0.1)] };
        var house = new HouseClass("HW", 1, "", ["strong", "usual"], [new HouseLimit(Property.Protein, "%", 2) { Basis = Basis.At12, AtLeast = [13.0m, 12.5m] }]);
        Finding[] found = [new(Property.Protein, 14.943m, "%", Basis.Dry, 0.284m)];
        var doubts = LoadEdges.Of(found, terms, house, policy, 7);
        var band = Assert.Single(doubts, d => d.Against == "house class HW v1");
        Assert.Equal(("usual", "strong"), (band.Doubts[0].Edge.Below, band.Doubts[0].Edge.Above));
        Assert.Equal(13.15, (double)band.Value, 3);
        Assert.Equal(0.25, band.StandardDeviation!.Value, 3);
        Assert.Equal(0.726, band.Doubts[0].ChanceAtLeast, 2);
        Assert.IsType<ProbeAgain>(band.Advice);
        Assert.Contains(doubts, d => d.Against.StartsWith("scale ", StringComparison.Ordinal));
        Assert.Empty(LoadEdges.Of(found, null, null, policy));
    }

    // At least 13.0 recorded at one decimal counts from 12.95; at most 1.0 up to 1.05 (7 CFR 810.104, half up).
    [Fact]
    public void HouseEdges_Rows_CountFromHalfARecordedUnit()
    {
        var house = new HouseClass("HW", 1, "", ["strong", "usual"], []) { Outside = "weak" };
        var least = HouseEdges.Of(house, new HouseLimit(Property.Protein, "%", 1) { Basis = Basis.At12, AtLeast = [13.0m, 12.0m] });
        Assert.Equal([new Edge(11.95, "at least 12.0", "weak", "usual"), new Edge(12.95, "at least 13.0", "usual", "strong")], least);
        var most = HouseEdges.Of(house, new HouseLimit(Property.Don, "mg/kg", 1) { Basis = Basis.At12, AtMost = [0.5m, 1.0m] });
        Assert.Equal([new Edge(0.55, "at most 0.5", "strong", "usual"), new Edge(1.05, "at most 1.0", "usual", "weak")], most);
        Assert.Single(HouseEdges.Of(house, new HouseLimit(Property.Protein, "%", 1) { AtLeast = [13.0m, null] }));
    }

    [Fact]
    public void LoadEdges_NoUncertainty_TellsNoChance()
    {
        var doubts = LoadEdges.Of([new(Property.Protein, 13.15m, "%", Basis.At12)], Loads.HardWinter, null, SamplingPolicy.Usual);
        Assert.All(doubts, d => Assert.True(d is { StandardDeviation: null, Advice: null, Doubts.Count: 0 }));
        var site = new SamplingPolicy { Spreads = [new PropertySpread(Property.Protein, 0.4, 0.1, 0.1)] };
        var known = LoadEdges.Of([new(Property.Protein, 13.15m, "%", Basis.At12)], Loads.HardWinter, null, site, 4)[0];
        Assert.Equal(Math.Sqrt(0.04 + 0.01 + 0.01), known.StandardDeviation!.Value, 9);
    }

    [Fact]
    public void Spec_WhatCannotBe_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => EdgeModel.Doubts(new EdgeSpec(13, 0, [Band])));
        Assert.Throws<ArgumentException>(() => EdgeModel.Doubts(new EdgeSpec(13, 0.2, [Band]) { SureFrom = 0.5 }));
        Assert.Throws<ArgumentException>(() => EdgeModel.Doubts(new EdgeSpec(13, 0.2, [Band]) { FromProbes = 0.3 }));
        Assert.Throws<ArgumentException>(() => EdgeModel.Doubts(new EdgeSpec(double.NaN, 0.2, [Band])));
    }
}
