namespace Evengrist.Packing.Runs;

/// <summary>All runs in their places.</summary>
/// <param name="Runs">The runs, by line and then by start.</param>
/// <param name="Costs">What it is judged by.</param>
public sealed record RunPlan(IReadOnlyList<PlacedRun> Runs, RunCosts Costs)
{
    /// <summary>When the last run ends, minutes from the start of the plan.</summary>
    public int End => Runs.Max(r => r.End);

    /// <summary>Minutes late, all runs together, unweighted.</summary>
    public int Late => Runs.Sum(r => r.Late);

    /// <summary>Minutes of changing over, all lines together.</summary>
    public int ChangeMinutes => Runs.Sum(r => r.Before.Minutes);

    /// <summary>Flour run through, tonnes.</summary>
    public double FlushTonnes => Runs.Sum(r => r.Before.FlushTonnes);

    /// <summary>What it costs.</summary>
    public double Cost => (Costs.LatePerHour * Runs.Sum(r => r.Run.Weight * r.Late) / 60) + (Costs.ChangePerHour * ChangeMinutes / 60) + (Costs.FlushPerTonne * FlushTonnes);

    /// <summary>Runs before which a named person has to sign that the line is clean.</summary>
    public IReadOnlyList<PlacedRun> ToSign => [.. Runs.Where(r => r.Before.NeedsSign)];

    /// <summary>Where every flour that is run through goes, tonnes.</summary>
    public IReadOnlyList<(string To, double Tonnes)> Flushed => [.. Runs.Where(r => r.Before.FlushTonnes > 0).GroupBy(r => r.Before.FlushTo ?? "not said").Select(g => (g.Key, g.Sum(r => r.Before.FlushTonnes))).OrderBy(f => f.Key, StringComparer.Ordinal)];

    /// <summary>The plan of runs in their places, with what lies between them.</summary>
    /// <param name="spec">The runs and rules.</param>
    /// <param name="places">Line and start of each run, in the order of the spec's runs.</param>
    public static RunPlan Of(RunOrderSpec spec, IReadOnlyList<RunLock> places)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var placed = spec.Runs.Zip(places, (run, place) => (Run: run, Place: place)).OrderBy(p => p.Place.Start).ToArray();
        List<PlacedRun> runs = [];
        foreach (var line in spec.Lines)
        {
            var last = line.LastFlour;
            foreach (var (run, place) in placed.Where(p => p.Place.Line == line.Code))
            {
                runs.Add(new(run, line.Code, place.Start, place.Start + run.Places.First(p => p.Line == line.Code).Minutes, spec.Between(last, run.Flour)));
                last = run.Flour;
            }
        }

        return new(runs, spec.Costs);
    }
}
