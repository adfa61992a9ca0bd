using CsCheck;
using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class FallingNumberTests
{
    private static readonly Gen<(Mass, FallingNumber)[]> Blends =
        Gen.Select(Gen.Long[1, 100_000_000], Gen.Int[60, 1000]).Select((g, s) => (Mass.FromGrams(g), FallingNumber.FromSeconds(s))).Array[1, 8];

    // A trade article's pair: 400 s and 220 s, half and half, give 279 s (practice of the liquefaction number).
    [Fact]
    public void Blend_HalfAndHalf_GivesThePublishedSeconds()
    {
        var blend = FallingNumberBlend.Of([(Mass.FromTonnes(1), FallingNumber.FromSeconds(400)), (Mass.FromTonnes(1), FallingNumber.FromSeconds(220))]);
        Num.Near(279m, blend.FallingNumber.Seconds, 1m);
        Assert.Equal(310m, blend.PlainAverageSeconds);
    }

    // Derived from the same rule.
    [Fact]
    public void Blend_ThreeBins_FarBelowThePlainAverage()
    {
        var blend = FallingNumberBlend.Of(
        [
            (Mass.FromTonnes(320), FallingNumber.FromSeconds(410)),
            (Mass.FromTonnes(60), FallingNumber.FromSeconds(210)),
            (Mass.FromTonnes(120), FallingNumber.FromSeconds(365)),
        ]);
        Num.Near(354m, blend.FallingNumber.Seconds, 1m);
        Num.Near(375m, blend.PlainAverageSeconds, 0.5m);
    }

    [Fact]
    public void Blend_Any_LiesBetweenItsPartsAndNotAboveThePlainAverage() =>
        Blends.Sample(parts =>
        {
            var blend = FallingNumberBlend.Of(parts);
            Assert.InRange(blend.FallingNumber.Seconds, parts.Min(p => p.Item2.Seconds) - 1e-5m, parts.Max(p => p.Item2.Seconds) + 1e-5m);
            Assert.True(blend.FallingNumber.Seconds <= blend.PlainAverageSeconds + 1e-5m);
        });

    [Fact]
    public void Blend_OtherOrder_SameSeconds() =>
        Blends.Sample(parts =>
            Num.Near(FallingNumberBlend.Of(parts).FallingNumber.Seconds, FallingNumberBlend.Of(parts.Reverse().ToArray()).FallingNumber.Seconds, 1e-5m));

    [Fact]
    public void Blend_NothingOrNegative_Refused()
    {
        Assert.Throws<ArgumentException>(() => FallingNumberBlend.Of([]));
        Assert.Throws<ArgumentException>(() => FallingNumberBlend.Of([(Mass.FromGrams(-1), FallingNumber.FromSeconds(300))]));
        Assert.Throws<InvalidOperationException>(() => FallingNumberBlend.Of([(Mass.FromGrams(1), default)]));
    }

    [Theory]
    [InlineData(59)]
    [InlineData(1001)]
    public void FromSeconds_OutOfRange_Refused(int seconds) => Assert.Throws<ArgumentOutOfRangeException>(() => FallingNumber.FromSeconds(seconds));

    [Fact]
    public void Liquefaction_ThereAndBack_SameSeconds() =>
        Gen.Int[60, 1000].Sample(s => Num.Near(s, FallingNumber.From(FallingNumber.FromSeconds(s).Liquefaction).Seconds, 1e-6m));
}
