using Evengrist.Tracing.Bounds;

namespace Evengrist.Tracing.Drill;

/// <summary>A tempering bin or line of a recount: first in first out, then the stirred stage.</summary>
internal sealed class RecountedThrough : Held
{
    private readonly double stage;
    private readonly Queue<Batch> plug = new();
    private double plugGrams;
    private Batch stirred;

    public RecountedThrough(double clean, double stage)
    {
        this.stage = stage;
        stirred = Batch.Clean(Math.Min(clean, stage));
        Enqueue(Batch.Clean(clean - stirred.Grams));
    }

    public override Batch All => plug.Prepend(stirred).Aggregate(Batch.Clean(0), (sum, b) => sum.Blended(b, double.PositiveInfinity)).Even();

    public override double Grams => plugGrams + stirred.Grams;

    public override bool IsClean(double crumbs) => stirred.Most <= crumbs && plug.Sum(b => b.Most) <= crumbs;

    protected override void Pass(in Batch into, ReadOnlySpan<double> draws, Span<Batch> outs, double cap)
    {
        var fresh = into.Even();
        if (plugGrams <= 0 && stirred.Grams < stage && fresh.Grams > 0)
        {
            var share = Math.Min(1, (stage - stirred.Grams) / fresh.Grams);
            stirred = stirred.Blended(fresh.Share(share), cap).Even();
            fresh = fresh.Share(1 - share);
        }

        Enqueue(fresh);
        var all = Leave(Sum(draws));
        for (var i = 0; i < draws.Length; i++)
        {
            outs[i] = all.Grams > 0 ? all.Share(draws[i] / all.Grams) : Batch.Clean(draws[i]);
        }
    }

    private void Enqueue(Batch slice)
    {
        if (slice.Grams > 0)
        {
            plug.Enqueue(slice);
            plugGrams += slice.Grams;
        }
    }

    private Batch Leave(double wanted)
    {
        var all = Batch.Clean(0);
        while (wanted > 1e-9 && plug.Count > 0)
        {
            var slice = plug.Dequeue();
            var share = Math.Min(1, wanted / slice.Grams);
            if (share < 1)
            {
                // What stays stays at the bottom.
                Batch[] above = [.. plug];
                plug.Clear();
                plug.Enqueue(slice.Share(1 - share));
                Array.ForEach(above, plug.Enqueue);
            }

            var fresh = slice.Share(share);
            plugGrams = plug.Count == 0 ? 0 : plugGrams - fresh.Grams;
            wanted -= fresh.Grams;
            all = all.Blended(stage > 0 ? Stirred(fresh) : fresh, double.PositiveInfinity);
        }

        if (wanted > 1e-9 && stirred.Grams > 0)
        {
            var share = Math.Min(1, wanted / stirred.Grams);
            all = all.Blended(stirred.Share(share), double.PositiveInfinity);
            stirred = stirred.Share(1 - share);
        }

        return all.Even();
    }

    // The well-stirred tank of docs/model/outflow.md: state c·e^(−d/M) + in·(1 − e^(−d/M)); what left is the rest.
    private Batch Stirred(Batch fresh)
    {
        var kept = Math.Exp(-fresh.Grams / stirred.Grams);
        var after = stirred.Most * kept + fresh.Most / fresh.Grams * stirred.Grams * (1 - kept);
        var left = Math.Max(0, stirred.Most + fresh.Most - after);
        stirred = new Batch(stirred.Grams, after, after, after / stirred.Grams, after / stirred.Grams);
        return new Batch(fresh.Grams, left, left, left / fresh.Grams, left / fresh.Grams);
    }
}
