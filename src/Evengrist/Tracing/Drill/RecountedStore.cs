using Evengrist.Ledger;
using Evengrist.Tracing.Bounds;

namespace Evengrist.Tracing.Drill;

/// <summary>A store of a recount: slices with their suspect grams, bottom first, and one way in which they leave.</summary>
/// <param name="clean">Grams that lie there, none of them suspect.</param>
/// <param name="outflow">How they leave.</param>
/// <param name="coreShare">Share over the outlet, for core first.</param>
internal sealed class RecountedStore(double clean, Outflow outflow, double coreShare) : Held
{
    private readonly LinkedList<Batch> core = new(outflow == Outflow.CoreFirst ? [Batch.Clean(clean * coreShare)] : []);
    private readonly LinkedList<Batch> sides = new([Batch.Clean(outflow == Outflow.CoreFirst ? clean * (1 - coreShare) : clean)]);

    public override Batch All => core.Concat(sides).Aggregate(Batch.Clean(0), (sum, b) => sum.Blended(b, double.PositiveInfinity)).Even();

    public override double Grams => core.Sum(b => b.Grams) + sides.Sum(b => b.Grams);

    public override bool IsClean(double crumbs) => core.Sum(b => b.Most) + sides.Sum(b => b.Most) <= crumbs;

    protected override void Pass(in Batch into, ReadOnlySpan<double> draws, Span<Batch> outs, double cap)
    {
        Fill(into.Even());
        for (var i = 0; i < draws.Length; i++)
        {
            outs[i] = Draw(draws[i]);
        }
    }

    private void Fill(Batch into)
    {
        if (into.Grams <= 0)
        {
            return;
        }

        if (outflow == Outflow.Stirred)
        {
            var all = All.Blended(into, double.PositiveInfinity).Even();
            sides.Clear();
            sides.AddLast(all);
            return;
        }

        var over = outflow == Outflow.CoreFirst ? coreShare : 0;
        if (over > 0)
        {
            core.AddLast(into.Share(over));
        }

        sides.AddLast(into.Share(1 - over));
    }

    private Batch Draw(double wanted)
    {
        var taken = Batch.Clean(0);
        Take(core, fromTop: false, ref wanted, ref taken);
        Take(sides, fromTop: outflow == Outflow.CoreFirst, ref wanted, ref taken);
        return taken.Even();
    }

    private static void Take(LinkedList<Batch> slices, bool fromTop, ref double wanted, ref Batch taken)
    {
        while (wanted > 1e-9 && (fromTop ? slices.Last : slices.First) is { } node)
        {
            var slice = node.Value;
            slices.Remove(node);
            if (slice.Grams > wanted)
            {
                var share = wanted / slice.Grams;
                taken = taken.Blended(slice.Share(share), double.PositiveInfinity);
                var rest = slice.Share(1 - share);
                _ = fromTop ? slices.AddLast(rest) : slices.AddFirst(rest);
                wanted = 0;
            }
            else
            {
                taken = taken.Blended(slice, double.PositiveInfinity);
                wanted -= slice.Grams;
            }
        }
    }
}
