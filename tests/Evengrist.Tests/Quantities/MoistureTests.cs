using CsCheck;
using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class MoistureTests
{
    // Derived from the balance of dry matter.
    [Theory]
    [InlineData("16.0", "13.5", "2.890")]
    [InlineData("17.5", "14.0", "4.070")]
    public void ShrinkPercentTo_WorkedCases_Given(string from, string to, string percent) =>
        Num.Near(Num.Of(percent), Moisture.FromPercent(Num.Of(from)).ShrinkPercentTo(Moisture.FromPercent(Num.Of(to))), 0.0005m);

    [Fact]
    public void ShrinkPercentTo_Any_KeepsDryMatter() =>
        Gen.Select(Gen.Decimal[0, 90], Gen.Decimal[0, 90]).Sample((a, b) =>
        {
            var (wet, dry) = (Moisture.FromPercent(Math.Max(a, b)), Moisture.FromPercent(Math.Min(a, b)));
            var left = 1000m * (1 - wet.ShrinkPercentTo(dry) / 100);
            Num.Near(1000m * (1 - wet.Percent / 100), left * (1 - dry.Percent / 100), 1e-9m);
        });

    [Fact]
    public void ShrinkPercentTo_Wetter_Refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Moisture.FromPercent(12m).ShrinkPercentTo(Moisture.FromPercent(13m)));

    [Theory]
    [InlineData("-0.1")]
    [InlineData("100")]
    public void FromPercent_OutOfRange_Refused(string percent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Moisture.FromPercent(Num.Of(percent)));

    [Fact]
    public void FromFraction_NotANumber_Refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Moisture.FromFraction(double.NaN));

    [Fact]
    public void PercentOfDryMatter_ThereAndBack_Same() =>
        Gen.Decimal[0, 95].Sample(p => Num.Near(p, Moisture.FromPercentOfDryMatter(Moisture.FromPercent(p).PercentOfDryMatter).Percent, 1e-20m));

    [Fact]
    public void ToString_Reported_KeepsDigitsAndSaysBasis() => Assert.Equal("12.10 % wet basis", Moisture.FromPercent(12.10m).ToString());
}
