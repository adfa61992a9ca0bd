namespace Evengrist.Numerics.Reconciling;

/// <summary>What the constraints know of a quantity.</summary>
public enum Standing
{
    /// <summary>Not said; the default value.</summary>
    None = 0,

    /// <summary>Measured, and the constraints give it a second time: it is checked and adjusted.</summary>
    Redundant = 1,

    /// <summary>Measured, and nothing else tells of it: it stays as measured and is not checked.</summary>
    NotRedundant = 2,

    /// <summary>Not measured, and found from the others.</summary>
    Observable = 3,

    /// <summary>Not measured, and not to be found: measure it or another with it.</summary>
    NotObservable = 4,
}
