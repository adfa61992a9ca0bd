using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>Codex standard for wheat and durum wheat, CXS 199-1995: inside or outside; most limits are from memory.</summary>
internal static class CodexWheat
{
    private const string Wheat = "Wheat";
    private const string Durum = "Durum wheat";
    private const string Read = "CXS 199-1995, read in a copy";
    private const string Memory = "CXS 199-1995, from memory";

    public static GradeStandard Standard { get; } = new()
    {
        Code = "codex-wheat",
        Edition = "1995",
        Title = "Codex standard for wheat and durum wheat, CXS 199",
        Grades = ["within CXS 199-1995"],
        Below = "outside CXS 199-1995",
        Classes = [new(Wheat, Wheat), new(Durum, "Durum") { IsDurum = true }],
        LookedFor = [Property.LiveWeevils, Property.OtherLiveInsects],
        Factors =
        [
            Row("moisture", Property.Moisture, 1, 14.5m, Read, SourceMark.Read) with { Basis = SampleBasis.AsReceived },
            Row("ergot sclerotia", Property.Ergot, 2, 0.05m, Read, SourceMark.Read) with { Only = [Wheat] },
            Row("ergot sclerotia", Property.Ergot, 2, 0.05m, "CXS 199-1995: one copy prints 0.5, another 0.05", SourceMark.Derived) with { Only = [Durum], Note = "Two copies differ; the stricter and plausible one is used." },
            Row("living insects", Property.None, 0, 0m, Read, SourceMark.Read) with { Unit = "/sample", SumOf = [Property.LiveWeevils, Property.OtherLiveInsects], Basis = SampleBasis.AsReceived },
            .. Pair("test weight", Property.TestWeight, 68m, 70m, "kg/hL").Select(f => f with { AtLeast = true }),
            .. Pair("shrunken and broken", Property.ShrunkenAndBroken, 5m, 6m).Select(f => f with { Note = "Slot of 1.7 × 20 mm: not the US sieve." }),
            .. Pair("edible grains other than wheat", Property.OtherGrains, 2m, 3m),
            .. Pair("damaged kernels", Property.Damaged, 6m, 4m),
            .. Pair("insect-bored kernels", Property.InsectBored, 1.5m, 2.5m),
            .. Pair("organic extraneous matter", Property.OrganicExtraneous, 1.5m, 1.5m),
            .. Pair("inorganic extraneous matter", Property.InorganicExtraneous, 0.5m, 0.5m),
            .. Pair("filth", Property.Filth, 0.1m, 0.1m),
        ],
        Rejections =
        [
            new("abnormal odour", [[GradeCondition.Shows(GradeObservation.Musty)], [GradeCondition.Shows(GradeObservation.Sour)], [GradeCondition.Shows(GradeObservation.ForeignOdour)]], Read),
            new("mites", [[GradeCondition.Shows(GradeObservation.Mites)]], Read),
        ],
        Parts =
        [
            new("moisture, ergot of wheat, odour, living insects and mites", Read),
            new("ergot of durum", "two copies that differ", SourceMark.Derived, "One prints 0.5 %, the other 0.05 %; 0.05 % is used."),
            new("all other limits", "memory", SourceMark.Memory, "Verify them against the standard before anything hangs on them."),
            new("recording", "our own choice", SourceMark.Design, "Half up at the decimals the limit is printed with; the standard's own rule was not read."),
        ],
        NotRead = ["Contaminants, residues, hygiene and methods of CXS 199-1995 are not read here; club wheat, red durum and semolina lie outside its scope."],
    };

    private static GradeFactor Row(string words, Property what, int decimals, decimal limit, string source, SourceMark mark) => new()
    {
        Words = words, What = what, Unit = "%", Decimals = decimals, Basis = SampleBasis.AsMethodSays, Limits = [new GradeLimit(limit)], Source = source, Mark = mark,
    };

    private static IEnumerable<GradeFactor> Pair(string words, Property what, decimal wheat, decimal durum, string unit = "%") =>
        new[] { (Wheat, wheat), (Durum, durum) }.Select(p => Row(words, what, 1, p.Item2, Memory, SourceMark.Memory) with { Only = [p.Item1], Unit = unit });
}
