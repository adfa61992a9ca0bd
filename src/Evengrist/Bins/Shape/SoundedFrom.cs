namespace Evengrist.Bins.Shape;

/// <summary>Where the tape hung.</summary>
public enum SoundedFrom
{
    /// <summary>At the wall.</summary>
    Wall,

    /// <summary>In the middle (of a long bin: over the middle line).</summary>
    Centre,
}
