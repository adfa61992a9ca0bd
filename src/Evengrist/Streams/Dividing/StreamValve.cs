namespace Evengrist.Streams.Dividing;

/// <summary>Where a stream can be sent. A stream without one is sent whole, anywhere.</summary>
/// <param name="Stream">Code of the stream.</param>
public sealed record StreamValve(string Stream)
{
    /// <summary>Whether its spout can be shared between flours; a two-way valve sends it whole.</summary>
    public bool Splits { get; init; }

    /// <summary>Codes of the flours it may go to; null for all. The rest is always open to it.</summary>
    public IReadOnlyList<string>? May { get; init; }

    /// <summary>The flour or the rest that it has to go to, whole; null where it is free.</summary>
    public string? Locked { get; init; }

    /// <summary>Where it goes now; null where that is not said.</summary>
    public string? Now { get; init; }
}
