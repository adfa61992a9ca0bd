using Evengrist.Packing.Runs;
using Google.OrTools.Sat;

namespace Evengrist.Planning.Packing;

/// <summary>A bin is never drawn below empty and, where asked, never filled above its capacity. Both in slices that err on the safe side: flour counts as come at the end of its slice and as gone at the beginning, for overflow the other way round.</summary>
internal static class BinRule
{
    public static void Add(CpModel model, RunOrderSpec spec, IReadOnlyList<RunVariables> runs, bool mayOverflow)
    {
        foreach (var bin in spec.Bins)
        {
            var (most, held) = (FlourSlices.Kilograms(bin.Capacity + bin.Inflows.Sum(i => i.By(i.Until)) + spec.Runs.Sum(r => r.Tonnes)), FlourSlices.Kilograms(bin.Tonnes));
            var dry = model.AddReservoirConstraint(-held, most);
            var full = mayOverflow ? null : model.AddReservoirConstraint(-most, FlourSlices.Kilograms(bin.Capacity) - held);
            foreach (var inflow in bin.Inflows)
            {
                foreach (var (from, until, kilograms) in FlourSlices.Come(inflow))
                {
                    dry.AddEvent(model.NewConstant(until), kilograms);
                    full?.AddEvent(model.NewConstant(from), kilograms);
                }
            }

            for (var r = 0; r < runs.Count; r++)
            {
                if (spec.Runs[r].Bin == bin.Code)
                {
                    Draw(dry, full, spec.Runs[r], runs[r]);
                }
            }
        }
    }

    private static void Draw(ReservoirConstraint dry, ReservoirConstraint? full, PackingRun run, RunVariables variables)
    {
        for (var i = 0; i < run.Places.Count; i++)
        {
            foreach (var (from, until, kilograms) in FlourSlices.Gone(run.Tonnes, run.Places[i].Minutes))
            {
                dry.AddOptionalEvent(variables.Start + from, -kilograms, variables.On[i]);
                full?.AddOptionalEvent(variables.Start + until, -kilograms, variables.On[i]);
            }
        }
    }
}
