namespace Evengrist.Quantities.Lists;

/// <summary>Where the values of a column come from.</summary>
public enum ListOrigin
{
    /// <summary>A name, a code, a choice or words that somebody stated.</summary>
    Stated,

    /// <summary>Seen: weighed, measured, observed, recorded as a fact.</summary>
    Seen,

    /// <summary>Reckoned from facts: it changes when a fact is put right.</summary>
    Reckoned,
}
