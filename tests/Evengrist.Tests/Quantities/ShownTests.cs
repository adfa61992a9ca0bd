using CsCheck;
using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class ShownTests
{
    [Theory]
    [InlineData(UnitSystem.Si, "26,340 kg", "26.34 t", "26.34 t", "20.0 °C")]
    [InlineData(UnitSystem.UsCustomary, "58,070 lb", "967.83 bu", "580.70 cwt", "68.0 °F")]
    public void Masses_AndTemperature_InEitherSystem(UnitSystem system, string weight, string wheat, string flour, string temperature)
    {
        var mass = Mass.FromKilograms(26_340m); // ÷ 0.45359237 = 58,069.76 lb, by definition
        Assert.Equal(weight, Shown.Weight(mass, system).ToString());
        Assert.Equal(wheat, Shown.Wheat(mass, system).ToString());
        Assert.Equal(flour, Shown.Flour(mass, system).ToString());
        Assert.Equal(temperature, Shown.Temperature(Temperature.FromCelsius(20m), system).ToString());
    }

    // US industry figures printed both ways: 71.6 % is 2.33, 77.5 % is 2.15 bushels of wheat in a hundredweight of flour.
    [Theory]
    [InlineData("71.6", "2.33")]
    [InlineData("77.5", "2.15")]
    public void Yield_UsCustomary_AgreesWithPrintedPairs(string percent, string bushels)
    {
        Assert.Equal(bushels + " bu/cwt", Shown.Yield(Num.Of(percent), UnitSystem.UsCustomary).ToString());
        Assert.Equal(percent + " %", Shown.Yield(Num.Of(percent), UnitSystem.Si).ToString());
    }

    [Fact]
    public void TestWeight_EitherSystem_GoesByTheFormulaOfItsWheat()
    {
        var durum = TestWeight.Read(60.0m, TestWeightConvention.UsDurum);
        Assert.Equal("78.2 kg/hL", Shown.TestWeight(durum, UnitSystem.Si).ToString()); // 78.15, half up
        Assert.Equal("60.0 lb/bu", Shown.TestWeight(durum, UnitSystem.UsCustomary).ToString());
        Assert.Equal("59.3 lb/bu", Shown.TestWeight(TestWeight.Read(78.0m, "kg/hL", durum: false), UnitSystem.UsCustomary).ToString());
    }

    [Theory]
    [InlineData("78.15", "kg/hL durum", "60.0 lb/bu durum")]
    [InlineData("78.0", "kg/hL", "59.3 lb/bu")]
    [InlineData("100", "°C", "212.0 °F")]
    [InlineData("14.2", "%", "14.2 %")]
    [InlineData("385", "s", "385.0 s")]
    public void Number_UsCustomary_SwapsOnlyWhatHasAPair(string value, string unit, string expected) =>
        Assert.Equal(expected, Shown.Number(Num.Of(value), unit, 1, UnitSystem.UsCustomary).ToString());

    [Fact]
    public void Showing_InAnySystem_ChangesNoBitOfWhatIsStored() =>
        Gen.Select(Gen.Long[0, 1_000_000_000_000], Gen.Decimal[20, 70], Gen.Decimal[-40, 60], Gen.Decimal[0, 30]).Sample((grams, pounds, celsius, percent) =>
        {
            var (mass, weight) = (Mass.FromGrams(grams), TestWeight.Read(pounds, TestWeightConvention.UsWheat));
            var (temperature, share) = (Temperature.FromCelsius(celsius), SolidsShare.Percent(percent, Basis.At12));
            foreach (var system in new[] { UnitSystem.UsCustomary, UnitSystem.Si, UnitSystem.UsCustomary })
            {
                _ = (Shown.Weight(mass, system), Shown.Wheat(mass, system), Shown.TestWeight(weight, system), Shown.Temperature(temperature, system));
                _ = Figure.Seen("protein", share.Value, "%", share.Basis).In(system);
            }

            Assert.Equal(grams, mass.Grams);
            Assert.Equal(decimal.GetBits(pounds), decimal.GetBits(weight.Raw));
            Assert.Equal(decimal.GetBits(celsius), decimal.GetBits(temperature.Celsius));
            Assert.Equal(decimal.GetBits(percent), decimal.GetBits(share.Value));
        });
}
