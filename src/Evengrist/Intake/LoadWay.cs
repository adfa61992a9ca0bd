using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Intake;

/// <summary>The way of one truckload: from the field onto the truck, and through pit and leg into a bin.</summary>
public static class LoadWay
{
    private const int Longest = 6;

    /// <summary>Movements of the load that had begun by a moment, in order; those that no longer count are left out.</summary>
    /// <remarks>A pit and a leg hold nothing, so a load goes on through them in the same grams at the same time.</remarks>
    public static IReadOnlyList<Movement> Of(Book book, Place truck, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(truck);
        var way = new List<Movement>();
        foreach (var movement in book.MovementsOf(truck.Id).Select(i => book.Movements[i]).Where(m => m.At <= at).OrderBy(m => m.At).ThenBy(m => m.Id))
        {
            Movement? next = movement;
            for (var steps = 0; next is { } step && steps < Longest; steps++)
            {
                way.Add(step);
                next = step.To != truck.Id && book[step.To].Kind is PlaceKind.Pit or PlaceKind.Leg ? Onward(book, step) : null;
            }
        }

        return way;
    }

    /// <summary>Numbers of the facts of a ticket that count: its readings, its happenings and the movements of its load.</summary>
    public static IEnumerable<FactId> Facts(Book book, Place truck)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(truck);
        return book.ReadingsOn(truck.Id).Select(r => r.Id).Concat(book.HappeningsOn(truck.Id).Select(h => h.Id)).Concat(Of(book, truck, Instant.MaxValue).Select(m => m.Id));
    }

    /// <summary>Number of the newest of them; <c>default</c> where there is none.</summary>
    /// <remarks>Whoever changes a ticket says which was the newest they had seen, so that nobody overwrites what they never saw.</remarks>
    public static FactId Newest(Book book, Place truck) => Facts(book, truck).DefaultIfEmpty().Max();

    private static Movement? Onward(Book book, Movement step) => book.MovementsOf(step.To, step.Until).Select(i => book.Movements[i])
        .Where(m => m.From == step.To && m.At == step.At && m.Until == step.Until && m.Mass == step.Mass).Select(m => (Movement?)m).FirstOrDefault();
}
