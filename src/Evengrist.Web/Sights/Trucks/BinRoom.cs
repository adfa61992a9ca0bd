using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>A wheat bin as a truck may be sent to it.</summary>
/// <param name="Bin">The bin.</param>
/// <param name="Stock">What lies there.</param>
/// <param name="Hold">The open hold.</param>
/// <param name="Stop">The state that keeps everybody away: somebody inside, under gas; null where there is none.</param>
public sealed record BinRoom(Place Bin, Mass Stock, Happening? Hold, string? Stop)
{
    /// <summary>Room left; null where no capacity is stated.</summary>
    public Mass? Room => Bin.Capacity - Stock;

    /// <summary>All wheat bins at a moment, by code.</summary>
    public static IReadOnlyList<BinRoom> All(Book book, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. book.OfKind(PlaceKind.Bin).OrderBy(b => b.Code, StringComparer.OrdinalIgnoreCase).Select(b => new BinRoom(
            b, book.StockOf(b.Id, at), book.HoldOn(b.Id, at),
            book.HappeningsOn(b.Id).LastOrDefault(h => h.Kind is HappeningKind.State or HappeningKind.ProvenEmpty && h.At <= at) is { Kind: HappeningKind.State } state && BinStates.Stops(state.Text) ? state.Text : null))];
    }

    /// <summary><c>B05 · HW · room 3,100.0 t</c>.</summary>
    public string Words(UnitSystem units) => string.Join(" · ", new[]
    {
        Bin.Code, Bin.Material, Room is { } room ? $"room {Shown.Wheat(room, units, units == UnitSystem.Si ? 1 : 0)}" : "no capacity stated",
        Hold is null ? "" : "ON HOLD", Stop ?? "",
    }.Where(w => w.Length > 0));
}
