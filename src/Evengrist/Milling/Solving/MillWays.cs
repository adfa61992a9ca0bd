using Evengrist.Milling.Sheet;

namespace Evengrist.Milling.Solving;

/// <summary>A flow sheet as numbers: passages in an order in which stock mostly goes forward, their outlets, and where each share of an outlet arrives.</summary>
internal sealed class MillWays
{
    public MillWays(FlowSheet sheet)
    {
        Blocks = [.. FlowOrder.Of(sheet)];
        Passages = [.. Blocks.SelectMany(b => b)];
        var at = Passages.Select((p, i) => (p.Code, i)).ToDictionary(x => x.Code, x => x.i, StringComparer.Ordinal);
        var products = sheet.Products.Select((p, i) => (p.Code, i)).ToDictionary(x => x.Code, x => x.i, StringComparer.Ordinal);
        Products = [.. sheet.Products];
        First = at[sheet.FirstBreak];
        FirstOutlet = new int[Passages.Length + 1];
        List<Way> ways = [];
        for (var p = 0; p < Passages.Length; p++)
        {
            var outlets = Passages[p].Outlets.ToArray();
            FirstOutlet[p + 1] = FirstOutlet[p] + outlets.Length;
            ways.AddRange(outlets.SelectMany((outlet, o) => outlet.Select(s =>
                new Way(p, FirstOutlet[p] + o, s.Share, at.TryGetValue(s.To, out var to) ? to : -1, products.TryGetValue(s.To, out var product) ? product : -1))));
        }

        Ways = [.. ways];
        Into = [.. Passages.Select((_, p) => Indices(w => w.To == p))];
        IntoProduct = [.. Products.Select((_, k) => Indices(w => w.Product == k))];
        OutOf = [.. Enumerable.Range(0, OutletCount).Select(o => Indices(w => w.Outlet == o))];
        var start = 0;
        Torn = [.. Blocks.Select(b => (Start: start, End: start += b.Length)).Select(b => Ways.Where(w => w.From >= b.Start && w.To >= b.Start && w.To < b.End && w.To <= w.From).Select(w => w.Outlet).Distinct().ToArray())];
    }

    /// <summary>Passages that feed each other in a circle stand in one block; the blocks in the order of the flow.</summary>
    public Passage[][] Blocks { get; }

    /// <summary>Every passage, block after block.</summary>
    public Passage[] Passages { get; }

    public MillProduct[] Products { get; }

    /// <summary>Index of first break.</summary>
    public int First { get; }

    /// <summary>Index of each passage's first outlet; one more entry closes the last.</summary>
    public int[] FirstOutlet { get; }

    public int OutletCount => FirstOutlet[^1];

    public Way[] Ways { get; }

    /// <summary>Indices of the ways into each passage.</summary>
    public int[][] Into { get; }

    /// <summary>Indices of the ways into each product.</summary>
    public int[][] IntoProduct { get; }

    /// <summary>By block: the outlets that feed a passage of it visited no later; none where stock does not go round.</summary>
    public int[][] Torn { get; }

    /// <summary>Indices of the ways out of each outlet.</summary>
    public int[][] OutOf { get; }

    private int[] Indices(Func<Way, bool> which) => [.. Ways.Select((w, i) => (w, i)).Where(x => which(x.w)).Select(x => x.i)];
}

/// <summary>A share of an outlet and where it arrives: at a passage or, where <paramref name="To"/> is −1, at a product.</summary>
internal readonly record struct Way(int From, int Outlet, double Share, int To, int Product);
