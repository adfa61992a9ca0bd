using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>Where an additive lot is suspect: hours in which the place it was fed into ran while no dose of that additive was recorded.</summary>
internal sealed class Doses(Book book, Instant asOf)
{
    // Shorter gaps lie between two records of a feeder that runs on; in longer ones a flour was made that gets none of it. Choices of ours.
    private static readonly Duration Short = Duration.FromMinutes(1), Long = Duration.FromHours(4);

    public IEnumerable<StillUnknown> Missing(Place lot)
    {
        Movement[] fed = [.. book.MovementsOf(lot.Id).Select(i => book.Movements[i]).Where(m => m.From == lot.Id && m.IsFlow && m.At <= asOf)];
        foreach (var mixer in fed.Select(m => m.To).Distinct().Where(id => book[id].Kind.Role() == PlaceRole.Junction))
        {
            var (first, last) = (fed.Where(m => m.To == mixer).Min(m => m.At), Instant.Min(asOf, fed.Where(m => m.To == mixer).Max(m => m.Until)));
            Movement[] there = [.. book.MovementsOf(mixer).Select(i => book.Movements[i]).Where(m => m.IsFlow && m.At < last && m.Until > first)];
            var doses = there.Where(m => m.To == mixer && book[m.From] is { Kind: PlaceKind.AdditiveLot } of && of.Material == lot.Material).OrderBy(m => m.At).ToArray();
            var (grams, from, until) = (0.0, (Instant?)null, first);
            foreach (var (begin, end) in Between(doses, first, last).Where(g => g.End - g.Begin > Short && g.End - g.Begin <= Long))
            {
                var ran = there.Where(m => m.From == mixer).Sum(m => m.Mass.Grams * Math.Max(0, (Instant.Min(m.Until, end) - Instant.Max(m.At, begin)) / (m.Until - m.At)));
                if (ran >= 1)
                {
                    (grams, from, until) = (grams + ran, from ?? begin, end);
                }
            }

            if (from is { } since)
            {
                yield return new StillUnknown(UnknownKind.DoseNotRecorded, book[mixer], grams, [lot]) { From = since, Until = until };
            }
        }
    }

    private static IEnumerable<(Instant Begin, Instant End)> Between(IEnumerable<Movement> doses, Instant first, Instant last)
    {
        var covered = first;
        foreach (var dose in doses)
        {
            if (dose.At > covered)
            {
                yield return (covered, dose.At);
            }

            covered = Instant.Max(covered, dose.Until);
        }

        if (last > covered)
        {
            yield return (covered, last);
        }
    }
}
