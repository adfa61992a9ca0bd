namespace Evengrist.Web.Face;

/// <summary>How things stand. Each has a shape and a word; the colour comes third.</summary>
public enum StateKind
{
    /// <summary>Nothing is in the way.</summary>
    Clear,

    /// <summary>Look at it.</summary>
    Watch,

    /// <summary>Held: nothing may leave.</summary>
    Hold,

    /// <summary>Stopped.</summary>
    Stop,
}
