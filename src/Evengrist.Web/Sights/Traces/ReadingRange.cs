using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Web.Sights.Traces;

/// <summary>What a laboratory read of one property with one instrument on what was traced, while it passed.</summary>
/// <param name="Where">On which place, or on how many trucks.</param>
/// <param name="What">The property.</param>
/// <param name="Unit">Unit of the values.</param>
/// <param name="Basis">Basis of the values; not stated where the property has none.</param>
/// <param name="Method">How.</param>
/// <param name="Instrument">With what.</param>
/// <param name="Count">How many readings.</param>
/// <param name="Least">The least.</param>
/// <param name="Most">The greatest.</param>
/// <param name="From">The first.</param>
/// <param name="Until">The last.</param>
public sealed record ReadingRange(
    string Where, Property What, string Unit, Basis Basis, string Method, string Instrument, int Count, decimal Least, decimal Most, Instant From, Instant Until)
{
    /// <summary>Ranges of the readings on the places passed: on loads and packages all, on the plant those of the time it passed.</summary>
    public static IReadOnlyList<ReadingRange> Of(Book book, IReadOnlyList<Passage> passages, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(book);
        var seen = passages.SelectMany(p => book.ReadingsOn(p.Place.Id)
            .Where(r => r.At <= asOf && r.What is not (Property.GrossWeight or Property.TareWeight or Property.SoundedStock) && (p.Place.Kind.Role() == PlaceRole.Unit || (r.At >= p.From && r.At <= p.Until)))
            .Select(r => (Place: p.Place, Reading: r)));
        return [.. seen
            .GroupBy(s => (Where: s.Place.Kind.Role() == PlaceRole.Unit ? "" : s.Place.Code, s.Place.Kind, s.Reading.What, s.Reading.Unit, s.Reading.Basis.IsStated, Basis: s.Reading.Basis.ToString(), s.Reading.Method, s.Reading.Instrument))
            .OrderBy(g => g.Key.Kind).ThenBy(g => g.Key.Where, StringComparer.Ordinal).ThenBy(g => g.Key.What)
            .Select(g => new ReadingRange(
                g.Key.Where.Length > 0 ? g.Key.Where : On(g.Select(s => s.Place).Distinct().ToArray()), g.Key.What, g.Key.Unit, g.First().Reading.Basis, g.Key.Method, g.Key.Instrument,
                g.Count(), g.Min(s => s.Reading.Value), g.Max(s => s.Reading.Value), g.Min(s => s.Reading.At), g.Max(s => s.Reading.At)))];
    }

    private static string On(Place[] places) => places.Length == 1 ? places[0].Code : $"{places.Length} {places[0].Kind.Words()}s";
}
