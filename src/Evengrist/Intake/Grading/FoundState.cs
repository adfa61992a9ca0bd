namespace Evengrist.Intake.Grading;

/// <summary>Where the value of a factor comes from.</summary>
public enum FoundState
{
    /// <summary>It is missing.</summary>
    Missing = 0,

    /// <summary>It was read.</summary>
    Seen = 1,

    /// <summary>It follows from weighings, from shares of classes, from a whole that is nothing, or is a sum.</summary>
    Reckoned = 2,

    /// <summary>It was not looked for and is taken as none, because the case says so.</summary>
    Assumed = 3,
}
