namespace Evengrist.Laboratory.Conformity;

/// <summary>How a result near a limit is decided, after JCGM 106:2012. Printed on every certificate.</summary>
public enum DecisionRule
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>A result within the limits is accepted: buyer and mill share the risk.</summary>
    Simple = 1,

    /// <summary>A result is accepted only within the limits less a guard band that keeps the buyer's risk at the limit.</summary>
    Guarded = 2,

    /// <summary>Guarded for what is marked a matter of safety, simple for the rest.</summary>
    GuardedForSafety = 3,
}
