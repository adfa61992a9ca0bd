using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Evengrist.Plant.Epcis.Writing;
using NodaTime;

namespace Evengrist.Plant.Epcis.Sending;

/// <summary>An event of ours as one line of JSON without its identifier, which is reckoned from it: what is kept of it, compared, and sent again.</summary>
/// <param name="Json">The line.</param>
internal readonly record struct EventText(string Json)
{
    private const string Again = ",\"mill:toldAgain\":";

    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly string[] Subjects = ["quantityList", "outputQuantityList", "childQuantityList"];

    /// <summary>As the ledger says it: without how often it was told again.</summary>
    public EventText Said => Json.LastIndexOf(Again, StringComparison.Ordinal) is >= 0 and var at ? new(string.Concat(Json.AsSpan(0, at), "}")) : this;

    /// <summary>Half of the SHA-256 of the line: two lines of one mill that differ do not share it.</summary>
    public UInt128 Key => BinaryPrimitives.ReadUInt128BigEndian(SHA256.HashData(Encoding.UTF8.GetBytes(Json)));

    /// <summary>When it happened, milliseconds of Unix time.</summary>
    public long Moment => EventTime.Of(Read("eventTime"))!.Value.ToUnixTimeMilliseconds();

    /// <summary>Its identifier by what it says.</summary>
    public string Id => EventHash.Of(EventHash.PreHash(Whole, WrittenEvent.OurPrefixes));

    private Part Whole => new(JsonElement.Parse(Json), PathTo.Root);

    /// <summary>The same event told again after it was declared wrong: by itself it would stay wrong for whoever got the declaration.</summary>
    /// <param name="times">How often it was declared wrong.</param>
    public EventText ToldAgain(int times) => times == 0 ? this : new(string.Create(CultureInfo.InvariantCulture, $"{Json.AsSpan(0, Json.Length - 1)}{Again}{times}}}"));

    /// <summary>With its identifier, as it stands in a document.</summary>
    public string Named() => Json.Insert(Json.IndexOf(',', StringComparison.Ordinal), $",\"eventID\":\"{Id}\"");

    /// <summary>With its identifier and the declaration that it is in error.</summary>
    /// <param name="declared">When it is declared.</param>
    /// <param name="corrective">Identifiers of what stands in for it; where there are none, it did not occur.</param>
    public string Wrong(Instant declared, IReadOnlyList<string> corrective)
    {
        var json = JsonNode.Parse(Named())!.AsObject();
        json["errorDeclaration"] = WrittenEvent.Declaration(Instant.Max(declared, Instant.FromUnixTimeMilliseconds(Moment)), corrective);
        return json.ToJsonString(Plain);
    }

    /// <summary>What sort of event it is, what it is about, and where it was seen: by these what stands in for it is found.</summary>
    public (string Sort, string Subject, string Where) Likeness()
    {
        var whole = Whole;
        var subject = (whole.Member("transformationID") ?? whole.Member("parentID"))?.Text is { } named ? named : whole.Member("epcList") is { } epcs && epcs.Items().FirstOrDefault() is { Json.ValueKind: JsonValueKind.String } first ? first.Text
            : Subjects.Select(l => whole.Items(l).Select(q => q.Member("epcClass")?.Text).FirstOrDefault()).FirstOrDefault(s => s is not null) ?? "";
        return (Of(whole, "type") + " " + Of(whole, "action") + " " + Of(whole, "bizStep"), MillNames.CodeIn(subject), whole.Member("readPoint")?.Member("id")?.Text ?? "");
    }

    private static string Of(Part whole, string member) => whole.Member(member)?.Text ?? "";

    private string Read(string member) => Of(Whole, member);
}
