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
        Assert.Null(TablePlans.Of(Severity.Normal, 'I', 1.0));
        Assert.Null(TablePlans.Of(Severity.Stopped, 'J', 1.0));
        Assert.Null(TablePlans.Of(Severity.Normal, 'J', 1.1));
        Assert.Throws<ArgumentException>(() => TableLetters.Of(1, "II"));
        Assert.Throws<ArgumentException>(() => TableLetters.Of(100, "IV"));
    }

    // Single plans "n Ac/Re" of MIL-STD-105E at 0.65, 1.0, 1.5, 2.5, 4.0, 6.5 %, arrows followed: read through R package AQLSchemes 1.7-2, which names the standard.
    [Theory]
    [InlineData(Severity.Normal, 'D', "20 0/1|13 0/1|8 0/1|5 0/1|13 1/2|8 1/2")]
    [InlineData(Severity.Normal, 'E', "20 0/1|13 0/1|8 0/1|20 1/2|13 1/2|13 2/3")]
    [InlineData(Severity.Normal, 'F', "20 0/1|13 0/1|32 1/2|20 1/2|20 2/3|20 3/4")]
    [InlineData(Severity.Normal, 'G', "20 0/1|50 1/2|32 1/2|32 2/3|32 3/4|32 5/6")]
    [InlineData(Severity.Normal, 'H', "80 1/2|50 1/2|50 2/3|50 3/4|50 5/6|50 7/8")]
    [InlineData(Severity.Normal, 'J', "80 1/2|80 2/3|80 3/4|80 5/6|80 7/8|80 10/11")]
    [InlineData(Severity.Normal, 'K', "125 2/3|125 3/4|125 5/6|125 7/8|125 10/11|125 14/15")]
    [InlineData(Severity.Normal, 'L', "200 3/4|200 5/6|200 7/8|200 10/11|200 14/15|200 21/22")]
    [InlineData(Severity.Tightened, 'G', "32 0/1|80 1/2|50 1/2|32 1/2|32 2/3|32 3/4")]
    [InlineData(Severity.Tightened, 'J', "125 1/2|80 1/2|80 2/3|80 3/4|80 5/6|80 8/9")]
    [InlineData(Severity.Tightened, 'K', "125 1/2|125 2/3|125 3/4|125 5/6|125 8/9|125 12/13")]
    [InlineData(Severity.Reduced, 'J', "32 0/2|32 1/3|32 1/4|32 2/5|32 3/6|32 5/8")]
    [InlineData(Severity.Reduced, 'K', "50 1/3|50 1/4|50 2/5|50 3/6|50 5/8|50 7/10")]
    // The same columns in a public copy typed from the scan of the standard (normal plans alone: its tightened ones break the law below).
    [InlineData(Severity.Normal, 'C', "20 0/1|13 0/1|8 0/1|5 0/1|3 0/1|8 1/2")]
    [InlineData(Severity.Normal, 'M', "315 5/6|315 7/8|315 10/11|315 14/15|315 21/22|200 21/22")]
    [InlineData(Severity.Normal, 'N', "500 7/8|500 10/11|500 14/15|500 21/22|315 21/22|200 21/22")]
    public void Table_PlansThatWereRead_AreGiven(Severity severity, char letter, string row)
    {
        Assert.Equal(row.Split('|'), new[] { 0.65, 1.0, 1.5, 2.5, 4.0, 6.5 }.Select(limit => Words(TablePlans.Of(severity, letter, limit)!)));
        Assert.All(new[] { 0.65, 6.5 }, limit => Assert.True(TablePlans.IsRead(severity, letter, limit)));
        Assert.False(TablePlans.IsRead(severity, letter, 10));
    }

    // Corners of the table, from memory.
    [Theory]
    [InlineData(Severity.Normal, 'A', 0.010, "1250 0/1")]
    [InlineData(Severity.Normal, 'R', 0.010, "1250 0/1")]
    [InlineData(Severity.Normal, 'R', 0.015, "800 0/1")]
    [InlineData(Severity.Normal, 'R', 0.025, "2000 1/2")]
    [InlineData(Severity.Normal, 'A', 6.5, "2 0/1")]
    [InlineData(Severity.Normal, 'A', 10, "5 1/2")]
    [InlineData(Severity.Normal, 'R', 10, "125 21/22")]
    [InlineData(Severity.Tightened, 'R', 0.010, "2000 0/1")]
    [InlineData(Severity.Tightened, 'R', 0.025, "3150 1/2")]
    [InlineData(Severity.Tightened, 'A', 10, "2 0/1")]
    [InlineData(Severity.Tightened, 'L', 6.5, "200 18/19")]
    [InlineData(Severity.Reduced, 'F', 0.65, "8 0/1")]
    [InlineData(Severity.Reduced, 'C', 10, "2 0/2")]
    [InlineData(Severity.Reduced, 'R', 0.10, "800 2/5")]
    public void Table_AtItsCorners_FollowsTheArrows(Severity severity, char letter, double limit, string plan) => Assert.Equal(plan, Words(TablePlans.Of(severity, letter, limit)!));

    // Laws of the table: every letter and limit has a plan; a lot at the limit passes a normal plan mostly (0.80 to 0.999 for the standard's), a tightened one no oftener, a reduced one no seldomer.
    [Fact]
    public void Table_EveryPlan_CanBe()
    {
        foreach (var (letter, limit) in TablePlans.Letters.SelectMany(l => TablePlans.Limits.Select(x => (l, x))))
        {
            var (normal, tightened, reduced) = (TablePlans.Of(Severity.Normal, letter, limit)!, TablePlans.Of(Severity.Tightened, letter, limit)!, TablePlans.Of(Severity.Reduced, letter, limit)!);
            Assert.Equal((normal.Plan.Accept + 1, tightened.Plan.Accept + 1), (normal.Reject, tightened.Reject));
            var (n, t, r) = (normal.Plan.Chance(limit / 100), tightened.Plan.Chance(limit / 100), new AttributesPlan(reduced.Plan.Size, reduced.Reject - 1).Chance(limit / 100));
            Assert.True(n is > 0.75 and < 0.999, $"{letter} {limit}: {n}");
            Assert.True(t <= n + 0.005, $"{letter} {limit}: tightened {t}, normal {n}");
            Assert.True(r >= n - 0.005, $"{letter} {limit}: reduced {r}, normal {n}");
            Assert.True(reduced.Plan.Size <= normal.Plan.Size || normal.Plan.Accept == 0, $"{letter} {limit}: reduced looks at {reduced.Plan.Size}, normal at {normal.Plan.Size}");
        }
    }

    private static string Words(TablePlan plan) => $"{plan.Plan.Size} {plan.Plan.Accept}/{plan.Reject}";

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
        Assert.Equal('I', VariablesTable.LetterOf(1200, "III")); // The same published check.
        Assert.Equal(new(4, 1.45, false), VariablesTable.Of('B', 1.0, tightened: false)); // An arrow takes the size too: MIL-STD-414's own footnote, from memory.
        Assert.Equal(new(200, 1.70, false), VariablesTable.Of('Q', 2.5, tightened: false));
        Assert.Equal(new(25, 1.72, false), VariablesTable.Of('I', 2.5, tightened: true));
        Assert.Null(VariablesTable.Of('I', 0.65, tightened: true));
        Assert.Null(VariablesTable.Of('A', 1.0, tightened: false));
        Assert.Null(VariablesTable.Of('I', 15, tightened: true));
        Assert.Equal(('B', 'C', 'K', 'Q'), (VariablesTable.LetterOf(3, "IV"), VariablesTable.LetterOf(8, "V"), VariablesTable.LetterOf(1000, "IV"), VariablesTable.LetterOf(1_000_000, "V")));
        Assert.Throws<ArgumentException>(() => VariablesTable.LetterOf(2, "IV"));
        Assert.Throws<ArgumentException>(() => VariablesTable.LetterOf(100, "VI"));
        // R 4.2.2: n 14.385 and 40.15 before rounding up.
        var known = VariablesPlan.For(Handbook, isSigmaKnown: true);
        Assert.Equal((15, 1.892667), (known.Size, Math.Round(known.Factor, 6)));
        var unknown = VariablesPlan.For(Handbook, isSigmaKnown: false);
        Assert.Equal(41, unknown.Size);
        Assert.All(new[] { known, unknown }, p => Assert.True(p.Chance(.01) >= .95 && p.Chance(.06) <= .10));
    }

    // Laws of the table: k falls with the limit and grows with the letter, and in a row a lot at the limit passes with one chance whatever the limit, from 0.89 at B to 0.99 at Q
    // (R 4.2.2, noncentral t: within 0.006 in every row, for factors read and from memory alike; here by the approximation, which lies up to 0.02 lower at the smallest sizes).
    [Fact]
    public void Variables_OfTheTable_CanBe()
    {
        foreach (var (letter, next) in VariablesTable.Letters.Zip(VariablesTable.Letters.Skip(1).Append('Q')))
        {
            var plans = VariablesTable.Limits.Select(l => (Limit: l, Plan: VariablesTable.Of(letter, l, false)!)).ToArray();
            Assert.All(plans, p => Assert.True(VariablesTable.Of(next, p.Limit, false)!.Factor >= p.Plan.Factor, $"{letter} {p.Limit}"));
            Assert.All(plans.Zip(plans.Skip(1)), p => Assert.True(p.First.Plan.Factor > p.Second.Plan.Factor && VariablesTable.Of(letter, p.Second.Limit, true) == p.First.Plan, $"{letter} {p.Second.Limit}"));
            var own = plans.Where(p => p.Plan.Size == plans[^1].Plan.Size).Select(p => p.Plan.Chance(p.Limit / 100)).ToArray();
            Assert.True(own.Max() - own.Min() <= 0.0065 && own.Min() > 0.87 && own.Max() < 0.995, $"{letter}: {string.Join(' ', own)}");
        }
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

    // 1 − 0.05^(1/60) = 0.048703; c 1: R 4.2.2, uniroot of pbinom(1, 60, p) = 0.05.
    [Fact]
    public void HoldTest_SaysWhatItFindsAndWhatItDoesNot()
    {
        var none = new HoldTest(60, 0, 25, 0.95);
        Assert.Equal(1 - Math.Pow(0.05, 1 / 60.0), none.ShareFound, 1e-9);
        Assert.Equal(-Math.Log(0.05) / 60 / 25, none.PerGramFound, 1e-12); // e^(−λ·25·60) = 0.05: as one portion of 1,500 g.
        Assert.Equal(Finding.PerGramFound(0.95, 1500), none.PerGramFound, 1e-12);
        Assert.Equal(0.0766, new HoldTest(60, 1, 25, 0.95).ShareFound, 1e-4);
        Assert.Contains("n = 60 portions of 25 g, accepted with up to c = 0 positive.", none.Statements());
        Assert.Contains(none.Statements(), s => s.Contains("4.87 % of such portions", StringComparison.Ordinal) && s.Contains("95 % confidence", StringComparison.Ordinal));
        Assert.Contains(Finding.Caution, none.Statements());
    }

    // Lognormal with mean 1 and a relative deviation of 0.5: R 4.2.2, plnorm(1, -log(1.25)/2, sqrt(log(1.25))); at 0.8 of it and at 1.5.
    [Fact]
    public void Toxin_OfALot_IsAcceptedAsReckoned()
    {
        var test = new ToxinTest(40, 0, 30, 1, 1);
        Assert.Equal(0.5, test.Relative, 12);
        Assert.Equal((0.5934, 0.7607, 0.2669), (Math.Round(test.Accepted(1, 1), 4), Math.Round(test.Accepted(0.8, 1), 4), Math.Round(test.Accepted(1.5, 1), 4)));
        Assert.Equal(Math.Sqrt(0.04 + (0.09 / 4)), (test with { Kilograms = 4, Determinations = 4 }).Relative, 12);
        Assert.True((test with { Kilograms = 4 }).Accepted(0.8, 1) > test.Accepted(0.8, 1)); // A larger sample tells lots apart better, on either side.
        Assert.True((test with { Kilograms = 4 }).Accepted(1.5, 1) < test.Accepted(1.5, 1));
        Assert.Equal((1, 1, 0), (test.Accepted(0, 1), new ToxinTest(0, 0, 0, 1, 1).Accepted(1, 1), new ToxinTest(0, 0, 0, 1, 1).Accepted(1.1, 1)));
        Assert.Equal(3, new ToxinTest(400, 0, 0, 0, 0).Faults().Count);
    }

    [Fact]
    public void Points_ThatCannotBe_SayWhy()
    {
        Assert.Contains("write 1 % as 0.01", Assert.Single(new TwoPoints(.06, .05, .01, .1).Faults()), StringComparison.Ordinal);
        Assert.Contains("together below 1", Assert.Single(new TwoPoints(.01, .5, .06, .5).Faults()), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => AttributesPlan.For(new(.06, .05, .01, .1)));
    }
}
