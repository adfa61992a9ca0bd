using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Web.Sights.Season;

/// <summary>What this mill's own trucks of an expected wheat's district and class have been: to set the spreads of the terms by.</summary>
/// <param name="Arrival">Code of the expected wheat.</param>
/// <param name="Trucks">Trucks of it that came in the year before.</param>
/// <param name="Tonnes">What one of them carried, mean, t.</param>
/// <param name="Read">How many of them have a reading of protein.</param>
/// <param name="ProteinSpread">Standard deviation of it between them all, points at 12 % moisture: trucks, lots and the reading's own error together.</param>
public sealed record TruckHistory(string Arrival, int Trucks, double Tonnes, int Read, double ProteinSpread)
{
    private const int LeastTrucks = 10;
    private const double To12 = 0.88;

    /// <summary>Looks back a year from a moment; expected wheats of which fewer than ten trucks came are left out.</summary>
    public static IReadOnlyList<TruckHistory> Of(Book book, SeasonTerms terms, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(terms);
        var fields = book.OfKind(PlaceKind.Field).ToLookup(OriginWords.Of, StringComparer.Ordinal);
        return [.. terms.Arrivals.Select(a => Of(book, a, fields[a.District], at)).OfType<TruckHistory>()];
    }

    private static TruckHistory? Of(Book book, ArrivalTerms arrival, IEnumerable<Place> fields, Instant at)
    {
        var from = at - Duration.FromDays(365);
        var loads = fields.SelectMany(f => book.MovementsOf(f.Id)).Select(i => book.Movements[i])
            .Where(m => m.At >= from && m.At < at && book[m.To].Kind == PlaceKind.Truck && ClassOf(book, m.To) == arrival.WheatClass)
            .GroupBy(m => m.To).Select(g => (Truck: g.Key, Tonnes: g.Sum(m => (double)m.Mass.Tonnes))).ToArray();
        if (loads.Length < LeastTrucks)
        {
            return null;
        }

        double[] protein = [.. loads.Select(l => LoadTest.Of(book, l.Truck, at)).OfType<LoadTest>().Select(t => t.ProteinPercentDry * To12)];
        var mean = protein.DefaultIfEmpty().Average();
        return new TruckHistory(arrival.Code, loads.Length, loads.Average(l => l.Tonnes), protein.Length, protein.Length < 2 ? 0 : Math.Sqrt(protein.Sum(p => (p - mean) * (p - mean)) / (protein.Length - 1)));
    }

    // A truck is of the class of the bin it was tipped into.
    private static string ClassOf(Book book, PlaceId truck) =>
        book.MovementsOf(truck).Select(i => book.Movements[i]).Where(m => m.From == truck).Select(m => book[m.To]).FirstOrDefault(to => to.Kind == PlaceKind.Bin)?.Material ?? "";
}
