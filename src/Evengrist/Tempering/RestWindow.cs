using NodaTime;

namespace Evengrist.Tempering;

/// <summary>When wheat that ran into a temper bin over a time has rested.</summary>
/// <param name="FirstIn">When the first of it went in.</param>
/// <param name="LastIn">When the last of it went in; not before the first.</param>
/// <param name="FirstRest">How long the first of it is to rest; at least 0.</param>
/// <param name="LastRest">How long the last of it is to rest; another one where the bin goes over to other wheat.</param>
public sealed record RestWindow(Instant FirstIn, Instant LastIn, Duration FirstRest, Duration LastRest)
{
    /// <summary>Wheat that rests equally long throughout.</summary>
    public RestWindow(Instant firstIn, Instant lastIn, Duration rest)
        : this(firstIn, lastIn, rest, rest)
    {
    }

    /// <summary>When the first wheat is ready: first in + rest.</summary>
    public Instant FirstReady => FirstIn + FirstRest;

    /// <summary>When the last of it is ready: last in + rest.</summary>
    public Instant LastReady => LastIn + LastRest;

    /// <summary>How the wheat stands at a moment.</summary>
    public RestState At(Instant now) => now >= FirstReady && now >= LastReady ? RestState.Ready : now >= FirstReady ? RestState.PartlyReady : RestState.Resting;
}

/// <summary>How far the rest of a temper bin's wheat has come.</summary>
public enum RestState
{
    /// <summary>Not said.</summary>
    None = 0,

    /// <summary>Not even its first wheat has rested.</summary>
    Resting = 1,

    /// <summary>Its first wheat has rested, its last has not.</summary>
    PartlyReady = 2,

    /// <summary>All of it has rested.</summary>
    Ready = 3,
}
