namespace Evengrist.Intake.Grading;

/// <summary>What a factor may be in one grade.</summary>
/// <param name="Value">The limit in the unit of the factor, itself still inside; null where there is none or it was not read.</param>
/// <param name="IsRead">False where the standard has a limit here that was not read: it is never guessed.</param>
public sealed record GradeLimit(decimal? Value, bool IsRead = true)
{
    /// <summary>The grade sets no limit.</summary>
    public static GradeLimit Open { get; } = new((decimal?)null);

    /// <summary>The standard's limit was not read here.</summary>
    public static GradeLimit NotRead { get; } = new(null, IsRead: false);
}
