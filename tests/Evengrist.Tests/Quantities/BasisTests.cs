using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class BasisTests
{
    [Fact]
    public void Default_Asked_SaysThatNoBasisIsStated()
    {
        Assert.False(default(Basis).IsStated);
        Assert.Throws<InvalidOperationException>(() => default(Basis).MoisturePercent);
        Assert.Equal("no basis", default(Basis).ToString());
    }

    [Fact]
    public void Dry_BesideTheDefault_IsAnother() => Assert.NotEqual(default, Basis.Dry);

    [Theory]
    [InlineData("dry", 0)]
    [InlineData("DB", 0)]
    [InlineData("12mb", 12)]
    [InlineData(" 13.5 mb ", 13.5)]
    public void TryParse_Basis_IsRead(string text, double moisture)
    {
        Assert.True(Basis.TryParse(text, out var basis));
        Assert.Equal((decimal)moisture, basis.MoisturePercent);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("mb")]
    [InlineData("12")]
    [InlineData("12 %")]
    [InlineData("100mb")]
    [InlineData("-1mb")]
    [InlineData("13,5mb")]
    public void TryParse_AnythingElse_IsRefused(string? text)
    {
        Assert.False(Basis.TryParse(text, out var basis));
        Assert.False(basis.IsStated);
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(100)]
    public void At_OutsideTheRange_Refused(double moisture) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Basis.At((decimal)moisture));

    [Fact]
    public void ToString_Known_ReadsBackTheSame() =>
        Assert.All(new[] { Basis.Dry, Basis.At12, Basis.At13Point5, Basis.At14, Basis.At(0.001m) }, b =>
        {
            Assert.True(Basis.TryParse(b.ToString(), out var back));
            Assert.Equal(b, back);
        });
}
