using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Packing;
using Evengrist.Tracing.Bounds;
using NodaTime;

namespace Evengrist.Records.Tracing;

/// <summary>What a person names as suspect, found in the ledger.</summary>
/// <param name="Starts">What is suspect.</param>
/// <param name="Words">What each line was taken for, a sentence each.</param>
/// <param name="Faults">What cannot be found or asked, and what to do, a sentence each.</param>
public sealed record RecallStarts(IReadOnlyList<Suspicion> Starts, IReadOnlyList<string> Words, IReadOnlyList<string> Faults)
{
    /// <summary>Most days of an instrument's window.</summary>
    public const int MostDays = 29;

    /// <summary>Finds what is named.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="asked">Each thing.</param>
    /// <param name="asOf">The moment looked back from.</param>
    public static RecallStarts Of(Mill mill, IReadOnlyList<SuspectLine> asked, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(asked);
        var (starts, words, faults) = (new List<Suspicion>(), new List<string>(), new List<string>());
        foreach (var (kind, text, keys, from, until) in asked)
        {
            if (until <= from)
            {
                faults.Add($"{text}: the hours end before they begin; turn the two round.");
            }
            else if (kind == SuspectKind.Packaging)
            {
                Packaging(mill, text, from, until, asOf, starts, words, faults);
            }
            else if (keys is null)
            {
                Instrument(mill, text, from, until, asOf, starts, words, faults);
            }
            else
            {
                Found(mill, text, keys, from, until, asOf, starts, words, faults);
            }
        }

        return new RecallStarts([.. starts.Distinct()], words, faults);
    }

    private static void Found(
        Mill mill, string text, ScannedKeys keys, Instant? from, Instant? until, Instant asOf, List<Suspicion> starts, List<string> words, List<string> faults)
    {
        var found = ScannedPlaces.Of(mill, keys, asOf);
        if (!found.IsFound)
        {
            if ((keys.Lot ?? keys.Own) is { } lot && PackagingUses.UsesOf(mill, lot).Count > 0)
            {
                Packaging(mill, lot, from, until, asOf, starts, words, faults);
                return;
            }

            faults.AddRange(found.Unknown.DefaultIfEmpty($"“{text}” names nothing in the ledger. Look at the label again, or look the code up on the ledger page."));
            return;
        }

        words.AddRange(found.Contradictions);
        if (found.Units.Count > 0 || found.Lots.Count > 0)
        {
            var units = mill.Ask(view => found.Reached.Select(view.Book.Named).ToArray());
            starts.AddRange(units.Select(u => new Suspicion(u, from, until)));
            words.Add(found.Units.Count > 0 ? $"{units[0].Kind.Words()} {units[0].Code}: what was packed into it."
                : FormattableString.Invariant($"lot {found.Lots[0].Code}: its {units.Length} packages."));
            return;
        }

        var place = found.Place!;
        switch (place.Kind.Role())
        {
            case PlaceRole.Sink:
                faults.Add($"{place.Code} is where grain leaves the mill's hands: nothing goes on from there. Ask for what it got on the page of traces.");
                break;
            case PlaceRole.Store or PlaceRole.Through or PlaceRole.Junction when from is null && until is null:
                faults.Add($"Say from when to when: what leaves {place.Code} is followed over a span of hours, as in “{place.Code} 2025-09-17T20:00 2025-09-18T02:00”.");
                break;
            default:
                starts.Add(new Suspicion(place, from, until));
                words.Add($"{place.Kind.Words()} {place.Code}{(place.Name.Length > 0 ? $", {place.Name}" : "")}: {(place.Kind.Role() is PlaceRole.Source ? "what came from it" : place.Kind.Role() is PlaceRole.Unit ? "what was loaded into it" : "what left it")}{(from is null && until is null ? "" : " in those hours")}.");
                break;
        }
    }

    // The pallets filled on its lines while it was on them; hours behind it narrow down when they were filled.
    private static void Packaging(Mill mill, string lot, Instant? from, Instant? until, Instant asOf, List<Suspicion> starts, List<string> words, List<string> faults)
    {
        var uses = PackagingUses.UsesOf(mill, lot).Where(u => u.From <= asOf).ToArray();
        if (uses.Length == 0)
        {
            faults.Add($"No lot of packaging “{lot}” was loaded on a line by then. What was loaded stands on the page of packing lines.");
            return;
        }

        string Say(Instant at) => at.InZone(mill.Settings.Zone).LocalDateTime.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);
        var filled = PackagingUses.PalletsOf(mill, lot, asOf).Where(p => !(p.PackedAt < from) && !(p.PackedAt >= until)).ToArray();
        var pallets = filled.Select(p => p.Pallet).DistinctBy(p => p.Id).ToArray();
        starts.AddRange(pallets.Select(p => new Suspicion(p)));
        foreach (var use in uses)
        {
            var count = filled.Count(p => p.Use == use);
            var (kind, product) = (use.Kind.ToString().ToLowerInvariant(), use.Product.Length > 0 ? $" for {use.Product}" : "");
            var end = use.Until is { } off && off <= asOf ? $"to {Say(off)}" : "on, still there";
            words.Add(FormattableString.Invariant($"packaging {use.Lot}, {kind} of {use.Supplier}: on {use.Line}{product} from {Say(use.From)} {end}; {count} pallets filled meanwhile{(from is null && until is null ? "" : " in the hours asked")}."));
        }

        if (pallets.Length == 0)
        {
            faults.Add($"Packaging {uses[0].Lot}: no pallet was filled while it was on {string.Join(", ", uses.Select(u => u.Line).Distinct(StringComparer.OrdinalIgnoreCase))}{(from is null && until is null ? "" : " in those hours")}.");
        }
    }

    // Loads it read, and every package of the lots that its readings speak for.
    private static void Instrument(Mill mill, string name, Instant? from, Instant? until, Instant asOf, List<Suspicion> starts, List<string> words, List<string> faults)
    {
        var end = until is { } given && given < asOf ? given : asOf;
        if (from is not { } begin || begin >= end)
        {
            faults.Add($"{name}: say from when to when the instrument is in doubt.");
            return;
        }

        if (end - begin > Duration.FromDays(MostDays))
        {
            faults.Add(FormattableString.Invariant($"{name}: a window of at most {MostDays} days can be asked; ask the rest as a second line."));
            return;
        }

        bool Doubted(Reading r) => r.Instrument.Equals(name, StringComparison.OrdinalIgnoreCase) && r.At >= begin && r.At < end;
        var (count, units) = mill.Ask(view =>
        {
            var readings = view.Book.Readings.Where(r => Doubted(r) && view.Book.Counts(r)).ToArray();
            return (readings.Length, readings.Select(r => view.Book[r.On]).Where(p => p.Kind.Role() == PlaceRole.Unit).DistinctBy(p => p.Id).ToArray());
        });
        if (count == 0)
        {
            faults.Add($"No reading of an instrument “{name}” stands in those hours. Its name stands on the page of instruments.");
            return;
        }

        var lots = LotShelf.Of(mill, LotShelf.DayOf(mill, begin).PlusDays(-1), LotShelf.DayOf(mill, end), asOf).Where(l => l.Readings.Any(Doubted)).ToArray();
        var packages = lots.SelectMany(l => l.Lot.Packages).Select(p => p.Place).Concat(units).DistinctBy(p => p.Id).ToArray();
        starts.AddRange(packages.Select(p => new Suspicion(p)));
        words.Add(FormattableString.Invariant($"instrument {name}: {count} readings, which speak for {lots.Length} lots and {units.Length} loads or packages; {packages.Length} in all."));
        if (packages.Length == 0)
        {
            faults.Add($"{name}: its readings in those hours speak for no lot and no load. Name the place and its hours instead.");
        }
    }
}
