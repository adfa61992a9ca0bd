namespace Evengrist.Intake.Sampling;

/// <summary>What decides how many increments a rule asks for.</summary>
public enum ProbeBy
{
    /// <summary>Nothing: the same for every vehicle.</summary>
    Nothing = 0,

    /// <summary>Depth of the grain, m.</summary>
    Depth = 1,

    /// <summary>Mass of the lot, t.</summary>
    Mass = 2,
}
