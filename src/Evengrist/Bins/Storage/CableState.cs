using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>What a point of a cable shows at a moment.</summary>
/// <param name="Point">The point.</param>
/// <param name="At">When it was last read.</param>
/// <param name="Celsius">What was read then, °C.</param>
/// <param name="AboveMedian">By how much that is above the median of the bin's points, °C.</param>
/// <param name="RisePerWeek">Rate of rise over the last three weeks, °C a week; null where it was read too seldom.</param>
/// <param name="Season">What the median point of all the bins did meanwhile, °C a week; null where too few points are known, and then nothing is taken off.</param>
public sealed record CableState(CablePoint Point, Instant At, double Celsius, double AboveMedian, double? RisePerWeek, double? Season)
{
    /// <summary>A rise against the season above which somebody is to look, °C a week; from memory.</summary>
    public const double RiseLimit = 1;

    /// <summary>So far above the median of the bin's points is a hot spot, °C. Ours.</summary>
    public const double HotSpotAbove = 5;

    /// <summary>The rate of rise less that of the season, °C a week; null where it was read too seldom.</summary>
    public double? AgainstSeason => RisePerWeek - (Season ?? 0);

    /// <summary>Whether it warms faster than the season allows.</summary>
    public bool IsRising => AgainstSeason > RiseLimit;

    /// <summary>Whether it stands out from the bin's other points.</summary>
    public bool IsHotSpot => AboveMedian > HotSpotAbove;
}
