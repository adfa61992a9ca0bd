using Evengrist.Plant.Epcis;

namespace Evengrist.Edge.Tests.Plant.Epcis;

/// <summary>What has the right form and still cannot be meant, and what is asked about.</summary>
public sealed class MeaningTests
{
    private const string When = "\"eventTime\":\"2025-01-02T00:00:00Z\",\"eventTimeZoneOffset\":\"+00:00\"";

    [Theory]
    [InlineData("AggregationEvent", "\"action\":\"DELETE\"", "parentID is missing")]
    [InlineData("ObjectEvent", "\"action\":\"ADD\",\"epcList\":[],\"recordTime\":\"2025-01-01T00:00:00Z\"", "nothing is recorded before it happens")]
    [InlineData("ObjectEvent", "\"action\":\"ADD\",\"epcList\":[],\"errorDeclaration\":{\"declarationTime\":\"2025-01-01T00:00:00Z\"}", "an error is declared after the event")]
    [InlineData("ObjectEvent", "\"action\":\"ADD\",\"quantityList\":[{\"epcClass\":\"a:b\",\"quantity\":-1,\"uom\":\"KGM\"}]", "at least zero")]
    [InlineData("ObjectEvent", "\"action\":\"ADD\",\"quantityList\":[{\"epcClass\":\"a:b\",\"quantity\":1e999}]", "at least zero")]
    [InlineData("ObjectEvent", "\"action\":\"ADD\",\"quantityList\":[{\"epcClass\":\"a:b\",\"uom\":\"KGM\"}]", "a unit of nothing")]
    [InlineData("ObjectEvent", "\"action\":\"ADD\",\"quantityList\":[{\"epcClass\":\"a:b\",\"quantity\":40,\"uom\":\"BG\"}]", "Count bags without uom")]
    [InlineData("ObjectEvent", "\"action\":\"ADD\",\"epcList\":[],\"eventID\":\"a:1\",\"errorDeclaration\":{\"declarationTime\":\"2025-01-03T00:00:00Z\",\"correctiveEventIDs\":[\"a:1\"]}", "names the event itself")]
    public void Read_CannotBeMeant_IsRefused(string type, string members, string words) =>
        Assert.Contains(words, Assert.Single(Event(type, members).Faults).ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData(1000, "KGM", 1000, "KGM", false)]
    [InlineData(1, "TNE", 985, "KGM", false)]
    [InlineData(1, "TNE", 900, "KGM", true)]
    [InlineData(2204.6, "LBR", 1, "TNE", false)]
    public void Read_TransformationThatDoesNotBalance_IsAskedAboutAndTaken(double put, string putUnit, double got, string gotUnit, bool asked) =>
        Assert.Equal(asked, Event("TransformationEvent", FormattableString.Invariant($$"""
            "inputQuantityList":[{"epcClass":"a:b","quantity":{{put}},"uom":"{{putUnit}}"}],"outputQuantityList":[{"epcClass":"a:c","quantity":{{got}},"uom":"{{gotUnit}}"}]
            """)).Value.Asked.Count > 0);

    // Check digits: GS1 General Specifications, modulo 10 with weights 3 and 1; the right ones stand in the published vectors of the event hash.
    [Theory]
    [InlineData("https://id.gs1.org/01/04012345123456/10/Lot987", false)]
    [InlineData("https://id.gs1.org/01/04012345123457/10/Lot987", true)]
    [InlineData("https://mill.example/some/way/01/04012345123457/10/Lot987?a=b", true)]
    [InlineData("https://id.gs1.org/00/340123451111111111", false)]
    [InlineData("https://id.gs1.org/00/340123451111111112", true)]
    [InlineData("urn:epc:class:lgtin:4012345.012345.Lot987", false)]
    public void Read_KeyWithAWrongCheckDigit_IsAskedAboutAtItsPlace(string id, bool asked)
    {
        var found = Event("ObjectEvent", $$"""
            "action":"ADD","quantityList":[{"epcClass":"{{id}}","quantity":1,"uom":"KGM"}]
            """).Value.Asked.Select(a => a.ToString()).ToArray();
        Assert.Equal(asked, found.Length == 1 && found[0].Contains("check digit", StringComparison.Ordinal) && found[0].Contains("quantityList[0].epcClass", StringComparison.Ordinal));
        Assert.Equal(asked ? 1 : 0, found.Length);
    }

    [Fact]
    public void Read_Bushels_AreAskedAboutAsTheyAreNoMass() =>
        Assert.Contains("is a volume", Assert.Single(Event("ObjectEvent", "\"action\":\"ADD\",\"quantityList\":[{\"epcClass\":\"a:b\",\"quantity\":900,\"uom\":\"BUA\"}]").Value.Asked).ToString(), StringComparison.Ordinal);

    // Factors: UN/CEFACT Recommendation 20 (August 2024); pound 0.45359237 kg by definition.
    [Theory]
    [InlineData("KGM", 1)]
    [InlineData("TNE", 1000)]
    [InlineData("DTN", 100)]
    [InlineData("LBR", 0.45359237)]
    [InlineData("CWA", 45.3592)]
    [InlineData("CWI", 50.80235)]
    [InlineData("STN", 907.1847)]
    [InlineData("LTN", 1016.047)]
    public void ToKilograms_UnitOfMass_IsItsFactor(string code, decimal kilograms) => Assert.Equal(2 * kilograms, UnitCode.ToKilograms(2, code).Kilograms);

    [Theory]
    [InlineData("BUA", "60 lb has no code")]
    [InlineData("BUI", "60 lb has no code")]
    [InlineData("H87", "no unit of mass")]
    [InlineData("XXX", "no unit known here")]
    public void ToKilograms_NoMass_IsRefusedInWords(string code, string words)
    {
        var (kilograms, why) = UnitCode.ToKilograms(900, code);
        Assert.Null(kilograms);
        Assert.Contains(words, why, StringComparison.Ordinal);
    }

    private static Evengrist.Plant.Parsed<EpcisDocument> Event(string type, string members) =>
        EpcisFiles.Read($$"""{"@context":"https://ref.gs1.org/standards/epcis/2.0.0/epcis-context.jsonld","type":"{{type}}",{{When}},{{members}}}""");
}
