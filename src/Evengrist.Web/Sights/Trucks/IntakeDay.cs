using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>What came on one milling day.</summary>
/// <param name="Day">The milling day.</param>
/// <param name="Trucks">The trucks of it that had come by the moment looked at, in order.</param>
/// <param name="Before">The nearest earlier day with trucks; null where there is none.</param>
/// <param name="After">The nearest later day with trucks; null where there is none.</param>
/// <param name="TrucksInAll">How many trucks had come by then on all days.</param>
public sealed record IntakeDay(LocalDate Day, IReadOnlyList<TruckSight> Trucks, LocalDate? Before, LocalDate? After, int TrucksInAll)
{
    /// <summary>Sum of the nets.</summary>
    public Mass Net => Mass.FromGrams(Trucks.Sum(t => t.Net.Grams));

    /// <summary>How many are settled.</summary>
    public int Settled => Trucks.Count(t => t.Settled is not null);

    /// <summary>What is paid for those settled, by currency.</summary>
    public IReadOnlyList<Money> Pay => [.. Trucks.Select(t => t.Settled?.Pay).OfType<Money>().GroupBy(p => p.Currency).Select(g => g.Aggregate((a, b) => a + b))];

    /// <summary>Net by class, most first.</summary>
    public IReadOnlyList<(string Class, int Trucks, Mass Net)> ByClass =>
        [.. Trucks.GroupBy(t => t.Truck.Material).Select(g => (g.Key, g.Count(), Mass.FromGrams(g.Sum(t => t.Net.Grams)))).OrderByDescending(g => g.Item3)];

    /// <summary>Looks at a day; the newest one with trucks where none is asked for and the present one has none.</summary>
    public static IntakeDay Of(TruckSighting sighting, Instant at, LocalDate? asked)
    {
        ArgumentNullException.ThrowIfNull(sighting);
        var come = sighting.Come();
        var days = come.Select(t => sighting.DayOf(t.At)).ToArray();
        var day = asked ?? (days.Length > 0 ? days[^1] : sighting.DayOf(at));
        return new IntakeDay(
            day, [.. come.Where((_, i) => days[i] == day).Select(t => sighting.Look(t.Truck, t.At))],
            days.Where(d => d < day).Select(d => (LocalDate?)d).LastOrDefault(), days.Where(d => d > day).Select(d => (LocalDate?)d).FirstOrDefault(), come.Count);
    }
}
