using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing;

namespace Evengrist.Plant.Cases;

/// <summary>A mill and its movements posed in JSON, and what is to be traced in it.</summary>
/// <param name="Drafts">Places, connections and movements.</param>
/// <param name="Paths">For each draft the JSON path it came from.</param>
/// <param name="Beliefs">Hypotheses with their weights.</param>
/// <param name="Question">What is to be traced.</param>
public sealed record TraceCase(IReadOnlyList<Draft> Drafts, IReadOnlyList<string> Paths, IReadOnlyList<Belief> Beliefs, TraceQuestion Question)
{
    private const int MostItems = 5000;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "places":    [ { "code": text, "kind": "field" | "truck" | "bin" | "mill unit" | "pallet" ... any kind of place,
                           "feeds": [ codes of the places it is connected to ],
                           "coreShare": 0 to 1 (bins), "stirred": { "t": number } (temper bins, packing lines), "capacity": { "t": number } } ... ]
          "movements": [ { "from": code, "to": code, "kg": number (or "t"), "at": time with offset,
                           "until": time (left out: at once),
                           "opens": "pallet" | "bulk load" | "rework tote" | "truck" (the place it goes to is new),
                           "every": span such as "PT5M" and "count": number (repeated, each one evenly over its span; {n} in a code counts from 1) } ... ]
          "provenEmpty": [ { "place": code, "at": time } ... ]   may be left out
          "beliefs":   { "firstInFirstOut": weight, "coreFirst": weight, "stirred": weight }   0.7, 0.2, 0.1 when left out
          "threshold": { "kg": number }   packages with less are counted, not listed; left out: every one
          "question":  { "code": of the place to trace, "from": time, "until": time, "asOf": time }   all but code may be left out
        }
        """,
        """
        { "places": [ { "code": "FIELD", "kind": "field" }, { "code": "B1", "kind": "bin", "feeds": [ "MILL" ] },
                      { "code": "MILL", "kind": "mill unit", "feeds": [ "LINE" ] }, { "code": "LINE", "kind": "packing line" } ],
          "movements": [ { "from": "FIELD", "to": "T1", "opens": "truck", "t": 20, "at": "2025-07-01T08:00Z" },
                         { "from": "T1", "to": "B1", "t": 20, "at": "2025-07-01T08:30Z" },
                         { "from": "B1", "to": "MILL", "t": 3, "at": "2025-07-02T06:00Z", "until": "2025-07-02T07:00Z" },
                         { "from": "MILL", "to": "LINE", "t": 3, "at": "2025-07-02T06:00Z", "until": "2025-07-02T07:00Z" },
                         { "from": "LINE", "to": "P{n}", "opens": "pallet", "t": 1, "at": "2025-07-02T06:00Z", "every": "PT20M", "count": 3 } ],
          "question": { "code": "P2" } }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<TraceCase> Read(Stream stream) => JsonCase.Read<TraceCase>(stream, (root, _) => Of(root));

    private static TraceCase? Of(JsonNode root)
    {
        if (!root.IsObject("places", "movements", "provenEmpty", "beliefs", "threshold", "question"))
        {
            return null;
        }

        var (posed, beliefs, threshold) = Posed(root);
        return root.Member("question") is { } question && question.IsObject("code", "from", "until", "asOf")
            ? new TraceCase(posed.Drafts, posed.Paths, beliefs, new TraceQuestion(question.Text("code"))
            {
                From = question.Time("from", required: false),
                Until = question.Time("until", required: false),
                AsOf = question.Time("asOf", required: false),
                Threshold = threshold,
            })
            : null;
    }

    /// <summary>Places, movements, beliefs and threshold of a posed mill.</summary>
    internal static (PosedMill Mill, IReadOnlyList<Belief> Beliefs, Mass Threshold) Posed(JsonNode root)
    {
        var posed = new PosedMill();
        foreach (var place in root.Member("places")?.Items(MostItems) ?? [])
        {
            posed.Place(place);
        }

        foreach (var movement in root.Member("movements")?.Items(MostItems) ?? [])
        {
            posed.Movement(movement);
        }

        foreach (var empty in root.Member("provenEmpty", required: false)?.Items(MostItems) ?? [])
        {
            posed.Empty(empty);
        }

        return (posed, root.Member("beliefs", required: false) is { } believed ? Believed(believed) : Belief.Usual,
            root.Member("threshold", required: false) is { } least && least.IsObject("t", "kg") ? least.Mass() ?? Mass.Zero : Mass.Zero);
    }

    private static Belief[] Believed(JsonNode node)
    {
        var beliefs = node.Members().Select(m => (Outflow: Hypotheses.Of(m.Value, m.Name), Weight: m.Value.Number(0m, 1_000_000m)))
            .Where(b => b is { Outflow: not null, Weight: not null }).Select(b => new Belief(b.Outflow!.Value, (double)b.Weight!.Value)).ToArray();
        if (!(beliefs.Sum(b => b.Weight) > 0))
        {
            node.Fault("at least one hypothesis with a weight above 0");
        }

        return beliefs;
    }
}
