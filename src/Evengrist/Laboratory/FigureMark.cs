namespace Evengrist.Laboratory;

/// <summary>Where a figure of the laboratory comes from; it goes with every answer that rests on it.</summary>
public enum FigureMark
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Read in a source that is named.</summary>
    Read = 1,

    /// <summary>From memory, not found in a document: check before use.</summary>
    Memory = 2,

    /// <summary>Chosen for this program and tuned on no mill.</summary>
    Ours = 3,

    /// <summary>Found or entered by the mill.</summary>
    Mill = 4,
}
