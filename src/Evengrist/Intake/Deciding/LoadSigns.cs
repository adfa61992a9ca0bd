using Evengrist.Intake.Grading;

namespace Evengrist.Intake.Deciding;

/// <summary>All that a person at the probe may smell or see, with what it makes of a load.</summary>
public static class LoadSigns
{
    private const string Practice = "common practice";
    private const string Table = "7 CFR 810.2204, 2015 edition: U.S. Sample grade";

    /// <summary>Every sign, gravest first.</summary>
    public static IReadOnlyList<LoadSign> All { get; } =
    [
        new("treated seed", LoadDecisionKind.TurnAway, "Seed dressed with pesticide is poison, and one load spoils a whole bin.", "21 CFR 2.25", SourceMark.Memory)
        {
            Caution = "Do not tip or touch it: gloves, no dust. Keep trailer and sample apart, tell the grower and the quality manager, note the trailer. Follow site procedure and local law.",
        },
        new("glass", LoadDecisionKind.TurnAway, "No glass at all is allowed in wheat.", "7 CFR 810.2204, 2015 edition: limit 0", SourceMark.Read)
        {
            Caution = "Keep the sample; do not reach into it with bare hands.",
        },
        new("chemical odour", LoadDecisionKind.SetAside, "It smells of fuel, pesticide or fumigant: what it is must be known first.", Practice, SourceMark.Design)
        {
            Caution = "Stay upwind and keep everybody away; a fumigant may be at work. Only a licensed applicator clears it.",
        },
        new("rodents or birds", LoadDecisionKind.SetAside, "Carcasses or droppings lie in it: the quality manager looks at it first.", Practice, SourceMark.Design),
        new("live insects", LoadDecisionKind.SetAside, "Live insects were seen: they would breed in the bin.", "7 CFR 810.107 and Codex CXS 199-1995 (free from living insects)", SourceMark.Read)
        {
            Caution = "Fumigation is for a licensed applicator alone; the load waits where it cannot infest others.",
        },
        new("mites", LoadDecisionKind.SetAside, "Living mites were seen.", "Codex CXS 199-1995: free from living mites", SourceMark.Read) { Graded = GradeObservation.Mites },
        new("heating", LoadDecisionKind.SetAside, "The grain is heating.", Table, SourceMark.Read)
        {
            Graded = GradeObservation.Heating,
            Caution = "Heating grain can smoulder: take its temperature, do not store it on top of other grain, keep away from dust. Follow site procedure.",
        },
        new("musty", LoadDecisionKind.SetAside, "It smells musty.", Table, SourceMark.Read) { Graded = GradeObservation.Musty },
        new("sour", LoadDecisionKind.SetAside, "It smells sour.", Table, SourceMark.Read) { Graded = GradeObservation.Sour },
        new("objectionable odour", LoadDecisionKind.SetAside, "It has a commercially objectionable foreign odour.", Table, SourceMark.Read) { Graded = GradeObservation.ForeignOdour },
        new("smut odour", LoadDecisionKind.Divert, "It smells of smut: kept apart it can be washed or scoured out, in a clean bin it spoils the flour.", "7 CFR 810.2205, 2015 edition: smutty; where to put it by common practice", SourceMark.Design) { Graded = GradeObservation.SmutOdour },
        new("garlic odour", LoadDecisionKind.Divert, "It smells of garlic, and so would the flour.", "7 CFR 810.2205, 2015 edition: garlicky; where to put it by common practice", SourceMark.Design) { Graded = GradeObservation.GarlicOdour },
    ];

    /// <summary>The sign with the words, case not mattering; null where there is none.</summary>
    public static LoadSign? Find(string? words) => All.FirstOrDefault(s => s.Words.Equals((words ?? "").Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The signs an observed happening tells in its words, which part them by commas.</summary>
    public static IReadOnlyList<string> In(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        return [.. words.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(Find).OfType<LoadSign>().Select(s => s.Words)];
    }
}
