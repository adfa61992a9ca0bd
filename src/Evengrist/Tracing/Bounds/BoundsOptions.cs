namespace Evengrist.Tracing.Bounds;

/// <summary>What is taken for known when bounds are reckoned.</summary>
public sealed record BoundsOptions
{
    /// <summary>Whether what flows through tempering bins and packing lines leaves in an unknown order too; else first in first out, then the stirred stage.</summary>
    public bool ThroughIsUnknown { get; init; }

    /// <summary>What is assumed of tempering bins and packing lines, in a sentence.</summary>
    public string Words => ThroughIsUnknown ? "In the bounds tempering bins and packing lines may empty in any order; the hypotheses take them in order all the same."
        : "Tempering bins and packing lines are taken to empty in order, then through their stirred stage, under the hypotheses and in the bounds.";
}
