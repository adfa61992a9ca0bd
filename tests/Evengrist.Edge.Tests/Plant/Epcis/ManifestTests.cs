using Evengrist.Tests;

namespace Evengrist.Edge.Tests.Plant.Epcis;

/// <summary>Every open document behaves as the manifest of the collection says, which two validators of other people wrote.</summary>
public sealed class ManifestTests
{
    private const string BySense = "semantic-11-aggregation-add-no-parent.jsonld";

    [OpenDataFact]
    public void Read_EveryFileOfTheManifest_IsValidOrNotUnderTheRatifiedRulesAsItSays()
    {
        var files = EpcisFiles.Manifest();
        Assert.Equal(74, files.Count);
        Assert.Empty(files.Where(f => f.File != BySense).Select(f => (f.File, f.Ratified, Read: EpcisFiles.Read(EpcisFiles.Text(f.File))))
            .Where(f => f.Read.Ok != f.Ratified).Select(f => $"{f.File}: {(f.Ratified ? string.Join(" | ", f.Read.Faults) : "taken as valid")}"));
    }

    [OpenDataFact]
    public void Read_AggregationWithoutParent_IsRefusedByItsMeaning()
    {
        var fault = Assert.Single(EpcisFiles.Read(EpcisFiles.Text(BySense)).Faults);
        Assert.Contains("parentID is missing", fault.Expected, StringComparison.Ordinal);
        Assert.StartsWith("$.epcisBody.eventList[", fault.Name, StringComparison.Ordinal);
    }

    [OpenDataFact]
    public void Validate_EveryFileOfTheManifest_SchemaSaysWhatItSays()
    {
        // That the validator used on our own documents tells good from bad.
        Assert.Empty(EpcisFiles.Manifest().Where(f => BundledSchema.IsValid(EpcisFiles.Text(f.File)) != f.Bundled).Select(f => f.File));
    }

    // The reason of each case is in its name and in the collection's own list; the path and the words are ours.
    [OpenDataTheory]
    [InlineData("01-no-eventTime", "$.epcisBody.eventList[0].eventTime", "it is missing")]
    [InlineData("02-no-timezone-offset", "$.epcisBody.eventList[0].eventTimeZoneOffset", "it is missing")]
    [InlineData("03-offset-z", "$.epcisBody.eventList[0].eventTimeZoneOffset", "Z may not stand here")]
    [InlineData("04-object-no-action", "$.epcisBody.eventList[0].action", "it is missing")]
    [InlineData("05-object-nothing-observed", "$.epcisBody.eventList[0]", "what was observed")]
    [InlineData("06-object-ilmd-with-observe", "$.epcisBody.eventList[0].ilmd", "only with the action ADD")]
    [InlineData("07-unknown-bizstep", "$.epcisBody.eventList[0].bizStep", "a business step of CBV 2.0")]
    [InlineData("08-unknown-disposition", "$.epcisBody.eventList[0].disposition", "a disposition of CBV 2.0")]
    [InlineData("09-transformation-no-output-no-id", "$.epcisBody.eventList[0]", "what went in and what came out")]
    [InlineData("10-transformation-with-action", "$.epcisBody.eventList[0].action", "a member of your own needs a namespace")]
    [InlineData("12-aggregation-add-no-children", "$.epcisBody.eventList[0]", "childEPCs or childQuantityList")]
    [InlineData("13-transaction-no-biztransaction", "$.epcisBody.eventList[0].bizTransactionList", "it is missing")]
    [InlineData("14-association-no-parent", "$.epcisBody.eventList[0].parentID", "it is missing")]
    [InlineData("15-uom-lower-case", "$.epcisBody.eventList[0].quantityList[0].uom", "Recommendation 20")]
    [InlineData("16-quantity-as-string", "$.epcisBody.eventList[0].quantityList[0].quantity", "not in quotes")]
    [InlineData("17-duplicate-epc", "$.epcisBody.eventList[0].epcList[1]", "each only once")]
    [InlineData("18-full-urn-bizstep", "$.epcisBody.eventList[0].bizStep", "as the bare word")]
    [InlineData("19-bare-extension-key", "$.epcisBody.eventList[0].", "needs a namespace before it")]
    [InlineData("20-empty-persistent-disposition", "$.epcisBody.eventList[0].persistentDisposition", "set, unset, or both")]
    [InlineData("21-no-context", "$.@context", "it is missing")]
    [InlineData("22-no-creationDate", "$.creationDate", "it is missing")]
    [InlineData("23-source-without-type", "$.epcisBody.eventList[0].sourceList[0].type", "it is missing")]
    [InlineData("24-error-declaration-no-time", "$.epcisBody.eventList[0].errorDeclaration.declarationTime", "it is missing")]
    public void Read_NegativeCase_IsRefusedForItsReasonAndNoOther(string name, string path, string words)
    {
        var fault = Assert.Single(EpcisFiles.Read(EpcisFiles.Text($"invalid-{name}.jsonld")).Faults);
        Assert.StartsWith(path, fault.Name, StringComparison.Ordinal);
        Assert.Contains(words, fault.Expected, StringComparison.Ordinal);
    }
}
