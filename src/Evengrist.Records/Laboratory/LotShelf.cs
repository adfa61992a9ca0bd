using Evengrist.Laboratory;
using Evengrist.Laboratory.Lots;
using Evengrist.Laboratory.Specifications;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>The lots of a mill as they stand, from its ledger, its specifications and what was decided.</summary>
public static class LotShelf
{
    /// <summary>Most milling days looked at together.</summary>
    public const int MostDays = 31;

    /// <summary>The lots of milling days that had begun by a moment, the newest first.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="first">First milling day.</param>
    /// <param name="last">Last milling day, at most <see cref="MostDays"/> after it.</param>
    /// <param name="asOf">The moment.</param>
    /// <exception cref="ArgumentOutOfRangeException">The days are too many.</exception>
    public static IReadOnlyList<SeenLot> Of(Mill mill, LocalDate first, LocalDate last, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Period.DaysBetween(first, last), MostDays - 1);
        return [.. Seen(mill, (view, lots) => lots.Of(view.Book, first, last), asOf, null).AsEnumerable().Reverse()];
    }

    /// <summary>The lot of a code; null where none had begun by the moment.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="code">Code of the lot.</param>
    /// <param name="asOf">The moment.</param>
    /// <param name="specification">Code of the specification it is held against; the mill's own where null or none of that code holds.</param>
    public static SeenLot? Find(Mill mill, string code, Instant asOf, string? specification = null) =>
        Seen(mill, (view, lots) => lots.Find(view.Book, code) is { } lot ? [lot] : [], asOf, specification).FirstOrDefault();

    // What a reading does not state of its uncertainty, its method does.
    internal static Func<Specification, LotJudge> Judges(Mill mill, ReleaseRules rules, Instant asOf)
    {
        var (methods, instruments) = (KeepLabMethods.Newest(mill).Methods, InstrumentChecks.Record(mill, asOf));
        return specification => new LotJudge(specification, rules.Policy, r => (double?)(r.StandardUncertainty ?? methods.Of(r.Method, r.What)?.StandardUncertaintyAt(r.Value))) { Instruments = instruments };
    }

    /// <summary>The milling day of a moment.</summary>
    public static LocalDate DayOf(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return MillingDay.Of(at, mill.Settings.Zone, mill.Settings.DayStart);
    }

    private static SeenLot[] Seen(Mill mill, Func<MillView, FlourLots, IReadOnlyList<FlourLot>> which, Instant asOf, string? specification)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (rules, settings) = (KeepReleaseRules.Newest(mill).Rules, mill.Settings);
        var decisions = LotDecisions.All(mill).Where(d => d.At <= asOf).ToLookup(d => d.Lot, StringComparer.OrdinalIgnoreCase);
        var wrong = InstrumentsFoundWrong.All(mill).Where(w => w.At <= asOf).ToArray();
        var (kept, judges) = (FlourSpecifications.All(mill), Judges(mill, rules, asOf));
        return mill.Ask(view =>
        {
            var flows = new PlaceFlows(view.Book);
            return which(view, new FlourLots(rules, settings.Zone, settings.DayStart))
                .Select(l => l with { Packages = [.. l.Packages.Where(p => p.PackedAt <= asOf)] }).Where(l => l.Packages.Count > 0)
                .Select(lot =>
                {
                    // What was released as another flour is held against that flour's specifications.
                    var decided = decisions[lot.Code].ToArray();
                    var flour = decided.Length > 0 && decided[^1].As.Length > 0 ? decided[^1].As : lot.Flour;
                    var holding = FlourSpecifications.Of(kept, flour, lot.Day);
                    var judged = holding.FirstOrDefault(k => k.Specification.Code.Equals(specification?.Trim(), StringComparison.OrdinalIgnoreCase)) ?? (holding.Count > 0 ? holding[0] : null);
                    var readings = LotReadings.Of(view.Book, lot, rules, asOf, flows);
                    return new SeenLot(
                        lot, PackageStand.Of(view.Book, lot, asOf), decided, holding, judged,
                        judged is null ? [] : judges(judged.Specification).Results([.. readings.Where(r => !wrong.Any(w => w.Span.Holds(r)))]), readings);
                }).ToArray();
        });
    }
}
