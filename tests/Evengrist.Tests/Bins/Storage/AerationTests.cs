using CsCheck;
using Evengrist.Bins.Storage;
using Evengrist.Tests.Architecture;

namespace Evengrist.Tests.Bins.Storage;

public sealed class AerationTests
{
    private static readonly EmcConstants Hard = EmcTable.Start.Find("hard", EmcForm.Henderson)!;

    [Theory]
    [InlineData(0.1, 150)]
    [InlineData(0.5, 30)]
    public void Rule_OfThumb_IsFifteenOverTheAirflow(double cfm, double hours) =>
        Assert.Equal(hours, Of(new AerationSpec(Hard, 25, 13, cfm * AerationSpec.PerCfmPerBushel)).RuleHours, 1e-9);

    [Fact]
    public void Airflow_TenthCfmPerBushel_Is0104AndTakes239HoursWithoutEvaporation()
    {
        // Derived: 0.1 cfm/bu = 0.104 m³/min t; 1.8 kJ/(kg K) of grain against 1.2 kg/m³ of air at 1.006 kJ/(kg K): 239 h.
        Assert.Equal(0.104, 0.1 * AerationSpec.PerCfmPerBushel, 0.0005);
        Assert.Equal(239, Of(new AerationSpec(Hard, 25, 13, 0.104)).SensibleHours, 0.5);
    }

    [Fact]
    public void Front_OfWarmDampGrain_TakesAboutHalfThatAndLessAtMoreWarmth()
    {
        // Derived: "evaporation roughly halves it: this is where 100 to 200 h comes from". Air in equilibrium at the end temperature: no water but what warmth drives out.
        foreach (var (grain, end) in new[] { (20.0, 10.0), (30, 15) })
        {
            var air = new OutsideAir(end, Humidity(end, 13));
            var effect = Assert.Single(Of(new AerationSpec(Hard, grain, 13, 0.104), air).Airs);
            Assert.Equal(end, effect.EffectiveCelsius, 0.001);
            Assert.InRange(effect.FrontHours!.Value, 80, 140);
        }
    }

    [Theory]
    [InlineData(0.02, 66.8)]
    [InlineData(0.05, 185.6)]
    [InlineData(0.10, 428.8)]
    public void Pressure_OfWheat_IsThatOfTheEquation(double flow, double pascals) => Assert.Equal(pascals, PressureDrop.PascalsPerMetre(flow)!.Value, 0.05);

    [Fact]
    public void Pressure_TwentyMetresAtATenth_IsThatOfTheReference()
    {
        var aeration = Of(new AerationSpec(Hard, 25, 13, 0.1) { DepthMetres = 20 });
        Assert.Equal(0.0262, aeration.Flow!.Value, 0.00005);
        Assert.Equal(1790, aeration.PascalsLoose!.Value, 1.0);
        Assert.Equal(2327, aeration.PascalsPacked!.Value, 1.0);
        var thin = Of(new AerationSpec(Hard, 25, 13, 0.1) { DepthMetres = 2 });
        Assert.Null(thin.PascalsLoose);
        Assert.Contains("0.0056 to 0.203", thin.NoPressure, StringComparison.Ordinal);
        Assert.Equal("", Of(new AerationSpec(Hard, 25, 13, 0.1)).NoPressure);
    }

    // Vapour pressure over water, kPa, from memory of the steam tables: 0.873 at 5 °C, 1.228 at 10, 2.339 at 20, 4.247 at 30.
    [Theory]
    [InlineData(5, 0.873)]
    [InlineData(10, 1.228)]
    [InlineData(20, 2.339)]
    [InlineData(30, 4.247)]
    public void Saturation_AtATemperature_IsNearTheSteamTable(double celsius, double kilopascals) =>
        Assert.Equal(kilopascals, Air.SaturationKilopascals(celsius), 0.003 * kilopascals);

    [Fact]
    public void Effective_OfHumidAir_IsWarmerThanItsDryBulbAndOfDryAirColder()
    {
        // Why a dry bulb alone misleads: damp air of 18 °C does not bring wheat of 13 % at 22 °C down to 18.
        var (damp, dry) = (new OutsideAir(18, 0.95), new OutsideAir(18, 0.25));
        var aeration = Of(new AerationSpec(Hard, 22, 13, 0.104), damp, dry);
        Assert.True(aeration.Airs[0].EffectiveCelsius > 21.5 && aeration.Airs[0].CoolerByDryBulb && !aeration.Airs[0].Cools);
        Assert.True(aeration.Airs[1].EffectiveCelsius < 16 && aeration.Airs[1].Cools);
        Assert.Equal((WaterEffect.Wets, WaterEffect.Dries), (aeration.Airs[0].Water, aeration.Airs[1].Water));
        Assert.Equal(WaterEffect.Keeps, Of(new AerationSpec(Hard, 22, 13, 0.104), new OutsideAir(18, Humidity(18, 13))).Airs[0].Water);
    }

    [Fact]
    public void Front_Any_KeepsHeatAndWaterAndSlowsWithLessAir() =>
        Gen.Select(Gen.Double[15, 35], Gen.Double[11, 16], Gen.Double[0, 12], Gen.Double[0.3, 0.8], Gen.Double[0.05, 1]).Sample((grain, moisture, celsius, humidity, flow) =>
        {
            var air = new OutsideAir(celsius, humidity);
            var effect = Of(new AerationSpec(Hard, grain, moisture, flow), air).Airs[0];
            if (effect.FrontHours is not { } hours)
            {
                return;
            }

            // Heat out with the air = heat out of the grain, for a tonne.
            var kilograms = hours * 60 * flow * Air.Density;
            var erh = EquilibriumModel.Humidity(Hard, grain, 100 * moisture / (100 - moisture));
            Assert.Equal(1800 * (grain - effect.EffectiveCelsius), kilograms * (Air.Enthalpy(grain, erh) - Air.Enthalpy(celsius, humidity)), 1e-3);
            Assert.Equal(kilograms * (Air.HumidityRatio(grain, erh) - Air.HumidityRatio(celsius, humidity)), effect.WaterKilogramsPerTonne!.Value, 1e-9);
            Assert.Equal(2 * hours, Of(new AerationSpec(Hard, grain, moisture, flow / 2), air).Airs[0].FrontHours!.Value, 1e-6);
        });

    [Theory]
    [InlineData(60, 13, 0.1, null)]
    [InlineData(20, 3, 0.1, null)]
    [InlineData(20, 13, 0.0, null)]
    [InlineData(20, 13, 0.1, -2.0)]
    [InlineData(double.NaN, 13, 0.1, null)]
    public void Of_WhatCannotBe_IsRefused(double grain, double moisture, double flow, double? depth) =>
        Assert.IsType<NoAeration>(AerationModel.Of(new AerationSpec(Hard, grain, moisture, flow) { DepthMetres = depth }, new OutsideAir(10, 0.5)));

    [Fact]
    public void Page_Aeration_HoldsTheWorkedCase()
    {
        // The worked case: hard wheat, 25 °C, 13 %, 0.104 m³/min t, air of 12 °C and 70 %.
        var aeration = Of(new AerationSpec(Hard, 25, 13, 0.104) { DepthMetres = 20 }, new OutsideAir(12, 0.70));
        var air = aeration.Airs[0];
        var page = Repository.Text("docs/model/aeration.md");
        foreach (var (what, value) in new[]
        {
            ("rule of thumb", $"{aeration.RuleHours:0} h"), ("warmth alone", $"{aeration.SensibleHours:0} h"), ("effective temperature", $"{air.EffectiveCelsius:0.0} °C"), ("heat balance", $"{air.FrontHours:0} h"),
            ("water taken out", $"{air.WaterKilogramsPerTonne:0.0} kg/t"), ("moisture the air would bring", $"{air.AirMoisturePercent:0.0} %"), ("pressure, loose", $"{aeration.PascalsLoose:0} Pa"), ("pressure, packed", $"{aeration.PascalsPacked:0} Pa"),
        })
        {
            Assert.Contains($"| {what} | {value} |", page, StringComparison.Ordinal);
        }
    }

    private static Aeration Of(AerationSpec spec, params OutsideAir[] airs) => Assert.IsType<Aeration>(AerationModel.Of(spec, airs));

    private static double Humidity(double celsius, double moisture) => EquilibriumModel.Humidity(Hard, celsius, 100 * moisture / (100 - moisture));
}
