using Evengrist.Packing.Runs;
using Google.OrTools.Sat;

namespace Evengrist.Planning.Packing;

/// <summary>What is to be found of a run: when it starts, on which line, how late it is.</summary>
/// <param name="Start">Start, minutes.</param>
/// <param name="End">End, minutes.</param>
/// <param name="Late">Minutes late.</param>
/// <param name="On">For each place of the run, whether it is there.</param>
/// <param name="Spans">For each place, the stretch it takes there.</param>
internal sealed record RunVariables(IntVar Start, IntVar End, IntVar Late, BoolVar[] On, IntervalVar[] Spans)
{
    public static RunVariables Of(CpModel model, PackingRun run, int horizon)
    {
        var start = model.NewIntVar(run.Ready, horizon, $"{run.Code} start");
        var end = model.NewIntVar(0, horizon, $"{run.Code} end");
        var late = model.NewIntVar(0, horizon, $"{run.Code} late");
        var on = run.Places.Select(p => model.NewBoolVar($"{run.Code} on {p.Line}")).ToArray();
        var spans = run.Places.Select((p, i) => model.NewOptionalIntervalVar(start, p.Minutes, end, on[i], $"{run.Code} span on {p.Line}")).ToArray();
        model.AddExactlyOne(on);
        model.Add(late >= end - run.Due);
        if (run.Locked is { } held)
        {
            model.Add(start == held.Start);
            model.Add(on[run.Places.ToList().FindIndex(p => p.Line == held.Line)] == 1);
        }

        return new(start, end, late, on, spans);
    }
}
