using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Tests.Quantities;

namespace Evengrist.Tests.Intake.Grading;

/// <summary>US Standards for Wheat, 7 CFR 810 subparts A and M, 2015 edition.</summary>
public sealed class UsGradeTests
{
    public static TheoryData<string> Ids => [.. GradeVectors.All.Select(v => v.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Grade_Vector_GivesGradeDecidingFactorAndDefects(string id)
    {
        var vector = GradeVectors.Of(id);
        var graded = Samples.Graded(Samples.Of(vector));
        Assert.Equal(vector.Grade, graded.Grade);
        Assert.All(vector.Deciding, factor => Assert.Contains(factor, graded.Deciding));
        Assert.Equal(vector.Grade == "U.S. No. 1", graded.Deciding.Count == 0);
        if (vector.Defects is { } defects)
        {
            Assert.Equal(defects, Samples.Row(graded, "total defects").Recorded);
        }
    }

    // 7 CFR 810.104: ergot is recorded to 0.01 %, and 810.2205: ergoty above 0.05 %.
    [Theory]
    [InlineData("0.054", false)]
    [InlineData("0.055", true)]
    public void Special_Ergot_FollowsTheRecordedValue(string ergot, bool ergoty) =>
        Assert.Equal(ergoty, Samples.Graded(Samples.Sound.With(Property.Ergot, Num.Of(ergot))).Special.Any(s => s.Name == "Ergoty"));

    // 7 CFR 810.104 (whole per cent) and 810.2202 (75 and 25 % in red spring, 75 and 60 % in durum).
    [Theory]
    [InlineData("HRS", "74.5", "Dark Northern Spring")]
    [InlineData("HRS", "74.4", "Northern Spring")]
    [InlineData("HRS", "24.5", "Northern Spring")]
    [InlineData("HRS", "24.4", "Red Spring")]
    [InlineData("Durum", "75", "Hard Amber Durum")]
    [InlineData("Durum", "60", "Amber Durum")]
    [InlineData("Durum", "59.4", "Durum")]
    public void Subclass_Vitreous_FollowsTheWholePerCent(string wheat, string vitreous, string subclass) =>
        Assert.Equal(subclass, Samples.Graded((Samples.Sound with { Class = wheat }).With(Property.Vitreous, Num.Of(vitreous))).Class.Name);

    // 7 CFR 810.2202: soft white up to 10 % club, white club up to 10 % other soft white, western white above 10 % of both.
    [Theory]
    [InlineData("10.4", "89.6", "Soft White", "U.S. No. 2")]
    [InlineData("90", "10", "White Club", "U.S. No. 1")]
    [InlineData("50", "50", "Western White", "U.S. No. 2")]
    public void Subclass_SoftWhite_GoesByClubAndOtherAndChoosesTheTestWeightRow(string club, string other, string subclass, string grade)
    {
        var graded = Samples.Graded((Samples.Sound with { Class = "Soft White" }).With(Property.TestWeight, 58.5m).With(Property.WhiteClub, Num.Of(club)).With(Property.OtherSoftWhite, Num.Of(other)));
        Assert.Equal((subclass, grade), (graded.Class.Name, graded.Grade));
    }

    [Fact]
    public void Subclass_SoftWhiteNotSorted_IsMissingForTheGrade() =>
        Assert.Contains("white club (the limits hang on the subclass)", Samples.NotGraded(Samples.Sound with { Class = "Soft White" }).Missing);

    // 7 CFR 810.2205: above 30 smutty; above 5 up to 30, or the odour, light smutty; balls in 250 g.
    [Theory]
    [InlineData(5, "")]
    [InlineData(6, "Light smutty")]
    [InlineData(30, "Light smutty")]
    [InlineData(31, "Smutty")]
    public void Special_SmutBalls_FollowTheTable(int balls, string special) =>
        Assert.Equal(special, string.Join(",", Samples.Graded(Samples.Sound.With(Property.SmutBalls, balls)).Special.Select(s => s.Name)));

    [Fact]
    public void Special_SmutOdourWithManyBalls_IsSmuttyAlone() =>
        Assert.Equal(["Smutty"], Samples.Graded(Samples.Sound.With(Property.SmutBalls, 31) with { Observed = [GradeObservation.SmutOdour] }).Special.Select(s => s.Name));

    // 7 CFR 810.2205: more than 2 green bulblets in 1,000 g.
    [Theory]
    [InlineData(2, false)]
    [InlineData(3, true)]
    public void Special_GarlicBulblets_AboveTwo(int bulblets, bool garlicky) =>
        Assert.Equal(garlicky, Samples.Graded(Samples.Sound.With(Property.GarlicBulblets, bulblets)).Special.Any(s => s.Name == "Garlicky"));

    // 7 CFR 810.107: two weevils, or one and one other, or two others.
    [Theory]
    [InlineData(1, 0, false)]
    [InlineData(2, 0, true)]
    [InlineData(1, 1, true)]
    [InlineData(0, 1, false)]
    [InlineData(0, 2, true)]
    public void Special_LiveInsects_FollowTheRule(int weevils, int others, bool infested) =>
        Assert.Equal(infested, Samples.Graded(Samples.Sound.With(Property.LiveWeevils, weevils).With(Property.OtherLiveInsects, others)).Special.Any(s => s.Name == "Infested"));

    // Order after 7 CFR 810.106; the subclass in place of the class from memory.
    [Fact]
    public void Designation_WithSubclassSpecialGradesAndDockage_IsWrittenInOrder()
    {
        var sample = (Samples.Sound with { Class = "HRS", Observed = [GradeObservation.Treated] }).With(Property.TestWeight, 57.2m).With(Property.Vitreous, 80m).With(Property.GarlicBulblets, 3m).With(Property.Dockage, 0.65m);
        Assert.Equal("U.S. No. 2 Dark Northern Spring wheat, Garlicky, Treated, dockage 0.7 %", Samples.Graded(sample).Designation);
    }

    [Theory]
    [InlineData("0.04", "U.S. No. 1 Hard Red Winter wheat")]
    [InlineData("0.05", "U.S. No. 1 Hard Red Winter wheat, dockage 0.1 %")]
    public void Designation_Dockage_IsToTheTenthAndLeftOutAtNone(string dockage, string said) =>
        Assert.Equal(said, Samples.Graded(Samples.Sound.With(Property.Dockage, Num.Of(dockage))).Designation);

    // Each count alone, then all six together, of 7 CFR 810.2204.
    [Theory]
    [InlineData(Property.AnimalFilth, 1)]
    [InlineData(Property.CastorBeans, 1)]
    [InlineData(Property.CrotalariaSeeds, 2)]
    [InlineData(Property.Glass, 0)]
    [InlineData(Property.StoneCount, 3)]
    [InlineData(Property.UnknownForeignSubstances, 3)]
    public void Count_AtAndAboveItsLimit_PassesAndFails(Property what, int most)
    {
        Assert.Equal("U.S. No. 1", Samples.Graded(Samples.Sound.With(what, most)).Grade);
        Assert.Equal("U.S. Sample grade", Samples.Graded(Samples.Sound.With(what, most + 1)).Grade);
    }

    [Fact]
    public void Count_FiveOfSeveralKinds_IsSampleGradeByTheirSum()
    {
        var four = Samples.Sound.With(Property.StoneCount, 2m).With(Property.UnknownForeignSubstances, 2m);
        Assert.Equal("U.S. No. 1", Samples.Graded(four).Grade);
        Assert.Equal(["all counted material together"], Samples.Graded(four.With(Property.CrotalariaSeeds, 1m)).Deciding);
    }

    [Theory]
    [InlineData(GradeObservation.Musty, true)]
    [InlineData(GradeObservation.Sour, true)]
    [InlineData(GradeObservation.ForeignOdour, true)]
    [InlineData(GradeObservation.Heating, true)]
    [InlineData(GradeObservation.LowQuality, true)]
    [InlineData(GradeObservation.LargeObject, true)]
    [InlineData(GradeObservation.SmutOdour, false)]
    [InlineData(GradeObservation.GarlicOdour, false)]
    public void Observation_OfTheRule_MakesSampleGradeButForSmutAndGarlic(GradeObservation seen, bool sample) =>
        Assert.Equal(sample ? "U.S. Sample grade" : "U.S. No. 1", Samples.Graded(Samples.Sound with { Observed = [seen] }).Grade);

    // FGIS-PN-97-5: 78.0 kg/hL is 59.27 lb/bu; recorded 59.3.
    [Fact]
    public void TestWeight_ReadInHectolitres_IsCarriedBackAndRecorded()
    {
        var graded = Samples.Graded(Samples.Sound.With(Property.TestWeight, 78.0m, "kg/hL"));
        Assert.Equal((59.3m, "U.S. No. 2"), (Samples.Row(graded, "test weight").Recorded, graded.Grade));
    }
}
