using Evengrist.Milling.Sheet;

namespace Evengrist.Tests.Milling.Sheet;

/// <summary>Every fault of a flow sheet provoked by one change to a sheet that has none.</summary>
public sealed class FlowSheetCheckTests
{
    [Fact]
    public void Small_AsItStands_HasNoFault() => Assert.Empty(Faults(Small.Json));

    [Theory]
    [InlineData("\"name\": \"Small\"", "\"name\": \" \"", "The unit has no name: say what it is called.")]
    [InlineData("\"tonnesPerDay\": 20", "\"tonnesPerDay\": -20", "-20 t in 24 h: what a unit is built for lies above 0 and is at most 5000.")]
    [InlineData("\"firstBreak\": \"B1\"", "\"firstBreak\": \"B9\"", "First break B9 is not among the passages: name the one that takes the wheat.")]
    [InlineData("\"code\": \"germ\", ", "\"code\": \"feed\", ", "feed stands there 2 times: passages and products each need a code of their own.")]
    [InlineData("\"code\": \"germ\", ", "\"code\": \" \", ", "A passage or product has no code: give it the mill's own.")]
    [InlineData("\"code\": \"germ\", ", "\"code\": \"germ-of-wheat\", ", "germ-of-wheat: a code has at most 12 characters, so that it can be drawn.")]
    [InlineData("\"code\": \"germ\", ", "\"code\": \"the germ\", ", "“the germ”: a code is one word without commas and per cent signs, so that it can be written beside shares.")]
    [InlineData("\"code\": \"germ\", ", "\"code\": \"germ,2\", ", "“germ,2”: a code is one word without commas and per cent signs, so that it can be written beside shares.")]
    [InlineData("\"kind\": \"Germ\"", "\"kind\": \"None\"", "germ: say what it is: flour, bran, wheatfeed or germ.")]
    [InlineData("\"kind\": \"Grading\"", "\"kind\": \"None\"", "G1: say what the passage is for.")]
    [InlineData("\"kind\": \"Grading\"", "\"kind\": \"Break\"", "G1: a break, sizing or reduction has rolls.")]
    [InlineData("\"kind\": \"Reduction\"", "\"kind\": \"Grading\"", "M1: only a break, sizing or reduction has rolls.")]
    [InlineData("\"kind\": \"Reduction\"", "\"kind\": \"Break\"", "M1: break rolls are fluted.")]
    [InlineData("\"detacher\": true", "\"detacher\": true, \"airMetresPerSecond\": 1", "S1: only a purifier has air.")]
    [InlineData("\"clothSquareMetres\": 6", "\"clothSquareMetres\": 6, \"detacher\": true", "B1: a detacher stands behind smooth rolls only.")]
    [InlineData("\"airMetresPerSecond\": 1.2, ", "", "P1: a purifier needs the speed of its air.")]
    [InlineData("\"airMetresPerSecond\": 1.2", "\"airMetresPerSecond\": 12", "P1: the air of a purifier moves at 0.2 to 3 m/s.")]
    [InlineData("\"lifted\": [{ \"to\": \"feed\" }], ", "", "P1: say where what the air lifts goes.")]
    [InlineData("\"detacher\": true", "\"detacher\": true, \"lifted\": [{ \"to\": \"feed\" }]", "S1: only a purifier's air lifts stock.")]
    [InlineData("\"cloths\": [{ \"apertureMicrometres\": 800, \"leaves\": \"Overs\", \"to\": [{ \"to\": \"germ\" }] }]", "\"cloths\": []", "G1: a sifter or finisher needs a cloth.")]
    [InlineData("\"clothSquareMetres\": 2", "\"clothSquareMetres\": 0", "P1: the cloth area lies above 0 and is at most 200 m².")]
    [InlineData("\"gapMicrometres\": 500", "\"gapMicrometres\": 5000", "B1: a roll gap lies from 10 to 2000 µm.")]
    [InlineData("\"lengthMillimetres\": 1000", "\"lengthMillimetres\": -1", "B1: the roll length lies from 100 to 50,000 mm.")]
    [InlineData("\"flutesPerCentimetre\": 4", "\"flutesPerCentimetre\": 40", "B1: flutes lie from 0 (smooth) to 16 for each centimetre.")]
    [InlineData("\"differential\": 2.5", "\"differential\": 0.5", "B1: the differential lies from 1 to 5.")]
    [InlineData("\"differential\": 2.5", "\"fastMetresPerSecond\": 60", "B1: the fast roll's speed lies from 1 to 15 m/s.")]
    [InlineData("\"disposition\": \"SharpToSharp\", ", "", "B1: fluted rolls have a disposition and smooth rolls have none.")]
    [InlineData("\"apertureMicrometres\": 450", "\"apertureMicrometres\": 0", "F1: a cloth of 0 µm: apertures lie above 0 and are at most 4000 µm.")]
    [InlineData("\"apertureMicrometres\": 450", "\"apertureMicrometres\": 4500", "F1: a cloth of 4500 µm: apertures lie above 0 and are at most 4000 µm.")]
    [InlineData("\"apertureMicrometres\": 800, \"leaves\": \"Overs\"", "\"apertureMicrometres\": 800, \"leaves\": \"None\"", "G1: cloth 800 µm: say whether its overs or its throughs leave.")]
    [InlineData("\"apertureMicrometres\": 300", "\"apertureMicrometres\": 1300", "B1: cloth 1300 µm stands after 1000 µm whose overs have left: nothing so coarse is left. Put the coarser cloth first.")]
    [InlineData("\"apertureMicrometres\": 600", "\"apertureMicrometres\": 350", "P1: cloth 350 µm stands after 400 µm whose throughs have left: nothing so fine is left. Put the finer cloth first.")]
    [InlineData("\"rest\": [{ \"to\": \"bran\" }]", "\"rest\": []", "F1: the rest: leads nowhere. Say which passage or product takes it.")]
    [InlineData("[{ \"to\": \"germ\" }]", "[]", "G1: overs of 800 µm: leads nowhere. Say which passage or product takes it.")]
    [InlineData("[{ \"to\": \"germ\" }]", "[{ \"to\": \"9M\" }]", "G1: overs of 800 µm: 9M is no passage and no product. Give the code of one.")]
    [InlineData("\"share\": 0.6", "\"share\": 0.7", "B1: the rest: the shares to M1, S1 add up to 1.1. Each lies above 0, and together they are 1.")]
    [InlineData("\"share\": 0.6", "\"share\": 0.599999", "B1: the rest: the shares to M1, S1 add up to 0.999999. Each lies above 0, and together they are 1.")]
    [InlineData("\"share\": 0.6 }, { \"to\": \"S1\", \"share\": 0.4 }", "\"share\": 1.5 }, { \"to\": \"S1\", \"share\": -0.5 }", "B1: the rest: the shares to M1, S1 add up to 1. Each lies above 0, and together they are 1.")]
    [InlineData("\"lifted\": [{ \"to\": \"feed\" }]", "\"lifted\": [{ \"to\": \"feed\", \"share\": 0.5 }]", "P1: what the air lifts: the shares to feed add up to 0.5. Each lies above 0, and together they are 1.")]
    [InlineData("[{ \"to\": \"germ\" }]", "[{ \"to\": \"feed\" }]", "germ: no stock reaches it. Lead an outlet there or take it out.")]
    [InlineData("[{ \"to\": \"G1\" }]", "[{ \"to\": \"M1\" }]", "G1: no stock reaches it. Lead an outlet there or take it out.")]
    public void Faults_OfOneChange_SayWhereAndWhat(string what, string by, string said) => Assert.Contains(said, Faults(Small.But(what, by)));

    [Fact]
    public void Faults_OfALoopWithoutALeak_NameThePassagesInIt()
    {
        // What lies on the coarse cloth is beaten and comes back to it, and so does all that is beaten off.
        var round = Small.But("\"to\": [{ \"to\": \"feed\" }] }], \"rest\": [{ \"to\": \"bran\" }]", "\"to\": [{ \"to\": \"F1\" }] }], \"rest\": [{ \"to\": \"F1\" }]");
        Assert.Contains("F1: stock goes round and never reaches a product. Lead one of their outlets out of the loop.", Faults(round));
    }

    [Fact]
    public void Faults_OfTooFewAndTooMany_SayHowMany()
    {
        Assert.True(FlowSheetJson.TryRead(Small.Json, out var sheet, out _));
        Assert.Equal(["There are 0 passages: give 1 to 200."], (sheet with { Passages = [] }).Faults());
        Assert.Equal(["There are 201 passages: give 1 to 200."], (sheet with { Passages = [.. Enumerable.Repeat(sheet.Passages[0], 201)] }).Faults());
        var cloths = Enumerable.Range(1, 13).Select(i => sheet.Passages[0].Cloths[0] with { ApertureMicrometres = 2000 - i }).ToArray();
        Assert.Contains("B1: at most 12 groups of cloths.", (sheet with { Passages = [sheet.Passages[0] with { Cloths = cloths }, .. sheet.Passages.Skip(1)] }).Faults());
    }

    private static IReadOnlyList<string> Faults(string json)
    {
        FlowSheetJson.TryRead(json, out _, out var faults);
        return faults;
    }
}
