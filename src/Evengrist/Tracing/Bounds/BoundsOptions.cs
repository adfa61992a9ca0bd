namespace Evengrist.Tracing.Bounds;

/// <summary>What is taken for known when bounds are reckoned.</summary>
public sealed record BoundsOptions
{
    /// <summary>Whether what flows through tempering bins and packing lines leaves in an unknown order too; else first in first out, then the stirred stage.</summary>
    public bool ThroughIsUnknown { get; init; }
}
