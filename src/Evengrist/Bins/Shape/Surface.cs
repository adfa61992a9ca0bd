namespace Evengrist.Bins.Shape;

/// <summary>How the top of the grain lies.</summary>
public enum Surface
{
    /// <summary>Raked or settled level.</summary>
    Level,

    /// <summary>A cone up: filled from the middle and not drawn since.</summary>
    Heaped,

    /// <summary>A cone down: drawn through the middle and not filled since.</summary>
    DrawnDown,
}
