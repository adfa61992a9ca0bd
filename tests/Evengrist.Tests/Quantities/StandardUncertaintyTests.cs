using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class StandardUncertaintyTests
{
    // Normal tables: Φ(1) = .8413447, Φ(1.5) = .9331928, Φ(0.6) = .7257469, Φ(0.2) = .5792597.
    [Theory]
    [InlineData(12.10, 12.0, 0.10, 0.8413447)]
    [InlineData(15.5, 15.35, 0.10, 0.9331928)]
    [InlineData(13.15, 13.0, 0.25, 0.7257469)]
    [InlineData(13.05, 13.0, 0.25, 0.5792597)]
    public void ChanceAtLeast_Reading_FollowsTheNormalTable(double read, double edge, double u, double chance) =>
        Assert.Equal(chance, StandardUncertainty.Of(u, "%").ChanceAtLeast(read, edge), 1e-7);

    [Fact]
    public void ChanceAtLeast_NoUncertainty_IsZeroOrOne()
    {
        var none = StandardUncertainty.Of(0, "%");
        Assert.Equal(1, none.ChanceAtLeast(13.0, 13.0));
        Assert.Equal(0, none.ChanceAtLeast(12.9, 13.0));
    }

    [Fact]
    public void With_IndependentParts_AddInQuadrature()
    {
        var both = StandardUncertainty.Of(3, "s").With(StandardUncertainty.Of(4, "s"));
        Assert.Equal(5, both.Value, 1e-12);
        Assert.Equal(10, both.Expanded(), 1e-12);
        Assert.Equal("u = 5 s", both.ToString());
    }

    [Fact]
    public void With_OtherUnit_Refused() =>
        Assert.Throws<InvalidOperationException>(() => StandardUncertainty.Of(3, "s").With(StandardUncertainty.Of(4, "%")));

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Of_NotAnUncertainty_Refused(double value) => Assert.Throws<ArgumentOutOfRangeException>(() => StandardUncertainty.Of(value, "s"));
}
