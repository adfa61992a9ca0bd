using Evengrist.Intake;
using Evengrist.Intake.Sampling;

namespace Evengrist.Plant.Cases;

/// <summary>A reading posed in JSON with the edges, or the contract, it is set against.</summary>
/// <param name="Spec">The reading and the edges; null where a contract is given.</param>
/// <param name="Findings">Readings with their uncertainty, for a contract; empty otherwise.</param>
/// <param name="Terms">The contract; null where edges are given.</param>
/// <param name="Policy">From which chance on an edge counts as settled, and the like.</param>
/// <param name="Probes">Probes in the sample.</param>
public sealed record EdgeCase(EdgeSpec? Spec, IReadOnlyList<Finding> Findings, ContractTerms? Terms, SamplingPolicy Policy, int Probes)
{
    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "reads": number, "sd": its combined standard deviation, "edges": [ number ... ]
          or, for a contract:
          "finding": { "protein [% 12mb]": number }, "sd": number, "contract": { as for settle }
          "sureFrom": 0.8, "probes": 1, "fromProbes": what the probes contribute to sd          (these may be left out)
        }
        """,
        """
        { "reads": 13.15, "sd": 0.25, "edges": [ 12.5, 13.0, 13.5 ], "sureFrom": 0.8 }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<EdgeCase> Read(Stream stream) => JsonCase.Read<EdgeCase>(stream, (root, _) => Of(root));

    private static EdgeCase? Of(JsonNode root)
    {
        if (!root.IsObject("reads", "sd", "edges", "finding", "contract", "sureFrom", "probes", "fromProbes"))
        {
            return null;
        }

        var sd = root.Member("sd")?.Number(0.000001m, 1_000_000m);
        var probes = root.Whole("probes", 1, 1, 1000);
        var sure = root.Number("sureFrom", 0.8, 0.500001, 0.999999);
        double? fromProbes = root.Has("fromProbes") ? root.Number("fromProbes", 0, 0, 1_000_000) : null;
        var byContract = root.Has("contract") || root.Has("finding");
        if (byContract && (root.Has("reads") || root.Has("edges")))
        {
            root.Fault("either reads and edges, or finding and contract");
            return null;
        }

        return sd is not { } u ? null : byContract ? Contract(root, u, sure, probes, fromProbes) : Plain(root, (double)u, sure, probes, fromProbes);
    }

    private static EdgeCase? Plain(JsonNode root, double sd, double sure, int probes, double? fromProbes)
    {
        var reads = root.Member("reads")?.Number(-1_000_000m, 1_000_000m);
        var edges = (root.Member("edges")?.Items(1000) ?? []).Select(e => e.Number(-1_000_000m, 1_000_000m)).OfType<decimal>().Select(e => new Edge((double)e, "")).ToArray();
        if (root.Has("edges") && edges.Length == 0)
        {
            root.Member("edges")!.Fault("at least one edge, a number");
        }

        if (reads is not { } value || edges.Length == 0)
        {
            return null;
        }

        // Edges posed are all answered, however far they lie.
        var spec = new EdgeSpec((double)value, sd, edges) { SureFrom = sure, Probes = probes, FromProbes = fromProbes, Within = 1e12 };
        return root.Sound(spec.Faults()) ? new EdgeCase(spec, [], null, SamplingPolicy.Usual, probes) : null;
    }

    private static EdgeCase? Contract(JsonNode root, decimal sd, double sure, int probes, double? fromProbes)
    {
        var findings = PosedFindings.Read(root.Member("finding")).Select(f => f with { StandardUncertainty = sd }).ToArray();
        var terms = root.Member("contract") is { } contract ? PosedTerms.Of(contract) : null;
        if (findings.Length != 1)
        {
            root.Member("finding", required: false)?.Fault("one finding, with its unit and basis");
        }

        return findings.Length != 1 || terms is null ? null : new EdgeCase(null, findings, terms, new SamplingPolicy
        {
            SureFrom = sure, Spreads = fromProbes is { } part ? [new PropertySpread(findings[0].What, part * Math.Sqrt(probes), 0, 0)] : [],
        }, probes);
    }
}
