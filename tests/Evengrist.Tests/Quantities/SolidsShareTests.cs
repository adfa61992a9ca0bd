using CsCheck;
using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class SolidsShareTests
{
    // X_t = X_i (100 − M_t)/(100 − M_i); expected values derived by hand from the equation, 12mb ↔ dry by 0.88 after a state wheat commission.
    [Theory]
    [InlineData("14.2", "10.8mb", "12mb", "14.009", "0.0005")]
    [InlineData("14.2", "10.8mb", "13.5mb", "13.770", "0.0005")]
    [InlineData("14.2", "10.8mb", "14mb", "13.691", "0.0005")]
    [InlineData("14.2", "10.8mb", "dry", "15.919", "0.0005")]
    [InlineData("13.0", "12mb", "13.5mb", "12.778", "0.0005")]
    [InlineData("13.0", "12mb", "14mb", "12.705", "0.0005")]
    [InlineData("13.0", "12mb", "dry", "14.773", "0.0005")]
    [InlineData("0.50", "13.8mb", "14mb", "0.4988", "0.00005")]
    [InlineData("12.5", "13.2mb", "14mb", "12.384793", "0.0000005")]
    [InlineData("12.5", "13.2mb", "12mb", "12.672811", "0.0000005")]
    [InlineData("13.1", "12mb", "dry", "14.89", "0.01")]
    [InlineData("13.1", "12mb", "14mb", "12.80", "0.01")]
    [InlineData("13.1", "12mb", "13.5mb", "12.88", "0.01")]
    public void ValueOn_WorkedCases_Given(string value, string from, string to, string expected, string within) =>
        Num.Near(Num.Of(expected), SolidsShare.Percent(Num.Of(value), At(from)).ValueOn(At(to)), Num.Of(within));

    [Fact]
    public void ProteinFromNitrogen_Wheat_TimesFivePointSeven() =>
        Assert.Equal(12.255m, SolidsShare.Percent(2.15m, Basis.At12).ProteinFromNitrogen().Value); // 21 CFR 137.105

    [Theory]
    [InlineData("13.1 %")]
    [InlineData("13.1%")]
    [InlineData("0.8 mg/kg")]
    public void TryParse_NoBasis_RefusedAndSaysWhatToAdd(string text)
    {
        Assert.False(SolidsShare.TryParse(text, out _, out var fault));
        Assert.Contains("no moisture basis; add dry, 12mb, 14mb", fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("13.1", "has no unit")]
    [InlineData("13,1 % 12mb", "has no unit")]
    [InlineData("", "does not begin with a number")]
    [InlineData(null, "does not begin with a number")]
    [InlineData("wheat", "does not begin with a number")]
    [InlineData("13.1 % wet", "is not a moisture basis")]
    [InlineData("95 % 12mb", "cannot be")]
    [InlineData("-1 % dry", "cannot be")]
    [InlineData("79228162514264337593543950335 % 99mb", "cannot be")]
    public void TryParse_Bad_RefusedWithAReason(string? text, string reason)
    {
        Assert.False(SolidsShare.TryParse(text, out _, out var fault));
        Assert.Contains(reason, fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("13.1 % 12mb", "13.1 % 12mb")]
    [InlineData(" 14.90%dry ", "14.90 % dry")]
    [InlineData("0.8 ppm 13.5 mb", "0.8 mg/kg 13.5mb")]
    public void TryParse_WithBasis_ReadAsWritten(string text, string expected)
    {
        Assert.True(SolidsShare.TryParse(text, out var share, out _));
        Assert.Equal(expected, share.ToString());
    }

    [Fact]
    public void Percent_NoBasis_Refused() => Assert.Throws<ArgumentException>(() => SolidsShare.Percent(13.1m, default));

    [Fact]
    public void Default_Read_Throws()
    {
        Assert.Throws<InvalidOperationException>(() => default(SolidsShare).DryValue);
        Assert.Equal("no share", default(SolidsShare).ToString());
    }

    [Fact]
    public void Order_AnyBases_GoesByDryMatter()
    {
        Assert.Equal(SolidsShare.Percent(13.2m, Basis.Dry), SolidsShare.Percent(11.616m, Basis.At12));
        Assert.True(SolidsShare.Percent(13.2m, Basis.Dry) <= SolidsShare.Percent(11.616m, Basis.At12));
        Assert.True(SolidsShare.Percent(13.0m, Basis.Dry) < SolidsShare.Percent(13.0m, Basis.At12));
        Assert.Equal(SolidsShare.Percent(0.0001m, Basis.Dry), SolidsShare.MilligramsPerKilogram(1m, Basis.Dry));
    }

    [Fact]
    public void On_ThereAndBack_SameShare() =>
        Gen.Select(Gen.Decimal[0, 40], Gen.Decimal[0, 50], Gen.Decimal[0, 50]).Sample((value, from, to) =>
        {
            var stated = SolidsShare.Percent(value, Basis.At(from));
            var back = stated.On(Basis.At(to)).On(Basis.At(from));
            Num.Near(stated.Value, back.Value, 1e-20m);
            Assert.Equal(stated, back);
            Assert.Equal(stated.GetHashCode(), back.GetHashCode());
        });

    private static Basis At(string text) => Basis.TryParse(text, out var basis) ? basis : throw new ArgumentException(text);
}
