namespace Evengrist.Intake.Grading;

/// <summary>What a sample showed, as it is put before a grade standard.</summary>
/// <remarks>A percentage is taken to be on the basis the standard names for its factor.</remarks>
public sealed record GradeSample
{
    /// <summary>The class or subclass, by name or short name, or <c>Mixed</c>; empty where <see cref="Composition"/> tells or there is but one.</summary>
    public string Class { get; init; } = "";

    /// <summary>Of mixed wheat the class that predominates; empty otherwise.</summary>
    public string Leading { get; init; } = "";

    /// <summary>Per cent of each class in the sample free of dockage and of shrunken and broken; empty where it was not sorted.</summary>
    public IReadOnlyList<ClassShare> Composition { get; init; } = [];

    /// <summary>What was read, each property once.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>The weighings behind further findings; null where there are none.</summary>
    public SampleWeighings? Weighings { get; init; }

    /// <summary>What was smelt or seen; empty for nothing found; null where nobody looked.</summary>
    public IReadOnlyList<GradeObservation>? Observed { get; init; }

    /// <summary>Whether counts and odours that were not looked for are taken as none; the answer lists which.</summary>
    public bool TakeAsNone { get; init; }

    /// <summary>How sums of factors are added.</summary>
    public SumPolicy Sums { get; init; }

    /// <summary>What is wrong with it before a standard, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<SampleFault> Faults(GradeStandard standard) => [.. SampleCheck.Of(standard, this)];
}

/// <summary>The share of a class in a sample.</summary>
/// <param name="Class">The class, by name or short name.</param>
/// <param name="Percent">Per cent by mass, free of dockage and of shrunken and broken, 0 to 100.</param>
public sealed record ClassShare(string Class, decimal Percent);

/// <summary>Something wrong with a sample.</summary>
/// <param name="Part">Where: <c>class</c>, <c>leading</c>, <c>classes</c>, <c>findings</c>, <c>weighings</c>.</param>
/// <param name="Sentence">What is wrong and what to do.</param>
public sealed record SampleFault(string Part, string Sentence);
