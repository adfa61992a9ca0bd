using Evengrist.Intake;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Quantities;

namespace Evengrist.Tests.Intake.Grading;

public sealed class StandardsTests
{
    private static readonly GradeStandard Codex = Standards.Find("codex-wheat", "", out _)!;
    private static readonly GradeStandard Canada = Standards.Find("canada-red-spring", "", out _)!;

    [Fact]
    public void Find_LaterEdition_IsRefusedAndSaysWhichIsHeld()
    {
        Assert.Null(Standards.Find("us-wheat", "2020", out var refusal));
        Assert.Contains("held in the edition 2015", refusal, StringComparison.Ordinal);
        Assert.Contains("\"2020\" was not read", refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void Find_UnknownStandard_ListsThoseHeld()
    {
        Assert.Null(Standards.Find("moon-wheat", "", out var refusal));
        Assert.All(Standards.All, s => Assert.Contains(s.Code, refusal, StringComparison.Ordinal));
    }

    [Fact]
    public void Standard_Each_SaysSourceAndMarkOfEveryRowAndPart() =>
        Assert.All(Standards.All, s =>
        {
            Assert.All(s.Factors, f => Assert.True(f.Source.Length > 0 && f.Mark != SourceMark.None && f.Basis != SampleBasis.None && f.Limits.Count == s.Grades.Count));
            Assert.All(s.Parts, p => Assert.True(p.Source.Length > 0 && p.Mark != SourceMark.None));
        });

    [Fact]
    public void Standard_Limits_NeverGrowStricterDownTheGrades() =>
        Assert.All(Standards.All.SelectMany(s => s.Factors), f =>
        {
            var limits = f.Limits.Where(l => l.Value is not null).Select(l => f.AtLeast ? -l.Value!.Value : l.Value!.Value).ToArray();
            Assert.Equal(limits.Order(), limits);
        });

    // Moisture and ergot as read in a copy of CXS 199-1995; the other limits from memory, and said so.
    [Theory]
    [InlineData("Wheat", "14.54", "0.05", "within CXS 199-1995")]
    [InlineData("Wheat", "14.55", "0.05", "outside CXS 199-1995")]
    [InlineData("Wheat", "14", "0.055", "outside CXS 199-1995")]
    [InlineData("Durum", "14", "0.055", "outside CXS 199-1995")]
    public void Codex_MoistureAndErgot_FollowTheLimitsRead(string wheat, string moisture, string ergot, string grade)
    {
        var graded = Samples.Graded(CodexSample(wheat).With(Property.Moisture, Num.Of(moisture)).With(Property.Ergot, Num.Of(ergot)), Codex);
        Assert.Equal(grade, graded.Grade);
        Assert.Contains("test weight", graded.FromMemory);
        Assert.DoesNotContain("moisture", graded.FromMemory);
    }

    [Theory]
    [InlineData(GradeObservation.Mites)]
    [InlineData(GradeObservation.Sour)]
    public void Codex_MitesOrOdour_IsOutside(GradeObservation seen) =>
        Assert.Equal("outside CXS 199-1995", Samples.Graded(CodexSample("Wheat") with { Observed = [seen] }, Codex).Grade);

    [Fact]
    public void Codex_OneLivingInsect_IsOutside() =>
        Assert.Equal(["living insects"], Samples.Graded(CodexSample("Wheat").With(Property.OtherLiveInsects, 1m), Codex).Deciding);

    // Official Grain Grading Guide, chapter 4 (an older edition): 385, 378, 373, 365 g in half a litre beside 79, 77.5, 76.5, 75 kg/hL.
    [Theory]
    [InlineData("79", "kg/hL", "No. 1")]
    [InlineData("385", "g/0.5L", "No. 1")]
    [InlineData("77.5", "kg/hL", "No. 2")]
    [InlineData("378", "g/0.5L", "No. 2")]
    [InlineData("76.5", "kg/hL", "No. 3")]
    [InlineData("75", "kg/hL", "No. 4")]
    [InlineData("365", "g/0.5L", "No. 4")]
    public void Canada_TestWeight_GivesTheSameGradeInBothUnits(string value, string unit, string grade) =>
        Assert.Equal(grade, Samples.Graded(CanadaSample.With(Property.TestWeight, Num.Of(value), unit), Canada).Grade);

    [Fact]
    public void Canada_BeyondWhatWasRead_IsNotGradedAndNotGuessed()
    {
        Assert.Contains("not read here", Samples.NotGraded(CanadaSample.With(Property.Sprouted, 3.5m).With(Property.SeverelySprouted, 0.1m), Canada).Reasons[0], StringComparison.Ordinal);
        Assert.Contains("what lies below is not read here", Samples.NotGraded(CanadaSample.With(Property.TestWeight, 360m, "g/0.5L"), Canada).Reasons[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Canada_Graded_SaysByThePartsRead() =>
        Assert.Equal("No. 1, by the parts of the standard that were read", Samples.Graded(CanadaSample, Canada).Designation);

    [Theory]
    [InlineData("14.5", "")]
    [InlineData("14.6", "tough")]
    [InlineData("17.0", "tough")]
    [InlineData("17.1", "damp")]
    public void Canada_Moisture_IsStraightToughOrDamp(string moisture, string term) =>
        Assert.Equal(term, string.Join(",", Samples.Graded(CanadaSample.With(Property.Moisture, Num.Of(moisture)), Canada).Special.Select(s => s.Name)));

    [Theory]
    [InlineData("12.55", "12mb", "79", "HW-A")]
    [InlineData("12.44", "12mb", "79", "HW-B")]
    [InlineData("12.15", "14mb", "79", "HW-B")] // 12.43 % at 12mb
    [InlineData("12.2", "14mb", "79", "HW-A")] // 12.48 % at 12mb, recorded 12.5
    [InlineData("13.5", "12mb", "75.9", "HW-C")]
    [InlineData("9", "12mb", "79", "outside HW")]
    public void HouseClass_Bands_FollowTheirLimits(string protein, string basis, string testWeight, string band)
    {
        Assert.True(Basis.TryParse(basis, out var on));
        var sample = new GradeSample { Findings = [new Finding(Property.Protein, Num.Of(protein), "%", on), new Finding(Property.TestWeight, Num.Of(testWeight), "kg/hL"), new Finding(Property.FallingNumber, 300m, "s")] };
        Assert.Equal(band, Samples.Graded(sample, House.ToStandard()).Grade);
    }

    [Fact]
    public void HouseClass_RowThatCountsWhereRead_IsLeftOutAndToldWhereItWasNot()
    {
        var house = (House with { Limits = [.. House.Limits.Select(l => l with { WhereRead = l.Factor == Property.FallingNumber })] }).ToStandard();
        var sample = new GradeSample { Findings = [new Finding(Property.Protein, 13m, "%", Basis.At12), new Finding(Property.TestWeight, 79m, "kg/hL")] };
        var graded = Samples.Graded(sample, house);
        Assert.Equal("HW-A", graded.Grade);
        Assert.Contains("falling number: not read, so its limits were not applied", graded.NotLookedFor);
        Assert.Equal("HW-B", Samples.Graded(sample with { Findings = [.. sample.Findings, new Finding(Property.FallingNumber, 260m, "s")] }, house).Grade);
    }

    [Fact]
    public void HouseClass_AsJson_ReadsBackTheSame()
    {
        Assert.True(HouseClassJson.TryRead(HouseClassJson.Write(House), out var back, out _));
        Assert.Equal(HouseClassJson.Write(House), HouseClassJson.Write(back));
    }

    [Theory]
    [InlineData("\"HW-B\"", "\"HW-A\"", "a name of its own")]
    [InlineData("\"12mb\"", "\"none\"", "needs a moisture basis")]
    [InlineData("11.5", "13.5", "stricter than an earlier one")]
    [InlineData("\"kg/hL\"", "\"t\"", "is not read in")]
    [InlineData("\"HRW\"", "\"XYZ\"", "has no class")]
    public void HouseClass_ThatCannotBe_IsASentence(string old, string put, string says)
    {
        Assert.False(HouseClassJson.TryRead(HouseClassJson.Write(House).Replace(old, put, StringComparison.Ordinal), out _, out var faults));
        Assert.Contains(faults, f => f.Contains(says, StringComparison.Ordinal));
    }

    private static readonly HouseClass House = new("HW", 1, "hard wheat for pan bread", ["HW-A", "HW-B", "HW-C"],
    [
        new(Property.Protein, "%", 1) { Basis = Basis.At12, AtLeast = [12.5m, 11.5m, 10.5m] },
        new(Property.TestWeight, "kg/hL", 1) { AtLeast = [78m, 76m, 74m] },
        new(Property.FallingNumber, "s", 0) { AtLeast = [280m, 250m, null] },
    ])
    { OfficialClass = "HRW" };

    private static readonly GradeSample CanadaSample = Samples.Of("", (Property.Vitreous, 70m), (Property.OtherClasses, 0m), (Property.Sprouted, 0m), (Property.Ergot, 0m), (Property.Stones, 0m), (Property.ForeignMaterial, 0.1m),
        (Property.Moisture, 13m)).With(Property.TestWeight, 390m, "g/0.5L");

    private static GradeSample CodexSample(string wheat) => Samples.Of(wheat, (Property.Moisture, 13m), (Property.Ergot, 0m), (Property.ShrunkenAndBroken, 2m), (Property.OtherGrains, 0.5m), (Property.Damaged, 2m),
        (Property.InsectBored, 0.2m), (Property.OrganicExtraneous, 0.3m), (Property.InorganicExtraneous, 0.1m), (Property.Filth, 0m)).With(Property.TestWeight, 76m, "kg/hL");
}
