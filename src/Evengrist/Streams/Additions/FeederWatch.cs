using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Streams.Additions;

/// <summary>Looks in the ledger for flour that ran while a feeder stood. Page: docs/model/additions.md.</summary>
/// <remarks>
/// A mixer is a mill unit that additive lots flow into. Flour into a bin that got an additive at any time of the span should have it all the while: stretches in which flour ran into that bin and none of the additive
/// came are stops. It sees what was recorded: a feeder that ran dry without a weigher's word looks as if it fed.
/// </remarks>
public static class FeederWatch
{
    /// <summary>What came into mixers and out of them, and the stops, the newest first.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="from">Looked at from here.</param>
    /// <param name="until">Up to here.</param>
    public static IReadOnlyList<FeederStop> Stops(Book book, Instant from, Instant until)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. book.OfKind(PlaceKind.MillUnit).SelectMany(mixer => At(book, mixer, from, until)).OrderByDescending(s => s.From).ThenBy(s => s.Additive, StringComparer.Ordinal)];
    }

    /// <summary>What was put into each bin's flour in a span, by mixer, bin and additive: an additive that came in while flour ran to two bins is shared by the grams of each.</summary>
    public static IReadOnlyList<FedDose> Doses(Book book, Instant since, Instant until)
    {
        ArgumentNullException.ThrowIfNull(book);
        return
        [
            .. from mixer in book.OfKind(PlaceKind.MillUnit)
               let moved = Moved(book, mixer, since, until)
               let runs = moved.Where(m => m.From == mixer.Id).ToArray()
               from feed in moved.Where(m => m.To == mixer.Id && book[m.From].Kind == PlaceKind.AdditiveLot).GroupBy(m => book[m.From].Material)
               from bin in runs.GroupBy(r => r.To)
               let grams = feed.Sum(f => Shared(f, bin, runs, since, until))
               where grams > 0
               let flour = bin.Sum(r => Part(r, since, until))
               orderby mixer.Code, book[bin.Key].Code, feed.Key
               select new FedDose(mixer, book[bin.Key], feed.Key, flour / 1e6, grams / 1000, [.. feed.Select(f => book[f.From].Code).Distinct().Order(StringComparer.Ordinal)]),
        ];
    }

    private static Movement[] Moved(Book book, Place mixer, Instant from, Instant until) =>
        [.. book.MovementsOf(mixer.Id).Select(i => book.Movements[i]).Where(m => m.IsFlow && m.Until > from && m.At < until)];

    // Grams of a movement that fall into a span.
    private static double Part(Movement m, Instant from, Instant until) => 1e6 * m.TonnesWithin(from, until);

    // Of a feed, what came in while flour ran to a bin.
    private static double Shared(Movement feed, IEnumerable<Movement> bin, Movement[] runs, Instant from, Instant until)
    {
        var (begin, end) = (Later(feed.At, from), Sooner(feed.Until, until));
        var all = runs.Sum(r => Part(r, begin, end));
        return all > 0 ? Part(feed, begin, end) * bin.Sum(r => Part(r, begin, end)) / all : 0;
    }

    private static IEnumerable<FeederStop> At(Book book, Place mixer, Instant from, Instant until)
    {
        var moved = Moved(book, mixer, from, until);
        var fed = moved.Where(m => m.To == mixer.Id && book[m.From].Kind == PlaceKind.AdditiveLot).ToLookup(m => book[m.From].Material);
        foreach (var additive in fed)
        {
            Movement[] feeds = [.. additive.OrderBy(m => m.At)];
            foreach (var bin in moved.Where(m => m.From == mixer.Id).GroupBy(m => m.To))
            {
                Movement[] flour = [.. bin.OrderBy(m => m.At)];
                if (flour.Any(f => feeds.Any(a => a.At < f.Until && a.Until > f.At)))
                {
                    foreach (var stop in Bare(flour, feeds, from, until))
                    {
                        yield return new FeederStop(mixer, book[bin.Key], additive.Key, stop.From, stop.Until, stop.Flour);
                    }
                }
            }
        }
    }

    // Stretches of flour that no feed covers; those that touch are one.
    private static IEnumerable<(Instant From, Instant Until, Mass Flour)> Bare(Movement[] flour, Movement[] feeds, Instant from, Instant until)
    {
        (Instant From, Instant Until, decimal Grams)? open = null;
        foreach (var run in flour)
        {
            foreach (var (begin, end) in Gaps(Later(run.At, from), Sooner(run.Until, until), feeds))
            {
                var grams = run.Mass.Grams * (decimal)((end - begin) / (run.Until - run.At));
                if (open is { } last && last.Until == begin)
                {
                    open = (last.From, end, last.Grams + grams);
                    continue;
                }

                if (open is { } closed)
                {
                    yield return (closed.From, closed.Until, Mass.FromGrams((long)Math.Round(closed.Grams)));
                }

                open = (begin, end, grams);
            }
        }

        if (open is { } rest)
        {
            yield return (rest.From, rest.Until, Mass.FromGrams((long)Math.Round(rest.Grams)));
        }
    }

    private static IEnumerable<(Instant Begin, Instant End)> Gaps(Instant begin, Instant end, Movement[] feeds)
    {
        var at = begin;
        foreach (var feed in feeds.Where(f => f.Until > begin && f.At < end))
        {
            if (feed.At > at)
            {
                yield return (at, feed.At);
            }

            at = Later(at, feed.Until);
        }

        if (at < end)
        {
            yield return (at, end);
        }
    }

    private static Instant Later(Instant a, Instant b) => a > b ? a : b;

    private static Instant Sooner(Instant a, Instant b) => a < b ? a : b;
}
