using Evengrist.Packing.Runs;
using Google.OrTools.Sat;

namespace Evengrist.Planning.Packing;

/// <summary>A bin is never drawn below empty and, where asked, never filled above its capacity. Both in slices that err on the safe side: flour counts as come at the end of its slice and as gone at the beginning, for overflow the other way round.</summary>
internal static class BinRule
{
    private const int InflowMinutes = 30, RunMinutes = 60, MostSlices = 24;

    public static void Add(CpModel model, RunOrderSpec spec, IReadOnlyList<RunVariables> runs, bool mayOverflow)
    {
        foreach (var bin in spec.Bins)
        {
            var (most, held) = (Kilograms(bin.Capacity + bin.Inflows.Sum(i => i.By(i.Until)) + spec.Runs.Sum(r => r.Tonnes)), Kilograms(bin.Tonnes));
            var dry = model.AddReservoirConstraint(-held, most);
            var full = mayOverflow ? null : model.AddReservoirConstraint(-most, Kilograms(bin.Capacity) - held);
            foreach (var inflow in bin.Inflows)
            {
                for (var from = inflow.From; from < inflow.Until; from += InflowMinutes)
                {
                    var until = Math.Min(from + InflowMinutes, inflow.Until);
                    // What has come by then less what had come before: whole kilograms that sum to all of it.
                    var kilograms = Kilograms(inflow.By(until)) - Kilograms(inflow.By(from));
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
            var minutes = run.Places[i].Minutes;
            var slices = Math.Clamp(minutes / RunMinutes, 1, MostSlices);
            for (var s = 0; s < slices; s++)
            {
                var kilograms = Kilograms(run.Tonnes * (s + 1) / slices) - Kilograms(run.Tonnes * s / slices);
                dry.AddOptionalEvent(variables.Start + (minutes * s / slices), -kilograms, variables.On[i]);
                full?.AddOptionalEvent(variables.Start + (minutes * (s + 1) / slices), -kilograms, variables.On[i]);
            }
        }
    }

    private static long Kilograms(double tonnes) => (long)Math.Round(tonnes * 1000);
}
