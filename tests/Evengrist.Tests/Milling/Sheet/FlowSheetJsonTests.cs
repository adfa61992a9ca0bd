using Evengrist.Milling.Sheet;

namespace Evengrist.Tests.Milling.Sheet;

public sealed class FlowSheetJsonTests
{
    [Fact]
    public void Json_ThereAndBack_IsTheSame()
    {
        Assert.True(FlowSheetJson.TryRead(Small.Json, out var sheet, out _));
        var json = FlowSheetJson.Write(sheet);
        Assert.True(FlowSheetJson.TryRead(json, out var again, out _));
        Assert.Equal(json, FlowSheetJson.Write(again));
        Assert.Equal(sheet.Passages[3].Lifted, again.Passages[3].Lifted);
        Assert.Equal(sheet.Passages[0].Rolls, again.Passages[0].Rolls);
        Assert.Equal([true, false], again.Passages.Skip(1).Take(2).Select(p => p.Detacher));
        Assert.Equal([0.6, 0.4], again.Passages[0].Rest.Select(s => s.Share));
    }

    [Fact]
    public void Write_ASheet_GivesEachClothALine()
    {
        Assert.True(FlowSheetJson.TryRead(Small.Json, out var sheet, out _));
        var lines = FlowSheetJson.Write(sheet).Split('\n');
        Assert.Contains("        { \"apertureMicrometres\": 300, \"leaves\": \"Overs\", \"to\": [{ \"to\": \"P1\" }] },", lines);
        Assert.All(lines, l => Assert.InRange(l.Length, 0, 192));
    }

    [Theory]
    [InlineData("\"kind\": \"Sizing\"", "\"kind\": \"Grinding\"", "S1, passages[1].kind (line 12): write one of Break, Sizing, Reduction, Purifying, Finishing, Grading.")]
    [InlineData("\"gapMicrometres\": 500", "\"gapMicrometres\": \"500\"", "write a number, without quotes")]
    [InlineData("\"leaves\": \"Overs\", \"to\": [{ \"to\": \"germ\" }]", "\"to\": [{ \"to\": \"germ\" }]", "G1, passages[5].cloths[0]: leaves must be there and is missing.")]
    [InlineData("\"code\": \"S1\"", "\"code\": 5", "passages[1].code (line 12): write a text in quotes.")]
    [InlineData("{ \"code\": \"germ\", \"kind\": \"Germ\" }", "{ \"code\": \"germ\", \"kind\": 4 }", "germ, products[4].kind")]
    [InlineData("\"detacher\"", "\"detachers\"", "\"detachers\" (line 12")]
    [InlineData("\"detacher\": true", "\"outlets\": []", "\"outlets\" (line 12")]
    [InlineData("{ \"to\": \"germ\" }", "null", "G1: a cloth or a spout is null; give it or take it out.")]
    [InlineData("{ \"code\": \"germ\", \"kind\": \"Germ\" }", "null", "A flow sheet is an object with a name")]
    [InlineData("\"products\"", "\"passages\"", "\"passages\" (line")]
    public void TryRead_TextThatCannotBe_IsRefusedInWords(string what, string by, string said)
    {
        Assert.False(FlowSheetJson.TryRead(Small.But(what, by), out _, out var faults));
        Assert.Contains(faults, f => f.Contains(said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("null")]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{ \"name\": ")]
    public void TryRead_NoSheetAtAll_IsRefused(string json)
    {
        Assert.False(FlowSheetJson.TryRead(json, out _, out var faults));
        Assert.All(faults, f => Assert.NotEmpty(f));
        Assert.NotEmpty(faults);
    }

    [Fact]
    public void Paper_ThereAndBack_KeepsWhy()
    {
        Assert.True(FlowSheetJson.TryRead(Small.Json, out var sheet, out _));
        var json = FlowSheetJson.Write(new FlowSheetPaper("Rolls were changed.", sheet));
        Assert.True(FlowSheetJson.TryReadPaper(json, out var paper, out _));
        Assert.Equal(("Rolls were changed.", FlowSheetJson.Write(sheet)), (paper.Reason, FlowSheetJson.Write(paper.Sheet)));
        Assert.False(FlowSheetJson.TryReadPaper(json.Replace("Rolls were changed.", " ", StringComparison.Ordinal), out _, out var faults));
        Assert.StartsWith("Say why this version is made", faults.Single(), StringComparison.Ordinal);
        Assert.False(FlowSheetJson.TryReadPaper("null", out _, out _));
        Assert.False(FlowSheetJson.TryReadPaper("{ \"reason\": \"none\" }", out _, out _));
    }
}
