namespace Evengrist.Tempering;

/// <summary>Where a figure about tempering comes from; it goes with every answer that rests on it.</summary>
public enum TemperMark
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Read in a source that is named.</summary>
    Read = 1,

    /// <summary>General knowledge of the trade, not found in a document.</summary>
    Memory = 2,

    /// <summary>Reckoned from what is marked otherwise.</summary>
    Derived = 3,

    /// <summary>Chosen for this program and tuned on no mill.</summary>
    Ours = 4,

    /// <summary>Entered by the mill.</summary>
    Mill = 5,
}
