using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>In, out and stock of one place or of all places of a kind.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Place">The place; null for a whole kind.</param>
/// <param name="Places">How many places.</param>
/// <param name="In">What went in.</param>
/// <param name="Out">What went out.</param>
/// <param name="Stock">What the ledger says lies there, reckoned another way than In − Out.</param>
public sealed record BalanceLine(PlaceKind Kind, Place? Place, int Places, Mass In, Mass Out, Mass Stock)
{
    /// <summary>Whether in − out = stock, to the gram.</summary>
    public bool AddsUp => In - Out == Stock;
}

/// <summary>The balance of the plant at one moment.</summary>
/// <param name="Kinds">A line a kind, in the order of the way of the grain.</param>
/// <param name="Places">A line a place of the kind asked for; empty where none was.</param>
/// <param name="PlacesInAll">How many places that kind has.</param>
/// <param name="Faults">Places whose in − out is not their stock; empty when the ledger is sound.</param>
public sealed record BalanceSight(IReadOnlyList<BalanceLine> Kinds, IReadOnlyList<BalanceLine> Places, int PlacesInAll, IReadOnlyList<BalanceLine> Faults)
{
    /// <summary>Places on one page.</summary>
    public const int PageSize = 100;

    /// <summary>Sum of the stocks over all places, sources and sinks included: 0 when the ledger is sound.</summary>
    public Mass Sum => Mass.FromGrams(Kinds.Sum(k => k.Stock.Grams));

    /// <summary>Adds up every place.</summary>
    public static BalanceSight Of(Book book, Instant at, PlaceKind? kind = null, int page = 1)
    {
        ArgumentNullException.ThrowIfNull(book);
        var lines = book.Places.Select(p =>
        {
            var (into, outOf) = book.ThroughputOf(p.Id, at);
            return new BalanceLine(p.Kind, p, 1, into, outOf, book.StockOf(p.Id, at));
        }).ToArray();
        var asked = lines.Where(l => l.Kind == kind).OrderBy(l => l.Place!.Code, StringComparer.OrdinalIgnoreCase).ToArray();
        return new BalanceSight(
            [.. lines.GroupBy(l => l.Kind).OrderBy(g => g.Key).Select(g => new BalanceLine(g.Key, null, g.Count(), Total(g, l => l.In), Total(g, l => l.Out), Total(g, l => l.Stock)))],
            [.. asked.Skip((Math.Max(1, page) - 1) * PageSize).Take(PageSize)], asked.Length,
            [.. lines.Where(l => !l.AddsUp).Take(PageSize)]);
    }

    private static Mass Total(IEnumerable<BalanceLine> lines, Func<BalanceLine, Mass> of) => Mass.FromGrams(lines.Sum(l => of(l).Grams));
}
