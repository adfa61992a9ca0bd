using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Samples;

/// <summary>A sample of the laboratory with what was read on it.</summary>
/// <param name="Place">Where it was taken.</param>
/// <param name="At">When.</param>
/// <param name="Sample">Its particulars.</param>
/// <param name="Readings">Readings of the place and the moment, in the order they were recorded.</param>
public sealed record TakenSample(Place Place, Instant At, LabSample Sample, IReadOnlyList<Reading> Readings)
{
    /// <summary>The tests without a result.</summary>
    public IReadOnlyList<SampleTest> Waiting => [.. Sample.Tests.Where(t => !Readings.Any(t.Is))];

    /// <summary>Whether every test has a result.</summary>
    public bool IsTested => Waiting.Count == 0;

    /// <summary>Every sample taken in a span, oldest first.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="from">Taken at or after.</param>
    /// <param name="until">Taken at or before.</param>
    public static IReadOnlyList<TakenSample> Within(Book book, Instant from, Instant until)
    {
        ArgumentNullException.ThrowIfNull(book);
        var taken = book.Happenings.Where(h => h.Kind == HappeningKind.Sampled && h.At >= from && h.At <= until && book.Counts(h))
            .Select(h => (h.On, h.At, Sample: LabSample.Of(h))).Where(s => s.Sample is not null).OrderBy(s => s.At).ToArray();
        var readings = taken.Select(s => s.On).Distinct().ToDictionary(on => on, on => Of(book, on, [.. taken.Where(s => s.On == on).Select(s => s.At)]));
        return [.. taken.Select(s => new TakenSample(book[s.On], s.At, s.Sample!, [.. readings[s.On][s.At].OrderBy(r => r.Id)]))];
    }

    /// <summary>The sample with a number, case not mattering; the newest by that moment where several had it; null where there is none.</summary>
    public static TakenSample? Find(Book book, string code, Instant until)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(code);
        var wanted = code.Trim();
        return book.Happenings.Where(h => h.Kind == HappeningKind.Sampled && h.At <= until && h.Words.Contains(wanted, StringComparison.OrdinalIgnoreCase) && book.Counts(h))
            .Select(h => (h, Sample: LabSample.Of(h))).Where(s => s.Sample is not null && s.Sample.Code.Equals(wanted, StringComparison.OrdinalIgnoreCase)).OrderBy(s => s.h.At).LastOrDefault() is ({ } happening, { } sample)
            ? new TakenSample(book[happening.On], happening.At, sample, [.. Of(book, happening.On, [happening.At])[happening.At].OrderBy(r => r.Id)])
            : null;
    }

    private static ILookup<Instant, Reading> Of(Book book, PlaceId on, HashSet<Instant> moments) => book.ReadingsOn(on).Where(r => moments.Contains(r.At)).ToLookup(r => r.At);
}
