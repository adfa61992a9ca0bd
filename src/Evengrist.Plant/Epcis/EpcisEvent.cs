using System.Text.Json;
using Evengrist.Plant.Epcis.Sending;
using Evengrist.Plant.Epcis.Writing;
using NodaTime;

namespace Evengrist.Plant.Epcis;

/// <summary>An event of a document.</summary>
/// <param name="Json">As it stands there.</param>
/// <param name="PreHash">What its identifier is the hash of; empty for one that was kept under its hash.</param>
/// <param name="Hash">Its identifier by what it says: the event hash id of CBV 2.0.</param>
public sealed record EpcisEvent(JsonElement Json, string PreHash, string Hash)
{
    /// <summary>Its type, such as <c>ObjectEvent</c>.</summary>
    public string Type => Text("type");

    /// <summary>When it happened.</summary>
    public Instant At => EventTime.Of(Text("eventTime"))!.Value;

    /// <summary>The business step; empty where none is given.</summary>
    public string Step => Text("bizStep");

    /// <summary>The disposition; empty where none is given.</summary>
    public string Disposition => Text("disposition");

    /// <summary>Its own identifier where it gives one.</summary>
    public string Id => Text("eventID");

    /// <summary>Where it was seen; empty where it does not say.</summary>
    public string ReadPoint => Whole.Member("readPoint")?.Member("id")?.Text ?? "";

    /// <summary>Whether it declares itself, that is the same event before, to be in error.</summary>
    public bool DeclaresError => Whole.Has("errorDeclaration");

    /// <summary>Identifiers of what corrects it, where it declares an error.</summary>
    public IReadOnlyList<string> CorrectedBy => Whole.Member("errorDeclaration") is { } error ? [.. error.Items("correctiveEventIDs").Select(c => c.Text)] : [];

    /// <summary>What it is about: instances and classes, each once, as they stand.</summary>
    public IReadOnlyList<string> Things =>
    [
        .. new[] { "epcList", "childEPCs", "inputEPCList", "outputEPCList" }.SelectMany(l => Whole.Items(l).Select(e => e.Text))
            .Concat(new[] { "quantityList", "childQuantityList", "inputQuantityList", "outputQuantityList" }.SelectMany(l => Whole.Items(l).Select(q => q.Member("epcClass")?.Text ?? "")))
            .Prepend(Text("parentID")).Where(t => t.Length > 0).Distinct(),
    ];

    private Part Whole => new(Json, PathTo.Root);

    /// <summary>An event that was checked before and kept under its hash: nothing is hashed again, so <see cref="PreHash"/> is empty.</summary>
    /// <param name="hash">Its hash.</param>
    /// <param name="json">What <see cref="EpcisDocument.Alone"/> gave.</param>
    public static EpcisEvent Known(string hash, string json) => new(JsonElement.Parse(json), "", hash);

    internal static EpcisEvent Of(EventText ours) => Of(new Part(JsonElement.Parse(ours.Json), PathTo.Root), WrittenEvent.OurPrefixes);

    internal static EpcisEvent Of(Part part, Prefixes document)
    {
        var before = EventHash.PreHash(part, part.Member("@context") is { } own ? new Prefixes(own, document) : document);
        return new EpcisEvent(part.Json, before, EventHash.Of(before));
    }

    private string Text(string name) => Whole.Member(name)?.Text ?? "";
}
