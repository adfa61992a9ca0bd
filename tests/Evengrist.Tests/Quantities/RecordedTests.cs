using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class RecordedTests
{
    // 7 CFR 810.104 (examples of the rule); the last three are dockage to the nearest 0.1 % by the same rule.
    [Theory]
    [InlineData("6.36", "6.4")]
    [InlineData("0.35", "0.4")]
    [InlineData("2.45", "2.5")]
    [InlineData("8.34", "8.3")]
    [InlineData("1.22", "1.2")]
    [InlineData("0.44", "0.4")]
    [InlineData("0.45", "0.5")]
    [InlineData("0.349", "0.3")]
    public void To_OneDecimal_FollowsTheFederalExamples(string found, string recorded) =>
        Assert.Equal(Num.Of(recorded), Recorded.To(Num.Of(found), 1));

    [Fact]
    public void To_DecimalsOutOfRange_Refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Recorded.To(1m, 29));
}
