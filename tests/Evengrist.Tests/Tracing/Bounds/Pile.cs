using Evengrist.Ledger;

namespace Evengrist.Tests.Tracing.Bounds;

/// <summary>What truly lies in one place: heaps, bottom first.</summary>
internal sealed class Pile(PlaceKind kind, double stage)
{
    private double stirred;
    private double stirredSuspect;

    public PlaceKind Kind => kind;

    public double Turn { get; set; } = -1;

    public List<Truth.Heap> Heaps { get; } = [];

    public List<Truth.Heap> Pending { get; } = [];

    public double Grams => Heaps.Sum(h => h.Grams);

    public void Settle()
    {
        Heaps.AddRange(Pending.Where(h => h.Grams > 0));
        Pending.Clear();
    }

    /// <summary>An even part of all.</summary>
    public Truth.Heap Even(double grams)
    {
        var all = new Truth.Heap(Grams, Heaps.Sum(h => h.Suspect));
        Heaps.Clear();
        if (all.Grams - grams > 1e-6)
        {
            Heaps.Add(all.Part(all.Grams - grams));
        }

        return all.Part(grams);
    }

    /// <summary>First in first out, then a stirred stage.</summary>
    public List<Truth.Heap> Through(double grams)
    {
        // The stage stands apart from the heaps; it is filled first.
        var all = stirred > 0 ? Heaps.Skip(1).ToList() : [.. Heaps];
        var taken = new List<Truth.Heap>();
        while (stirred < stage && all.Count > 0)
        {
            var first = all[0].Part(Math.Min(all[0].Grams, stage - stirred));
            (stirred, stirredSuspect) = (stirred + first.Grams, stirredSuspect + first.Suspect);
            all[0] = all[0].Part(all[0].Grams - first.Grams);
            if (all[0].Grams <= 1e-9)
            {
                all.RemoveAt(0);
            }
        }

        while (grams > 1e-9 && all.Count > 0)
        {
            var fresh = all[0].Part(Math.Min(all[0].Grams, grams));
            all[0] = all[0].Part(all[0].Grams - fresh.Grams);
            if (all[0].Grams <= 1e-9)
            {
                all.RemoveAt(0);
            }

            grams -= fresh.Grams;
            if (stage <= 0)
            {
                taken.Add(fresh);
                continue;
            }

            var after = stirredSuspect * Math.Exp(-fresh.Grams / stirred) + stirred * (fresh.Suspect / fresh.Grams) * (1 - Math.Exp(-fresh.Grams / stirred));
            taken.Add(new Truth.Heap(fresh.Grams, stirredSuspect + fresh.Suspect - after));
            stirredSuspect = after;
        }

        if (grams > 1e-9 && stirred > 0)
        {
            var last = new Truth.Heap(stirred, stirredSuspect).Part(Math.Min(grams, stirred));
            taken.Add(last);
            (stirred, stirredSuspect) = (stirred - last.Grams, stirredSuspect - last.Suspect);
        }

        Heaps.Clear();
        if (stirred > 0)
        {
            Heaps.Add(new Truth.Heap(stirred, stirredSuspect));
        }

        Heaps.AddRange(all);
        return taken;
    }

    /// <summary>Anything at all, by a whim: the first, the last, the most suspect, the cleanest, any, or some of all.</summary>
    public List<Truth.Heap> Draw(double grams, Random random)
    {
        var whim = random.Next(6);
        var order = whim switch
        {
            0 => Heaps.ToList(),
            1 => Heaps.AsEnumerable().Reverse().ToList(),
            2 => [.. Heaps.OrderByDescending(h => h.Suspect / Math.Max(1e-9, h.Grams))],
            3 => [.. Heaps.OrderBy(h => h.Suspect / Math.Max(1e-9, h.Grams))],
            4 => [.. Heaps.OrderBy(_ => random.Next())],
            _ => [Even(Grams)],
        };
        var (taken, left) = (new List<Truth.Heap>(), new List<Truth.Heap>());
        foreach (var heap in order)
        {
            var part = Math.Min(grams, heap.Grams);
            grams -= part;
            if (part > 0)
            {
                taken.Add(heap.Part(part));
            }

            if (heap.Grams - part > 1e-6)
            {
                left.Add(heap.Part(heap.Grams - part));
            }
        }

        Heaps.Clear();
        Heaps.AddRange(left);
        return taken;
    }
}
