using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class TestWeightTests
{
    // US equations: FGIS-PN-97-5 as quoted by a state wheat commission; 61.6 ↔ 81.0 also printed in spring wheat quality surveys.
    [Theory]
    [InlineData("58.0", TestWeightConvention.UsWheat, "76.4")]
    [InlineData("60.0", TestWeightConvention.UsWheat, "78.9")]
    [InlineData("61.6", TestWeightConvention.UsWheat, "81.0")]
    [InlineData("60.0", TestWeightConvention.UsDurum, "78.1")]
    [InlineData("50", TestWeightConvention.UsDurum, "65.2")]
    [InlineData("63", TestWeightConvention.UsDurum, "82.0")]
    public void KilogramsPerHectolitre_UsReadings_FollowTheFederalEquations(string pounds, TestWeightConvention convention, string expected) =>
        Num.Near(Num.Of(expected), TestWeight.Read(Num.Of(pounds), convention).KilogramsPerHectolitre, 0.05m);

    [Fact]
    public void In_HectolitreToUs_IsTheEquationBackwards() =>
        Num.Near(59.27m, TestWeight.Read(78.0m, TestWeightConvention.KilogramsPerHectolitre).In(TestWeightConvention.UsWheat), 0.005m);

    // Canadian Grain Commission, test weight calculators.
    [Fact]
    public void CanadianReading_385Grams_GivesAllThreeUnits()
    {
        var reading = TestWeight.Read(385m, TestWeightConvention.CanadianWheat);
        Num.Near(78.94m, reading.KilogramsPerHectolitre, 0.005m);
        Num.Near(63.30m, reading.AveryPounds, 0.005m);
        Num.Near(59.75m, reading.CanadianWinchesterPounds(), 0.005m);
    }

    // Export grade determinants print both units: 385 ↔ 79, 378 ↔ 77.5, 373 ↔ 76.5, 365 ↔ 75 (rounded to the half).
    [Theory]
    [InlineData(385, "79")]
    [InlineData(378, "77.5")]
    [InlineData(373, "76.5")]
    [InlineData(365, "75")]
    public void KilogramsPerHectolitre_CanadianGradeLimits_AgreeWithThePrintedPairs(int grams, string printed) =>
        Num.Near(Num.Of(printed), TestWeight.Read(grams, TestWeightConvention.CanadianWheat).KilogramsPerHectolitre, 0.25m);

    [Fact]
    public void CanadianDurum_HasItsOwnEquation() =>
        Assert.Equal(0.7572m + 0.202m * 390m, TestWeight.Read(390m, "g/0.5L", durum: true).KilogramsPerHectolitre);

    [Fact]
    public void Formula_OfAReading_NamesTheEquationUsed()
    {
        Assert.Contains("1.292 × lb/bu + 0.630 (US, durum)", TestWeight.Read(60m, "lb/bu", durum: true).Formula.Name, StringComparison.Ordinal);
        Assert.Contains("1.292 × lb/bu + 1.419", TestWeight.Read(60m, "lb/bu", durum: false).Formula.Name, StringComparison.Ordinal);
        Assert.Contains("0.2012 × g/0.5 L", TestWeight.Read(385m, "g/0.5L", durum: false).Formula.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_WrongUnitOrRange_Refused()
    {
        Assert.Throws<ArgumentException>(() => TestWeight.Read(60m, "%", durum: false));
        Assert.Throws<ArgumentOutOfRangeException>(() => TestWeight.Read(385m, "kg/hL", durum: false));
        Assert.Throws<ArgumentOutOfRangeException>(() => TestWeight.Read(60m, TestWeightConvention.None));
    }

    [Fact]
    public void Raw_AnyConvention_KeptAsRead()
    {
        var reading = TestWeight.Read(60.10m, TestWeightConvention.UsWheat);
        Assert.Equal("60.10 lb/bu", reading.ToString());
        Assert.Equal(60.10m, reading.In(TestWeightConvention.UsWheat));
    }

    [Fact]
    public void CanadianWinchesterPounds_UsReading_Refused() =>
        Assert.Throws<InvalidOperationException>(() => TestWeight.Read(60m, TestWeightConvention.UsWheat).CanadianWinchesterPounds());
}
