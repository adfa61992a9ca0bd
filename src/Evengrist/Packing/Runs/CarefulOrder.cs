namespace Evengrist.Packing.Runs;

/// <summary>An order a careful person would make: each run in turn goes where it is done first without breaking anything. What the search begins from.</summary>
public static class CarefulOrder
{
    private const int StepMinutes = 10;

    /// <summary>The best of a few turns: by due time, and as another plan has them; null where none of them places every run. Bins may overflow in it.</summary>
    /// <param name="spec">The runs.</param>
    /// <param name="like">A plan whose turns are tried as well; null for none.</param>
    public static RunPlan? Of(RunOrderSpec spec, RunPlan? like = null)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var starts = like?.Runs.ToDictionary(r => r.Run.Code, r => r.Start) ?? [];
        return new[] { spec.Runs.OrderBy(r => r.Due), spec.Runs.OrderBy(r => starts.GetValueOrDefault(r.Code, r.Due)) }.Take(like is null ? 1 : 2)
            .Select(turns => new Hall(spec).Place(turns.ThenBy(r => r.Code, StringComparer.Ordinal))).OfType<RunPlan>().MinBy(p => p.Cost);
    }

    private sealed class Hall(RunOrderSpec spec)
    {
        private readonly Dictionary<string, List<(PackingRun Run, int Start, int End)>> lines = spec.Lines.ToDictionary(l => l.Code, _ => new List<(PackingRun, int, int)>());
        private readonly Dictionary<string, PackingLine> terms = spec.Lines.ToDictionary(l => l.Code);
        private readonly Dictionary<string, List<(int Minute, long Kilograms)>> flows = spec.Bins.ToDictionary(b => b.Code, b => new List<(int, long)>([(0, FlourSlices.Kilograms(b.Tonnes)), .. b.Inflows.SelectMany(FlourSlices.Come).Select(s => (s.Until, s.Kilograms))]));

        public RunPlan? Place(IEnumerable<PackingRun> turns)
        {
            foreach (var run in turns.OrderBy(r => r.Locked is null))
            {
                var found = run.Locked is { } held ? At(run, run.Places.First(p => p.Line == held.Line), held.Start) : run.Places.Select(p => Earliest(run, p)).OfType<(RunPlace Place, int Start)>().OrderBy(f => f.Start + f.Place.Minutes).Select(f => ((RunPlace, int)?)f).FirstOrDefault();
                if (found is not { } there)
                {
                    return null;
                }

                Take(run, there.Item1, there.Item2);
            }

            return RunPlan.Of(spec, [.. spec.Runs.Select(r => lines.SelectMany(l => l.Value.Where(p => p.Run.Code == r.Code).Select(p => new RunLock(l.Key, p.Start))).Single())]);
        }

        private (RunPlace, int)? At(PackingRun run, RunPlace place, int start) => Fits(run, place, start) ? (place, start) : null;

        private (RunPlace, int)? Earliest(PackingRun run, RunPlace place)
        {
            for (var start = Math.Max(run.Ready, terms[place.Line].FreeFrom); start + place.Minutes <= RunOrderSpec.MostMinutes; start = start % StepMinutes == 0 ? start + StepMinutes : start + StepMinutes - (start % StepMinutes))
            {
                if (Fits(run, place, start))
                {
                    return (place, start);
                }
            }

            return null;
        }

        private bool Fits(PackingRun run, RunPlace place, int start) => FitsLine(run, place, start) && FitsBin(run, place, start) && FitsCrew(place, start);

        private bool FitsLine(PackingRun run, RunPlace place, int start)
        {
            var (end, line) = (start + place.Minutes, terms[place.Line]);
            var before = lines[place.Line].Where(p => p.Start < end).OrderBy(p => p.Start).LastOrDefault();
            var after = lines[place.Line].Where(p => p.Start >= end).OrderBy(p => p.Start).FirstOrDefault();
            var (free, last) = before.Run is null ? (line.FreeFrom, line.LastFlour) : (before.End, before.Run.Flour);
            return start >= free + spec.Between(last, run.Flour).Minutes && spec.MayFollow(last, run.Flour)
                && (after.Run is null || (after.Start >= end + spec.Between(run.Flour, after.Run.Flour).Minutes && spec.MayFollow(run.Flour, after.Run.Flour)));
        }

        private bool FitsBin(PackingRun run, RunPlace place, int start)
        {
            var level = 0L;
            return run.Bin is null || flows[run.Bin].Concat(Draws(run, place, start)).GroupBy(f => f.Minute).OrderBy(g => g.Key).All(g => (level += g.Sum(f => f.Kilograms)) >= 0);
        }

        private bool FitsCrew(RunPlace place, int start)
        {
            var end = start + place.Minutes;
            return spec.Crew.Count == 0 || spec.Crew.SelectMany(s => new[] { s.From, s.Until }).Concat(lines.Values.SelectMany(l => l.Select(p => p.Start))).Append(start).Where(m => m >= start && m < end).Distinct()
                .All(m => terms[place.Line].Crew + lines.Sum(l => l.Value.Any(p => p.Start <= m && m < p.End) ? terms[l.Key].Crew : 0) <= spec.Crew.Where(s => s.From <= m && m < s.Until).Sum(s => s.People));
        }

        private static IEnumerable<(int Minute, long Kilograms)> Draws(PackingRun run, RunPlace place, int start) => FlourSlices.Gone(run.Tonnes, place.Minutes).Select(s => (start + s.From, -s.Kilograms));

        private void Take(PackingRun run, RunPlace place, int start)
        {
            lines[place.Line].Add((run, start, start + place.Minutes));
            if (run.Bin is not null)
            {
                flows[run.Bin].AddRange(Draws(run, place, start));
            }
        }
    }
}
