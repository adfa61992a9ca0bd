namespace Evengrist.Tracing.Bounds;

/// <summary>First in first out, then a stirred stage, as reckoning has it (docs/model/outflow.md); what is not known is the order within each slice that came in.</summary>
internal sealed class ThroughHeld : Held
{
    private readonly double stage;
    private readonly Queue<Batch> plug = new();
    private Batch bottom;
    private double plugGrams;
    private Batch stirred;

    public ThroughHeld(double clean, double stage)
    {
        this.stage = stage;
        stirred = Batch.Clean(Math.Min(clean, stage));
        bottom = Batch.Clean(clean - stirred.Grams);
        plugGrams = bottom.Grams;
    }

    public override double Grams => plugGrams + stirred.Grams;

    public override Batch All
    {
        get
        {
            var all = stirred;
            foreach (var slice in plug.Prepend(bottom))
            {
                all = all.Beside(slice, double.PositiveInfinity);
            }

            return all;
        }
    }

    public override bool IsClean(double crumbs) => stirred.Most + bottom.Most <= crumbs && plug.Sum(s => s.Most) <= crumbs;

    protected override void Pass(in Batch into, ReadOnlySpan<double> draws, Span<Batch> outs, double cap)
    {
        var drawn = Sum(draws);
        if (into.Grams > 0 && drawn > plugGrams)
        {
            // What comes in reaches the outlet within the stretch, and who knows how much of it: as a store for once.
            var lying = All.Beside(into, cap);
            for (var i = 0; i < draws.Length; i++)
            {
                outs[i] = lying.Part(draws[i]);
            }

            var rest = lying.Part(Math.Max(0, lying.Grams - drawn));
            plug.Clear();
            stirred = rest.Part(Math.Min(stage, rest.Grams)).Even();
            bottom = rest.Part(rest.Grams - stirred.Grams);
            plugGrams = bottom.Grams;
            return;
        }

        Fill(into, cap);
        var all = Draw(drawn, cap);
        for (var i = 0; i < draws.Length; i++)
        {
            outs[i] = draws.Length == 1 ? all with { Grams = draws[i] } : all.Part(draws[i]);
        }
    }

    private void Fill(Batch into, double cap)
    {
        if (into.Grams <= 0)
        {
            return;
        }

        var room = Math.Min(stage - stirred.Grams, into.Grams);
        if (room > 0 && plugGrams <= 0)
        {
            var first = into.Part(room);
            stirred = stirred.Blended(first, cap).Even();
            into = into.Part(into.Grams - room);
        }

        if (into.Grams <= 0)
        {
            return;
        }

        plugGrams += into.Grams;
        if (bottom.Grams <= 0)
        {
            bottom = into;
        }
        else
        {
            plug.Enqueue(into);
        }
    }

    private Batch Draw(double wanted, double cap)
    {
        var all = Batch.Clean(0);
        while (wanted > 0 && plugGrams > 0)
        {
            var taken = Math.Min(wanted, bottom.Grams);
            var fresh = bottom.Part(taken);
            all = all.Beside(stage > 0 ? Exchanged(fresh) : fresh, cap);
            bottom = bottom.Part(bottom.Grams - taken);
            plugGrams -= taken;
            wanted -= taken;
            if (bottom.Grams <= 1e-6)
            {
                bottom = plug.Count > 0 ? plug.Dequeue() : Batch.Clean(0);
                plugGrams = plug.Count == 0 && bottom.Grams <= 0 ? 0 : plugGrams;
            }
        }

        if (wanted > 0 && stirred.Grams > 0)
        {
            var share = Math.Min(1, wanted / stirred.Grams);
            all = all.Beside(stirred.Share(share), cap);
            stirred = stirred.Share(1 - share);
        }

        return all;
    }

    // s(t) = s·e^(−x) + inflow weighed by decay between e^(−d/M) and 1; what left is what the inflow and the stage lost.
    private Batch Exchanged(in Batch fresh)
    {
        var (held, kept) = (stirred.Grams, Math.Exp(-fresh.Grams / stirred.Grams));
        var (thin, rich) = (stirred.Thin, stirred.Rich);
        var gone = fresh.Grams - held * (1 - kept);
        var into = (Thin: thin * kept + Math.Max(fresh.Thin * (1 - kept), fresh.Least * kept / held), Rich: rich * kept + Math.Min(fresh.Rich * (1 - kept), fresh.Most / held));
        stirred = new Batch(held, into.Thin * held, into.Rich * held, into.Thin, into.Rich);
        var least = held * thin * (1 - kept) + Math.Max(0, fresh.Thin * gone);
        var most = held * rich * (1 - kept) + Math.Min(fresh.Rich * gone, fresh.Most * (1 - kept));
        return new Batch(fresh.Grams, least, Math.Max(least, most), Math.Min(thin, fresh.Thin), Math.Min(Math.Max(rich, fresh.Rich), rich + fresh.Most / held));
    }
}
