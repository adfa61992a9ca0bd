using Evengrist.Demo;
using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;

namespace Evengrist.Records.Tests.Demo;

/// <summary>Unit A of the demonstration as it truly mills, which the model never sees: tuned to three of its tests, the model forecasts a fourth at other settings and with other wheat.</summary>
public sealed class HiddenMillTests
{
    [Theory]
    [InlineData(1UL)]
    [InlineData(2UL)]
    public void Forecast_OfASurveyNotTunedTo_HoldsInNineOfTenStreams_WithSmallerUncertaintyThanBefore(ulong seed)
    {
        var (sheet, errors) = (HouseFlowSheets.Of('A'), TestErrors.Usual);
        var mill = new HiddenMill(sheet, seed);
        var tuned = Assert.IsType<MillTuned>(MillFit.Of(
        [
            mill.Test("first", sheet, Wheat(14.4, 16, 65, 1.70), "B1", "B2", "B3C"), mill.Test("second", Gap(Gap(sheet, "B2", 1.15), "M1", 0.85), Wheat(14.0, 16.2, 65, 1.68), "B2"),
            mill.Test("third", Gap(Gap(sheet, "B3C", 0.85), "M2", 1.2), Wheat(14.6, 15.8, 68, 1.72), "B3C"),
        ])).Tuning;
        var unseen = mill.Test("fourth", Gap(Gap(sheet, "B1", 0.92), "B4C", 1.2), Wheat(14.2, 16.1, 64, 1.7));
        var (forecast, before) = (MillForecast.Of(unseen.Sheet, unseen.Wheat, tuned), MillForecast.Of(unseen.Sheet, unseen.Wheat, MillTuning.None(sheet)));
        var held = 0;
        foreach (var stream in unseen.Streams)
        {
            var of = forecast.Products.Single(p => p.Name == stream.Product);
            held += Holds(stream.YieldPercent, of.YieldPercent, (errors.YieldShare * stream.YieldPercent) + errors.YieldPoints) && Holds(stream.AshPercentDry!.Value, of.AshPercentDry, errors.AshPoints) ? 1 : 0;
        }

        Assert.True(held >= 0.9 * unseen.Streams.Count, $"{held} of {unseen.Streams.Count}");
        Assert.True(forecast.Flour.YieldPercent.Uncertainty < 0.5 * before.Flour.YieldPercent.Uncertainty);
        Assert.True(forecast.IsTuned && !before.IsTuned);

        static bool Holds(double measured, Estimate estimate, double error) => Math.Abs(measured - estimate.Value) <= 1.96 * Math.Sqrt((estimate.Uncertainty * estimate.Uncertainty) + (error * error));
    }

    [Fact]
    public void UnitA_AtTheModelsDefaults_MillsNearItsSurvey()
    {
        // The survey of the demonstration: straight 77.7 % of the wheat, ash 0.522 % at 14 % moisture. Invented; the defaults were chosen by it.
        var solved = new MillRun(MillModel.Of(HouseFlowSheets.Of('A'), Wheat(14.4, 16, 65, 1.70))).Read();
        Assert.Equal(MillExit.Converged, solved.Report.Exit);
        var flour = solved.Products.Where(p => p.Product.Kind is ProductKind.Flour).ToArray();
        Assert.InRange(flour.Sum(p => p.YieldPercent), 75.7, 79.7);
        Assert.InRange(0.86 * flour.Sum(p => p.Flow.DryTonnesPerHour * p.Flow.AshPercentDry) / flour.Sum(p => p.Flow.DryTonnesPerHour), 0.49, 0.56);
    }

    private static MillWheat Wheat(double protein, double moisture, double hardness, double ash) => new(17.5 * 0.84, moisture, [new KernelClass(1, 2.9, hardness)], KernelMake.Of(ash, protein, 380));

    private static FlowSheet Gap(FlowSheet sheet, string code, double factor) => sheet with { Passages = [.. sheet.Passages.Select(p => p.Code == code ? p with { Rolls = p.Rolls! with { GapMicrometres = p.Rolls.GapMicrometres * factor } } : p)] };
}
