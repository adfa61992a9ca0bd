using Evengrist.Milling.Reconciling;

namespace Evengrist.Plant.Cases;

/// <summary>Streams and where they meet, posed in JSON to be reconciled.</summary>
/// <param name="Flows">The streams.</param>
/// <param name="Nodes">Where they meet.</param>
public sealed record FlowNetCase(IReadOnlyList<NetFlow> Flows, IReadOnlyList<NetNode> Nodes)
{
    /// <summary>Chance of a false alarm of each test.</summary>
    public double Level { get; init; } = 0.05;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "flows": [ { "name", "amount"?: measured, all in one unit, "uncertainty"?: one standard uncertainty, with it, "shares"?: { "ash": { "percent"?, "uncertainty"? } ... } } ... ],
          "nodes": [ { "name", "in": [ names of streams ], "out": [ names ] } ... ],
          "level"?: chance of a false alarm, 0.05
        }
        What is left out is sought. A component is balanced at a node where every stream there has a line for it.
        """,
        """
        { "flows": [ { "name": "straight", "amount": 10, "uncertainty": 0.1, "shares": { "ash": { "percent": 0.6, "uncertainty": 0.01 } } }, { "name": "patent", "amount": 7.3, "uncertainty": 0.1, "shares": { "ash": { "percent": 0.4, "uncertainty": 0.01 } } },
                     { "name": "clear", "shares": { "ash": { "percent": 1.2, "uncertainty": 0.02 } } } ],
          "nodes": [ { "name": "sum", "in": [ "patent", "clear" ], "out": [ "straight" ] } ] }
        """);

    /// <summary>Reads a case; what cannot be reconciled is a fault too.</summary>
    public static Parsed<FlowNetCase> Read(Stream stream) => SeasonCase.ReadAs<FlowNetCase>(stream).Then(posed => posed.Faults() is { Count: > 0 } faults ? Parsing.Failed<FlowNetCase>(faults) : Parsing.Got(posed));

    private IReadOnlyList<Fault> Faults() => Flows.Any(f => f is null) || Nodes.Any(n => n is null || n.In.Concat(n.Out).Any(f => f is null)) ? [Fault.AtPath("$", "null in a list", "something in its place")]
        : !(Level is > 0 and < 1) ? [Fault.AtPath("$.level", $"{Level}", "a chance above 0 and below 1")]
        : [.. new FlowNet(Flows, Nodes).Faults().Select(f => Fault.Told("$", f))];
}
