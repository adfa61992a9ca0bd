using CsCheck;
using Evengrist.Tempering;

namespace Evengrist.Tests.Tempering;

public sealed class TemperWaterModelTests
{
    [Theory]
    [InlineData(100, 10, 16.5, 7.784, 0.001)] // A laboratory mill's manual, appendix on conditioning (02/2017), p. 33: 7.8 ml for 100 g.
    [InlineData(1000, 11.2, 16.0, 57.143, 0.001)] // Derived from the balance by hand.
    [InlineData(20_000, 12.4, 15.5, 733.728, 0.001)] // Derived from the balance by hand.
    [InlineData(17_500, 11.2, 16.0, 1000, 1)] // A mill's hour, hard wheat: common practice.
    [InlineData(7_500, 12.6, 14.8, 194, 1)] // A mill's hour, soft wheat: common practice.
    public void Of_OneStage_GivesTheWaterOfTheWorkedCase(double wheat, double from, double to, double water, double within) =>
        Assert.Equal(water, Water(new TemperWaterSpec(from, to) { Tonnes = wheat / 1000 }).KilogramsPerTonne * wheat / 1000, within);

    [Fact]
    public void Of_TwoStages_GiveTogetherWhatOneGives()
    {
        // By hand: 1000 kg from 9 to 14.5 %, 64.327 kg, and on to 16.5 %, 25.493 kg; in one stage 89.820 kg.
        var two = Water(new TemperWaterSpec(9, 16.5) { Tonnes = 1, EarlierStages = [14.5] });
        Assert.Equal([64.327, 25.493], two.Stages.Select(s => Math.Round(s.KilogramsPerTonne, 3)));
        Assert.Equal(89.820, two.KilogramsPerTonne, 0.001);
        Assert.Equal(Water(new TemperWaterSpec(9, 16.5) { Tonnes = 1 }).KilogramsPerTonne, two.KilogramsPerTonne, 1e-9);
    }

    [Fact]
    public void Of_AnyWheat_ClosesInWaterAndDryMatterWhateverTheStages() =>
        Gen.Select(Gen.Double[5, 15], Gen.Double[0, 10], Gen.Double[0, 5], Gen.Double[0, 1]).Sample((from, rise, evaporation, where) =>
        {
            var aim = from + rise;
            var one = Water(new TemperWaterSpec(from, aim) { Tonnes = 1, EvaporationPercent = evaporation });
            var two = Water(new TemperWaterSpec(from, aim) { Tonnes = 1, EvaporationPercent = evaporation, EarlierStages = [from + (where * rise)] });
            var dry = 1000 * (100 - from) / 100;
            return Math.Abs(one.KilogramsPerTonne - two.KilogramsPerTonne) < 1e-9 * 1000
                && Math.Abs((one.FirstBreakKilogramsPerTonne * (100 - aim) / 100) - dry) < 1e-8
                && Math.Abs(one.AtFirstBreak.Percent - aim) < 1e-9;
        });

    [Fact]
    public void Of_HigherAimDrierWheatOrMoreLoss_TakesMoreWater() =>
        Gen.Select(Gen.Double[6, 14], Gen.Double[0.1, 8], Gen.Double[0, 4.9], Gen.Double[0.01, 0.1]).Sample((from, rise, evaporation, more) =>
        {
            double Kg(double m, double a, double e) => Water(new TemperWaterSpec(m, a) { Tonnes = 1, EvaporationPercent = e }).KilogramsPerTonne;
            var now = Kg(from, from + rise, evaporation);
            return Kg(from, from + rise + more, evaporation) > now && Kg(from - more, from + rise, evaporation) > now && Kg(from, from + rise, evaporation + more) > now;
        });

    [Fact]
    public void Of_AimBelowTheWheat_SaysItWouldHaveToBeDried()
    {
        var none = Assert.IsType<NoTemperWater>(TemperWaterModel.Of(new TemperWaterSpec(16.4, 16) { Tonnes = 1 }));
        Assert.Equal("No water: wheat of 16.4 % would have to be dried to reach 16 %. Raise the aim, or read the moisture again.", Assert.Single(none.Reasons));
        var falling = Assert.IsType<NoTemperWater>(TemperWaterModel.Of(new TemperWaterSpec(10, 15) { Tonnes = 1, EarlierStages = [15.5] }));
        Assert.Contains("Stage 2 would have to dry", Assert.Single(falling.Reasons), StringComparison.Ordinal);
        Assert.Equal(0, Water(new TemperWaterSpec(16, 16) { Tonnes = 1 }).KilogramsPerTonne);
    }

    [Fact]
    public void Of_NumbersThatCannotBe_NamesEachOfThem()
    {
        var spec = new TemperWaterSpec(double.NaN, 40) { TonnesPerHour = -1, EvaporationPercent = -1, WaterCelsius = 99, MoistureUncertainty = -1, WaterUncertaintyPercent = double.NaN, EarlierStages = [0] };
        Assert.Equal(8, Assert.IsType<NoTemperWater>(TemperWaterModel.Of(spec)).Reasons.Count);
        Assert.Contains("how much wheat", Assert.Single(Assert.IsType<NoTemperWater>(TemperWaterModel.Of(new TemperWaterSpec(11, 16))).Reasons), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_MorePointsThanADampenerTakes_SaysSo()
    {
        Assert.Contains(Water(new TemperWaterSpec(8, 16.5) { Tonnes = 1 }).Remarks, r => r.StartsWith("8.5 points in one stage", StringComparison.Ordinal));
        Assert.DoesNotContain(Water(new TemperWaterSpec(8, 16.5) { Tonnes = 1, EarlierStages = [12] }).Remarks, r => r.Contains("points in one stage", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0, 0.99984)] // Density of water at the pressure of the air, kg/L, as printed in handbooks (from memory).
    [InlineData(4, 0.99997)]
    [InlineData(10, 0.99970)]
    [InlineData(15, 0.99910)]
    [InlineData(20, 0.99821)]
    [InlineData(25, 0.99705)]
    [InlineData(30, 0.99565)]
    [InlineData(40, 0.99222)]
    [InlineData(60, 0.98320)]
    public void KilogramsPerLitre_OfTheHandbooks_IsMet(double celsius, double expected)
    {
        Assert.Equal(expected, WaterDensity.KilogramsPerLitre(celsius), 1e-5);
        Assert.Equal(1 / expected, Water(new TemperWaterSpec(11, 16) { Tonnes = 1, WaterCelsius = celsius }).LitresPerKilogram, 1.1e-5);
    }

    [Fact]
    public void Forecast_PlusMinus_IsThatOfADrawOfManyTries()
    {
        // Against drawing the inputs 200 000 times from normal spreads: first order is exact enough here.
        var random = new Random(7);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var tries = Enumerable.Range(0, 200_000).Select(_ => MoistureForecast.Of(1000, 11.2 + (0.15 * Normal()), 0, 70 * (1 + (0.02 * Normal())), 0, 1 + (0.5 * Normal())).Percent).ToArray();
        var (mean, stated) = (tries.Average(), MoistureForecast.Of(1000, 11.2, 0.15, 70, 2, 1));
        Assert.Equal(Math.Sqrt(tries.Average(t => (t - mean) * (t - mean))), stated.StandardUncertainty, 0.005);
        Assert.Equal(mean, stated.Percent, 0.01);
    }

    private static TemperWater Water(TemperWaterSpec spec) => Assert.IsType<TemperWater>(TemperWaterModel.Of(spec));
}
