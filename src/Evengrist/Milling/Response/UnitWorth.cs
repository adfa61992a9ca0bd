using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Response;

/// <summary>How much of one unit of stock, of each part and size, entering each passage or outlet is in the end counted at a probe, loads held as they are: the adjoint of the solved mill.</summary>
internal sealed class UnitWorth
{
    private const double Enough = 1e-8;
    private const int MostSweeps = 2000;

    private readonly MillRun run;
    private readonly double[] into;
    private readonly double[] outOf;
    private readonly double[] own;

    /// <summary>Room for the worth of a unit anywhere in a solved mill, used again probe after probe.</summary>
    public UnitWorth(MillRun run)
    {
        var (ways, width) = (run.Model.Ways, run.Model.Width);
        (this.run, into, outOf, own) = (run, new double[ways.Passages.Length * width], new double[ways.OutletCount * width], new double[ways.OutletCount * width]);
    }

    /// <summary>Of stock that enters a passage.</summary>
    public ReadOnlySpan<double> Into(int passage, int width) => into.AsSpan(passage * width, width);

    /// <summary>Of stock that leaves by an outlet.</summary>
    public ReadOnlySpan<double> OutOf(int outlet, int width) => outOf.AsSpan(outlet * width, width);

    /// <summary>Solves for a probe, at the stock of the mill.</summary>
    public void Solve(Probe probe)
    {
        var (model, ways, width) = (run.Model, run.Model.Ways, run.Model.Width);
        Array.Clear(into);
        Array.Clear(own);
        foreach (var (outlet, weight) in probe.Outlets)
        {
            for (var k = 0; k < width; k++)
            {
                own[(outlet * width) + k] += weight * (probe.Sizes?[k % model.Classes.Count] ?? 1);
            }
        }

        Span<double> scratch = new double[width];
        var end = ways.Passages.Length;
        for (var b = ways.Blocks.Length - 1; b >= 0; b--)
        {
            var start = end - ways.Blocks[b].Length;
            for (var sweep = 0; sweep < MostSweeps; sweep++)
            {
                var moved = 0.0;
                for (var p = end - 1; p >= start; p--)
                {
                    moved = Math.Max(moved, Back(p, scratch));
                }

                if (ways.Torn[b].Length == 0 || moved < Enough)
                {
                    break;
                }
            }

            end = start;
        }
    }

    private double Back(int passage, Span<double> scratch)
    {
        var (ways, width, machine) = (run.Model.Ways, run.Model.Width, run.Model.Machines[passage]);
        var (first, last) = (ways.FirstOutlet[passage], ways.FirstOutlet[passage + 1] - 1);
        for (var outlet = first; outlet <= last; outlet++)
        {
            var worth = outOf.AsSpan(outlet * width, width);
            own.AsSpan(outlet * width, width).CopyTo(worth);
            foreach (var way in ways.OutOf[outlet])
            {
                if (ways.Ways[way].To >= 0)
                {
                    Lanes.Add(worth, into.AsSpan(ways.Ways[way].To * width, width), run.Knobs.Shares[way]);
                }
            }
        }

        outOf.AsSpan(last * width, width).CopyTo(scratch);
        for (var outlet = last - 1; outlet >= first; outlet--)
        {
            Lanes.Toward(scratch, outOf.AsSpan(outlet * width, width), run.State.Leaves.AsSpan(outlet * width, width));
        }

        Ungrind(machine, passage, scratch);
        var at = into.AsSpan(passage * width, width);
        var moved = 0.0;
        for (var k = 0; k < width; k++)
        {
            moved = Math.Max(moved, Math.Abs(scratch[k] - at[k]));
        }

        scratch.CopyTo(at);
        return moved;
    }

    private void Ungrind(Machine machine, int passage, Span<double> worth)
    {
        var n = run.Model.Classes.Count;
        var broken = run.State.Broken.AsSpan(passage * worth.Length, worth.Length);
        Span<double> pieces = stackalloc double[n];
        for (var step = 0; step < machine.Steps; step++)
        {
            for (var part = 0; part < MillWheat.PartCount; part++)
            {
                var row = worth.Slice(part * n, n);
                var children = part < (int)KernelPart.Bran ? machine.Endosperm! : machine.Bran!;
                for (var parent = 0; parent < n; parent++)
                {
                    pieces[parent] = Lanes.Dot(children.Parent(parent), row);
                }

                Lanes.Toward(row, pieces, broken.Slice(part * n, n));
            }
        }
    }
}
