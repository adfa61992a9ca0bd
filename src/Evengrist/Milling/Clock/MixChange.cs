using Evengrist.Ledger;
using Evengrist.Milling.Balance;
using NodaTime;

namespace Evengrist.Milling.Clock;

/// <summary>A change of what is drawn from the bin gates of a section.</summary>
/// <param name="At">When.</param>
/// <param name="Points">How much of the wheat is other wheat than before, per cent of it.</param>
/// <param name="Before">Bins drawn before, with their share, per cent, most first.</param>
/// <param name="After">Bins drawn after.</param>
public sealed record MixChange(Instant At, double Points, IReadOnlyList<(string Bin, double Percent)> Before, IReadOnlyList<(string Bin, double Percent)> After)
{
    /// <summary>Changes by at least so many points within a span, the newest first.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="section">The section.</param>
    /// <param name="from">Beginning of the span.</param>
    /// <param name="until">Its end.</param>
    /// <param name="least">Least points.</param>
    public static IReadOnlyList<MixChange> Of(Book book, MillSection section, Instant from, Instant until, double least)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(section);
        // The stretches of drawing, in order: what is drawn at one beginning is drawn together.
        var stretches = section.Places.SelectMany(book.MovementsOf).Distinct().Select(i => book.Movements[i])
            .Where(m => m.At >= from && m.At < until && book[m.From].Kind == PlaceKind.Bin && section.Places.Contains(m.To)).GroupBy(m => m.At).OrderBy(g => g.Key)
            .Select(g => (At: g.Key, Shares: Shares(book, [.. g]))).ToArray();
        return
        [
            .. stretches.Zip(stretches.Skip(1), (before, after) => new MixChange(after.At, Apart(before.Shares, after.Shares), before.Shares, after.Shares))
                .Where(c => c.Points >= least).OrderByDescending(c => c.At),
        ];
    }

    private static (string Bin, double Percent)[] Shares(Book book, Movement[] draws)
    {
        var all = draws.Sum(m => (double)m.Mass.Grams);
        return [.. draws.GroupBy(m => m.From).Select(g => (book[g.Key].Code, 100 * g.Sum(m => (double)m.Mass.Grams) / all)).OrderByDescending(s => s.Item2).ThenBy(s => s.Code, StringComparer.OrdinalIgnoreCase)];
    }

    private static double Apart((string Bin, double Percent)[] one, (string Bin, double Percent)[] other) =>
        one.Select(s => s.Bin).Union(other.Select(s => s.Bin)).Sum(bin => Math.Abs(one.FirstOrDefault(s => s.Bin == bin).Percent - other.FirstOrDefault(s => s.Bin == bin).Percent)) / 2;
}
