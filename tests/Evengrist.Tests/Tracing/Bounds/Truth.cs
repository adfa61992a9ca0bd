using Evengrist.Ledger;

namespace Evengrist.Tests.Tracing.Bounds;

/// <summary>
/// The hidden truth of a posed mill: every place holds little heaps of grams, clean or suspect, and what leaves a store is chosen by a
/// whim at each moment. Knows nothing of the bounds; places are given upstream first.
/// </summary>
internal sealed class Truth(Random random, bool throughToo)
{
    private const double Slice = 0.05;
    private readonly Dictionary<string, Pile> piles = [];
    private readonly List<Leg> legs = [];

    /// <summary>Suspect grams packed into each unit and sink, by code.</summary>
    public Dictionary<string, double> Packed { get; } = [];

    /// <summary>Suspect grams lying in each place at the end.</summary>
    public Dictionary<string, double> Lying => piles.ToDictionary(p => p.Key, p => p.Value.Heaps.Sum(h => h.Suspect));

    public double Traced { get; private set; }

    /// <summary>Codes and kinds, upstream first.</summary>
    public List<(string Code, PlaceKind Kind, double Stage)> Places { get; } = [];

    public Func<string, string, double, bool> IsMarked { get; set; } = (_, _, _) => false;

    public List<(string Place, double Hour)> Empties { get; } = [];

    public void Move(string from, string to, double grams, double at, double? until) => legs.Add(new Leg(from, to, grams, at, until ?? at));

    public void Run(double end)
    {
        foreach (var (code, kind, stage) in Places)
        {
            piles.Add(code, new Pile(kind, stage));
        }

        var rank = Places.Select((p, i) => (p.Code, i)).ToDictionary(p => p.Code, p => p.i);

        // Loads and packages were filled before: they give first.
        var sorted = legs.OrderBy(l => piles[l.From].Kind.IsFixed() ? rank[l.From] : -1).ToList();
        for (var n = 0; n * Slice < end - 1e-9; n++)
        {
            var (now, next) = (n * Slice, (n + 1) * Slice);
            Sudden(sorted, now);
            Flow(sorted, now, next);
            foreach (var leg in sorted.Where(l => l.Until > l.At && Math.Abs(l.Until - next) < 1e-9 && IsWhole(l.To)))
            {
                SetDown(leg);
            }

            foreach (var (place, _) in Empties.Where(e => Math.Abs(e.Hour - next) < 1e-9))
            {
                piles[place].Heaps.Clear();
            }
        }
    }

    private void Sudden(List<Leg> sorted, double now)
    {
        foreach (var leg in sorted.Where(l => l.Until <= l.At && Math.Abs(l.At - now) < 1e-9))
        {
            var heaps = Take(leg, leg.Grams, now);
            if (IsWhole(leg.To))
            {
                leg.Arrived.AddRange(heaps);
                SetDown(leg);
            }
            else
            {
                piles[leg.To].Heaps.AddRange(heaps);
            }
        }
    }

    private void Flow(List<Leg> sorted, double now, double next)
    {
        foreach (var leg in sorted.Where(l => l.Until > l.At && l.At < next - 1e-9 && l.Until > now + 1e-9))
        {
            var pile = piles[leg.From];
            if (pile.Turn != now)
            {
                // What fell in during this slice lies there before or after the draw, as it may be.
                pile.Turn = now;
                if (pile.Kind.Role() is not PlaceRole.Store || pile.Grams < 2e6 || random.Next(2) == 0)
                {
                    pile.Settle();
                }
            }

            var grams = leg.Grams * Slice / (leg.Until - leg.At);
            var heaps = Take(leg, grams, now);
            if (IsWhole(leg.To))
            {
                leg.Arrived.AddRange(heaps);
            }
            else
            {
                piles[leg.To].Pending.AddRange(heaps);
            }
        }

        foreach (var pile in piles.Values)
        {
            pile.Settle();
        }
    }

    private List<Heap> Take(Leg leg, double grams, double now)
    {
        List<Heap> heaps;
        var lay = piles[leg.From].Grams;
        var kind = piles[leg.From].Kind;
        if (kind.Role() == PlaceRole.Source)
        {
            heaps = [new Heap(grams, 0)];
        }
        else if (kind.Role() is PlaceRole.Junction or PlaceRole.Unit)
        {
            heaps = [piles[leg.From].Even(grams)];
        }
        else if (kind.Role() == PlaceRole.Through && !throughToo)
        {
            heaps = piles[leg.From].Through(grams);
        }
        else
        {
            heaps = piles[leg.From].Draw(grams, random);
        }

        Assert.True(kind.Role() == PlaceRole.Source || kind == PlaceKind.Customer || lay >= grams - 1, $"{leg} at {now}: only {lay} lie there");
        if (IsMarked(leg.From, leg.To, now))
        {
            Traced += heaps.Sum(h => h.Grams - h.Suspect);
            heaps = heaps.ConvertAll(h => h with { Suspect = h.Grams });
        }

        return heaps;
    }

    private void SetDown(Leg leg)
    {
        var (grams, suspect) = (leg.Arrived.Sum(h => h.Grams), leg.Arrived.Sum(h => h.Suspect));
        Packed[leg.To] = Packed.GetValueOrDefault(leg.To) + suspect;
        var pile = piles[leg.To];
        pile.Heaps.Add(new Heap(grams, suspect));
        if (pile.Kind.Role() == PlaceRole.Unit)
        {
            var even = pile.Even(pile.Grams);
            pile.Heaps.Add(even);
        }
    }

    private bool IsWhole(string code) => piles[code].Kind.Role() is PlaceRole.Unit or PlaceRole.Sink;

    internal sealed record Leg(string From, string To, double Grams, double At, double Until)
    {
        public List<Heap> Arrived { get; } = [];
    }

    internal readonly record struct Heap(double Grams, double Suspect)
    {
        public Heap Part(double grams) => new(grams, Grams > 0 ? Suspect * grams / Grams : 0);
    }
}
