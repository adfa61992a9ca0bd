using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using NodaTime;

namespace Evengrist.Plant.Epcis.Writing;

/// <summary>An event being written: members in the order in which they are set, its identifier reckoned at the end.</summary>
internal sealed class WrittenEvent
{
    private static readonly Prefixes OurPrefixes = new(new Part(JsonSerializer.SerializeToElement(new Dictionary<string, string> { ["mill"] = MillNames.Terms }), PathTo.Root));
    private readonly JsonObject json = [];

    public WrittenEvent(string type, Instant at, DateTimeZone zone)
    {
        json["type"] = type;
        json["eventTime"] = at.InUtc().LocalDateTime.ToString("uuuu-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture);

        // Offsets of whole minutes only may be written; zones of before 1930 had others.
        var minutes = zone.GetUtcOffset(at).Seconds / 60;
        json["eventTimeZoneOffset"] = string.Create(CultureInfo.InvariantCulture, $"{(minutes < 0 ? '-' : '+')}{Math.Abs(minutes) / 60:00}:{Math.Abs(minutes) % 60:00}");
    }

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

    /// <summary>Declares it, that is the same event as it was sent before, to be in error.</summary>
    /// <param name="corrected">Identifier of what stands in for it; null where nothing does.</param>
    public WrittenEvent Wrong(Instant declared, string? corrected)
    {
        var error = new JsonObject { ["declarationTime"] = declared.InUtc().LocalDateTime.ToString("uuuu-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture), ["reason"] = corrected is null ? "did_not_occur" : "incorrect_data" };
        if (corrected is not null)
        {
            error["correctiveEventIDs"] = new JsonArray(corrected);
        }

        json["errorDeclaration"] = error;
        return this;
    }

    public void WriteTo(Utf8JsonWriter writer)
    {
        json.Insert(1, "eventID", Id());
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
