using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Cli;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Tests.Intake.Grading;

namespace Evengrist.Edge.Tests.Grades;

/// <summary>Posed samples through the command line.</summary>
public sealed class GradeCaseTests
{
    public static TheoryData<string> Ids => [.. GradeVectors.All.Select(v => v.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Grade_Vector_GivesGradeDecidingFactorAndDefects(string id)
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("intake", "grade", "--in", folder.File("case.json", GradeVectors.Of(id).Json()), "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        Vectors.Check(GradeVectors.Of(id), JsonDocument.Parse(output).RootElement);
    }

    // By hand: dockage 100·6.6/1004.2 = 0.657 → 0.7; sieve 100·3.85/250.4 = 1.538 → 1.5; damaged 2.252 → 2.3; heat 0.0996 → 0.1; foreign 0.363 → 0.4; defects 4.2; other 3.2, contrasting 0.6.
    [Fact]
    public void Grade_FromWeighingsAndSortedClasses_IsWrittenOut()
    {
        var answer = Answer("grade-weighings.json");
        Assert.Equal("U.S. No. 2 Dark Northern Spring wheat, Garlicky, dockage 0.7 %", answer.GetProperty("designation").GetString());
        var recorded = answer.GetProperty("factors").EnumerateArray().ToDictionary(f => f.GetProperty("factor").GetString()!, f => f.GetProperty("recorded").GetDecimal());
        Assert.Equal((2.3m, 0.1m, 0.4m, 1.5m, 4.2m), (recorded["damaged kernels, total"], recorded["heat-damaged kernels"], recorded["foreign material"], recorded["shrunken and broken"], recorded["total defects"]));
        Assert.Equal((3.2m, 0.6m), (recorded["wheat of other classes, total"], recorded["contrasting classes"]));
        Assert.Contains("glass", answer.GetProperty("assumedNone").EnumerateArray().Select(a => a.GetString()));
    }

    [Fact]
    public void Grade_ByAHouseClass_IsTheWorstBand()
    {
        var answer = Answer("grade-house.json");
        Assert.Equal("HW plain", answer.GetProperty("grade").GetString());
        Assert.Equal(["test weight"], answer.GetProperty("deciding").EnumerateArray().Select(d => d.GetString()!));
    }

    [Fact]
    public void Grade_InWords_ShowsDesignationTableAndAssumptions()
    {
        var (status, output, _) = Shell.Run("intake", "grade", "--in", Repository.Sample("cases", "grade-hrw.json"));
        Assert.Equal(Exit.Done, status);
        Assert.All(["U.S. No. 2 Hard Red Winter wheat, dockage 0.7 %", "Deciding: test weight", "59.94", "59.9", "Taken as none, not looked for: stones", "Beside the grade: dockage 0.65 %"], said => Assert.Contains(said, output, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"2015\"", "\"2020\"", "$.edition: read \"2020\"; expected a standard that is held. US Standards for Wheat is held in the edition 2015 and no other")]
    [InlineData("\"us-wheat\"", "\"eu-wheat\"", "$.standard: read \"eu-wheat\"; expected a standard that is held. No standard")]
    [InlineData("\"HRW\"", "\"HRX\"", "$.class: read \"HRX\"; expected a sample that can be. US Standards for Wheat has no class")]
    [InlineData("\"damaged [%]\": 1.2", "\"damaged [%]\": 120", "$.findings.damaged [%]: read \"120\"; expected a finding that can be")]
    [InlineData("\"damaged [%]\": 1.2", "\"damaged [%]\": -1", "$.findings.damaged [%]: read \"-1\"")]
    [InlineData("\"heat-damaged [%]\": 0,", "\"heat-damaged [%]\": 1.3,", "Heat-damaged kernels of 1.3 % cannot be above damaged kernels of 1.2 %")]
    [InlineData("\"contrasting classes [%]\": 0,", "\"contrasting classes [%]\": 0.6,", "Contrasting classes of 0.6 % cannot be above wheat of other classes of 0.5 %")]
    [InlineData("\"foreign material [%]\": 0.3", "\"foreign material [%]\": 99.1", "together: more than the whole sample")]
    [InlineData("\"damaged [%]\": 1.2", "\"damged [%]\": 1.2", "expected a known finding; the nearest is damaged [%]")]
    [InlineData("\"observed\": []", "\"observed\": [ \"stale\" ]", "$.observed[0]: read \"stale\"; expected something noticed: musty, sour")]
    [InlineData("\"none\"", "\"zero\"", "$.notLookedFor: read \"zero\"; expected one of missing, none")]
    public void Grade_BadCase_SaysWhatAndWhere(string old, string put, string said)
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", "grade-hrw.json"));
        Assert.Contains(old, text, StringComparison.Ordinal);
        var (status, output, error) = Shell.Run("intake", "grade", "--in", folder.File("case.json", text.Replace(old, put, StringComparison.Ordinal)), "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"throughSieve\": 3.85", "\"throughSieve\": 385", "$.weighings: read \"an object\"; expected a sample that can be. 385 g through the sieve out of 250.4 g")]
    [InlineData("\"HRS\": 96.6", "\"HRS\": 99.6", "$.classes: read \"an object\"; expected a sample that can be. The classes make 102.8 % together")]
    [InlineData("\"Durum\": 0.6", "\"Rye\": 0.6", "has no class \"Rye\"")]
    public void Grade_BadWeighingsOrClasses_SaysWhatAndWhere(string old, string put, string said)
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", "grade-weighings.json")).Replace(old, put, StringComparison.Ordinal);
        var (status, _, error) = Shell.Run("intake", "grade", "--in", folder.File("case.json", text), "--json");
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_FactorMissing_HasNoAnswerAndNamesIt()
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", "grade-hrw.json")).Replace("\"shrunken and broken [%]\": 1.4,", "", StringComparison.Ordinal).Replace("\"none\"", "\"missing\"", StringComparison.Ordinal);
        var (status, output, error) = Shell.Run("intake", "grade", "--in", folder.File("case.json", text), "--json");
        Assert.Equal((Exit.NoAnswer, ""), (status, output));
        Assert.All(["Missing for the grade:", "shrunken and broken", "glass", "U.S. No. 2 at best"], said => Assert.Contains(said, error, StringComparison.Ordinal));
    }

    [Fact]
    public void HouseClass_Kept_IsListedAndItsVersionNeverChanges()
    {
        using var folder = new Folder();
        var data = Path.Combine(folder.Path, "mill.db");
        Assert.Equal(Exit.Done, Shell.Run("mill", "new", "--data", data, "--name", "Little Mill").Status);
        var text = JsonDocument.Parse(File.ReadAllText(Repository.Sample("cases", "grade-house.json"))).RootElement.GetProperty("houseClass").GetRawText();
        Assert.Equal(Exit.Done, Shell.Run("intake", "house-class", "--in", folder.File("class.json", text), "--by", "Ada", "--data", data).Status);
        Assert.Contains("HW version 1, kept by Ada", Shell.Run("intake", "house-class", "--data", data).Output, StringComparison.Ordinal);
        var (status, _, error) = Shell.Run("intake", "house-class", "--in", folder.File("other.json", text.Replace("12.5", "12.7", StringComparison.Ordinal)), "--by", "Ada", "--data", data);
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains("is kept already", error, StringComparison.Ordinal);
        Assert.Equal(Exit.BadInput, Shell.Run("intake", "house-class", "--in", folder.File("bad.json", "{}"), "--by", "Ada", "--data", data).Status);
    }

    private static JsonElement Answer(string sample)
    {
        var (status, output, error) = Shell.Run("intake", "grade", "--in", Repository.Sample("cases", sample), "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        return JsonDocument.Parse(output).RootElement;
    }
}
