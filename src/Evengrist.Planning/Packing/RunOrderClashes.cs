using Evengrist.Packing.Runs;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Packing;

/// <summary>Which demands clash where no order keeps them all: one after the other is left out, and what cannot be spared stays.</summary>
internal static class RunOrderClashes
{
    /// <summary>The demands that clash; empty where there is no order even without any of them.</summary>
    public static IReadOnlyList<string> Of(RunOrderSpec spec, Func<RunOrderSpec, bool> isImpossible)
    {
        Demand[] all = [.. All(spec)];
        return DeletionFilter.Find(all, kept => !isImpossible(Without(all.Except(kept)))) is { Demands: var clash } ? [.. clash.Select(d => d.Words)] : [];

        RunOrderSpec Without(IEnumerable<Demand> left) => left.Aggregate(spec, (s, d) => d.Without(s));
    }

    private static IEnumerable<Demand> All(RunOrderSpec spec) =>
    [
        .. spec.Runs.Where(r => r.Locked is not null).Select(r => new Demand($"Run {r.Code} stays on {r.Locked!.Line} at minute {r.Locked.Start}.", s => s with { Runs = [.. s.Runs.Select(o => o.Code == r.Code ? o with { Locked = null } : o)] })),
        .. spec.Bins.Select(b => new Demand($"Bin {b.Code} never runs dry.", s => s with { Bins = [.. s.Bins.Where(o => o.Code != b.Code)], Runs = [.. s.Runs.Select(o => o.Bin == b.Code ? o with { Bin = null } : o)] })),
        .. spec.Crew.Count > 0 ? [new("The lines take no more people than are there.", s => s with { Crew = [] })] : Array.Empty<Demand>(),
        .. spec.Allergens.Count > 0 ? [new("A flour with an allergen is followed by one without only after a clean-down, where clean-downs may be at all.", s => s with { Allergens = new Dictionary<string, IReadOnlyList<string>>() })] : Array.Empty<Demand>(),
    ];

    private sealed record Demand(string Words, Func<RunOrderSpec, RunOrderSpec> Without);
}
