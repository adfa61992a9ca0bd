using System.Text.Json;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Tracing;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Records.Lists;

/// <summary>Events taken in from customers and suppliers.</summary>
internal static class EventLists
{
    private static readonly string[] Ids = ["epcList", "inputEPCList", "outputEPCList", "childEPCs"];
    private static readonly string[] Quantities = ["quantityList", "inputQuantityList", "outputQuantityList", "childQuantityList"];

    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("events-taken-in", "Events taken in from others (EPCIS)", new ListOf<Taken>()
                .Moment("happened", e => e.At).Text("event", e => e.Type).Text("action", e => e.Action).Text("step", e => e.Step).Text("disposition", e => e.Disposition).Text("of", e => e.Things).Text("read at", e => e.Where).YesNo("declared wrong", e => e.Wrong)
                .Text("event hash", e => e.Hash).Text("taken in by", e => e.By).Moment("taken in", e => e.Recorded).Text("as JSON", e => e.Json),
            (mill, ask) => OthersEvents.All(mill).Select(Of).Where(e => (ask.From is null || e.At >= ask.From) && (ask.Until is null || e.At < ask.Until) && (ask.Of.Length == 0 || e.Things.Contains(ask.Of, StringComparison.OrdinalIgnoreCase))).OrderBy(e => e.At)),
    ];

    private static Taken Of(Paper paper)
    {
        using var read = JsonDocument.Parse(paper.Json);
        var all = read.RootElement;
        string Text(string name) => all.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString()! : "";
        var things = Ids.SelectMany(n => all.TryGetProperty(n, out var list) && list.ValueKind == JsonValueKind.Array ? list.EnumerateArray().Select(t => t.ToString()) : [])
            .Concat(Quantities.SelectMany(n => all.TryGetProperty(n, out var list) && list.ValueKind == JsonValueKind.Array ? list.EnumerateArray().Select(t => t.TryGetProperty("epcClass", out var of) ? of.ToString() : "") : []));
        var parent = Text("parentID");
        return new(OffsetDateTimePattern.ExtendedIso.Parse(Text("eventTime")) is { Success: true } at ? at.Value.ToInstant() : null, Text("type"), Text("action"), Text("bizStep"), Text("disposition"), string.Join(" ", parent.Length > 0 ? things.Prepend(parent) : things),
            all.TryGetProperty("readPoint", out var point) && point.TryGetProperty("id", out var id) ? id.ToString() : "", all.TryGetProperty("errorDeclaration", out _), paper.Code, paper.By, paper.Recorded, paper.Json);
    }

    private sealed record Taken(Instant? At, string Type, string Action, string Step, string Disposition, string Things, string Where, bool Wrong, string Hash, string By, Instant Recorded, string Json);
}
