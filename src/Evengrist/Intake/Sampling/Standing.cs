namespace Evengrist.Intake.Sampling;

/// <summary>How well a rule of sampling is known here.</summary>
public enum Standing
{
    /// <summary>Nothing; the default value is refused.</summary>
    None = 0,

    /// <summary>Read in the source named.</summary>
    Read = 1,

    /// <summary>From memory; the source was not read.</summary>
    Memory = 2,

    /// <summary>From memory with low confidence: check it before use.</summary>
    Doubtful = 3,
}
