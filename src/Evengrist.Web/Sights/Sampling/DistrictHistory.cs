using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Web.Sights.Sampling;

/// <summary>What earlier trucks of the same district showed of one property.</summary>
/// <param name="District">The district, or the elevator.</param>
/// <param name="Trucks">Trucks of it in the span.</param>
/// <param name="Days">How long the span is.</param>
/// <param name="Readings">The newest reading of each truck that was tested.</param>
public sealed record DistrictHistory(string District, int Trucks, int Days, IReadOnlyList<Reading> Readings)
{
    /// <summary>Looks back from the moment a truck came; what was not known then is left out.</summary>
    public static DistrictHistory Of(Book book, Place source, Property what, Instant until, int days)
    {
        ArgumentNullException.ThrowIfNull(book);
        var district = OriginWords.Of(source);
        var sources = book.Places.Where(p => p.Kind is PlaceKind.Field or PlaceKind.Elevator && OriginWords.Of(p) == district).Select(p => p.Id).ToHashSet();
        var from = until - Duration.FromDays(days);
        var trucks = sources.SelectMany(s => book.MovementsOf(s)).Select(i => book.Movements[i])
            .Where(m => sources.Contains(m.From) && m.At >= from && m.At < until && book[m.To].Kind == PlaceKind.Truck).Select(m => m.To).Distinct().ToArray();
        return new DistrictHistory(district, trucks.Length, days,
            [.. trucks.Select(t => book.ReadingsOn(t).LastOrDefault(r => r.What == what && r.At < until)).OfType<Reading>().OrderBy(r => r.At)]);
    }

    /// <summary>The prior that the readings give, on the basis of a test's limit.</summary>
    public PriorOutcome Prior(TestCost cost)
    {
        ArgumentNullException.ThrowIfNull(cost);
        if (cost.What == Property.FallingNumber)
        {
            return PriorModel.FromFallingNumbers([.. Readings.Select(r => (r.Value, r.StandardUncertainty ?? 0m))]);
        }

        return PriorModel.FromConcentrations([.. Readings.Select(r => (r.Basis.Restated(r.Value, cost.Basis), r.Basis.Restated(r.StandardUncertainty ?? 0m, cost.Basis)))]);
    }
}
