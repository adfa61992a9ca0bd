using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Evengrist.Plant.Epcis;

/// <summary>
/// The event hash id of CBV 2.0: the same event gets the same identifier whoever sends it, however it is written. Left out of it: its own identifier, when it was recorded, a declaration that it is in error.
/// </summary>
/// <remarks>Where the words and the vectors of the published algorithm differ (type before value; destinations before sources) the vectors are followed. Page: docs/model/event-hash.md.</remarks>
internal static class EventHash
{
    private static readonly string[] ReportOrder =
    [
        "type", "exception", "deviceID", "deviceMetadata", "rawData", "dataProcessingMethod", "time", "microorganism", "chemicalSubstance", "value", "component", "stringValue", "booleanValue", "hexBinaryValue", "uriValue", "minValue",
        "maxValue", "meanValue", "sDev", "percRank", "percValue", "uom", "coordinateReferenceSystem",
    ];

    private static readonly string[] MetadataOrder = ["time", "startTime", "endTime", "deviceID", "deviceMetadata", "rawData", "dataProcessingMethod", "bizRules"];

    private static readonly string[] LeftOut = ["@context", "type", "eventID", "recordTime", "errorDeclaration"];

    /// <summary>The members of an event in the order of the algorithm.</summary>
    private static readonly (string Name, Func<Part, string, Prefixes, string> Write)[] Order =
    [
        ("eventTime", Time), ("eventTimeZoneOffset", Value), ("certificationInfo", Value), ("parentID", Value), ("epcList", Epcs), ("inputEPCList", Epcs), ("childEPCs", Epcs), ("quantityList", Quantities), ("childQuantityList", Quantities),
        ("inputQuantityList", Quantities), ("outputEPCList", Epcs), ("outputQuantityList", Quantities), ("action", Value), ("transformationID", Value), ("bizStep", (p, n, _) => Word(p, n, CbvWords.BusinessStep)),
        ("disposition", (p, n, _) => Word(p, n, CbvWords.Disposition)), ("persistentDisposition", Persistent), ("readPoint", Place), ("bizLocation", Place),
        ("bizTransactionList", (p, n, _) => Typed(p, n, "bizTransaction", CbvWords.TransactionType)), ("destinationList", (p, n, _) => Typed(p, n, "destination", CbvWords.SourceType)),
        ("sourceList", (p, n, _) => Typed(p, n, "source", CbvWords.SourceType)), ("sensorElementList", Sensors), ("ilmd", (p, n, x) => Named(n, Others(p, x, []))),
    ];

    private static readonly HashSet<string> Known = new(Order.Select(o => o.Name).Concat(LeftOut), StringComparer.Ordinal);

    /// <summary>What the hash is taken of.</summary>
    public static string PreHash(Part part, Prefixes prefixes)
    {
        var text = new StringBuilder("eventType=").Append(part.Member("type")?.Text.Trim());
        foreach (var (name, write) in Order)
        {
            if (part.Member(name) is { } member)
            {
                text.Append(write(member, name, prefixes));
            }
        }

        return text.Append(Others(part, prefixes, Known)).ToString();
    }

    /// <summary>The identifier of what is hashed.</summary>
    public static string Of(string preHash) => $"ni:///sha-256;{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(preHash)))}?ver=CBV2.0";

    private static string Time(Part part, string name, Prefixes prefixes) => Keyed(name, HashValue.OfTime(part.Json));

    private static string Value(Part part, string name, Prefixes prefixes) => part.Json.ValueKind == JsonValueKind.Array ? Sorted(part.Items().Select(i => Keyed(name, HashValue.Of(i.Json)))) : Keyed(name, HashValue.Of(part.Json));

    private static string Word(Part part, string name, CbvWords words) => part.Json.ValueKind == JsonValueKind.Array ? Sorted(part.Items().Select(i => Word(i, name, words))) : Keyed(name, HashValue.OfWord(part.Json, words));

    private static string Epcs(Part part, string name, Prefixes prefixes) => Named(name, Sorted(part.Items().Select(i => Keyed("epc", HashValue.Of(i.Json)))));

    private static string Quantities(Part part, string name, Prefixes prefixes) =>
        Named(name, Sorted(part.Items().Select(i => "quantityElement" + Member(i, "epcClass", Value) + Member(i, "quantity", Value) + Member(i, "uom", Value))));

    private static string Persistent(Part part, string name, Prefixes prefixes) =>
        Named(name, Member(part, "set", (p, n, _) => Word(p, n, CbvWords.Disposition)) + Member(part, "unset", (p, n, _) => Word(p, n, CbvWords.Disposition)));

    private static string Place(Part part, string name, Prefixes prefixes) => Named(name, Member(part, "id", Value) + Others(part, prefixes, ["id"]));

    private static string Typed(Part part, string name, string value, CbvWords types) =>
        Named(name, Sorted(part.Items().Select(i => Member(i, "type", (p, n, _) => Word(p, n, types)) + Member(i, value, Value))));

    private static string Sensors(Part part, string name, Prefixes prefixes) => Named(name, Sorted(part.Items().Select(sensor =>
        "sensorElement" + (sensor.Member("sensorMetadata") is { } data ? Named("sensorMetadata", InOrder(data, MetadataOrder, prefixes)) : "")
        + Sorted(sensor.Items("sensorReport").Select(report => "sensorReport" + InOrder(report, ReportOrder, prefixes))) + Others(sensor, prefixes, ["sensorMetadata", "sensorReport"]))));

    private static string InOrder(Part part, string[] order, Prefixes prefixes) =>
        string.Concat(order.Select(name => Member(part, name, name switch
        {
            "time" or "startTime" or "endTime" => Time,
            "type" => (p, n, _) => Word(p, n, CbvWords.Measurement),
            "exception" => (p, n, _) => Word(p, n, CbvWords.SensorAlert),
            "component" => (p, n, _) => Word(p, n, CbvWords.Component),
            _ => Value,
        }))) + Others(part, prefixes, order);

    // What stands under a name with a namespace, however deep, in the order of what is written of it.
    private static string Others(Part part, Prefixes prefixes, IReadOnlyCollection<string> known) => part.Json.ValueKind != JsonValueKind.Object ? "" : Sorted(part.Json.EnumerateObject()
        .Where(m => !known.Contains(m.Name) && m.Name != "rdfs:comment")
        .SelectMany(m => Other(prefixes.Long(m.Name), new Part(m.Value, part.Path), prefixes)));

    private static IEnumerable<string> Other(string name, Part part, Prefixes prefixes) => part.Json.ValueKind switch
    {
        JsonValueKind.Array => part.Items().SelectMany(i => Other(name, i, prefixes)),
        JsonValueKind.Object => [name + Others(part, prefixes, [])],
        _ => [HashValue.Of(part.Json) is { Length: > 0 } value ? $"{name}={value}" : name],
    };

    private static string Member(Part part, string name, Func<Part, string, Prefixes, string> write) => part.Member(name) is { } member ? write(member, name, Prefixes.None) : "";

    private static string Keyed(string name, string value) => value.Length > 0 ? $"{name}={value}" : "";

    private static string Named(string name, string content) => content.Length > 0 ? name + content : "";

    private static string Sorted(IEnumerable<string> texts) => string.Concat(texts.Order(StringComparer.Ordinal));
}
