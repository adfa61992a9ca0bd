namespace Evengrist.Intake.Grading;

/// <summary>What comes of grading a sample.</summary>
public abstract record GradeOutcome
{
    /// <summary>The standard.</summary>
    public required GradeStandard Standard { get; init; }

    /// <summary>The class and subclass.</summary>
    public required ClassFinding Class { get; init; }

    /// <summary>Every factor of the table that is for this class, in its order.</summary>
    public required IReadOnlyList<FactorResult> Factors { get; init; }

    /// <summary>Special grades.</summary>
    public required IReadOnlyList<SpecialFinding> Special { get; init; }

    /// <summary>What makes the lowest grade beside the table.</summary>
    public required IReadOnlyList<SpecialFinding> Rejected { get; init; }

    /// <summary>What was not looked for and is taken as none, because the case says so.</summary>
    public required IReadOnlyList<string> Assumed { get; init; }

    /// <summary>What was not looked for and is not taken as none: special grades that may still be.</summary>
    public required IReadOnlyList<string> NotLookedFor { get; init; }

    /// <summary>What goes beside the grade on a ticket, and no grade uses: moisture, protein, dockage.</summary>
    public required IReadOnlyList<Finding> Beside { get; init; }

    /// <summary>Factors whose limits are from memory, in words.</summary>
    public IReadOnlyList<string> FromMemory => [.. Factors.Where(f => f.Factor.Mark == SourceMark.Memory).Select(f => f.Factor.Words)];
}

/// <summary>The sample has a grade.</summary>
public sealed record Graded : GradeOutcome
{
    /// <summary>Its place, from 0 for the best; the number of grades for the lowest.</summary>
    public required int Place { get; init; }

    /// <summary>The grade: <c>U.S. No. 2</c>.</summary>
    public string Grade => Standard.GradeAt(Place);

    /// <summary>The grade as it is written out: with class, special grades and dockage where the standard has it so.</summary>
    public required string Designation { get; init; }

    /// <summary>What keeps it from the next better grade; empty at the best grade.</summary>
    public required IReadOnlyList<string> Deciding { get; init; }
}

/// <summary>The sample cannot be graded as it stands.</summary>
public sealed record NotGraded : GradeOutcome
{
    /// <summary>What is missing, in words; empty where that is not the reason.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    /// <summary>Why, each a sentence that says what to do; at least one.</summary>
    public required IReadOnlyList<string> Reasons { get; init; }

    /// <summary>The best grade it can still get by what is known; null where nothing is known.</summary>
    public required string? AtBest { get; init; }
}

/// <summary>A special grade, or a reason for the lowest one.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Because">What was found.</param>
/// <param name="Source">Where the rule stands.</param>
public sealed record SpecialFinding(string Name, string Because, string Source);
