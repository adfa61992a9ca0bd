using Evengrist.Quantities;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;

namespace Evengrist.Tests.Streams;

/// <summary>Means of streams run together, their ±, and the chance of a limit, by arithmetic done beside the code.</summary>
public sealed class StreamMeanTests
{
    private static readonly MillStream A = new("A", 30, 0.40) { ProteinPercent = 11, FallingNumberSeconds = 400, StarchDamagePercent = 6 };
    private static readonly MillStream B = new("B", 10, 0.80) { ProteinPercent = 15, FallingNumberSeconds = 220, StarchDamagePercent = 8 };

    [Fact]
    public void Mean_OfTwo_IsByYieldAndCarriesReadingsAndWeighing()
    {
        var mean = StreamMean.Of(StreamProperty.Ash, [(A, 1), (B, 1)], new StreamMethods { Ash = 0.02, YieldShare = 0.05 })!;
        Assert.Equal(0.5, mean.Value, 12);

        // weights 0.75 and 0.25: (0.015² + 0.005²) of readings, (0.75·0.05·0.1)² + (0.25·0.05·0.3)² of weighing.
        Assert.Equal(Math.Sqrt(0.000225 + 0.000025 + 0.0000140625 + 0.0000140625), mean.StandardUncertainty, 12);
    }

    // Published pair: 400 s and 220 s, half and half, give 279 s (see docs/model/quantities.md).
    [Fact]
    public void FallingNumber_GoesByTheLiquefactionNumber()
    {
        var mean = StreamMean.Of(StreamProperty.FallingNumber, [(A, 1.0 / 3), (B, 1)], new StreamMethods())!;
        Assert.Equal(278.85, mean.Value, 2);
        Assert.Null(StreamMean.Of(StreamProperty.FallingNumber, [(A, 1), (B with { FallingNumberSeconds = null }, 1)], new StreamMethods()));
        Assert.NotNull(StreamMean.Of(StreamProperty.FallingNumber, [(A, 1), (B with { FallingNumberSeconds = null }, 0)], new StreamMethods()));
    }

    [Fact]
    public void Mean_OfShares_IsThatOfSmallerStreams()
    {
        var (halves, smaller) = (StreamMean.Of(StreamProperty.Protein, [(A, 0.5), (B, 0.2)], new StreamMethods())!, StreamMean.Of(StreamProperty.Protein, [(A with { Yield = 15 }, 1), (B with { Yield = 2 }, 1)], new StreamMethods())!);
        Assert.Equal(smaller.Value, halves.Value, 12);
        Assert.Equal(smaller.StandardUncertainty, halves.StandardUncertainty, 12);
    }

    [Fact]
    public void Chance_IsHalfAtTheLimitAndTheNormalOneUncertaintyAway()
    {
        LimitRoom Room(double most, StreamMethods methods) => LimitRoom.Of(new LimitEnd(StreamProperty.Ash, false, most, Basis.At14), [(A, 1)], methods)!;
        Assert.Equal(0.5, Room(0.40, new StreamMethods()).Chance, 12);
        Assert.Equal(0.8413, Room(0.41, new StreamMethods()).Chance, 4); // Φ(1)
        Assert.Equal(0.1587, Room(0.39, new StreamMethods()).Chance, 4);
        Assert.Equal(1, Room(0.40, new StreamMethods { Ash = 0 }).Chance);
        Assert.False(Room(0.39, new StreamMethods()).IsKept);
    }

    [Fact]
    public void Room_OfAFallingNumber_IsInSecondsOnTheSideThatIsAllowed()
    {
        LimitRoom Room(bool least, double at) => LimitRoom.Of(new LimitEnd(StreamProperty.FallingNumber, least, at, Basis.At14), [(A, 1)], new StreamMethods())!;
        Assert.Equal(50, Room(true, 350).Distance, 9);
        Assert.True(Room(true, 350).Chance > 0.9);
        Assert.Equal(-50, Room(false, 350).Distance, 9);
        Assert.True(Room(false, 350).Chance < 0.1);
        Assert.False(Room(false, 350).IsKept);
    }

    // Ceiling by 21 CFR 137.105(a) on 14 %: p/20 + 0.301; see AshCurveTests for the rule's own figures.
    [Fact]
    public void Identity_Room_IsTheRulesCeilingLessTheAsh()
    {
        Assert.Equal((15.0 / 20) + 0.301 - 0.8, LimitRoom.Of(LimitEnd.Identity(Basis.At14), [(B, 1)], new StreamMethods())!.Distance, 12);
        Assert.Null(LimitRoom.Of(LimitEnd.Identity(Basis.At14), [(B with { ProteinPercent = null }, 1)], new StreamMethods()));
    }

    [Fact]
    public void Methods_ThatCannotBe_AreNamed()
    {
        Assert.Contains("got -0.1", Assert.Single(new StreamTable([A], Basis.At14) { Methods = new StreamMethods { Protein = -0.1 } }.Faults()), StringComparison.Ordinal);
        Assert.Contains("60 to 1000", Assert.Single(new StreamTable([A with { FallingNumberSeconds = 20 }], Basis.At14).Faults()), StringComparison.Ordinal);
        Assert.Contains("0 to 100", Assert.Single(new StreamTable([A with { StarchDamagePercent = -2 }], Basis.At14).Faults()), StringComparison.Ordinal);
    }
}
