using Evengrist.Intake.Grading;
using Evengrist.Ledger;

namespace Evengrist.Tests.Intake.Grading;

/// <summary>7 CFR 810.2202, 2015 edition: mixed wheat, contrasting classes, unclassed.</summary>
public sealed class ClassModelTests
{
    [Theory]
    [InlineData(90, 10, "Hard Red Winter")]
    [InlineData(89, 11, "Mixed")]
    [InlineData(89.5, 10.5, "Hard Red Winter")] // 90 and 11 when recorded: 90 % of one class is no mixed wheat.
    [InlineData(89.4, 10.6, "Mixed")]
    public void Composition_TwoClasses_IsMixedBelowNinety(double winter, double spring, string name) =>
        Assert.Equal(name, GradeModel.Grade(Samples.Us, Sorted(("HRW", (decimal)winter), ("HRS", (decimal)spring))).Class.Name);

    [Fact]
    public void Composition_Mixed_TakesTheLimitsOfTheLeaderAndNamesIt()
    {
        var graded = Samples.Graded(Sorted(("HRS", 60m), ("HRW", 40m)).With(Property.TestWeight, 58m));
        Assert.Equal(("U.S. No. 1", "U.S. No. 1 Mixed wheat"), (graded.Grade, graded.Designation));
        Assert.Equal("Hard Red Spring", graded.Class.Wheat.Name);
    }

    [Fact]
    public void Composition_OneClassWithOthers_GivesOtherAndContrasting()
    {
        var graded = Samples.Graded(Sorted(("HRW", 95m), ("Durum", 1.5m), ("HRS", 2.5m), ("Unclassed", 0.5m)));
        Assert.Equal(4.5m, Samples.Row(graded, "wheat of other classes, total").Recorded);
        Assert.Equal(2.0m, Samples.Row(graded, "contrasting classes").Recorded);
        Assert.Equal("U.S. No. 2", graded.Grade);
    }

    [Fact]
    public void OtherClasses_AboveTenOfANamedClass_IsMixedAndSaysSo()
    {
        var graded = Samples.Graded(Samples.Sound.With(Property.OtherClasses, 30m));
        Assert.Equal("Mixed", graded.Class.Name);
        Assert.Contains("more than 10 %", graded.Class.How[0], StringComparison.Ordinal);
        Assert.DoesNotContain(graded.Factors, f => f.Factor.What is Property.OtherClasses or Property.ContrastingClasses);
    }

    [Fact]
    public void OtherClasses_BetweenTenAsAClassAndAboveTenAsAFactor_IsToldAsDoubtful()
    {
        var graded = Samples.Graded(Samples.Sound.With(Property.OtherClasses, 10.2m));
        Assert.Equal(("Hard Red Winter", "U.S. Sample grade"), (graded.Class.Name, graded.Grade));
        Assert.Contains("does not say which goes first", graded.Class.How[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(10, "U.S. No. 1")]
    [InlineData(10.1, "U.S. Sample grade")]
    public void Unclassed_OtherClasses_UpToTenAtAnyGrade(double others, string grade) =>
        Assert.Equal(grade, Samples.Graded((Samples.Sound with { Class = "Unclassed" }).With(Property.OtherClasses, (decimal)others).Without(Property.ContrastingClasses)).Grade);

    [Fact]
    public void Subclass_SaidAndFoundDiffer_FollowsWhatWasFound()
    {
        var graded = Samples.Graded((Samples.Sound with { Class = "Dark Northern Spring" }).With(Property.Vitreous, 50m));
        Assert.Equal("Northern Spring", graded.Class.Name);
        Assert.Contains(graded.Class.How, h => h.StartsWith("Said to be Dark Northern Spring", StringComparison.Ordinal));
    }

    private static GradeSample Sorted(params (string Class, decimal Percent)[] shares) =>
        (Samples.Sound with { Class = "", Composition = [.. shares.Select(s => new ClassShare(s.Class, s.Percent))] }).Without(Property.OtherClasses).Without(Property.ContrastingClasses);
}
