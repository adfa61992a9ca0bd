using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Grading;

/// <summary>A mill's own class of wheat with its bands, kept as a paper of the kind <c>house-class</c>.</summary>
/// <param name="Code">The class, as it stands on tickets: <c>HW</c>.</param>
/// <param name="Version">From 1.</param>
/// <param name="Name">In words.</param>
/// <param name="Bands">Names of the bands, best first.</param>
/// <param name="Limits">The rows.</param>
public sealed record HouseClass(string Code, int Version, string Name, IReadOnlyList<string> Bands, IReadOnlyList<HouseLimit> Limits)
{
    /// <summary>What wheat is called that meets no band; <c>outside HW</c> where nothing is said.</summary>
    public string Outside { get; init; } = "";

    /// <summary>The class of a published standard that wheat of this class is shown to inspection as: <c>HRW</c>; empty for none.</summary>
    public string OfficialClass { get; init; } = "";

    /// <summary>The class as a standard with one class, so that one model grades all.</summary>
    public GradeStandard ToStandard() => new()
    {
        Code = "house:" + Code,
        Edition = FormattableString.Invariant($"version {Version}"),
        Title = Name.Length > 0 ? $"House class {Code}: {Name}" : $"House class {Code}",
        Grades = Bands,
        Below = Outside.Length > 0 ? Outside : $"outside {Code}",
        Classes = [new(Code, Code)],
        Factors = [.. Limits.Select(l => l.ToFactor(Code, Version))],
        Parts = [new("bands and limits", FormattableString.Invariant($"house class {Code}, version {Version}"), SourceMark.House)],
    };

    /// <summary>What is wrong with it, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() => [.. HouseClassCheck.Of(this)];
}

/// <summary>One row of a house class.</summary>
/// <param name="Factor">The property.</param>
/// <param name="Unit">One of its units.</param>
/// <param name="Decimals">Decimals at which it is recorded before it is compared, 0 to 6.</param>
public sealed record HouseLimit(Property Factor, string Unit, int Decimals)
{
    /// <summary>The moisture basis of a share of solids; not stated otherwise.</summary>
    public Basis Basis { get; init; }

    /// <summary>The least for each band, best first, null for none; empty where the row has a most.</summary>
    public IReadOnlyList<decimal?> AtLeast { get; init; } = [];

    /// <summary>The most for each band, best first, null for none; empty where the row has a least.</summary>
    public IReadOnlyList<decimal?> AtMost { get; init; } = [];

    /// <summary>Whether the row counts only where the property was read: a test that takes minutes and is not made on every truck.</summary>
    public bool WhereRead { get; init; }

    internal GradeFactor ToFactor(string code, int version) => new()
    {
        Words = Factor.Words(), What = Factor, Unit = Unit, MoistureBasis = Basis, Decimals = Decimals, AtLeast = AtLeast.Count > 0, Basis = SampleBasis.AsMillMeasures,
        Limits = [.. (AtLeast.Count > 0 ? AtLeast : AtMost).Select(l => new GradeLimit(l))], Source = FormattableString.Invariant($"house class {code}, version {version}"), Mark = SourceMark.House, WhereRead = WhereRead,
    };
}
