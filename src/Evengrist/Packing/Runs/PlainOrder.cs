namespace Evengrist.Packing.Runs;

/// <summary>Orders a person would make without a computer, to hold a plan against: each run in turn goes to the line that has it done first.</summary>
public static class PlainOrder
{
    /// <summary>In the order in which they were asked for.</summary>
    public static RunPlan FirstCome(RunOrderSpec spec) => Of(spec, spec?.Runs ?? throw new ArgumentNullException(nameof(spec)));

    /// <summary>By due time.</summary>
    public static RunPlan EarliestDue(RunOrderSpec spec) => Of(spec, (spec?.Runs ?? throw new ArgumentNullException(nameof(spec))).OrderBy(r => r.Due).ThenBy(r => r.Code, StringComparer.Ordinal));

    // Locks, bins, crews and the rule of allergens are not minded: what it breaks is found by the check and said.
    private static RunPlan Of(RunOrderSpec spec, IEnumerable<PackingRun> order)
    {
        var (free, last) = (spec.Lines.ToDictionary(l => l.Code, l => l.FreeFrom), spec.Lines.ToDictionary(l => l.Code, l => l.LastFlour));
        Dictionary<string, RunLock> places = [];
        foreach (var run in order)
        {
            var best = run.Places.MinBy(p => Start(run, p) + p.Minutes)!;
            places[run.Code] = new(best.Line, Start(run, best));
            (free[best.Line], last[best.Line]) = (places[run.Code].Start + best.Minutes, run.Flour);
        }

        return RunPlan.Of(spec, [.. spec.Runs.Select(r => places[r.Code])]);

        int Start(PackingRun run, RunPlace place) => Math.Max(run.Ready, free[place.Line] + spec.Between(last[place.Line], run.Flour).Minutes);
    }
}
