using Evengrist.Laboratory.Sampling;

namespace Evengrist.Tests.Laboratory.Sampling;

/// <summary>Acceptance sampling against the NIST/SEMATECH e-Handbook (from memory, recomputed), MIL-STD-105E and 414 (public domain, read through R packages that name them), and R 4.2.2.</summary>
public sealed class AcceptanceSamplingTests
{
    private static readonly TwoPoints Handbook = new(0.01, 0.05, 0.06, 0.10);

    // e-Handbook 6.2.3.2, from memory; recomputed with R: n 52, c 3 of a lot of 10 000.
    [Theory]
    [InlineData(.01, .9982, .0100, 70.37)]
    [InlineData(.02, .9798, .0196, 253.30)]
    [InlineData(.03, .9295, .0279, 752.96)]
    [InlineData(.04, .8460, .0338, 1584.10)]
    [InlineData(.05, .7383, .0369, 2655.22)]
    [InlineData(.06, .6196, .0372, 3836.28)]
    [InlineData(.07, .5018, .0351, 5007.62)]
    [InlineData(.08, .3938, .0315, 6082.85)]
    [InlineData(.09, .3003, .0270, 7012.82)]
    [InlineData(.10, .2232, .0223, 7779.73)]
    [InlineData(.11, .1621, .0178, 8387.77)]
    [InlineData(.12, .1152, .0138, 8854.01)]
    public void Curve_OfTheHandbook_IsKept(double share, double chance, double outgoing, double inspected)
    {
        var plan = new AttributesPlan(52, 3);
        Assert.Equal(chance, plan.Chance(share), 5.1e-5);
        Assert.Equal(outgoing, plan.Outgoing(share, int.MaxValue), 6e-5); // The handbook's p P, without (N − n)/N.
        Assert.Equal(inspected, plan.Inspected(share, 10_000), 5.1e-3);
    }

    // R 4.2.2.
    [Fact]
    public void Chances_OfThreeLaws_AreThoseOfR()
    {
        Assert.Equal(.5837524, new AttributesPlan(10, 0).ChanceOf(100, 5), 1e-7);
        var plan = new AttributesPlan(80, 2);
        Assert.Equal((.7892471, .7844189, .7833585), (Math.Round(plan.ChanceOf(1000, 20), 7), Math.Round(plan.Chance(.02), 7), Math.Round(plan.ChanceOfFaults(.02), 7)));
        Assert.Equal([.992288, .953447, .784419, .568123, .230621], new[] { .005, .01, .02, .03, .05 }.Select(p => Math.Round(plan.Chance(p), 6)));
        Assert.Equal(.95, plan.Chance(plan.ShareAt(.95)), 1e-9);
    }

    // R 4.2.2, by trying all.
    [Theory]
    [InlineData(.01, .05, .05, .10, 132, 3)]
    [InlineData(.01, .05, .06, .10, 110, 3)]
    [InlineData(.02, .05, .08, .10, 98, 4)]
    public void Plan_ForTwoPoints_IsTheSmallest(double good, double alpha, double bad, double beta, int size, int accept)
    {
        Assert.Equal(new AttributesPlan(size, accept), AttributesPlan.For(new(good, alpha, bad, beta)));
        Assert.True(new AttributesPlan(size - 1, accept).Chance(bad) > beta);
        Assert.Null(AttributesPlan.For(new(0.01, 0.05, 0.010001, 0.10)));
    }

    // The lines equal the e-Handbook's (from memory).
    [Fact]
    public void Sequential_OfTheHandbook_HasItsLines()
    {
        var plan = SequentialPlan.For(new(.01, .05, .10, .10));
        Assert.Equal((.9388616, 1.2053786, .0397474), (Math.Round(plan.AcceptOffset, 7), Math.Round(plan.RejectOffset, 7), Math.Round(plan.Slope, 7)));
        Assert.Equal(24, plan.FewestToAccept);
        Assert.Equal((null, true, false), (plan.Verdict(23, 0), plan.Verdict(24, 0), plan.Verdict(2, 2)));
    }

    // MIL-STD-105E through R package AQLSchemes 1.7-2.
    [Fact]
    public void Table_OfALotOfAThousandBags_GivesItsPlans()
    {
        Assert.Equal('J', TableLetters.Of(1000, "II"));
        Assert.Equal(('A', 'B', 'R', 'K', 'D'), (TableLetters.Of(2, "II"), TableLetters.Of(8, "III"), TableLetters.Of(1_000_000, "III"), TableLetters.Of(501, "III"), TableLetters.Of(3500, "S-2")));
        Assert.Equal(new(80, 2), TablePlans.Of(Severity.Normal, 'J', 1.0)!.Plan);
        Assert.Equal(new(80, 1), TablePlans.Of(Severity.Tightened, 'J', 1.0)!.Plan);
        var reduced = TablePlans.Of(Severity.Reduced, 'J', 1.0)!;
        Assert.Equal((32, 1, 3), (reduced.Plan.Size, reduced.Plan.Accept, reduced.Reject));
        Assert.Equal([LotVerdict.Accepted, LotVerdict.AcceptedBackToNormal, LotVerdict.Rejected], new[] { 1, 2, 3 }.Select(reduced.Verdict));
        Assert.Null(TablePlans.Of(Severity.Normal, 'A', 1.0));
        Assert.Null(TablePlans.Of(Severity.Normal, 'J', 1.1));
        Assert.Throws<ArgumentException>(() => TableLetters.Of(1, "II"));
        Assert.Throws<ArgumentException>(() => TableLetters.Of(100, "IV"));
    }

    // By what a table must be: one letter on takes no fewer, and rejects from one above what it accepts, but on reduced plans.
    [Fact]
    public void Table_EveryPlan_CanBe()
    {
        foreach (var severity in new[] { Severity.Normal, Severity.Tightened, Severity.Reduced })
        {
            foreach (var (letter, limit) in TablePlans.Letters(severity).SelectMany(l => TablePlans.Limits.Select(x => (l, x))))
            {
                var plan = TablePlans.Of(severity, letter, limit)!;
                Assert.True(severity == Severity.Reduced ? plan.Reject >= plan.Plan.Accept + 2 : plan.Reject == plan.Plan.Accept + 1, $"{severity} {letter} {limit}");
                // A lot at the limit passes a normal plan mostly: 0.80 to 0.999 for the plans of the standard.
                Assert.True(severity != Severity.Normal || plan.Plan.Chance(limit / 100) is > 0.75 and < 0.999, $"{letter} {limit}: {plan.Plan.Chance(limit / 100)}");
            }
        }
    }

    // Rules of MIL-STD-105E, from memory.
    [Fact]
    public void Severity_OfTheNextLot_FollowsHowLotsFared()
    {
        const LotVerdict yes = LotVerdict.Accepted, no = LotVerdict.Rejected, between = LotVerdict.AcceptedBackToNormal;
        LotVerdict[] ten = [.. Enumerable.Repeat(yes, 10)];
        Assert.Equal(Severity.Normal, Switching.Next([], true));
        Assert.Equal(Severity.Normal, Switching.Next([no, yes, yes, yes, yes, no], true));
        Assert.Equal(Severity.Tightened, Switching.Next([no, yes, yes, yes, no], true));
        Assert.Equal(Severity.Normal, Switching.Next([no, no, yes, yes, yes, yes, yes], true));
        Assert.Equal(Severity.Stopped, Switching.Next([no, no, no, no, no, no, no], true));
        Assert.Equal(Severity.Stopped, Switching.Next([no, no, no, no, no, no, no, .. ten], true));
        Assert.Equal(Severity.Reduced, Switching.Next(ten, true));
        Assert.Equal(Severity.Normal, Switching.Next(ten, false));
        Assert.Equal(Severity.Normal, Switching.Next([.. ten, between], true));
        Assert.Equal(Severity.Normal, Switching.Next([.. ten, no], true));
    }

    // MIL-STD-414 through R package Planesmuestra 0.1: the published check is a tightened plan of letter I at 1.0.
    [Fact]
    public void Variables_OfTheTableAndForTwoPoints_AreKept()
    {
        Assert.Equal(new(25, 1.98, false), VariablesTable.Of('I', 1.0, tightened: true));
        Assert.Equal(new(3, 1.45, false), VariablesTable.Of('B', 1.0, tightened: false));
        Assert.Equal(new(200, 1.70, false), VariablesTable.Of('Q', 2.5, tightened: false));
        Assert.Null(VariablesTable.Of('I', 2.5, tightened: true));
        Assert.Null(VariablesTable.Of('A', 1.0, tightened: false));
        // R 4.2.2: n 14.385 and 40.15 before rounding up.
        var known = VariablesPlan.For(Handbook, isSigmaKnown: true);
        Assert.Equal((15, 1.892667), (known.Size, Math.Round(known.Factor, 6)));
        var unknown = VariablesPlan.For(Handbook, isSigmaKnown: false);
        Assert.Equal(41, unknown.Size);
        Assert.All(new[] { known, unknown }, p => Assert.True(p.Chance(.01) >= .95 && p.Chance(.06) <= .10));
    }

    // R 4.2.2.
    [Fact]
    public void ThreeClasses_AreAcceptedAsReckoned()
    {
        Assert.Equal((.94208, .7224609, .46656), (Math.Round(new ThreeClassPlan(5, 2).Chance(.2, 0), 7), Math.Round(new ThreeClassPlan(5, 2).Chance(.2, .05), 7), Math.Round(new ThreeClassPlan(5, 2).Chance(.3, .1), 7)));
        Assert.Equal((.59049, .0460698), (Math.Round(new AttributesPlan(5, 0).Chance(.1), 7), Math.Round(new AttributesPlan(60, 0).Chance(.05), 7)));
        // Without marginal ones it is the plan with two classes.
        Assert.Equal(new AttributesPlan(5, 0).Chance(.1), new ThreeClassPlan(5, 2).Chance(0, .1), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => new ThreeClassPlan(5, 2).Chance(.7, .4));
    }

    // R 4.2.2.
    [Fact]
    public void Finding_OfWhatIsRare_TakesWhatItTakes()
    {
        Assert.Equal((59, 299, 90), (Finding.UnitsFor(.05, .95), Finding.UnitsFor(.01, .95), Finding.UnitsFor(.05, .99)));
        Assert.Equal((.2211992, .9764823, .3127107), (Math.Round(Finding.Chance(.01, 25), 7), Math.Round(Finding.Chance(.01, 375), 7), Math.Round(Finding.Chance(.001, 375), 7)));
        Assert.Equal(.95, Finding.Chance(Finding.PerGramFound(.95, 375), 375), 1e-12);
        var bounds = Finding.CountBounds(30);
        Assert.Equal((20.24, 42.83), (Math.Round(bounds.Least, 2), Math.Round(bounds.Most, 2)));
        Assert.Equal(0, Finding.CountBounds(0).Least);
        Assert.Equal(-Math.Log(0.025), Finding.CountBounds(0).Most, 1e-9); // e^(−λ) = 0.025.
    }

    [Fact]
    public void Points_ThatCannotBe_SayWhy()
    {
        Assert.Contains("write 1 % as 0.01", Assert.Single(new TwoPoints(.06, .05, .01, .1).Faults()), StringComparison.Ordinal);
        Assert.Contains("together below 1", Assert.Single(new TwoPoints(.01, .5, .06, .5).Faults()), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => AttributesPlan.For(new(.06, .05, .01, .1)));
    }
}
