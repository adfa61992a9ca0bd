using Evengrist.Ledger;
using Evengrist.Milling.Balance;
using Evengrist.Milling.Clock;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Web.Sights.Clock;

/// <summary>Where what was changed at the gates of a unit is now, and when it arrives.</summary>
/// <param name="Ask">What was typed.</param>
/// <param name="Units">Sections that can be chosen.</param>
/// <param name="Changes">Changes of the last days, the newest first.</param>
/// <param name="Changed">The change looked at; null where there is none.</param>
/// <param name="Way">The way as the ledger has it; null where it cannot be told.</param>
/// <param name="Why">Why not; empty where it can.</param>
/// <param name="Places">Every point of the way with its arrivals; empty without one.</param>
/// <param name="Tuning">What tuned it; null where nothing was asked for.</param>
public sealed record ClockSight(ClockAsk Ask, IReadOnlyList<string> Units, IReadOnlyList<MixChange> Changes, Instant? Changed, WayOfUnit? Way, string Why, IReadOnlyList<StageArrival> Places, Tuning? Tuning)
{
    /// <summary>Points of wheat by which the mix must differ to be listed as a change.</summary>
    public const double LeastPoints = 3;

    private static readonly Duration Listed = Duration.FromDays(14);

    /// <summary>Looks.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="typed">What was typed, by field.</param>
    /// <param name="read">Reads a moment on the mill's clock; null where the text is none.</param>
    /// <param name="now">The moment looked at.</param>
    public static ClockSight Of(Mill mill, Func<string, string?> typed, Func<string?, Instant?> read, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var ask = ClockAsk.Of(typed, read, now);
        return mill.Ask(view =>
        {
            var sections = MillSection.Of(view.Book);
            var chosen = ask.Fields.Text("unit", sections.Count > 0 ? sections[0].Name : "");
            var section = sections.FirstOrDefault(s => s.Name.Equals(chosen, StringComparison.OrdinalIgnoreCase));
            string[] units = [.. sections.Select(s => s.Name)];
            if (section is null)
            {
                if (sections.Count > 0)
                {
                    ask.Fields.Fault($"Unit: choose one of {string.Join(", ", units)}; read “{chosen}”.");
                }

                return new ClockSight(ask, units, [], null, null, "", [], null);
            }

            var changes = MixChange.Of(view.Book, section, now - Listed, now, LeastPoints);
            return (ask.Changed ?? (changes is [var newest, ..] ? newest.At : null)) is { } changed && ask.Fields.Faults.Count == 0
                ? Looked(view.Book, ask, units, section, changes, changed, now) : new ClockSight(ask, units, changes, ask.Changed, null, "", [], null);
        });
    }

    private static ClockSight Looked(Book book, ClockAsk ask, string[] units, MillSection section, IReadOnlyList<MixChange> changes, Instant changed, Instant now)
    {
        var (way, why) = WayOfUnit.Of(book, section, changed, now, ask.Times);
        if (way is null)
        {
            return new ClockSight(ask, units, changes, changed, null, why, [], null);
        }

        var tuning = ask.Tune is { } at ? Tuning.Of(book, section, at, now, ask.Times, ask.What) : null;
        var stages = tuning?.Put(way.Stages) ?? way.Stages;
        List<StageArrival> places = [.. ArrivalClock.Of(stages).Stages];
        var atSpout = way.Running.When(places[^1].Arrivals[1].Hours);
        var day = now - Duration.FromDays(1);
        var flours = section.Places.SelectMany(book.MovementsOf).Distinct().Select(i => book.Movements[i]).Where(m => section.Places.Contains(m.From) && book[m.From].Kind == PlaceKind.MillUnit && m.At < now && m.Until > day)
            .GroupBy(m => m.To).Select(g => (Place: book[g.Key], Tonnes: g.Sum(m => m.TonnesWithin(day, now)))).Where(f => f.Place.Kind == PlaceKind.FlourBin && WeighedKinds.Of(f.Place) == WeighedKind.Flour);
        foreach (var (flour, _) in flours.OrderByDescending(f => f.Tonnes).ThenBy(f => f.Place.Code, StringComparer.OrdinalIgnoreCase))
        {
            places.AddRange(new[] { false, true }.Select(isStirred => WayOfUnit.Packer(book, flour, Instant.Min(atSpout, now), isStirred, ask.Times)).OfType<ClockStage>().Select(packer => ArrivalClock.Of([.. stages, packer]).Stages[^1]));
        }

        return new ClockSight(ask, units, changes, changed, way, "", places, tuning);
    }
}
