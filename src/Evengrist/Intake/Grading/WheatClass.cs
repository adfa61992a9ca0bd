namespace Evengrist.Intake.Grading;

/// <summary>A class of wheat as a standard names it.</summary>
/// <param name="Name">Its full name without the word wheat: <c>Hard Red Winter</c>.</param>
/// <param name="Short">What it is called for short: <c>HRW</c>; the name again where there is none.</param>
public sealed record WheatClass(string Name, string Short)
{
    /// <summary>Its subclasses in the order in which they are tried; empty for none.</summary>
    public IReadOnlyList<Subclass> Subclasses { get; init; } = [];

    /// <summary>Names of the classes that are contrasting in it.</summary>
    public IReadOnlyList<string> Contrasting { get; init; } = [];

    /// <summary>Whether test weight goes by the equation of durum.</summary>
    public bool IsDurum { get; init; }

    /// <summary>Whether this is what people call it: name or short name, case aside.</summary>
    public bool IsCalled(string text) => text.Equals(Name, StringComparison.OrdinalIgnoreCase) || text.Equals(Short, StringComparison.OrdinalIgnoreCase);
}

/// <summary>A subclass: the first of its class whose conditions all hold.</summary>
/// <param name="Name">Its name without the word wheat: <c>Dark Northern Spring</c>.</param>
/// <param name="Conditions">What must hold, on values recorded to the whole per cent.</param>
/// <param name="Source">Where it stands.</param>
public sealed record Subclass(string Name, IReadOnlyList<GradeCondition> Conditions, string Source);
