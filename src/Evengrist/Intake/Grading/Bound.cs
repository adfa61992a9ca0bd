namespace Evengrist.Intake.Grading;

/// <summary>On which side of a value a condition holds.</summary>
public enum Bound
{
    /// <summary>Not a bound; the default value is refused.</summary>
    None = 0,

    /// <summary>At least the value.</summary>
    AtLeast = 1,

    /// <summary>Above the value.</summary>
    Above = 2,

    /// <summary>At most the value.</summary>
    AtMost = 3,

    /// <summary>Below the value.</summary>
    Below = 4,
}
