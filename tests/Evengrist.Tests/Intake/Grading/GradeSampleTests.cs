using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Tests.Quantities;

namespace Evengrist.Tests.Intake.Grading;

public sealed class GradeSampleTests
{
    [Theory]
    [InlineData(Property.Damaged, "120", "cannot be")]
    [InlineData(Property.ForeignMaterial, "-0.1", "cannot be")]
    [InlineData(Property.HeatDamaged, "1.1", "Heat-damaged kernels of 1.1 % cannot be above damaged kernels of 1 %")]
    [InlineData(Property.ContrastingClasses, "0.5", "Contrasting classes of 0.5 % cannot be above wheat of other classes of 0 %")]
    [InlineData(Property.ForeignMaterial, "99.5", "make 100.5 % together: more than the whole sample")]
    [InlineData(Property.Glass, "0.5", "is a count")]
    public void Faults_OneValueThatCannotBe_IsASentence(Property what, string value, string says) =>
        Assert.Contains(Samples.Sound.With(what, Num.Of(value)).Faults(Samples.Us), f => f.Sentence.Contains(says, StringComparison.Ordinal));

    [Theory]
    [InlineData("HRQ", "", "has no class \"HRQ\"")]
    [InlineData("", "", "Say the class")]
    [InlineData("Mixed", "", "say which leads")]
    [InlineData("Mixed", "Barley", "could lead")]
    [InlineData("HRW", "HRS", "Only mixed wheat has a leading class")]
    public void Faults_ClassThatCannotBe_IsASentence(string wheat, string leading, string says) =>
        Assert.Contains(says, Assert.Single((Samples.Sound with { Class = wheat, Leading = leading }).Faults(Samples.Us)).Sentence, StringComparison.Ordinal);

    [Theory]
    [InlineData("HRW", 70, "HRS", 40, "make 110 % together")]
    [InlineData("HRW", 50, "HRS", 50, "Two classes make 50 % each")]
    [InlineData("HRW", 60, "Rye", 40, "has no class \"Rye\"")]
    [InlineData("HRW", 60, "hrw", 40, "is given twice")]
    [InlineData("HRW", 60, "HRS", 10, "from 90 to 100 %")]
    public void Faults_CompositionThatCannotBe_IsASentence(string first, int a, string second, int b, string says)
    {
        var sample = (Samples.Sound with { Class = "", Composition = [new(first, a), new(second, b)] }).Without(Property.OtherClasses).Without(Property.ContrastingClasses);
        Assert.Contains(sample.Faults(Samples.Us), f => f.Sentence.Contains(says, StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_SamePropertyReadAndWeighed_IsASentence() =>
        Assert.Contains("given twice", Assert.Single((Samples.Sound with { Weighings = new(1000m, 7m) { ThroughSieve = 5m } }).Faults(Samples.Us)).Sentence, StringComparison.Ordinal);

    [Theory]
    [InlineData(0, 0, 0, "weighs above 0")]
    [InlineData(1000, 1000, 0, "less than the sample")]
    [InlineData(1000, -1, 0, "less than the sample")]
    [InlineData(1000, 7, 999, "some of the portion stays on it")]
    public void Faults_WeighingsThatCannotBe_AreSentences(int w, int d, int through, string says) =>
        Assert.Contains(new SampleWeighings(w, d) { ThroughSieve = through }.Faults(), f => f.Contains(says, StringComparison.Ordinal));

    [Fact]
    public void Faults_PickedMoreThanThePortion_IsASentence() =>
        Assert.Contains(new SampleWeighings(1000m, 7m) { Picked = [new(Property.Damaged, 16m, 15m)] }.Faults(), f => f.Contains("16 g out of a portion of 15 g cannot be", StringComparison.Ordinal));

    [Fact]
    public void Grade_FaultySample_IsABrokenContract() =>
        Assert.Throws<ArgumentException>(() => GradeModel.Grade(Samples.Us, Samples.Sound with { Class = "Barley" }));

    [Fact]
    public void Grade_FactorMissing_IsNotGradedAndNamed()
    {
        var not = Samples.NotGraded(Samples.Sound.Without(Property.ShrunkenAndBroken));
        Assert.Equal(["shrunken and broken"], not.Missing);
        Assert.Equal("U.S. No. 1", not.AtBest);
    }

    [Fact]
    public void Grade_CountsAndOdourNotLookedFor_IsNotGradedUnlessTakenAsNone()
    {
        var not = Samples.NotGraded(Samples.Sound with { TakeAsNone = false });
        Assert.Contains("glass", not.Missing);
        Assert.Contains(not.Missing, m => m.Contains("musty odour", StringComparison.Ordinal));
        var graded = Samples.Graded(Samples.Sound);
        Assert.Contains("glass", graded.Assumed);
        Assert.Contains("musty odour", graded.Assumed);
        Assert.Equal(FoundState.Assumed, Samples.Row(graded, "glass").State);
    }

    [Fact]
    public void Grade_MustyAndFactorsMissing_IsSampleGradeAllTheSame() =>
        Assert.Equal("U.S. Sample grade", Samples.Graded(new GradeSample { Class = "HRW", Observed = [GradeObservation.Musty] }).Grade);

    [Fact]
    public void Grade_NothingOfTheWhole_IsNothingOfThePart()
    {
        var graded = Samples.Graded(Samples.Sound.Without(Property.ContrastingClasses));
        Assert.Equal((FoundState.Reckoned, 0m), (Samples.Row(graded, "contrasting classes").State, Samples.Row(graded, "contrasting classes").Recorded));
    }

    [Fact]
    public void Grade_SpecialGradesNotLookedFor_AreListedAsOpen()
    {
        var sample = Samples.Sound with { TakeAsNone = false, Observed = [] };
        foreach (var what in Samples.Us.LookedFor.Where(p => p is not (Property.Ergot or Property.SmutBalls or Property.GarlicBulblets or Property.LiveWeevils or Property.OtherLiveInsects)))
        {
            sample = sample.With(what, 0m);
        }

        var graded = Samples.Graded(sample);
        Assert.Contains(graded.NotLookedFor, o => o.StartsWith("Ergoty", StringComparison.Ordinal));
        Assert.Contains(graded.NotLookedFor, o => o.StartsWith("Infested", StringComparison.Ordinal));
    }

    [Fact]
    public void Because_OfARecordedValue_SaysRuleInputAndSource()
    {
        var because = Samples.Row(Samples.Graded(Samples.Sound.With(Property.TestWeight, 59.95m)), "test weight").Because!;
        Assert.Contains("half up at 1 decimal", because.Formula, StringComparison.Ordinal);
        Assert.Equal(59.95m, Assert.Single(because.Inputs).Value);
        Assert.Contains("7 CFR 810.2204, 2015 edition", because.Source, StringComparison.Ordinal);
    }
}
