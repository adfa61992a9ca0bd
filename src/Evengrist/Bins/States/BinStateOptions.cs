using NodaTime;

namespace Evengrist.Bins.States;

/// <summary>From when on a bin is said to rest, and how long a load set down at once counts as filling.</summary>
public sealed record BinStateOptions
{
    /// <summary>A bin rests once nothing has gone in or out for so long; above zero. 72 h [design].</summary>
    public Duration RestsAfter { get; init; } = Duration.FromHours(72);

    /// <summary>A load that is booked at one moment, as a truck's is, counts as filling (or drawing) for so long after it; at least zero. 30 min [design].</summary>
    public Duration LoadLasts { get; init; } = Duration.FromMinutes(30);

    /// <summary>The options when nothing else is said.</summary>
    public static BinStateOptions Usual { get; } = new();
}
