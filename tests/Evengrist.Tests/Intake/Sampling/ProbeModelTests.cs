using CsCheck;
using Evengrist.Intake.Sampling;
using Evengrist.Quantities;

namespace Evengrist.Tests.Intake.Sampling;

public sealed class ProbeModelTests
{
    // US probing and the EU and international numbers are from memory, as docs/model/sampling.md marks them; 4 ft = 1.2192 m.
    [Theory]
    [InlineData("us-flat-bottom", 1.25, 26, 7)]
    [InlineData("us-flat-bottom", 1.2, 26, 9)]
    [InlineData("static-by-mass", 1.5, 15, 5)]
    [InlineData("static-by-mass", 1.5, 15.01, 8)]
    [InlineData("static-by-mass", 1.5, 30, 8)]
    [InlineData("static-by-mass", 1.5, 50, 11)]
    [InlineData("don-truck", 1.5, 26, 11)] // DON measurement procedure for truck-loaded bulk wheat (abstract)
    [InlineData("eu-mycotoxin", 1.5, 0.05, 3)]
    [InlineData("eu-mycotoxin", 1.5, 0.5, 5)]
    [InlineData("eu-mycotoxin", 1.5, 1, 10)]
    [InlineData("eu-mycotoxin", 1.5, 3, 20)]
    [InlineData("eu-mycotoxin", 1.5, 10, 40)]
    [InlineData("eu-mycotoxin", 1.5, 20, 60)]
    [InlineData("eu-mycotoxin", 1.5, 26, 100)]
    [InlineData("eu-mycotoxin", 1.5, 60, 100)]
    public void Plan_Rule_GivesItsNumberOfPoints(string rule, double depth, double tonnes, int expected)
    {
        var plan = Plan(rule, VehicleKind.FlatBottom, depth, tonnes);
        Assert.Equal(expected, plan.Increments);
        Assert.Equal(expected, plan.Points.Count);
        Assert.Equal(Enumerable.Range(1, expected), plan.Points.Select(p => p.Number));
    }

    [Theory]
    [InlineData(1, 5)]
    [InlineData(2, 6)]
    [InlineData(3, 6)]
    [InlineData(4, 7)]
    [InlineData(6, 7)]
    public void Plan_Hoppers_ProbesEachCentreFirst(int hoppers, int expected)
    {
        var plan = Assert.IsType<ProbePlan>(ProbeModel.Plan(new ProbeSpec(ProbePatterns.UsHopperBottom, VehicleKind.HopperBottom, Mass.FromTonnes(26m), 2) { Hoppers = hoppers, LengthMetres = 12 }));
        Assert.Equal(expected, plan.Points.Count);
        for (var h = 0; h < hoppers; h++)
        {
            Assert.Contains(plan.Points, p => Math.Abs(p.AlongMetres - (h + 0.5) * 12 / hoppers) < 1e-9 && Math.Abs(p.AcrossMetres - 1.2) < 1e-9);
        }
    }

    [Fact]
    public void Plan_FlatBottom_BeginsTwoFeetFromACorner()
    {
        var first = Plan("us-flat-bottom", VehicleKind.FlatBottom, 1, 26).Points[0];
        Assert.Equal((0.48, 0.6096), (first.AcrossMetres, first.AlongMetres), (a, b) => Math.Abs(a.Item1 - b.Item1) < 1e-9 && Math.Abs(a.Item2 - b.Item2) < 1e-9);
    }

    [Theory]
    [InlineData("us-flat-bottom", 223, 2000)] // nine probes, 2,000 g
    [InlineData("don-truck", 500, 5500)] // at least 500 g each
    [InlineData("eu-mycotoxin", 100, 10_000)]
    public void Plan_Masses_AreThoseOfTheRule(string rule, int each, int composite)
    {
        var plan = Plan(rule, VehicleKind.FlatBottom, 1, 26);
        Assert.Equal((each, composite), (plan.IncrementGrams, plan.CompositeGrams));
    }

    [Fact]
    public void Plan_StaticByMass_SaysNoMassItDoesNotKnow() => Assert.Null(Plan("static-by-mass", VehicleKind.FlatBottom, 1, 26).IncrementGrams);

    [Fact]
    public void Plan_Stream_CutsAwayFromBothEnds()
    {
        var plan = Plan("stream-cuts", VehicleKind.FlatBottom, 1, 26);
        Assert.Empty(plan.Points);
        Assert.Equal([1 / 6.0, 0.5, 5 / 6.0], plan.CutsAt.Select(c => Math.Round(c, 12)), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    [Fact]
    public void Plan_Law_EveryPointLiesOnTheVehicleAndNoTwoAreOne() => Gen.Select(Gen.Double[1, 30], Gen.Double[1, 5], Gen.Double[0.1, 6], Gen.Double[0.02, 49], Gen.Int[0, ProbePatterns.All.Count - 1], Gen.Int[1, 6], Gen.Int)
        .Sample((length, width, depth, tonnes, rule, hoppers, seed) =>
        {
            var pattern = ProbePatterns.All[rule];
            var spec = new ProbeSpec(pattern, pattern.For.Count > 0 ? pattern.For[0] : VehicleKind.FlatBottom, Mass.FromTonnes((decimal)tonnes), depth) { LengthMetres = length, WidthMetres = width, Hoppers = hoppers, Seed = seed };
            var plan = Assert.IsType<ProbePlan>(ProbeModel.Plan(spec));
            Assert.All(plan.Points, p => Assert.True(p.AlongMetres > 0 && p.AlongMetres < length && p.AcrossMetres > 0 && p.AcrossMetres < width));
            Assert.Equal(plan.Points.Count, plan.Points.Select(p => (Math.Round(p.AlongMetres, 6), Math.Round(p.AcrossMetres, 6))).Distinct().Count());
            Assert.Equal(plan.Points, Assert.IsType<ProbePlan>(ProbeModel.Plan(spec)).Points);
        });

    [Fact]
    public void Plan_AnotherSeed_ScattersElsewhere()
    {
        var spec = new ProbeSpec(ProbePatterns.DonTruck, VehicleKind.FlatBottom, Mass.FromTonnes(26m), 1.5);
        Assert.NotEqual(Assert.IsType<ProbePlan>(ProbeModel.Plan(spec)).Points, Assert.IsType<ProbePlan>(ProbeModel.Plan(spec with { Seed = 61 })).Points);
    }

    [Fact]
    public void Plan_MoreThanTheRuleKnows_IsRefusedInWords()
    {
        var none = Assert.IsType<NoProbePlan>(ProbeModel.Plan(new ProbeSpec(ProbePatterns.StaticByMass, VehicleKind.FlatBottom, Mass.FromTonnes(50.1m), 2)));
        Assert.Contains("ends at 50 t", none.Reasons.Single(), StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_WhatCannotBe_NamesEveryFault()
    {
        var none = Assert.IsType<NoProbePlan>(ProbeModel.Plan(new ProbeSpec(ProbePatterns.UsHopperBottom, VehicleKind.FlatBottom, Mass.Zero, 0) { LengthMetres = 90, WidthMetres = 0, Hoppers = 0 }));
        Assert.Equal(6, none.Reasons.Count);
        Assert.Single(Assert.IsType<NoProbePlan>(ProbeModel.Plan(new ProbeSpec(ProbePatterns.UsHopperBottom, VehicleKind.None, Mass.FromTonnes(1m), 1))).Reasons);
    }

    [Fact]
    public void Patterns_All_AreFoundByCodeAndSayHowWellTheyAreKnown()
    {
        Assert.All(ProbePatterns.All, p => Assert.Same(p, ProbePatterns.Find(p.Code.ToUpperInvariant())));
        Assert.All(ProbePatterns.All, p => Assert.Contains(p.Source, p.Mark, StringComparison.Ordinal));
        Assert.Equal(2, ProbePatterns.All.Count(p => p.Mark.Contains("low confidence", StringComparison.Ordinal)));
        Assert.Null(ProbePatterns.Find("somewhere"));
    }

    [Fact]
    public void Cautions_EveryPlan_NeverClimbsOnARunningTruckAndDefersToTheSite() => Assert.All(ProbePatterns.All, p =>
    {
        var cautions = SamplingCautions.For(new ProbeSpec(p, VehicleKind.FlatBottom, Mass.FromTonnes(1m), 1));
        Assert.Contains(cautions, c => c.Contains("Never climb onto a truck that is running or moving", StringComparison.Ordinal));
        Assert.Contains("local code", cautions[^1], StringComparison.Ordinal);
    });

    private static ProbePlan Plan(string rule, VehicleKind vehicle, double depth, double tonnes) =>
        Assert.IsType<ProbePlan>(ProbeModel.Plan(new ProbeSpec(ProbePatterns.Find(rule)!, vehicle, Mass.FromTonnes((decimal)tonnes), depth)));
}
