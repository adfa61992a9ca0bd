using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>A movement as a line of a table.</summary>
/// <param name="Id">The fact.</param>
/// <param name="From">Where it left.</param>
/// <param name="To">Where it went.</param>
/// <param name="Mass">How much in all.</param>
/// <param name="At">When it began.</param>
/// <param name="Until">When it ended.</param>
public sealed record MovementLine(FactId Id, Place From, Place To, Mass Mass, Instant At, Instant Until)
{
    /// <summary>The last movements of a place that had begun by a moment, newest first.</summary>
    public static IReadOnlyList<MovementLine> LastOf(Book book, PlaceId place, Instant at, int most) =>
        [.. book.MovementsOf(place).Select(i => book.Movements[i]).Where(m => m.At <= at).OrderByDescending(m => m.At).ThenByDescending(m => m.Id).Take(most).Select(m => Of(book, m))];

    /// <summary>The line of a movement.</summary>
    public static MovementLine Of(Book book, Movement movement) =>
        new(movement.Id, book[movement.From], book[movement.To], movement.Mass, movement.At, movement.Until);

    /// <summary>Tonnes in an hour; null for a load set down at once.</summary>
    public double? TonnesPerHour => Until > At ? (double)Mass.Tonnes / (Until - At).TotalHours : null;
}
