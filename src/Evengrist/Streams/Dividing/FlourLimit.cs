namespace Evengrist.Streams.Dividing;

/// <summary>What a property of a flour may be.</summary>
/// <param name="What">The property.</param>
public sealed record FlourLimit(StreamProperty What)
{
    /// <summary>The least, usual unit, ash and protein on the survey's basis; null for none.</summary>
    public double? Least { get; init; }

    /// <summary>The most; null for none.</summary>
    public double? Most { get; init; }
}
