using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>A grade standard as data: edition, sources, classes, factors with their limits, and what else makes or marks a grade.</summary>
/// <remarks>Model: docs/model/grades.md.</remarks>
public sealed record GradeStandard
{
    /// <summary>What it is called in cases and addresses: <c>us-wheat</c>.</summary>
    public required string Code { get; init; }

    /// <summary>The edition held; nothing is known here of others.</summary>
    public required string Edition { get; init; }

    /// <summary>Its title.</summary>
    public required string Title { get; init; }

    /// <summary>Names of the grades, best first: <c>U.S. No. 1</c> …</summary>
    public required IReadOnlyList<string> Grades { get; init; }

    /// <summary>What wheat is called that meets none of them; null where that part was not read.</summary>
    public string? Below { get; init; }

    /// <summary>Its classes.</summary>
    public required IReadOnlyList<WheatClass> Classes { get; init; }

    /// <summary>The rows of its table.</summary>
    public required IReadOnlyList<GradeFactor> Factors { get; init; }

    /// <summary>What makes the lowest grade whatever the table says.</summary>
    public IReadOnlyList<GradeTrigger> Rejections { get; init; } = [];

    /// <summary>Special grades, added to the grade and never in its place.</summary>
    public IReadOnlyList<GradeTrigger> Special { get; init; } = [];

    /// <summary>Properties that are counted or looked for, so that a case may say: not looked for, take as none.</summary>
    public IReadOnlyList<Property> LookedFor { get; init; } = [];

    /// <summary>Parts and their sources.</summary>
    public required IReadOnlyList<StandardPart> Parts { get; init; }

    /// <summary>Parts of the standard that were not read here, each a sentence.</summary>
    public IReadOnlyList<string> NotRead { get; init; } = [];

    /// <summary>The order in which the sample is worked; empty where not read.</summary>
    public IReadOnlyList<string> Order { get; init; } = [];

    /// <summary>Whether wheat of several classes is a class of its own, Mixed.</summary>
    public bool HasMixed { get; init; }

    /// <summary>Whether the designation is written out with class and dockage.</summary>
    public bool HasDesignation { get; init; }

    /// <summary>Whether the whole standard is held; otherwise a grade is one by the parts read.</summary>
    public bool IsWhole => NotRead.Count == 0;

    /// <summary>The standard with its edition: <c>US Standards for Wheat, 2015</c>.</summary>
    public string Named => $"{Title}, {Edition}";

    /// <summary>Every property its rows, classes and triggers read, each once, in the order of the table.</summary>
    public IReadOnlyList<Property> Properties => [.. Factors.SelectMany(f => f.IsSum ? f.SumOf : [f.What])
        .Concat(Classes.SelectMany(c => c.Subclasses).SelectMany(s => s.Conditions).Select(c => c.What))
        .Concat(Rejections.Concat(Special).SelectMany(t => t.Ways).SelectMany(w => w).Select(c => c.What))
        .Where(p => p != Property.None).Distinct()];

    /// <summary>Everything its triggers ask a nose or an eye, each once.</summary>
    public IReadOnlyList<GradeObservation> Observations => [.. Rejections.Concat(Special).SelectMany(t => t.Ways).SelectMany(w => w).Select(c => c.Seen).Where(o => o != GradeObservation.None).Distinct()];

    /// <summary>A grade by its place; <see cref="Below"/> after the last.</summary>
    public string GradeAt(int index) => index < Grades.Count ? Grades[index] : Below ?? $"below {Grades[^1]}";

    /// <summary>The class and, where the text names a subclass, the subclass that people call so; null where there is none.</summary>
    public (WheatClass Class, Subclass? Subclass)? FindClass(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var asked = text.Trim();
        if (Classes.FirstOrDefault(c => c.IsCalled(asked)) is { } wheat)
        {
            return (wheat, null);
        }

        return Classes.SelectMany(c => c.Subclasses.Select(s => (Class: c, Subclass: s))).Where(p => p.Subclass.Name.Equals(asked, StringComparison.OrdinalIgnoreCase))
            .Select(p => ((WheatClass, Subclass?)?)(p.Class, p.Subclass)).FirstOrDefault();
    }
}
