using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Solving;

namespace Evengrist.Tests.Milling;

/// <summary>A mill that learns: gradients against solving anew, what data do to ±, and each refusal.</summary>
public sealed class MillFitTests
{
    [Fact]
    public void Figures_ByEveryKey_ChangeAsSolvingAnewSays()
    {
        var none = MillTuning.None(SmallMill.Sheet);
        SieveReading[] sieves = [new("2B", 500, 50)];
        MillFigures At(int key, double amount)
        {
            var values = none.Values.Clone();
            values[key] += amount;
            return MillFigures.Of(SmallMill.Sheet, SmallMill.Wheat, none.Keys, values, TestErrors.Usual, sieves);
        }

        Func<MillFigures, Figure>[] asked =
            [f => f.Yield(["1M-flour", "2M-flour"]), f => f.Ash(["1M-flour"]), f => f.Ash(["1M-flour", "3M-flour"]), f => f.Protein(["2B-flour"]), f => f.Release("2B")!, f => f.Load("2M"), f => f.Through("2B", 500), f => f.WholeWheat(TuneKind.Ash)];
        var middle = At(0, 0);
        for (var i = 0; i < none.Keys.Count; i++)
        {
            var (up, down) = (At(i, 1e-4), At(i, -1e-4));
            // Yield takes the moisture of a stream as it is: its own small change is left out of the gradient.
            Assert.All(asked, ask => Assert.InRange(ask(middle).Gradient[i] - ((ask(up).Value - ask(down).Value) / 2e-4), -0.05, 0.05));
        }
    }

    [Fact]
    public void Fit_OfATestTheModelItselfMade_FindsWhatItWasMadeWith()
    {
        var truth = SmallMill.WithGap("2B", 300);
        var made = new MillRun(MillModel.Of(truth, SmallMill.Wheat)).Read();
        var tuned = Assert.IsType<MillTuned>(MillFit.Of([Survey(made, "1B", "2B", "3B")]));
        var (factor, uncertainty, before) = tuned.Tuning.Of(new TuneKey(TuneKind.Nip, "2B"));
        Assert.InRange(factor, 0.76, 0.93); // 250/300 = 0.83
        Assert.True(uncertainty < 0.6 * before);
        Assert.All(tuned.Tuning.Scatter.Values, s => Assert.InRange(s, 1, 1.2));
        Assert.All(tuned.Compared, c => Assert.InRange(Math.Abs(c.Deviation), 0, 2));
    }

    [Fact]
    public void Fit_OfMoreData_ShrinksEveryUncertainty()
    {
        var made = new MillRun(MillModel.Of(SmallMill.Sheet, SmallMill.Wheat)).Read();
        var none = MillTuning.None(SmallMill.Sheet);
        var release = Assert.IsType<MillTuned>(MillFit.Of([Survey(made, "1B", "2B", "3B") with { Streams = [] }])).Tuning;
        var all = Assert.IsType<MillTuned>(MillFit.Of([Survey(made, "1B", "2B", "3B")])).Tuning;
        for (var i = 0; i < none.Keys.Count; i++)
        {
            Assert.True(release.Covariance[i, i] <= none.Covariance[i, i] * (1 + 1e-9));
            Assert.True(all.Covariance[i, i] <= release.Covariance[i, i] * (1 + 1e-9));
        }
    }

    [Fact]
    public void ThirdBreak_OpenedOnPaper_SaysEachChangeWithItsUncertainty_WhichATestShrinks()
    {
        var (none, patent) = (MillTuning.None(SmallMill.Sheet), new ProductSet("patent", ["1M-flour", "2M-flour", "SZ-flour", "1B-flour", "2B-flour"]));
        var wider = SmallMill.WithGap("3B", 190);
        var prices = SmallMill.Sheet.Products.ToDictionary(p => p.Code, p => p.Kind is ProductKind.Flour ? 430m : 200m);
        var change = MillChange.Of(SmallMill.Sheet, wider, SmallMill.Wheat, null, none, [patent], prices);
        Assert.False(change.Now.IsTuned);
        Assert.True(change.Passages.Single(p => p.Code == "3B").ReleasePercent!.Value < 0);
        Assert.True(change.Flour.YieldPercent.Value < 0);
        Assert.True(change.MoneyPerDay!.Value < 0);
        Assert.InRange(change.Products.Single(p => p.Name == "patent").AshPercentDry.Value, -1, 1e-3);
        Assert.All(change.Products, p => Assert.True(p.YieldPercent.Uncertainty >= 0));
        var made = new MillRun(MillModel.Of(SmallMill.Sheet, SmallMill.Wheat)).Read();
        var tuned = Assert.IsType<MillTuned>(MillFit.Of([Survey(made, "1B", "2B", "3B")])).Tuning;
        var known = MillChange.Of(SmallMill.Sheet, wider, SmallMill.Wheat, null, tuned, [patent], prices);
        Assert.True(known.Now.IsTuned);
        Assert.True(known.Flour.YieldPercent.Uncertainty < change.Flour.YieldPercent.Uncertainty);
        Assert.True(known.MoneyPerDay!.Uncertainty < change.MoneyPerDay.Uncertainty);
        Assert.All(MillChange.Of(SmallMill.Sheet, SmallMill.WithGap("3B", 140), SmallMill.Wheat, null, tuned).Products, p => Assert.Equal(new Estimate(0, 0), p.YieldPercent));
    }

    // Directions: a closer gap works more, common practice; twice the wheat, near twice the work; a test of the mill tells what is broken, not what that works.
    [Fact]
    public void WorkOfTheRolls_ChangesWithItsUncertainty_WhichATestShrinks_ButNeverToNothing()
    {
        var (none, sheet, wheat) = (MillTuning.None(SmallMill.Sheet), SmallMill.Sheet, SmallMill.Wheat);
        var closer = WorkChange.Of(sheet, SmallMill.WithGap("1M", 55), wheat, wheat, none);
        Assert.True(closer.Kilowatts.Value > 0);
        Assert.Equal(closer.Kilowatts.Value / (wheat.DryTonnesPerHour / 0.84), closer.KilowattHoursPerTonne.Value, 1e-9);
        Assert.Equal(closer.Kilowatts.Uncertainty / (wheat.DryTonnesPerHour / 0.84), closer.KilowattHoursPerTonne.Uncertainty, 1e-9);
        Assert.Equal(new WorkChange(new Estimate(0, 0), new Estimate(0, 0)), WorkChange.Of(sheet, sheet, wheat, wheat, none));
        var more = WorkChange.Of(sheet, sheet, wheat, wheat with { DryTonnesPerHour = 1.1 * wheat.DryTonnesPerHour }, none);
        var all = new MillRun(MillModel.Of(sheet, wheat)).Read().RollKilowatts;
        Assert.InRange(more.Kilowatts.Value / all, 0.07, 0.11);
        Assert.InRange(more.Kilowatts.Uncertainty, 0.2 * more.Kilowatts.Value, 0.6 * more.Kilowatts.Value);
        var made = new MillRun(MillModel.Of(sheet, wheat)).Read();
        var tuned = Assert.IsType<MillTuned>(MillFit.Of([Survey(made, "1B", "2B", "3B")])).Tuning;
        var known = WorkChange.Of(sheet, SmallMill.WithGap("1M", 55), wheat, wheat, tuned);
        Assert.True(known.Kilowatts.Uncertainty < closer.Kilowatts.Uncertainty);
        Assert.True(known.Kilowatts.Uncertainty > 0.29 * Math.Abs(known.Kilowatts.Value) / Math.Sqrt(2));
    }

    [Fact]
    public void Fit_OfTooLittleOrOfWhatCannotBe_SaysWhatToDo()
    {
        var made = Survey(new MillRun(MillModel.Of(SmallMill.Sheet, SmallMill.Wheat)).Read(), "1B");
        static string[] Reasons(params MillTest[] tests) => [.. Assert.IsType<MillNotTuned>(MillFit.Of(tests)).Reasons];
        Assert.Contains("or more are needed", Assert.Single(Reasons()), StringComparison.Ordinal);
        Assert.Contains("1 measured figures", Assert.Single(Reasons(made with { Streams = [] })), StringComparison.Ordinal);
        Assert.Contains(Reasons(made with { Streams = [.. made.Streams.Select(s => s with { YieldPercent = s.YieldPercent * 1.4 })] }), r => r.Contains("add up to", StringComparison.Ordinal));
        Assert.Contains(Reasons(made with { Streams = [made.Streams[0] with { AshPercentDry = -0.4 }, .. made.Streams.Skip(1)] }), r => r.Contains("ash lies above 0", StringComparison.Ordinal));
        Assert.Contains(Reasons(made with { Releases = [new ReleaseReading("9B", 30)] }), r => r.Contains("9B is no passage", StringComparison.Ordinal));
        Assert.Contains(Reasons(made with { Sieves = [new SieveReading("1B", 0, 30)] }), r => r.Contains("from 20 to 4000", StringComparison.Ordinal));
        var other = SmallMill.Sheet with { Passages = [.. SmallMill.Sheet.Passages.Select(p => p.Code == "P1" ? p with { Cloths = [p.Cloths[0]] } : p)] };
        Assert.Contains(Reasons(made, made with { Name = "other", Sheet = other }), r => r.Contains("has other passages", StringComparison.Ordinal));
    }

    [Fact]
    public void NextTest_NamesAReleaseThatWouldTell_AndTakingItShrinksTheFloursUncertaintyAsSaid()
    {
        var made = new MillRun(MillModel.Of(SmallMill.Sheet, SmallMill.Wheat)).Read();
        var few = Assert.IsType<MillTuned>(MillFit.Of([Survey(made, "1B") with { Streams = [new StreamReading("bran", made.Product("bran").YieldPercent, made.Product("bran").Flow.AshPercentDry)] }])).Tuning;
        var next = NextTest.Of(SmallMill.Sheet, SmallMill.Wheat, few)[0];
        Assert.True(next.After < next.Now);
        var taken = Assert.IsType<MillTuned>(MillFit.Of([Survey(made, "1B", next.Passage) with { Streams = [new StreamReading("bran", made.Product("bran").YieldPercent, made.Product("bran").Flow.AshPercentDry)] }])).Tuning;
        string[] flour = [.. SmallMill.Sheet.Products.Where(p => p.Kind is ProductKind.Flour).Select(p => p.Code)];
        var gradient = MillFigures.Of(SmallMill.Sheet, SmallMill.Wheat, taken.Keys, taken.Values, TestErrors.Usual).Yield(flour).Gradient;
        Assert.InRange(Math.Sqrt(gradient * (taken.Covariance * gradient)) / next.After, 0.85, 1.15);
    }

    [Fact]
    public void Confused_ByReleasesAlone_IsNothingBeforeData_AndEveryPairHasACorrelationThatDataMade()
    {
        var made = new MillRun(MillModel.Of(SmallMill.Sheet, SmallMill.Wheat)).Read();
        Assert.Empty(Confused.Of(SmallMill.Sheet, SmallMill.Wheat, MillTuning.None(SmallMill.Sheet)));
        var tuned = Assert.IsType<MillTuned>(MillFit.Of([Survey(made, "1B", "2B", "3B")])).Tuning;
        Assert.All(Confused.Of(SmallMill.Sheet, SmallMill.Wheat, tuned), c => Assert.InRange(Math.Abs(c.Correlation), 0.6, 1));
    }

    private static MillTest Survey(MillSolution made, params string[] releases) => new("survey", SmallMill.Sheet, SmallMill.Wheat)
    {
        Streams = [.. made.Products.Select(p => new StreamReading(p.Product.Code, p.YieldPercent, p.Flow.AshPercentDry, p.Flow.ProteinPercentDry))],
        Releases = [.. releases.Select(r => new ReleaseReading(r, made.Passage(r).ReleasePercent!.Value))],
    };
}
