using Evengrist.Laboratory.Calibration;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Lots;

/// <summary>The readings that speak for a lot: those on its packages, on the flour bins they came from, and on the mill unit while the flour was made; none of a spectrum outside its calibration.</summary>
/// <remarks>
/// The way back is that of the ledger: from the packages to the places they were packed from, and on against the flow while something flowed. A unit's readings are of the
/// flour it makes most of. When the flour was made is taken as packed less the mill's own lag: what mixes in a flour bin is not followed. Model: docs/model/lots.md.
/// </remarks>
public static class LotReadings
{
    /// <summary>The readings, by time.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="lot">The lot.</param>
    /// <param name="rules">The mill's rules.</param>
    /// <param name="asOf">What was sampled later does not count.</param>
    /// <param name="flows">The ledger's flows, where many lots are asked for; of this one alone where null.</param>
    public static IReadOnlyList<Reading> Of(Book book, FlourLot lot, ReleaseRules rules, Instant asOf, PlaceFlows? flows = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(lot);
        ArgumentNullException.ThrowIfNull(rules);
        var lag = Duration.FromMinutes(rules.LagMinutes);
        var found = lot.Packages.SelectMany(p => book.ReadingsOn(p.Place.Id)).ToList();
        foreach (var place in Upstream(book, flows ?? new PlaceFlows(book), lot, lag))
        {
            var isUnit = place.Kind == PlaceKind.MillUnit;
            var (from, until) = isUnit ? (lot.From - lag, lot.Until - lag) : (lot.From - lag, lot.Until);
            found.AddRange(book.ReadingsOn(place.Id).Where(r => r.At >= from && r.At < until && (!isUnit || rules.UnitMethods.Count == 0 || rules.UnitMethods.Contains(r.Method, StringComparer.OrdinalIgnoreCase))));
        }

        return [.. found.Where(r => r.At <= asOf && !r.Method.EndsWith(SpectralReading.OutsideMark, StringComparison.OrdinalIgnoreCase)).DistinctBy(r => r.Id).OrderBy(r => r.At).ThenBy(r => r.Id)];
    }

    private static List<Place> Upstream(Book book, PlaceFlows flows, FlourLot lot, Duration lag)
    {
        var (seen, next) = (new HashSet<PlaceId>(), new Queue<PlaceId>(lot.Packages.Select(p => p.From).Distinct()));
        var places = new List<Place>();
        while (next.TryDequeue(out var at))
        {
            if (!seen.Add(at) || book[at].Kind is not (PlaceKind.PackingLine or PlaceKind.FlourBin or PlaceKind.MillUnit))
            {
                continue;
            }

            places.Add(book[at]);
            foreach (var flow in flows.Within(at, lot.From - lag, lot.Until).Where(f => f.To == at && IsOfTheFlour(book, book[f.From], lot)).GroupBy(f => f.From))
            {
                if (book[flow.Key].Kind != PlaceKind.MillUnit || flows.MostGoesTo(flow.Key, lot.From - lag, lot.Until - lag) == at)
                {
                    next.Enqueue(flow.Key);
                }
            }
        }

        return places;
    }

    // A line is fed from several bins, of several flours, one after another.
    private static bool IsOfTheFlour(Book book, Place from, FlourLot lot) =>
        from.Kind != PlaceKind.FlourBin || from.Material.Length == 0 || from.Material.Equals(lot.Flour, StringComparison.OrdinalIgnoreCase) || lot.Packages.All(p => book[p.From].Kind != PlaceKind.PackingLine);
}
