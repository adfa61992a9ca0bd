using CsCheck;
using Evengrist.Intake.Sampling;
using Evengrist.Quantities;

namespace Evengrist.Tests.Intake.Sampling;

public sealed class ScreenModelTests
{
    // Derived: five equal loads, L = 1.0 mg/kg: a composite of 0.20 clears all, 0.21 does not.
    [Fact]
    public void Judge_FiveEqualLoads_ClearsAtTheProofLimitAndNotAbove()
    {
        Assert.Equal(0.2m, Assert.IsType<ScreenClears>(ScreenModel.Judge(Five(0.20m))).ProofLimit);
        var open = Assert.IsType<ScreenOpen>(ScreenModel.Judge(Five(0.21m)));
        Assert.Equal(5, open.TestNext.Count);
        Assert.All(open.TestNext, s => Assert.Equal(1.05m, s.CouldHold));
    }

    [Fact]
    public void Judge_UnequalLoads_TestsOnlyThoseThatCouldExceed()
    {
        var spec = new ScreenSpec(1m, 0.30m, [Truck("a", 10), Truck("b", 20), Truck("c", 30), Truck("d", 40)]);
        var open = Assert.IsType<ScreenOpen>(ScreenModel.Judge(spec));
        Assert.Equal(0.1m, open.ProofLimit);
        Assert.Equal(["a", "b"], open.TestNext.Select(s => s.Truck.Code));
        Assert.Equal([3m, 1.5m], open.TestNext.Select(s => s.CouldHold));
        Assert.Equal(["c", "d"], open.Cleared.Select(t => t.Code));
    }

    [Fact]
    public void Judge_LikelyLoads_AreTestedFirst() => Assert.Equal("c", Assert.IsType<ScreenOpen>(ScreenModel.Judge(
        new ScreenSpec(1m, 0.9m, [Truck("a", 10), Truck("b", 20), Truck("c", 30) with { ChanceOver = 0.2 }]))).TestNext[0].Truck.Code);

    // 0.40 · 5 = 2.0 in equal loads; one shows 1.2 and leaves 0.8, which no other load can exceed 1.0 with.
    [Fact]
    public void Judge_OneFound_BoundsTheRest()
    {
        var trucks = Five(0.40m).Trucks.Select((t, i) => i == 2 ? t with { Found = 1.2m } : t).ToList();
        var open = Assert.IsType<ScreenOpen>(ScreenModel.Judge(Five(0.40m) with { Trucks = trucks }));
        Assert.Equal("t3", open.Over.Single().Code);
        Assert.Empty(open.TestNext);
        Assert.Equal(4, open.Cleared.Count);
        Assert.Equal(0.16m, open.Remainder);
        trucks[2] = trucks[2] with { Found = 0.9m };
        Assert.Equal(4, Assert.IsType<ScreenOpen>(ScreenModel.Judge(Five(0.40m) with { Trucks = trucks })).TestNext.Count);
    }

    [Fact]
    public void Judge_Law_WhatItClearsNeverExceeds() => Gen.Select(Gen.Decimal[0m, 3m].Array[2, 8], Gen.Int[1, 40].Array[8]).Sample((contents, masses) =>
    {
        var trucks = contents.Select((c, i) => (Content: Math.Round(c, 3), Truck: Truck($"t{i}", masses[i]))).ToArray();
        var all = trucks.Sum(t => t.Truck.Mass.Tonnes);
        var composite = trucks.Sum(t => t.Content * t.Truck.Mass.Tonnes) / all;
        switch (ScreenModel.Judge(new ScreenSpec(1m, composite, [.. trucks.Select(t => t.Truck)])))
        {
            case ScreenClears:
                Assert.All(trucks, t => Assert.True(t.Content <= 1.000001m));
                break;
            case ScreenOpen open:
                Assert.All(trucks.Where(t => t.Content > 1.000001m), t => Assert.Contains(open.TestNext, s => s.Truck.Code == t.Truck.Code));
                break;
            default:
                Assert.Fail("A composite that was tested is judged.");
                break;
        }
    });

    // Derived by an independent integration: two equal lognormal loads (mean 0.1, SD 0.08): P(mean ≤ 0.15) = 0.8524, P(≤ 0.10) = 0.6063.
    [Theory]
    [InlineData(0.30, 0.8524)]
    [InlineData(0.20, 0.6063)]
    public void Judge_Prior_GivesTheChanceAndTheExpectedTests(double limit, double chance)
    {
        var outcome = Assert.IsType<ScreenPlanned>(ScreenModel.Judge(new ScreenSpec((decimal)limit, null, [Truck("a", 25), Truck("b", 25)]) { Prior = new LoadPrior(PriorScale.Lognormal, 0.1, 0.08) }));
        Assert.Equal(chance, outcome.ChanceClears!.Value, 0.001);
        Assert.Equal(1 + 2 * (1 - chance), outcome.ExpectedTests!.Value, 0.003);
    }

    [Fact]
    public void Judge_WhatCannotBe_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => ScreenModel.Judge(Five(0.2m) with { LimitMilligrams = 0m }));
        Assert.Throws<ArgumentException>(() => ScreenModel.Judge(Five(-0.2m)));
        Assert.Throws<ArgumentException>(() => ScreenModel.Judge(Five(0.2m) with { Trucks = [Truck("a", 1)] }));
        Assert.Throws<ArgumentException>(() => ScreenModel.Judge(Five(0.2m) with { Trucks = [Truck("a", 1), Truck("A", 1)] }));
    }

    private static ScreenSpec Five(decimal composite) => new(1m, composite, [.. Enumerable.Range(1, 5).Select(i => Truck($"t{i}", 26))]);

    private static ScreenTruck Truck(string code, int tonnes) => new(code, Mass.FromTonnes(tonnes));
}
