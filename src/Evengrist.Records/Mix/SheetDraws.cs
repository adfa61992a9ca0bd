using Evengrist.Ledger;
using Evengrist.Mix.Sheets;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>What the ledger says was drawn in the time of a sheet.</summary>
/// <param name="Kept">The sheet.</param>
/// <param name="Gates">What each bin gave.</param>
/// <param name="Hours">Hours in which any bin gave wheat.</param>
public sealed record SheetDraws(KeptSheet Kept, IReadOnlyList<GateDraw> Gates, double Hours)
{
    /// <summary>Set beside drawn; null where nothing was drawn.</summary>
    public DrawnAgainstSheet? Against => DrawnAgainstSheet.Of(Kept.Sheet, Gates, Hours);

    /// <summary>Reads what was drawn for each sheet up to a moment, in the sheets' order.</summary>
    public static IReadOnlyList<SheetDraws> Of(MillView view, IReadOnlyList<KeptSheet> sheets, Instant at)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(sheets);
        if (sheets.Count == 0)
        {
            return [];
        }

        var (from, to) = (sheets.Min(k => k.Sheet.From), sheets.Max(k => k.Sheet.Until));
        var lines = sheets.Select(k => k.Sheet.Line).Distinct(StringComparer.OrdinalIgnoreCase)
            .ToDictionary(l => l, l => view.Book.Find(l) is { } line ? BinDraws.Of(view.Book, line.Id, from, to).ToArray() : [], StringComparer.OrdinalIgnoreCase);
        return [.. sheets.Select(k => Of(view.Book, k, lines[k.Sheet.Line], at))];
    }

    private static SheetDraws Of(Book book, KeptSheet kept, Movement[] draws, Instant at)
    {
        var (from, to) = (kept.Sheet.From, Instant.Min(kept.Sheet.Until, at));
        var there = draws.Where(m => m.TonnesWithin(from, to) > 0).ToArray();
        var gates = there.GroupBy(m => m.From).Select(g => new GateDraw(book[g.Key].Code, g.Sum(m => m.TonnesWithin(from, to)), Running([.. g], from, to))).OrderBy(g => g.Bin, StringComparer.OrdinalIgnoreCase);
        return new SheetDraws(kept, [.. gates], Running(there, from, to));
    }

    // Hours that flows cover; loads set down at once say nothing of hours, so that the whole stretch counts.
    private static double Running(Movement[] draws, Instant from, Instant to)
    {
        if (draws.Any(m => !m.IsFlow))
        {
            return (to - from).TotalHours;
        }

        var (covered, reached) = (Duration.Zero, from);
        foreach (var flow in draws.OrderBy(m => m.At))
        {
            var (begin, end) = (Instant.Max(flow.At, reached), Instant.Min(flow.Until, to));
            if (end > begin)
            {
                covered += end - begin;
                reached = end;
            }
        }

        return covered.TotalHours;
    }
}
