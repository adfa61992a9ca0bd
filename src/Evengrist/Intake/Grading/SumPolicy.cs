namespace Evengrist.Intake.Grading;

/// <summary>How a factor that is a sum is added: the text of the US standards does not say, and the two can differ by a grade.</summary>
public enum SumPolicy
{
    /// <summary>Add the parts as they are recorded; the usual practice on tickets, from memory.</summary>
    RecordedParts = 0,

    /// <summary>Add the parts as found and record the sum.</summary>
    UnroundedSum = 1,
}
