using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Response;

/// <summary>All steps of a passage's rolls or beaters in one: of each part and each size that enters, the share that leaves in each size not coarser, at the stock of a solved mill.</summary>
internal static class GrindMatrix
{
    /// <summary>Part after part, size after size that enters, from the finest: its shares by size that leaves, from the finest.</summary>
    public static double[] Of(MillRun run, int passage)
    {
        var (n, machine) = (run.Model.Classes.Count, run.Model.Machines[passage]);
        var broken = run.State.Broken.AsSpan(passage * run.Model.Width, run.Model.Width);
        var (matrix, step, before, at) = (new double[MillWheat.PartCount * n * (n + 1) / 2], new double[n * n], new double[n * n], 0);
        for (var part = 0; part < MillWheat.PartCount; part++)
        {
            Step(part < (int)KernelPart.Bran ? machine.Endosperm! : machine.Bran!, broken.Slice(part * n, n), step);
            step.CopyTo(before, 0);
            for (var more = 1; more < machine.Steps; more++)
            {
                Behind(step, before, n);
            }

            for (var parent = 0; parent < n; parent++)
            {
                before.AsSpan(parent * n, parent + 1).CopyTo(matrix.AsSpan(at));
                at += parent + 1;
            }
        }

        return matrix;
    }

    private static void Step(Grinding.Children children, ReadOnlySpan<double> broken, Span<double> step)
    {
        step.Clear();
        for (var parent = 0; parent < broken.Length; parent++)
        {
            var row = step.Slice(parent * broken.Length, parent + 1);
            Lanes.Add(row, children.Parent(parent), broken[parent]);
            row[parent] += 1 - broken[parent];
        }
    }

    // before = step · before, both zero above their diagonal: from the coarsest on, in place.
    private static void Behind(ReadOnlySpan<double> step, Span<double> before, int n)
    {
        Span<double> row = stackalloc double[n];
        for (var parent = n - 1; parent >= 0; parent--)
        {
            row.Clear();
            for (var child = 0; child <= parent; child++)
            {
                Lanes.Add(row, before.Slice(child * n, child + 1), step[(parent * n) + child]);
            }

            row.CopyTo(before.Slice(parent * n, n));
        }
    }
}
