using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Evengrist.Plant.Epcis.Sending;
using NodaTime;

namespace Evengrist.Plant.Epcis.Writing;

/// <summary>An event being written: members in the order in which they are set, its identifier reckoned at the end.</summary>
internal sealed class WrittenEvent
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private readonly JsonObject json = [];
    private JsonObject? error;

    public WrittenEvent(string type, Instant at, DateTimeZone zone)
    {
        json["type"] = type;
        json["eventTime"] = at.InUtc().LocalDateTime.ToString("uuuu-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);

        // Offsets of whole minutes only may be written; zones of before 1930 had others.
        var minutes = zone.GetUtcOffset(at).Seconds / 60;
        json["eventTimeZoneOffset"] = string.Create(CultureInfo.InvariantCulture, $"{(minutes < 0 ? '-' : '+')}{Math.Abs(minutes) / 60:00}:{Math.Abs(minutes) % 60:00}");
    }

    /// <summary>Prefixes of the names that are ours.</summary>
    public static Prefixes OurPrefixes { get; } = new(new Part(JsonSerializer.SerializeToElement(new Dictionary<string, string> { ["mill"] = MillNames.Terms }), PathTo.Root));

    /// <summary>Whether it is declared wrong.</summary>
    public bool IsWrong => error is not null;

    /// <summary>What stands in for it where it is declared wrong; null where nothing does.</summary>
    public WrittenEvent? Corrective { get; private set; }

    public WrittenEvent Set(string name, string? value)
    {
        if (value is { Length: > 0 })
        {
            json[name] = value;
        }

        return this;
    }

    public WrittenEvent Set(string name, decimal value)
    {
        json[name] = value;
        return this;
    }

    public WrittenEvent Epcs(string list, params IEnumerable<string> epcs) => Put(list, epcs.Select(e => (JsonNode)e));

    public WrittenEvent Kilograms(string list, params IEnumerable<(string Lot, decimal Kilograms)> quantities) =>
        Put(list, quantities.Select(q => (JsonNode)new JsonObject { ["epcClass"] = q.Lot, ["quantity"] = q.Kilograms, ["uom"] = "KGM" }));

    /// <summary>A lot whose mass may not be known: then it is named alone.</summary>
    public WrittenEvent Kilograms(string list, (string Lot, decimal? Kilograms) quantity) =>
        quantity.Kilograms is { } known ? Kilograms(list, [(quantity.Lot, known)]) : Put(list, [new JsonObject { ["epcClass"] = quantity.Lot }]);

    /// <summary>A lot by its kilograms, or as a count of bags beside them.</summary>
    public WrittenEvent Goods(string list, (string Lot, decimal Kilograms) loose, (string Lot, int Count)? bags) => bags is not var (lot, count) ? Kilograms(list, loose)
        : Put(list, [new JsonObject { ["epcClass"] = lot, ["quantity"] = count }]).Set("mill:kilograms", loose.Kilograms);

    public WrittenEvent At(string name, string place)
    {
        json[name] = new JsonObject { ["id"] = place };
        return this;
    }

    /// <summary>What holds from now on, or no longer does: a recall.</summary>
    public WrittenEvent Lasting(string how, string disposition)
    {
        if (disposition.Length > 0)
        {
            json["persistentDisposition"] = new JsonObject { [how] = new JsonArray(disposition) };
        }

        return this;
    }

    public WrittenEvent Typed(string list, string member, params IEnumerable<(string Type, string Value)> all) => Put(list, all.Select(a => (JsonNode)new JsonObject { ["type"] = a.Type, [member] = a.Value }));

    public WrittenEvent Ilmd(params IEnumerable<(string Name, string Value)> members)
    {
        var given = members.Where(m => m.Value.Length > 0).ToList();
        if (given.Count > 0)
        {
            json["ilmd"] = new JsonObject(given.Select(m => KeyValuePair.Create(m.Name, (JsonNode?)m.Value)));
        }

        return this;
    }

    /// <summary>The identifier by what it says.</summary>
    public string Id() => EventHash.Of(EventHash.PreHash(new Part(JsonSerializer.SerializeToElement(json), PathTo.Root), OurPrefixes));

    /// <summary>As one line, without its identifier and without a declaration.</summary>
    public EventText Text() => new(json.ToJsonString(Plain));

    /// <summary>Declares it, that is the same event as it was sent before, to be in error.</summary>
    /// <param name="declared">When.</param>
    /// <param name="corrective">What stands in for it; null where nothing does.</param>
    public WrittenEvent Wrong(Instant declared, WrittenEvent? corrective)
    {
        (Corrective, error) = (corrective, Declaration(declared, corrective is null ? [] : [corrective.Id()]));
        return this;
    }

    /// <summary>The declaration of an error.</summary>
    /// <param name="declared">When.</param>
    /// <param name="corrective">Identifiers of what stands in; where there are none, it did not occur.</param>
    public static JsonObject Declaration(Instant declared, IReadOnlyList<string> corrective)
    {
        var error = new JsonObject { ["declarationTime"] = declared.InUtc().LocalDateTime.ToString("uuuu-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture), ["reason"] = corrective.Count == 0 ? "did_not_occur" : "incorrect_data" };
        if (corrective.Count > 0)
        {
            error["correctiveEventIDs"] = new JsonArray([.. corrective.Select(c => (JsonNode)c)]);
        }

        return error;
    }

    public void WriteTo(Utf8JsonWriter writer)
    {
        json.Insert(1, "eventID", Id());
        if (error is not null)
        {
            json["errorDeclaration"] = error;
        }

        json.WriteTo(writer);
    }

    private WrittenEvent Put(string list, IEnumerable<JsonNode> items)
    {
        var array = new JsonArray([.. items]);
        if (array.Count > 0)
        {
            json[list] = array;
        }

        return this;
    }
}
