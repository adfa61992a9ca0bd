using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>A mill and its movements posed in JSON, and what is to be recalled in it.</summary>
/// <param name="Drafts">Places, connections and movements.</param>
/// <param name="Paths">For each draft the JSON path it came from.</param>
/// <param name="Beliefs">Hypotheses with their weights.</param>
/// <param name="Suspect">What is suspect: code and hours.</param>
/// <param name="Threshold">A package counts when it holds more.</param>
/// <param name="Chance">Chance of the narrow net, 0 to 1.</param>
/// <param name="AsOf">The moment looked back from; null for the newest.</param>
/// <param name="ThroughIsUnknown">Whether rest and lines leave in any order too, in the bounds.</param>
public sealed record RecallCase(
    IReadOnlyList<Draft> Drafts, IReadOnlyList<string> Paths, IReadOnlyList<Belief> Beliefs, IReadOnlyList<(string Code, Instant? From, Instant? Until)> Suspect,
    Mass Threshold, double Chance, Instant? AsOf, bool ThroughIsUnknown)
{
    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "places", "movements", "provenEmpty", "beliefs", "threshold": as for a trace
          "suspect": [ { "code": of a place, "from": time, "until": time } ... ]   the hours may be left out for sources, loads and packages
          "chance":  0 to 1, of the narrow net; 0.5 when left out
          "asOf":    time; the newest when left out
          "restAndLines": "in order" | "unknown"   in the bounds; in order when left out
        }
        """,
        """
        { "places": [ { "code": "A", "kind": "field" }, { "code": "B", "kind": "field" }, { "code": "B1", "kind": "bin" } ],
          "movements": [ { "from": "A", "to": "TA", "opens": "truck", "t": 60, "at": "2025-07-01T08:00Z" }, { "from": "B", "to": "TB", "opens": "truck", "t": 40, "at": "2025-07-01T09:00Z" },
                         { "from": "TA", "to": "B1", "t": 60, "at": "2025-07-01T10:00Z" }, { "from": "TB", "to": "B1", "t": 40, "at": "2025-07-01T11:00Z" },
                         { "from": "B1", "to": "LOAD", "opens": "bulk load", "t": 50, "at": "2025-07-01T12:00Z" } ],
          "suspect": [ { "code": "TA" } ] }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<RecallCase> Read(Stream stream) => JsonCase.Read<RecallCase>(stream, (root, _) => Of(root));

    private static RecallCase? Of(JsonNode root)
    {
        if (!root.IsObject("places", "movements", "provenEmpty", "beliefs", "threshold", "suspect", "chance", "asOf", "restAndLines"))
        {
            return null;
        }

        var (posed, beliefs, threshold) = TraceCase.Posed(root);
        var suspect = new List<(string, Instant?, Instant?)>();
        foreach (var one in root.Member("suspect")?.Items(50) ?? [])
        {
            if (one.IsObject("code", "from", "until"))
            {
                suspect.Add((one.Text("code"), one.Time("from", required: false), one.Time("until", required: false)));
            }
        }

        if (suspect.Count == 0)
        {
            root.Member("suspect")?.Fault("at least one thing that is suspect");
        }

        var order = root.Text("restAndLines", "in order");
        if (order is not ("in order" or "unknown"))
        {
            root.Member("restAndLines")?.Fault("\"in order\" or \"unknown\"");
        }

        return new RecallCase(posed.Drafts, posed.Paths, beliefs, suspect, threshold, (double)(root.Member("chance", required: false)?.Number(0m, 1m) ?? 0.5m), root.Time("asOf", required: false), order == "unknown");
    }
}
