using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Plant.Cases;

/// <summary>A bin posed in JSON: what lies in it, and what is drawn from it and filled into it in turn.</summary>
/// <param name="CoreShare">Share of every layer over the outlet.</param>
/// <param name="Steps">Fills (the first ones being the layers that lie there) and draws, in turn.</param>
/// <param name="Hypotheses">How grain may leave.</param>
public sealed record OutflowCase(double CoreShare, IReadOnlyList<OutflowStep> Steps, IReadOnlyList<Outflow> Hypotheses)
{
    private const int MostSteps = 2000;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "coreShare": number 0 to 1, share of every layer over the outlet; 0.1 when left out
          "layers":    [ { "lot": text, "t": number } ... ]   what lies in the bin, bottom first; "kg" may stand for "t"
          "steps":     [ { "draw": { "t": number } } or { "fill": { "lot": text, "t": number } } ... ]   in turn
          "hypotheses": [ "firstInFirstOut", "coreFirst", "stirred" ]   all three when left out
        }
        """,
        """
        { "coreShare": 0.1,
          "layers": [ { "lot": "A", "t": 100 }, { "lot": "B", "t": 100 } ],
          "steps": [ { "draw": { "t": 10 } }, { "fill": { "lot": "C", "t": 50 } }, { "draw": { "t": 90 } } ] }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<OutflowCase> Read(Stream stream) => JsonCase.Read<OutflowCase>(stream, (root, _) => Of(root));

    private static OutflowCase? Of(JsonNode root)
    {
        if (!root.IsObject("coreShare", "layers", "steps", "hypotheses"))
        {
            return null;
        }

        var core = root.Member("coreShare", required: false)?.Number(0m, 1m) ?? 0.1m;
        var steps = (root.Member("layers")?.Items(MostSteps) ?? []).Select(Fill)
            .Concat((root.Member("steps")?.Items(MostSteps) ?? []).Select(Step)).OfType<OutflowStep>().ToArray();
        var hypotheses = root.Member("hypotheses", required: false) is { } words
            ? words.Items(3).Select(w => Cases.Hypotheses.Of(w, w.Text())).OfType<Outflow>().Distinct().ToArray()
            : Enum.GetValues<Outflow>();
        if (hypotheses.Length == 0)
        {
            root.Member("hypotheses")!.Fault("at least one hypothesis");
        }

        return new OutflowCase((double)core, steps, hypotheses);
    }

    private static OutflowStep? Step(JsonNode node)
    {
        if (!node.IsObject("draw", "fill"))
        {
            return null;
        }

        if (node.Has("draw") == node.Has("fill"))
        {
            node.Fault("one of draw and fill");
            return null;
        }

        if (node.Has("fill"))
        {
            return Fill(node.Member("fill")!);
        }

        var draw = node.Member("draw")!;
        return draw.IsObject("t", "kg") && draw.Mass() is { } mass ? new OutflowStep(draw.Path, null, mass) : null;
    }

    private static OutflowStep? Fill(JsonNode node) =>
        node.IsObject("lot", "t", "kg") && node.Text("lot") is { Length: > 0 } lot && node.Mass() is { } mass ? new OutflowStep(node.Path, lot, mass) : null;
}

/// <summary>A fill of a lot, or a draw.</summary>
/// <param name="Path">Its JSON path.</param>
/// <param name="Lot">The lot filled in; null for a draw.</param>
/// <param name="Mass">How much.</param>
public sealed record OutflowStep(string Path, string? Lot, Mass Mass);
