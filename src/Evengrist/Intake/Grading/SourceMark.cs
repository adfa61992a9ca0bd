namespace Evengrist.Intake.Grading;

/// <summary>How well a value of a standard is known here. Shown wherever the value is shown.</summary>
public enum SourceMark
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Read in the document named as its source.</summary>
    Read = 1,

    /// <summary>Follows from values that were read.</summary>
    Derived = 2,

    /// <summary>From memory: to be verified against the standard before anything hangs on it.</summary>
    Memory = 3,

    /// <summary>Our own choice where the source is silent.</summary>
    Design = 4,

    /// <summary>The mill's own.</summary>
    House = 5,
}
