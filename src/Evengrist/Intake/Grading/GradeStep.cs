namespace Evengrist.Intake.Grading;

/// <summary>How far a factor is from another grade.</summary>
/// <param name="Grade">The grade this factor alone would give beyond the limit.</param>
/// <param name="Limit">The limit between, in the unit of the factor.</param>
/// <param name="By">Towards a better grade: how much the recorded value must change to meet the limit. Towards a worse one: how much it may change and still meet it; the next recorded step beyond falls. At least 0.</param>
public sealed record GradeStep(string Grade, decimal Limit, decimal By);
