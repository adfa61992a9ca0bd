namespace Evengrist.Bins.Storage;

/// <summary>How far the constants of an equation have been checked; it goes with every answer that rests on them.</summary>
public enum ConstantMark
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>From memory, with no check against a reading of the same class of wheat.</summary>
    Unverified = 1,

    /// <summary>From memory, but near readings that were published.</summary>
    Rough = 2,

    /// <summary>Read in a document, and not checked against a reading of the same class of wheat.</summary>
    Read = 3,
}
