using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>A wheat bin as a truck may be sent to it.</summary>
/// <param name="Bin">The bin.</param>
/// <param name="Stock">What lies there.</param>
/// <param name="Bars">What keeps grain from going in.</param>
public sealed record BinRoom(Place Bin, Mass Stock, Bars Bars)
{
    /// <summary>Why it cannot be chosen: a person inside, gas, a hold, shut; null where it can.</summary>
    public string? Stop => Bars.AgainstIn(Bin.Kind) is not { } bar ? null
        : (bar == Bars.PersonInside ? "PERSON INSIDE" : bar == Bars.UnderGas ? "UNDER GAS" : bar == Bars.Held ? "ON HOLD" : "SHUT") + $": {bar.Words}";

    /// <summary>Room left; null where no capacity is stated.</summary>
    public Mass? Room => Bin.Capacity - Stock;

    /// <summary>All wheat bins at a moment, by code.</summary>
    public static IReadOnlyList<BinRoom> All(Book book, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. book.OfKind(PlaceKind.Bin).OrderBy(b => b.Code, StringComparer.OrdinalIgnoreCase).Select(b => new BinRoom(
            b, book.StockOf(b.Id, at), book.BarsOn(b.Id, at)))];
    }

    /// <summary><c>B05 · HW · room 3,100.0 t</c>.</summary>
    public string Words(UnitSystem units) => string.Join(" · ", new[]
    {
        Bin.Code, Bin.Material, Room is { } room ? $"room {Shown.Wheat(room, units, units == UnitSystem.Si ? 1 : 0)}" : "no capacity stated",
        Stop ?? "",
    }.Where(w => w.Length > 0));
}
