using System.Globalization;

namespace Evengrist.Packing.Runs;

/// <summary>Whether a plan keeps what it must, reckoned apart from whatever made it.</summary>
public static class RunPlanCheck
{
    private const double Slack = 1e-6;

    /// <summary>What the plan breaks, each a sentence; empty where it holds.</summary>
    public static IReadOnlyList<string> Broken(RunOrderSpec spec, RunPlan plan)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(plan);
        return [.. OfLines(spec, plan), .. OfRuns(spec, plan), .. OfCrew(spec, plan), .. spec.Bins.Select(b => (b.Code, Minute: RanDry(plan, b))).Where(b => b.Minute is not null).Select(b => $"Bin {b.Code} runs dry at minute {b.Minute}.")];
    }

    /// <summary>When a bin holds more than it can, with all the mill makes: the mill would choke. Null where it never does.</summary>
    public static int? Choked(RunPlan plan, FlourBin bin) => Minutes(plan, bin).Cast<int?>().FirstOrDefault(m => Level(plan, bin, m!.Value) > bin.Capacity + Slack);

    /// <summary>What lies in a bin at a time, tonnes.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="bin">The bin.</param>
    /// <param name="minute">Minutes from the start of the plan.</param>
    public static double Level(RunPlan plan, FlourBin bin, int minute)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(bin);
        return bin.Tonnes + bin.Inflows.Sum(i => i.By(minute)) - plan.Runs.Where(r => r.Run.Bin == bin.Code).Sum(r => r.DrawnBy(minute));
    }

    private static IEnumerable<string> OfLines(RunOrderSpec spec, RunPlan plan)
    {
        foreach (var line in spec.Lines)
        {
            var (free, last) = (line.FreeFrom, line.LastFlour);
            foreach (var run in plan.Runs.Where(r => r.Line == line.Code).OrderBy(r => r.Start))
            {
                var change = spec.Between(last, run.Run.Flour);
                if (run.Start < free + change.Minutes)
                {
                    yield return $"Run {run.Run.Code} starts at minute {run.Start} on {line.Code}, which is ready for it at {free + change.Minutes}.";
                }

                if (!spec.MayFollow(last, run.Run.Flour))
                {
                    yield return $"Run {run.Run.Code} follows {last} on {line.Code} without a clean-down: {string.Join(", ", change.Allergens)}.";
                }

                (free, last) = (run.End, run.Run.Flour);
            }
        }
    }

    private static IEnumerable<string> OfRuns(RunOrderSpec spec, RunPlan plan)
    {
        foreach (var run in spec.Runs)
        {
            if (plan.Runs.Where(r => r.Run.Code == run.Code).ToArray() is not [var placed])
            {
                yield return $"Run {run.Code} is not in the plan just once.";
            }
            else if (run.Places.All(p => p.Line != placed.Line || p.Minutes != placed.End - placed.Start) || placed.Start < run.Ready || (run.Locked is { } held && (held.Line != placed.Line || held.Start != placed.Start)))
            {
                yield return $"Run {run.Code} is where it cannot be: line {placed.Line} from minute {placed.Start} to {placed.End}.";
            }
        }
    }

    private static IEnumerable<string> OfCrew(RunOrderSpec spec, RunPlan plan)
    {
        if (spec.Crew.Count == 0)
        {
            yield break;
        }

        var crews = spec.Lines.ToDictionary(l => l.Code, l => l.Crew);
        foreach (var at in plan.Runs.SelectMany(r => spec.Crew.SelectMany(s => new[] { s.From, s.Until }).Append(r.Start).Where(m => m >= r.Start && m < r.End)).Distinct().Order())
        {
            var (needed, there) = (plan.Runs.Where(r => r.Start <= at && at < r.End).Sum(r => crews[r.Line]), spec.Crew.Where(s => s.From <= at && at < s.Until).Sum(s => s.People));
            if (needed > there)
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"At minute {at} the lines take {needed} people and {there} are there.");
            }
        }
    }

    private static int? RanDry(RunPlan plan, FlourBin bin) => Minutes(plan, bin).Cast<int?>().FirstOrDefault(m => Level(plan, bin, m!.Value) < -Slack);

    // Levels are straight between these.
    private static IEnumerable<int> Minutes(RunPlan plan, FlourBin bin) =>
        plan.Runs.Where(r => r.Run.Bin == bin.Code).SelectMany(r => new[] { r.Start, r.End }).Concat(bin.Inflows.SelectMany(i => new[] { i.From, i.Until })).Append(0).Distinct().Order();
}
