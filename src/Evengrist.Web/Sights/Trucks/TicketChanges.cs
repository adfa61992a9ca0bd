using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>What came to a ticket after the newest fact that a person had seen on it.</summary>
public static class TicketChanges
{
    private const int MostShown = 20;

    /// <summary>The facts, oldest first, with who recorded them; at most twenty.</summary>
    public static IReadOnlyList<FactSight> Since(Mill mill, string ticket, FactId seen, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var later = mill.Ask(view => view.Book.Find(ticket) is { Kind: PlaceKind.Truck } truck ? (FactId[])[.. LoadWay.Facts(view.Book, truck).Where(f => f > seen).Distinct().Order().Take(MostShown)] : []);
        return [.. later.Select(f => FactSight.Find(mill, f.Value, units)).OfType<FactSight>()];
    }
}
