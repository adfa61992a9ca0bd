using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Milling.Balance;

/// <summary>What the ledger moved into and out of a section over a span, t.</summary>
/// <param name="Section">The section.</param>
/// <param name="From">Beginning of the span.</param>
/// <param name="Until">Its end, left out.</param>
public sealed record SectionFlows(MillSection Section, Instant From, Instant Until)
{
    /// <summary>Wheat by the bin it came from, most first.</summary>
    public required IReadOnlyList<(Place Bin, double Tonnes)> Wheat { get; init; }

    /// <summary>Screenings: what left before the rolls, but for what was booked as lost.</summary>
    public required double Screenings { get; init; }

    /// <summary>Water let in.</summary>
    public required double Water { get; init; }

    /// <summary>Additives and rework fed in; they are taken off the flour.</summary>
    public required double FedIn { get; init; }

    /// <summary>What left from the rolls or a mixer behind them, by where it went, most first.</summary>
    public required IReadOnlyList<(Place To, double Tonnes)> Products { get; init; }

    /// <summary>What the ledger books as lost or wasted: the difference that closes it, not weighed.</summary>
    public required double BookedLoss { get; init; }

    /// <summary>What the section held more at the end than at the beginning, but for what a count found or missed.</summary>
    public required double Rise { get; init; }

    /// <summary>Adds up.</summary>
    public static SectionFlows Of(Book book, MillSection section, Instant from, Instant until)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(section);
        // What crosses the section's edge touches it with one end only.
        Movement[] crossing = [.. section.Places.SelectMany(book.MovementsOf).Distinct().Select(i => book.Movements[i]).Where(m => section.Places.Contains(m.From) != section.Places.Contains(m.To))];
        double Into(Func<PlaceKind, bool> kinds) => crossing.Where(m => section.Places.Contains(m.To) && kinds(book[m.From].Kind)).Sum(m => m.TonnesWithin(from, until));
        Movement[] gone = [.. crossing.Where(m => section.Places.Contains(m.From))];
        bool IsLost(Movement m) => book[m.To].Kind is PlaceKind.Loss or PlaceKind.Waste;
        bool IsCounted(PlaceKind kind) => kind is PlaceKind.Opening or PlaceKind.Gain or PlaceKind.Shortage;
        double Sum(IEnumerable<Movement> some) => some.Sum(m => m.TonnesWithin(from, until));
        return new SectionFlows(section, from, until)
        {
            Wheat = By(book, crossing.Where(m => section.Places.Contains(m.To) && IsWheat(book[m.From].Kind)), m => m.From, from, until),
            Screenings = Sum(gone.Where(m => !IsLost(m) && !IsCounted(book[m.To].Kind) && book[m.From].Kind != PlaceKind.MillUnit)),
            Water = Into(k => k == PlaceKind.Water), FedIn = Into(k => k is PlaceKind.AdditiveLot or PlaceKind.ReworkTote or PlaceKind.FlourBin),
            Products = By(book, gone.Where(m => !IsLost(m) && !IsCounted(book[m.To].Kind) && book[m.From].Kind == PlaceKind.MillUnit), m => m.To, from, until),
            BookedLoss = Sum(gone.Where(IsLost)),
            Rise = Sum(crossing.Where(m => section.Places.Contains(m.To))) - Sum(gone) - Into(IsCounted) + Sum(gone.Where(m => IsCounted(book[m.To].Kind))),
        };
    }

    private static bool IsWheat(PlaceKind kind) => kind is PlaceKind.Bin or PlaceKind.Leg or PlaceKind.Pit or PlaceKind.Truck;

    private static (Place, double)[] By(Book book, IEnumerable<Movement> some, Func<Movement, PlaceId> end, Instant from, Instant until) =>
        [.. some.GroupBy(end).Select(g => (book[g.Key], Tonnes: g.Sum(m => m.TonnesWithin(from, until)))).Where(g => g.Tonnes > 0).OrderByDescending(g => g.Tonnes).ThenBy(g => g.Item1.Code, StringComparer.OrdinalIgnoreCase)];
}
