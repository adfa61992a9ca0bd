namespace Evengrist.Intake.Grading;

/// <summary>Something beside the table that names a special grade or makes the lowest grade: it holds when all conditions of one of its ways hold.</summary>
/// <param name="Name">The special grade, or the reason, as the standard names it.</param>
/// <param name="Ways">Any one way will do; within a way every condition must hold.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Mark">How well it is known here.</param>
/// <param name="Group">Of triggers of one group the first that holds counts; empty for none.</param>
public sealed record GradeTrigger(string Name, IReadOnlyList<IReadOnlyList<GradeCondition>> Ways, string Source, SourceMark Mark = SourceMark.Read, string Group = "")
{
    /// <summary>The first way that holds, in words; null where none does.</summary>
    public string? Because(SampleValues values) => Ways.FirstOrDefault(way => way.All(c => c.Holds(values) == true)) is { } held ? string.Join(" and ", held) : null;

    /// <summary>Whether none holds and none can hold by what was not looked for.</summary>
    public bool IsOpen(SampleValues values) => Because(values) is null && Ways.Any(way => way.All(c => c.Holds(values) != false));

    /// <summary>All ways in words: <c>live weevils at least 2 /sample, or …</c>.</summary>
    public string Says => string.Join(", or ", Ways.Select(way => string.Join(" and ", way)));
}
