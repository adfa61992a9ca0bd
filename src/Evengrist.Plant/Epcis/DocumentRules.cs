using System.Text.Json;

namespace Evengrist.Plant.Epcis;

/// <summary>What a document, a query document or an event by itself may and must hold round the events.</summary>
internal static class DocumentRules
{
    private static readonly Shape Vocabularies = Shapes.ListOf(new ObjectShape(new Dictionary<string, Shape>
    {
        ["type"] = Shapes.Uri,
        ["vocabularyElementList"] = Shapes.ListOf(new ObjectShape(new Dictionary<string, Shape>
        {
            ["id"] = Shapes.Uri,
            ["attributes"] = Shapes.ListOf(new ObjectShape(new Dictionary<string, Shape> { ["id"] = Shapes.Uri, ["attribute"] = Shapes.Anything }) { Required = ["id"], MayHoldAnything = true }.ToShape()),
            ["children"] = Shapes.ListOf(Shapes.Uri),
        }) { Required = ["id"], MayHoldAnything = true }.ToShape()),
    }) { Required = ["type"], MayHoldAnything = true }.ToShape());

    private static readonly Shape Header = Extendable(("epcisMasterData", new ObjectShape(new Dictionary<string, Shape> { ["vocabularyList"] = Vocabularies }) { MayHoldAnything = true }.ToShape()));

    private static readonly Shape Body = Extendable(["eventList"], ("eventList", Shapes.ListOf(Shapes.Anything)));

    private static readonly Shape Results = Extendable(["queryName", "resultsBody"], ("queryName", Shapes.Text), ("subscriptionID", Shapes.Text),
        ("resultsBody", Extendable(["eventList"], ("eventList", Shapes.ListOf(Shapes.Anything)), ("vocabularyList", Vocabularies))));

    private static readonly (string Name, Shape Shape)[] Head =
    [
        ("@context", Shaped.Context), ("id", Shapes.Uri), ("type", Shapes.Text), ("schemaVersion", Shapes.Version), ("creationDate", Shapes.Time),
    ];

    private static readonly Shape Document = Extendable(["@context", "type", "schemaVersion", "creationDate", "epcisBody"],
        [.. Head, ("instanceIdentifier", Shapes.Text), ("sender", Shapes.Text), ("receiver", Shapes.Text), ("epcisHeader", Header), ("epcisBody", Body)]);

    private static readonly Shape Query = Extendable(["@context", "type", "epcisBody"], [.. Head, ("epcisBody", Extendable(["queryResults"], ("queryResults", Results)))]);

    /// <summary>Notes what is wrong round the events, and gives the events.</summary>
    public static IReadOnlyList<Part> Look(Part root, Faults faults)
    {
        if (root.Json.ValueKind != JsonValueKind.Object)
        {
            faults.Add(root.Wrong("an object: an EPCISDocument, an EPCISQueryDocument or an event"));
            return [];
        }

        switch (root.Member("type")?.Text)
        {
            case null:
                faults.Add(Fault.AtPath("$.type", "", "EPCISDocument, EPCISQueryDocument or the type of an event; it is missing"));
                return [];
            case "EPCISDocument":
                Document(root, faults);
                return [.. root.Member("epcisBody") is { } body ? body.Items("eventList") : []];
            case "EPCISQueryDocument":
                Query(root, faults);
                return [.. root.Member("epcisBody")?.Member("queryResults")?.Member("resultsBody") is { } results ? results.Items("eventList") : []];
            default:
                if (!root.Has("@context"))
                {
                    faults.Add(Fault.AtPath("$.@context", "", "@context, as the event stands by itself; it is missing"));
                }

                return [root];
        }
    }

    private static Shape Extendable(params (string Name, Shape Shape)[] members) => Extendable([], members);

    private static Shape Extendable(string[] required, params (string Name, Shape Shape)[] members) =>
        new ObjectShape(members.ToDictionary(m => m.Name, m => m.Shape)) { Required = required, MayExtend = true }.ToShape();
}
