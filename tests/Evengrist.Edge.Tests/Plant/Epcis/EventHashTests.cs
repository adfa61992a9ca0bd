using Evengrist.Plant.Epcis;
using Evengrist.Tests;

namespace Evengrist.Edge.Tests.Plant.Epcis;

/// <summary>Event hash ids against the published vectors: what is hashed and the hash, to the letter.</summary>
public sealed class EventHashTests
{
    // Origin of the vectors: RalphTro/epcis-event-hash-generator (MIT), commit 5d2f1c3, tests/examples.
    [OpenDataTheory]
    [InlineData("ReferenceEventHashAlgorithm")]
    [InlineData("ReferenceEventHashAlgorithm2")]
    [InlineData("ReferenceEventHashAlgorithm3")]
    [InlineData("TimeStampRoundOff")]
    [InlineData("epcisDocWithShippingAndTransportingEvent")]
    [InlineData("epcisDocWithSingleEvent")]
    [InlineData("epcisDocWithVariousEventTypes")]
    [InlineData("epclist_normalisation")]
    [InlineData("persistentDisposition")]
    public void Hash_PublishedVector_IsTheSame(string name)
    {
        var events = EpcisFiles.Read(EpcisFiles.Text(name + ".jsonld")).Value.Events;
        Assert.Equal(Lines(name + ".prehashes"), events.Select(e => e.PreHash));
        Assert.Equal(Lines(name + ".hashes"), events.Select(e => e.Hash));
    }

    [OpenDataFact]
    public void Hash_MillDay_IsTheSameAsAnIndependentImplementationSays()
    {
        var rows = EpcisFiles.Text("valid-mill-day.hashes.tsv").Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(l => l.Split('\t')).ToList();
        var events = EpcisFiles.Read(EpcisFiles.Text("valid-mill-day.jsonld")).Value.Events;
        Assert.Equal(rows.Select(r => (r[1], r[2], r[3], r[4])), events.Select(e => (e.Type, e.Step, e.Hash, e.PreHash)));
    }

    [Fact]
    public void Hash_SmallestPublishedVector_IsTheSame() => // the same source, so that the algorithm is tested where the open data do not lie too
        Assert.Equal("ni:///sha-256;af7658e711574363633f20b3dadc7bc4c13c6f612cf96d95e03c421c0e58f3c6?ver=CBV2.0", One("""
            "eventTime": "2023-02-02T11:04:03.1415Z", "eventTimeZoneOffset": "+01:00", "epcList": ["https://id.gs1.de/00/040123451111111110"], "action": "OBSERVE", "bizStep": "shipping", "disposition": "in_transit",
            "readPoint": {"id": "https://id.gs1.de/414/4012345000115"}
            """));

    [Fact]
    public void Hash_SameEventWrittenOtherwise_IsTheSame()
    {
        var one = One("""
            "eventTime": "2024-09-14T06:12:30Z", "eventTimeZoneOffset": "+02:00", "action": "ADD", "bizStep": "receiving", "readPoint": {"id": "urn:epc:id:sgln:9521234.00001.PIT-1"},
            "quantityList": [{"epcClass": "urn:epc:class:lgtin:9521234.000001.T1", "quantity": 26980, "uom": "KGM"}, {"epcClass": "urn:epc:class:lgtin:9521234.000001.T2", "quantity": 1.50, "uom": "KGM"}]
            """);
        Assert.Equal(one, One("""
            "quantityList": [{"uom": "KGM", "quantity": 1.5, "epcClass": "https://example.org/gtin/9521234000013/lot/T2?17=250101"}, {"epcClass": "https://id.gs1.org/01/09521234000013/10/T1", "quantity": 26980.000, "uom": "KGM"}],
            "readPoint": {"id": "https://mill.example/some/path/gln/9521234000013/254/PIT-1"}, "eventTimeZoneOffset": "+02:00", "eventTime": "2024-09-14T08:12:30.000+02:00", "action": "ADD", "bizStep": "https://ref.gs1.org/cbv/BizStep-receiving",
            "eventID": "urn:uuid:0f3ef31d-7a0b-4e0e-9ac8-0e0d9f8c9f10", "recordTime": "2024-09-15T00:00:00Z",
            "errorDeclaration": {"declarationTime": "2024-09-16T00:00:00Z", "reason": "incorrect_data"}
            """));
        Assert.NotEqual(one, One("""
            "eventTime": "2024-09-14T06:12:30Z", "eventTimeZoneOffset": "+02:00", "action": "ADD", "bizStep": "receiving", "readPoint": {"id": "urn:epc:id:sgln:9521234.00001.PIT-1"},
            "quantityList": [{"epcClass": "urn:epc:class:lgtin:9521234.000001.T1", "quantity": 26980, "uom": "KGM"}]
            """));
    }

    [OpenDataFact]
    public void Alone_EventsOfEveryDocument_KeepTheirHash()
    {
        foreach (var (file, _, _) in EpcisFiles.Manifest().Where(f => f.Ratified && EpcisFiles.Read(EpcisFiles.Text(f.File)).Ok))
        {
            var document = EpcisFiles.Read(EpcisFiles.Text(file)).Value;
            Assert.All(document.Alone(), a => Assert.Equal((a.Hash, a.Hash), (EpcisEvent.Known(a.Hash, a.Json).Hash, EpcisFiles.Read(a.Json).Value.Events.Single().Hash)));
        }
    }

    private static string One(string members) => Assert.Single(EpcisFiles.Read($$"""
        {"@context": "https://ref.gs1.org/standards/epcis/2.0.0/epcis-context.jsonld", "type": "ObjectEvent", {{members}}}
        """).Value.Events).Hash;

    private static string[] Lines(string file) => EpcisFiles.Text(file).Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
