using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Samples;

/// <summary>A sample the plan asks for.</summary>
/// <param name="Line">By which line.</param>
/// <param name="Place">Where.</param>
/// <param name="Due">When it is or was due.</param>
public sealed record PlannedSample(PlanLine Line, Place Place, Instant Due)
{
    /// <summary>Lots filled longer ago than this are no longer asked for, days [ours].</summary>
    public const int LotDays = 3;

    /// <summary>Whether it is due by a moment; else it is planned.</summary>
    public bool IsDue(Instant at) => Due <= at;

    /// <summary>What a plan asks for at a moment, the longest due first. A reading by one of a line's methods counts as a sample tested, whoever brought it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="book">The ledger.</param>
    /// <param name="at">The moment; later facts do not count.</param>
    public static IReadOnlyList<PlannedSample> Of(LabPlan plan, Book book, Instant at)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(book);
        return [.. plan.Lines.SelectMany(line => Places(line, book).Select(place => Next(line, place, book, at))).OfType<PlannedSample>().OrderBy(p => p.Due).ThenBy(p => p.Place.Code, StringComparer.Ordinal)];
    }

    private static IEnumerable<Place> Places(PlanLine line, Book book) => line.Place.Length > 0
        ? new[] { book.Find(line.Place) }.OfType<Place>().Where(line.Covers)
        : book.OfKind(line.Kind).Where(line.Covers);

    private static PlannedSample? Next(PlanLine line, Place place, Book book, Instant at)
    {
        var since = line.EveryHours is null ? at - Duration.FromDays(LotDays) : Instant.MinValue;
        Movement[] ran = [.. book.MovementsOf(place.Id).Select(i => book.Movements[i]).Where(m => m.At <= at && m.At >= since && (line.EveryHours is not null || m.To == place.Id))];
        if (ran.Length == 0)
        {
            return null;
        }

        var last = Last(line, place, book, at);
        if (line.EveryHours is not { } hours)
        {
            return last is null ? new PlannedSample(line, place, ran.Max(m => m.Until < at ? m.Until : at)) : null;
        }

        // Due once something has run since the last sample; where nothing has, nothing new could be found.
        var after = ran.Where(m => last is null || m.Until > last).ToArray();
        return after.Length == 0 ? null
            : last is { } taken ? new PlannedSample(line, place, taken + Duration.FromHours(hours))
            : new PlannedSample(line, place, after.Max(m => m.At));
    }

    private static Instant? Last(PlanLine line, Place place, Book book, Instant at)
    {
        var sampled = book.HappeningsOn(place.Id).Where(h => h.At <= at && LabSample.Of(h) is { } sample && sample.Line.Equals(line.Code, StringComparison.OrdinalIgnoreCase)).Select(h => (Instant?)h.At).LastOrDefault();
        var read = book.ReadingsOn(place.Id).LastOrDefault(r => r.At <= at && line.Tests.Any(t => t.Is(r)))?.At;
        return sampled > read || read is null ? sampled : read;
    }
}
