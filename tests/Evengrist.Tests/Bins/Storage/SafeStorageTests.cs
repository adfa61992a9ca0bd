using CsCheck;
using Evengrist.Bins.Storage;
using Evengrist.Tests.Architecture;
using NodaTime;

namespace Evengrist.Tests.Bins.Storage;

/// <summary>The recalled equation, the measured points, and the life used. Table and equation: docs/model/safe-storage.md, the equation from memory.</summary>
public sealed class SafeStorageTests
{
    private static readonly Instant Start = Instant.FromUtc(2025, 8, 1, 12, 0);

    public static TheoryData<double, double[]> Table => new()
    {
        { 13, [1649, 899, 490, 267, 146, 79] },
        { 14, [1012, 552, 301, 164, 89, 49] },
        { 15, [622, 339, 185, 101, 55, 30] },
        { 16, [382, 208, 113, 62, 34, 18] },
        { 17, [234, 128, 70, 38, 20.7, 11.3] },
        { 18, [144, 78, 43, 23, 12.7, 6.9] },
        { 19, [88, 48, 26, 14, 7.8, 4.3] },
    };

    [Theory]
    [MemberData(nameof(Table))]
    public void Of_EveryRowOfTheTable_IsReproduced(double moisture, double[] days)
    {
        foreach (var (celsius, expected) in new double[] { 5, 10, 15, 20, 25, 30 }.Zip(days))
        {
            var keeps = Assert.IsType<StorageDays>(SafeStorageModel.Of(moisture, celsius));
            Assert.Equal(expected, keeps.Days, expected is 20.7 or 11.3 or 12.7 or 6.9 or 7.8 or 4.3 ? 0.05001 : 0.5001);
            Assert.Equal(0.6 * keeps.Days, keeps.AlarmDays, 1e-9);
        }

        Assert.Contains($"| {moisture} | {string.Join(" | ", days.Select(d => d.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture)))} |", Repository.Text("docs/model/safe-storage.md"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(11.9, 20)]
    [InlineData(24.1, 20)]
    [InlineData(14, 4.9)]
    [InlineData(14, 30.1)]
    [InlineData(double.NaN, 20)]
    public void Of_BeyondItsReach_HasNoDays(double moisture, double celsius) =>
        Assert.Contains("12 to 24 %", Assert.IsType<NoStorageDays>(SafeStorageModel.Of(moisture, celsius)).Reason, StringComparison.Ordinal);

    // The study of 2001, abstract: one red spring variety, time to 90 % germination.
    [Theory]
    [InlineData(19, 30, 2.5)]
    [InlineData(19, 35, 2.5)]
    [InlineData(19, 10, 37)]
    [InlineData(17, 35, 5)]
    [InlineData(17, 30, 7)]
    [InlineData(17, 25, 15)]
    public void Measured_OnItsPoints_IsThePoint(double moisture, double celsius, double days) =>
        Assert.Equal(days, Assert.IsType<MeasuredDays>(MeasuredStorage.Of(moisture, celsius)).Days, 1e-9);

    [Fact]
    public void Measured_BetweenPoints_IsStraightInLogDays()
    {
        // By hand: half way from 15 to 7 days √(15·7) = 10.247; 19 % at 25 °C: 37^¼·2.5^¾ = 4.903; 18 % at 25 °C: √(15·4.903) = 8.576.
        Assert.Equal(10.247, Assert.IsType<MeasuredDays>(MeasuredStorage.Of(17, 27.5)).Days, 0.001);
        Assert.Equal(4.903, Assert.IsType<MeasuredDays>(MeasuredStorage.Of(19, 25)).Days, 0.001);
        Assert.Equal(8.576, Assert.IsType<MeasuredDays>(MeasuredStorage.Of(18, 25)).Days, 0.001);
        Assert.Equal(70, Assert.IsType<MeasuredAtLeast>(MeasuredStorage.Of(15.5, 25)).Days);
    }

    [Theory]
    [InlineData(17, 24.9)]
    [InlineData(17, 35.1)]
    [InlineData(19, 9.9)]
    [InlineData(18, 20)]
    [InlineData(16.5, 25)]
    [InlineData(15, 20)]
    [InlineData(14, 25)]
    [InlineData(20, 25)]
    public void Measured_OutsideItsPoints_SaysNothing(double moisture, double celsius) => Assert.IsType<NotMeasured>(MeasuredStorage.Of(moisture, celsius));

    [Fact]
    public void Factor_OfTheAlarm_BringsTheEquationDownToTheStudyOrBelow()
    {
        foreach (var (m, t) in new[] { (17.0, 25.0), (17, 30), (19, 30), (19, 10) })
        {
            var (alarm, measured) = (((StorageDays)SafeStorageModel.Of(m, t)).AlarmDays, ((MeasuredDays)MeasuredStorage.Of(m, t)).Days);
            Assert.InRange(alarm, 0.75 * measured, 1.05 * measured);
        }
    }

    [Fact]
    public void Life_OfASteadyLayer_IsDaysOverAlarmDays()
    {
        // By hand: 15 % at 20 °C keeps 101 d by the equation, 60.4 to plan by; 30 days are 0.497 of that.
        var life = Life(15, 20, (0, 20), (30, 20));
        Assert.Equal(30 / (0.6 * Math.Pow(10, 6.234 - (0.2118 * 15) - (0.0527 * 20))), life.Used, 1e-9);
        Assert.Equal(0.497, life.Used, 0.001);
        Assert.Equal((0.8 - life.Used) * 60.4, life.DaysToAct!.Value, 0.05);
        Assert.Equal((false, 0.0, 0.0), (life.IsAtMost, life.DaysBeyond, life.DaysColder));
    }

    [Fact]
    public void Life_BeyondTheReach_CountsAtTheEdgeAndSaysSo()
    {
        var dry = Life(11, 25, (0, 25), (100, 25));
        Assert.True(dry.IsAtMost);
        Assert.Null(dry.DaysToAct);
        Assert.Equal(Life(12, 25, (0, 25), (100, 25)).Used, dry.Used, 1e-9);
        var hot = Life(14, 38, (0, 38), (10, 38));
        Assert.Equal((10, Life(14, 30, (0, 30), (10, 30)).Used), (hot.DaysBeyond, hot.Used));
        Assert.Equal(10, Life(14, -3, (0, -3), (10, -3)).DaysColder);
    }

    [Fact]
    public void Life_Any_RisesWithMoistureWarmthAndTime() =>
        Gen.Select(Gen.Double[12, 18], Gen.Double[5, 28], Gen.Int[2, 200]).Sample((m, t, days) =>
        {
            var used = Life(m, t, (0, t), (days, t)).Used;
            Assert.True(Life(m + 0.5, t, (0, t), (days, t)).Used > used);
            Assert.True(Life(m, t, (0, t), (1, t + 2), (days, t)).Used > used);
            Assert.True(Life(m, t, (0, t), (days + 1, t)).Used > used);

            // A reading more on the straight line changes nothing.
            Assert.Equal(used, Life(m, t, (0, t), (1, t), (days, t)).Used, 1e-9);
        });

    [Fact]
    public void History_OfReadings_StartsAtTheArrivalAndSaysWhatWasAssumed()
    {
        var at = Start + Duration.FromDays(30);
        var nothing = TemperatureHistory.Of(Start, null, [], at);
        Assert.Equal((25.0, TemperatureOrigin.Assumed, 2), (nothing.Celsius, nothing.Origin, nothing.Points.Count));
        Assert.Contains("25 °C", nothing.Assumption, StringComparison.Ordinal);
        Assert.Equal((31.0, TemperatureOrigin.Delivery), (TemperatureHistory.Of(Start, 31, [], at).Celsius, TemperatureHistory.Of(Start, 31, [], at).Origin));
        TemperatureAt[] read = [new(at + Duration.FromDays(1), 40), new(Start + Duration.FromDays(14), 18), new(Start + Duration.FromDays(7), 20), new(Start - Duration.FromDays(1), 50)];
        var cable = TemperatureHistory.Of(Start, null, read, at);
        Assert.Equal([20.0, 20, 18, 18], cable.Points.Select(p => p.Celsius));
        Assert.Equal((at, TemperatureOrigin.Cable), (cable.Points[^1].At, cable.Origin));
        Assert.Equal("", TemperatureHistory.Of(Start, 30, read, at).Assumption);
        Assert.Throws<ArgumentException>(() => TemperatureHistory.Of(at, null, [], Start));
    }

    [Fact]
    public void Respiration_Figures_AreThoseOfTheStoichiometryAndTheFit()
    {
        // Derived: 0.1 % loss gives 1.47 g CO2, 0.6 g water, 15.7 kJ a kilogram, about 9 K at 1.8 kJ/(kg K). The fit is from memory: 14 %, 20 °C: 1.27 mg a day, 0.003 % in 30 days; 17 %, 25 °C: 10.5, 0.022 %.
        var (gas, water, heat) = RespirationModel.Of(0.1);
        Assert.Equal((1.47, 0.60, 15.7), (Math.Round(gas, 2), Math.Round(water, 2), Math.Round(heat, 1)));
        Assert.Equal(8.7, heat / RespirationModel.GrainHeat, 0.05);
        Assert.Equal(1.27, RespirationModel.Rate(14, 20, 0), 0.005);
        Assert.Equal(10.5, RespirationModel.Rate(17, 25, 0), 0.05);
        Assert.Equal(0.003, RespirationModel.LossPercent(30 * 1.27), 0.0005);
        Assert.Equal(0.022, RespirationModel.LossPercent(30 * 10.5), 0.001);
        Assert.Equal(RespirationModel.Rate(14, 20, 80), RespirationModel.Rate(14, 20, 300));
    }

    [Theory]
    [InlineData(-25, "frozen", false)]
    [InlineData(12.9, "cold", false)]
    [InlineData(13, "cool", true)]
    [InlineData(25, "best for insects", true)]
    [InlineData(32.9, "best for insects", true)]
    [InlineData(33, "warm", true)]
    [InlineData(35, "hot", false)]
    [InlineData(47, "very hot", false)]
    [InlineData(55, "killing", false)]
    [InlineData(70, "killing at once", false)]
    public void Band_OfATemperature_IsTheOnePublished(double celsius, string name, bool develops) =>
        Assert.Equal((name, develops), (InsectBand.Of(celsius).Name, InsectBand.Of(celsius).Develops));

    [Fact]
    public void Bands_All_FollowOnEachOther() =>
        Assert.All(InsectBand.All.Zip(InsectBand.All.Skip(1)), pair => Assert.Equal(pair.First.MostCelsius, pair.Second.LeastCelsius));

    private static StorageLife Life(double moisture, double delivery, params (int Day, double Celsius)[] points) => StorageLife.Of(moisture,
        TemperatureHistory.Of(Start, delivery, points.Skip(1).Select(p => new TemperatureAt(Start + Duration.FromDays(p.Day), p.Celsius)), Start + Duration.FromDays(points[^1].Day)));
}
