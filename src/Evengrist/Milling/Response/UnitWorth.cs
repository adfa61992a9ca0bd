using System.Numerics;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Response;

/// <summary>How much of one unit of stock, of each part and size, entering each passage or outlet is in the end counted at each of some probes, loads held as they are: the adjoint of the solved mill.</summary>
/// <remarks>As many probes at once as the processor has lanes: a number for each of them where there would be one.</remarks>
internal sealed class UnitWorth
{
    private const double Enough = 1e-8;
    private const int MostSweeps = 2000;

    private readonly MillRun run;
    private readonly Vector<double>[][] into;
    private readonly Vector<double>[]?[] mixed;
    private readonly Vector<double>[]?[] own;
    private readonly Vector<double>[] scratch;
    private readonly double[]?[] grinds;

    /// <summary>Room for the worth of a unit anywhere in a solved mill, used again probes after probes.</summary>
    public UnitWorth(MillRun run)
    {
        var (ways, width) = (run.Model.Ways, run.Model.Width);
        (this.run, scratch) = (run, new Vector<double>[width]);
        into = [.. ways.Passages.Select(_ => new Vector<double>[width])];
        mixed = new Vector<double>[ways.OutletCount][];
        own = new Vector<double>[ways.OutletCount][];
        grinds = [.. Enumerable.Range(0, ways.Passages.Length).Select(p => run.Model.Machines[p].Steps > 0 ? GrindMatrix.Of(run, p) : null)];
    }

    /// <summary>How many probes are solved for at once.</summary>
    public static int Wide => Vector<double>.Count;

    /// <summary>Of stock that enters a passage.</summary>
    public ReadOnlySpan<Vector<double>> Into(int passage) => into[passage];

    /// <summary>Of stock that leaves by an outlet.</summary>
    public ReadOnlySpan<Vector<double>> OutOf(int outlet) => LeadsTo(outlet) is { } whole ? whole : mixed[outlet];

    /// <summary>Solves for probes, at the stock of the mill.</summary>
    /// <param name="probes">Up to <see cref="Wide"/> of them.</param>
    public void Solve(ReadOnlySpan<Probe> probes)
    {
        var ways = run.Model.Ways;
        foreach (var row in into)
        {
            Array.Clear(row);
        }

        Count(probes);
        var end = ways.Passages.Length;
        for (var b = ways.Blocks.Length - 1; b >= 0; b--)
        {
            var start = end - ways.Blocks[b].Length;
            for (var sweep = 0; sweep < MostSweeps; sweep++)
            {
                var moved = Vector<double>.Zero;
                for (var p = end - 1; p >= start; p--)
                {
                    moved = Vector.Max(moved, Back(p));
                }

                if (ways.Torn[b].Length == 0 || Vector.LessThanAll(moved, new Vector<double>(Enough)))
                {
                    break;
                }
            }

            end = start;
        }
    }

    // What counts as it leaves, by size.
    private void Count(ReadOnlySpan<Probe> probes)
    {
        var n = run.Model.Classes.Count;
        Array.Clear(own);
        for (var lane = 0; lane < probes.Length; lane++)
        {
            var one = Vector.WithElement(Vector<double>.Zero, lane, 1);
            foreach (var (outlet, weight) in probes[lane].Outlets)
            {
                var counts = own[outlet] ??= new Vector<double>[n];
                for (var size = 0; size < n; size++)
                {
                    counts[size] += one * (weight * (probes[lane].Sizes?[size] ?? 1));
                }
            }
        }
    }

    private Vector<double> Back(int passage)
    {
        var (ways, width) = (run.Model.Ways, run.Model.Width);
        var (first, last) = (ways.FirstOutlet[passage], ways.FirstOutlet[passage + 1] - 1);
        Leave(last).CopyTo(scratch);
        for (var outlet = last - 1; outlet >= first; outlet--)
        {
            Toward(scratch, Leave(outlet), run.State.Leaves.AsSpan(outlet * width, width));
        }

        if (grinds[passage] is { } grind)
        {
            Ungrind(grind, scratch);
        }

        var at = into[passage].AsSpan();
        var moved = Vector<double>.Zero;
        for (var k = 0; k < at.Length; k++)
        {
            moved = Vector.Max(moved, Vector.Abs(scratch[k] - at[k]));
            at[k] = scratch[k];
        }

        return moved;
    }

    // The worth of what an outlet leads on to whole, nothing counted on the way; null where it is a mixture.
    private Vector<double>[]? LeadsTo(int outlet)
    {
        var ways = run.Model.Ways;
        return own[outlet] is null && ways.OutOf[outlet] is [var one] && ways.Ways[one].To >= 0 && run.Knobs.Shares[one] == 1 ? into[ways.Ways[one].To] : null;
    }

    private Vector<double>[] Leave(int outlet)
    {
        if (LeadsTo(outlet) is { } whole)
        {
            return whole;
        }

        var (ways, worth) = (run.Model.Ways, mixed[outlet] ??= new Vector<double>[run.Model.Width]);
        if (own[outlet] is { } counts)
        {
            for (var at = 0; at < worth.Length; at += counts.Length)
            {
                counts.CopyTo(worth, at);
            }
        }
        else
        {
            Array.Clear(worth);
        }

        foreach (var way in ways.OutOf[outlet])
        {
            if (ways.Ways[way].To >= 0)
            {
                Add(worth, into[ways.Ways[way].To], run.Knobs.Shares[way]);
            }
        }

        return worth;
    }

    // From the coarsest on, each only from those not coarser: in place.
    private void Ungrind(ReadOnlySpan<double> grind, Span<Vector<double>> worth)
    {
        var (n, at) = (run.Model.Classes.Count, grind.Length);
        for (var part = MillWheat.PartCount - 1; part >= 0; part--)
        {
            var row = worth.Slice(part * n, n);
            for (var parent = n - 1; parent >= 0; parent--)
            {
                at -= parent + 1;
                row[parent] = Dot(grind.Slice(at, parent + 1), row);
            }
        }
    }

    /// <summary>Sum of the products of numbers with what each is worth.</summary>
    public static Vector<double> Dot(ReadOnlySpan<double> one, ReadOnlySpan<Vector<double>> worth)
    {
        var sum = Vector<double>.Zero;
        for (var k = 0; k < one.Length && k < worth.Length; k++)
        {
            sum = Vector.MultiplyAddEstimate(worth[k], new Vector<double>(one[k]), sum);
        }

        return sum;
    }

    private static void Add(Span<Vector<double>> to, ReadOnlySpan<Vector<double>> row, double factor)
    {
        for (var k = 0; k < to.Length && k < row.Length; k++)
        {
            to[k] += row[k] * factor;
        }
    }

    private static void Toward(Span<Vector<double>> stock, ReadOnlySpan<Vector<double>> other, ReadOnlySpan<double> share)
    {
        for (var k = 0; k < stock.Length && k < other.Length && k < share.Length; k++)
        {
            stock[k] += (other[k] - stock[k]) * share[k];
        }
    }
}
