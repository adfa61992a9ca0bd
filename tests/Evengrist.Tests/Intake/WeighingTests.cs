using Evengrist.Intake;
using Evengrist.Quantities;

namespace Evengrist.Tests.Intake;

public sealed class WeighingTests
{
    [Theory]
    [InlineData(-1, 12_000, "below zero")]
    [InlineData(38_000, -1, "below zero")]
    [InlineData(12_000, 38_000, "Are the two swapped?")]
    [InlineData(38_000, 0, "Weigh the empty truck")]
    [InlineData(120_001, 12_000, "Is the unit right")]
    public void Of_Impossible_RefusedWithWhatToDo(int gross, int tare, string reason)
    {
        var fault = Assert.Throws<ArgumentException>(() => Weighing.Of(Mass.FromKilograms(gross), Mass.FromKilograms(tare)));
        Assert.Contains(reason, fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(38_460, 12_120, 26_340)]
    [InlineData(12_000, 12_000, 0)]
    [InlineData(120_000, 1, 119_999)]
    public void Net_IsGrossLessTare(int gross, int tare, int net) =>
        Assert.Equal(Mass.FromKilograms(net), Weighing.Of(Mass.FromKilograms(gross), Mass.FromKilograms(tare)).Net);
}
