using Evengrist.Laboratory.Charts;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tests.Laboratory.Charts;

/// <summary>Limits frozen from a period: those of the e-Handbook's ten values (6.3.2.2, from memory), kept whatever comes after.</summary>
public sealed class FrozenLimitsTests
{
    private static readonly double[] Handbook = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
    private static readonly (Instant, Instant) Period = (Instant.FromUtc(2025, 10, 1, 0, 0), Instant.FromUtc(2025, 10, 2, 0, 0));

    [Fact]
    public void Limits_OfTheHandbook_StayAndJudgeLaterValues()
    {
        var frozen = FrozenLimits.Of("UA", Property.Protein, "NIR", Period, Handbook, (null, null, null), RunRules.Four, "first");
        Assert.Equal((50.81, 1.66414), (Math.Round(frozen.Centre, 2), Math.Round(frozen.Sigma, 5))); // 1.8777778/1.128379.
        var chart = ChartModel.Of(new ChartSpec([[50], [51], [56]]) { Frozen = (frozen.Centre, frozen.Sigma), Rules = frozen.Rules })!;
        Assert.Equal((45.817588, 55.802412), (Math.Round(chart.Limits.Lower, 4), Math.Round(chart.Limits.Upper, 4)), (a, b) => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) < 2e-4);
        Assert.Equal(3, Assert.Single(chart.Points, p => p.Rules.Count > 0).Number);
        Assert.True(FrozenLimits.TryRead(frozen.ToJson(), out var read, out _));
        Assert.Equal(frozen.ToJson(), read.ToJson());
    }

    [Fact]
    public void Faults_OfWhatCannotBeFrozen_NameEach()
    {
        Assert.Contains("There are 3 readings", Assert.Single(FrozenLimits.Of("UA", Property.Ash, "NIR", Period, [1, 2, 3], (null, null, null), RunRules.Four, "x").Faults()), StringComparison.Ordinal);
        Assert.Contains("do not differ", Assert.Single(FrozenLimits.Of("UA", Property.Ash, "NIR", Period, [.. Enumerable.Repeat(1.0, 12)], (null, null, null), RunRules.Four, "x").Faults()), StringComparison.Ordinal);
        Assert.Contains("Say why", Assert.Single(FrozenLimits.Of("UA", Property.Ash, "NIR", Period, Handbook, (null, null, null), RunRules.Four, " ").Faults()), StringComparison.Ordinal);
        Assert.Single(new ChartSpec([[1], [2]]) { Frozen = (1, 0) }.Faults());
    }
}
