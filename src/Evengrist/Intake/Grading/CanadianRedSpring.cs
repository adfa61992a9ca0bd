using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>Canadian red spring wheat: export determinants of an older edition of the official guide, as far as they were read.</summary>
internal static class CanadianRedSpring
{
    private const string Source = "Canadian Grain Commission, Official Grain Grading Guide, chapter 4, export tables (an older edition)";
    private const string Terms = "a cereals handbook's chapter on Canadian wheats, text of the 1990s";

    public static GradeStandard Standard { get; } = new()
    {
        Code = "canada-red-spring",
        Edition = "an older edition",
        Title = "Canadian red spring wheat, export determinants",
        Grades = ["No. 1", "No. 2", "No. 3", "No. 4"],
        Below = null,
        Classes = [new("Canada Western Red Spring", "Red Spring")],
        Factors =
        [
            // The guide prints kg/hL beside g in half a litre (79 and 385, 77.5 and 378, 76.5 and 373, 75 and 365); the instrument reads the latter.
            Row("test weight", Property.TestWeight, "g/0.5L", 0, 385m, 378m, 373m, 365m) with { AtLeast = true, Note = "Printed as 79, 77.5, 76.5 and 75 kg/hL beside it." },
            Row("hard vitreous kernels", Property.Vitreous, "%", 0, 65m, null, null, null) with { AtLeast = true },
            NotRead4(Row("contrasting classes", Property.ContrastingClasses, "%", 1, 0.5m, 1.5m, 2.5m, null) with { PartOf = Property.OtherClasses }),
            NotRead4(Row("other classes, total", Property.OtherClasses, "%", 1, 1.5m, 3m, 5m, null)),
            NotRead4(Row("severely sprouted kernels", Property.SeverelySprouted, "%", 2, 0.10m, 0.20m, 0.30m, null) with { PartOf = Property.Sprouted }),
            NotRead4(Row("sprouted kernels, total", Property.Sprouted, "%", 1, 0.5m, 1m, 3m, null)),
            Row("ergot", Property.Ergot, "%", 2, 0.01m, 0.02m, 0.04m, 0.04m),
            Row("stones", Property.Stones, "%", 2, 0.03m, 0.03m, 0.06m, 0.06m),
            Row("foreign material, total", Property.ForeignMaterial, "%", 2, 0.4m, 0.75m, 1.25m, 2.4m),
        ],
        Special =
        [
            new("tough", [[GradeCondition.Reads(Property.Moisture, Bound.AtLeast, 14.6m, 1), GradeCondition.Reads(Property.Moisture, Bound.AtMost, 17m, 1)]], Terms),
            new("damp", [[GradeCondition.Reads(Property.Moisture, Bound.AtLeast, 17.1m, 1)]], Terms),
        ],
        Parts =
        [
            new("test weight, vitreous kernels, classes, sprouted, ergot, stones, foreign material", Source),
            new("moisture terms: straight, tough, damp", Terms),
            new("recording", "our own choice", SourceMark.Design, "Half up at the decimals the limits are printed with; the guide's own rule was not read."),
        ],
        NotRead =
        [
            "The edition in force, the primary tables, and every determinant not in the table above (degree of soundness, frost, mildew, heated, smudge, fusarium damage and others) are not read here.",
            "Sprouted kernels and other classes of No. 4, and all that lies below No. 4, are not read here.",
            "How the grade is written out is not read here.",
        ],
    };

    private static GradeFactor Row(string words, Property what, string unit, int decimals, params decimal?[] limits) => new()
    {
        Words = words, What = what, Unit = unit, Decimals = decimals, Basis = SampleBasis.AsMethodSays, Limits = [.. limits.Select(l => new GradeLimit(l))], Source = Source,
    };

    private static GradeFactor NotRead4(GradeFactor factor) => factor with { Limits = [.. factor.Limits.Take(3), GradeLimit.NotRead] };
}
