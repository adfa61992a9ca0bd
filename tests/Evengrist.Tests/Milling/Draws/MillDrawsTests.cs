using Evengrist.Milling.Draws;
using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;

namespace Evengrist.Tests.Milling.Draws;

/// <summary>Mills drawn, against the first-order ± of the same mill.</summary>
public sealed class MillDrawsTests
{
    private static readonly SheetChange Change = new() { GapMicrometres = new Dictionary<string, double> { ["2B"] = 220 } };
    private static readonly Dictionary<string, decimal> Prices = SmallMill.Sheet.Products.ToDictionary(p => p.Code, p => p.Kind is Evengrist.Milling.Sheet.ProductKind.Flour ? 430m : 190m);

    [Fact]
    public void Draws_LittleUnsure_AgreeWithTheFirstOrder()
    {
        // As Σ → 0 a figure is a line in θ: draws and first order must say the same, the model's shortfall included in both. 3,000 draws: a deviation is known to 1/√6000 = 1.3 %, a mean to 1.8 % of it; four times that.
        var spec = Spec(Shrunk(1e-4));
        var drawn = Draw(spec, 3000);
        var trial = MillTrial.Of(SmallMill.Sheet, Change, SmallMill.Wheat, null, spec.Tuning, null, Prices);
        var checkedFigures = 0;
        foreach (var (set, forecast) in drawn.Now.Products.Zip(trial.Now!.Products.Append(trial.Now.Flour)).Concat(drawn.Change!.Products.Zip(trial.Change!.Products.Append(trial.Change.Flour))))
        {
            Same(forecast.YieldPercent, set.YieldPercent!);
            Same(forecast.AshPercentDry, set.AshPercentDry!);
            Same(forecast.ProteinPercentDry, set.ProteinPercentDry!);
        }

        foreach (var (passage, forecast) in drawn.Now.Passages.Zip(trial.Now.Passages).Concat(drawn.Change.Passages.Zip(trial.Change.Passages)))
        {
            Same(forecast.DryTonnesPerHour, passage.DryTonnesPerHour!);
            Assert.Equal(forecast.ReleasePercent is null, passage.ReleasePercent is null);
            if (forecast.ReleasePercent is { } release)
            {
                Same(release, passage.ReleasePercent!);
            }
        }

        Same(trial.Change.MoneyPerDay!, drawn.MoneyPerDay!);
        Assert.True(checkedFigures > 80);

        void Same(Estimate first, DrawnFigure figure)
        {
            checkedFigures++;
            if (first.Uncertainty < 1e-9)
            {
                Assert.InRange(figure.Mean - first.Value, -1e-6, 1e-6);
                return;
            }

            Assert.InRange(figure.StandardDeviation / first.Uncertainty, 0.945, 1.055);
            Assert.InRange((figure.Mean - first.Value) / first.Uncertainty, -0.08, 0.08);
        }
    }

    [Fact]
    public void Change_OfTheSameMill_SpreadsLessThanTwoMillsApart()
    {
        var drawn = Draw(Spec(MillTuning.None(SmallMill.Sheet)), 600);
        var (now, change) = (drawn.Now.Products[^1].YieldPercent!, drawn.Change!.Products[^1].YieldPercent!);
        Assert.True(change.StandardDeviation < 0.7 * now.StandardDeviation);
    }

    [Fact]
    public void Draw_NothingTriedOfNothingUnsure_IsTheMillItself()
    {
        var spec = Spec(Shrunk(0)) with { Try = new SheetChange() };
        var frame = new DrawFrame(spec);
        var one = frame.Room().Draw(5)!;
        var change = one[frame.Now.Figures.Count..];
        Assert.All(change.Where(double.IsFinite), x => Assert.InRange(x, -1e-6, 1e-6));
    }

    [Fact]
    public void Draw_OfANumber_DoesNotDependOnWhatWasDrawnBefore()
    {
        var frame = new DrawFrame(Spec(MillTuning.None(SmallMill.Sheet)));
        var (room, other) = (frame.Room(), frame.Room());
        double[]?[] forward = [.. Enumerable.Range(0, 8).Select(room.Draw)];
        double[]?[] back = [.. Enumerable.Range(0, 8).Reverse().Select(other.Draw).Reverse()];
        Assert.Equal(forward, back);
        Assert.NotEqual(forward[0], forward[1]);
    }

    private static DrawsSpec Spec(MillTuning tuning) => new(SmallMill.Sheet, SmallMill.Wheat, tuning) { Try = Change, PricePerTonne = Prices };

    private static MillTuning Shrunk(double factor)
    {
        var none = MillTuning.None(SmallMill.Sheet);
        return new MillTuning(none.Keys, none.Values, none.Covariance * factor, none.Prior, none.Scatter, 0);
    }

    private static MillDraws Draw(DrawsSpec spec, int draws)
    {
        var frame = new DrawFrame(spec);
        var room = frame.Room();
        double[][] rows = [.. Enumerable.Range(0, draws).Select(room.Draw).OfType<double[]>()];
        return frame.Of([.. Enumerable.Range(0, frame.Columns).Select(k => DrawnFigure.Of(rows.Select(r => r[k])))], rows.Length, draws - rows.Length);
    }
}
