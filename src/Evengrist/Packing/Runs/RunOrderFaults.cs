namespace Evengrist.Packing.Runs;

/// <summary>What is wrong with runs to be put in order.</summary>
public static class RunOrderFaults
{
    /// <summary>Each a sentence that says what to do; empty where nothing is wrong.</summary>
    public static IReadOnlyList<string> Of(RunOrderSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return
        [
            .. spec.Runs.Count is >= 1 and <= RunOrderSpec.MostRuns ? Array.Empty<string>() : [$"A plan has 1 to {RunOrderSpec.MostRuns} runs; got {spec.Runs.Count}."],
            .. spec.Lines.Count is >= 1 and <= RunOrderSpec.MostLines ? Array.Empty<string>() : [$"A plan has 1 to {RunOrderSpec.MostLines} lines; got {spec.Lines.Count}."],
            .. Twice(spec.Runs.Select(r => r.Code), "run"), .. Twice(spec.Lines.Select(l => l.Code), "line"), .. Twice(spec.Bins.Select(b => b.Code), "bin"),
            .. spec.Runs.SelectMany(r => OfRun(spec, r)),
            .. spec.Lines.Where(l => l.FreeFrom is < 0 or > RunOrderSpec.MostMinutes || l.Crew < 0).Select(l => $"Line {l.Code} is free from 0 to {RunOrderSpec.MostMinutes} minutes on, and takes 0 people or more."),
            .. spec.Rules.Where(r => r.Minutes is < 0 or > RunOrderSpec.MostMinutes || r.FlushTonnes is not (>= 0 and <= 1000)).Select(r => $"The rule after {r.After ?? "any"} into {r.Into ?? "any"} takes 0 minutes or more and 0 to 1000 t."),
            .. spec.Bins.SelectMany(OfBin),
            .. spec.Crew.Any(s => s.From < 0 || s.Until <= s.From || s.People < 0) ? ["A shift ends after it begins and has 0 people or more."] : Array.Empty<string>(),
            .. spec.Costs.Fault is { } costs ? [costs] : Array.Empty<string>(),
        ];
    }

    private static IEnumerable<string> OfRun(RunOrderSpec spec, PackingRun run)
    {
        var known = spec.Lines.Select(l => l.Code).ToHashSet();
        return
        [
            .. run.Tonnes is > 0 and <= 10_000 ? Array.Empty<string>() : [$"Run {run.Code} packs more than 0 and at most 10,000 t."],
            .. run.Due is >= 0 and <= RunOrderSpec.MostMinutes && run.Ready is >= 0 and <= RunOrderSpec.MostMinutes ? Array.Empty<string>() : [$"Run {run.Code} is ready and due within {RunOrderSpec.MostMinutes} minutes of the start."],
            .. run.Weight is > 0 and <= 1000 ? Array.Empty<string>() : [$"Run {run.Code} has a weight above 0 and at most 1000."],
            .. run.Places.Count > 0 ? Array.Empty<string>() : [$"Run {run.Code} has no line: say which line can pack it, and how long it takes there."],
            .. run.Places.Where(p => !known.Contains(p.Line)).Select(p => $"Run {run.Code} goes to line {p.Line}, which is not among the lines."),
            .. run.Places.Any(p => p.Minutes is < 1 or > RunOrderSpec.MostMinutes) ? [$"Run {run.Code} takes at least a minute on each line."] : Array.Empty<string>(),
            .. run.Places.DistinctBy(p => p.Line).Count() == run.Places.Count ? Array.Empty<string>() : [$"Run {run.Code} names a line twice."],
            .. run.Bin is null || spec.Bins.Any(b => b.Code == run.Bin) ? Array.Empty<string>() : [$"Run {run.Code} is fed from bin {run.Bin}, which is not among the bins."],
            .. run.Locked is null || (run.Locked.Start is >= 0 and <= RunOrderSpec.MostMinutes && run.Places.Any(p => p.Line == run.Locked.Line)) ? Array.Empty<string>() : [$"Run {run.Code} is locked to a line that cannot pack it, or before the start."],
        ];
    }

    private static IEnumerable<string> OfBin(FlourBin bin) =>
    [
        .. bin.Tonnes >= 0 && bin.Capacity is > 0 and <= 10_000 && bin.Tonnes <= bin.Capacity ? Array.Empty<string>() : [$"Bin {bin.Code} holds from 0 to its capacity, which is above 0 and at most 10,000 t."],
        .. bin.Inflows.All(i => i.From >= 0 && i.Until > i.From && i.Until <= RunOrderSpec.MostMinutes && i.TonnesPerHour is > 0 and <= 1000) ? Array.Empty<string>() : [$"What flows into bin {bin.Code} ends after it begins, at more than 0 t/h."],
    ];

    private static IEnumerable<string> Twice(IEnumerable<string> codes, string what) => codes.GroupBy(c => c).Where(g => g.Count() > 1).Select(g => $"The {what} {g.Key} is there twice: give each a code of its own.");
}
