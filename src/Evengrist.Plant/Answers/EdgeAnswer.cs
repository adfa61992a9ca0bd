using Evengrist.Intake.Sampling;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>The doubt at one edge; chances from 0 to 1. MoreProbes is null where no practical number settles it.</summary>
public sealed record EdgeDoubtAnswer(double Edge, string Name, double ChanceAtLeast, bool ReadsAbove, double ChanceRightSide, bool Settled, int? MoreProbes, string Below, string Above)
{
    internal static EdgeDoubtAnswer Of(EdgeDoubt doubt) => new(
        doubt.Edge.At, doubt.Edge.Name, doubt.ChanceAtLeast, doubt.ReadsAbove, doubt.ChanceRightSide, doubt.Settled, doubt.MoreProbes, doubt.Edge.Below, doubt.Edge.Above);
}

/// <summary>How sure the side of each edge is, nearest first, and what to do.</summary>
public sealed record EdgeAnswer(double Reads, string Unit, string Basis, double StandardDeviation, double SureFrom, IReadOnlyList<EdgeDoubtAnswer> Edges, string Advice, string Assumed)
{
    /// <summary>The doubt at each edge posed, or at each of the contract's edges near the reading.</summary>
    public static (EdgeAnswer? Answer, IReadOnlyList<string> Reasons) To(EdgeCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        if (posed.Spec is { } spec)
        {
            return (Of(spec.Read, "", "", spec.StandardDeviation, spec.SureFrom, EdgeModel.Doubts(spec)), []);
        }

        var all = LoadEdges.Of(posed.Findings, posed.Terms, null, posed.Policy, posed.Probes);
        return all.Count == 0 ? (null, ["No scale of the contract goes by this finding, so it has no edge there."])
            : (Of((double)all[0].Value, all[0].Unit, all[0].Basis.IsStated ? all[0].Basis.ToString() : "", all[0].StandardDeviation ?? 0, posed.Policy.SureFrom, [.. all.SelectMany(a => a.Doubts.Select(d => d with { Edge = d.Edge with { Name = $"{a.Against}: {d.Edge.Name}" } }))]), []);
    }

    private static EdgeAnswer Of(double reads, string unit, string basis, double sd, double sure, IReadOnlyList<EdgeDoubt> doubts) => new(
        reads, unit, basis, sd, sure, [.. doubts.Select(EdgeDoubtAnswer.Of)], SamplingWords.Advice(EdgeAdvice.Of(doubts)),
        "normal error; nothing else is known of the load than its reading; further probes suppose that their mean stays where the reading is");
}
