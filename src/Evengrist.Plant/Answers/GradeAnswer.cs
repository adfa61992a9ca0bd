using Evengrist.Intake.Grading;

namespace Evengrist.Plant.Answers;

/// <summary>A grade in plain values, with all that is not sure about it.</summary>
public sealed record GradeAnswer(
    string Standard, string Code, string Edition, string Grade, string Designation, string Class, IReadOnlyList<string> ClassBecause, IReadOnlyList<string> Deciding,
    IReadOnlyList<FactorAnswer> Factors, IReadOnlyList<SpecialAnswer> SpecialGrades, IReadOnlyList<SpecialAnswer> LowestGradeBecause, IReadOnlyList<string> AssumedNone, IReadOnlyList<string> NotLookedFor,
    IReadOnlyList<string> Beside, IReadOnlyList<string> LimitsFromMemory, IReadOnlyList<string> NotRead, IReadOnlyList<StandardPartAnswer> Sources)
{
    /// <summary>The grade in plain values.</summary>
    public static GradeAnswer Of(Graded graded)
    {
        ArgumentNullException.ThrowIfNull(graded);
        var standard = graded.Standard;
        return new(standard.Title, standard.Code, standard.Edition, graded.Grade, graded.Designation, graded.Class.Name, graded.Class.How, graded.Deciding,
            [.. graded.Factors.Select(f => FactorAnswer.Of(standard, f))], [.. graded.Special.Select(SpecialAnswer.Of)], [.. graded.Rejected.Select(SpecialAnswer.Of)], graded.Assumed, graded.NotLookedFor,
            [.. graded.Beside.Select(b => $"{b.AsFigure().What} {b.AsFigure()}")], graded.FromMemory, standard.NotRead, [.. standard.Parts.Select(p => new StandardPartAnswer(p.Part, p.Source, p.Mark.Words(), p.Says))]);
    }
}

/// <summary>One factor: recorded beside found, the grade it alone gives, and how far the next ones are.</summary>
public sealed record FactorAnswer(
    string Factor, string Unit, string Basis, decimal? Found, decimal? Recorded, string State, string GradeAlone, bool Decides, StepAnswer? Better, StepAnswer? Worse, string How, string Source, string Mark, string Note)
{
    internal static FactorAnswer Of(GradeStandard standard, FactorResult result) => new(
        result.Factor.Words, result.Factor.Unit + (result.Factor.MoistureBasis.IsStated ? " " + result.Factor.MoistureBasis : ""), result.Factor.Basis.Words(), result.Found, result.Recorded,
        result.State.ToString().ToLowerInvariant(), result.Alone is { } at ? standard.GradeAt(at) : "", result.Decides, StepAnswer.Of(result.Better), StepAnswer.Of(result.Worse),
        result.Because?.Formula ?? "", result.Factor.Source, result.Factor.Mark.Words(), result.Factor.Note);
}

/// <summary>The way to another grade by one factor.</summary>
public sealed record StepAnswer(string Grade, decimal Limit, decimal By)
{
    internal static StepAnswer? Of(GradeStep? step) => step is null ? null : new(step.Grade, step.Limit, step.By);
}

/// <summary>A special grade, or a reason for the lowest one.</summary>
public sealed record SpecialAnswer(string Name, string Because, string Source)
{
    internal static SpecialAnswer Of(SpecialFinding found) => new(found.Name, found.Because, found.Source);
}

/// <summary>A part of the standard and where it was read.</summary>
public sealed record StandardPartAnswer(string Part, string Source, string Mark, string Says);
