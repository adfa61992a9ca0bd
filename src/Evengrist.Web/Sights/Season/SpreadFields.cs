using Evengrist.Ledger;
using Evengrist.Season.Futures;
using Evengrist.Season.Terms;

namespace Evengrist.Web.Sights.Season;

/// <summary>The figures of the terms that say by how much a year may differ from its plan: what a promise is reckoned from.</summary>
internal static class SpreadFields
{
    private const string Share = "share, standard deviation", Promise = "Promise";

    public static IEnumerable<TermsField> Of(SeasonTerms terms)
    {
        HashSet<Property> limited = [.. terms.Flours.SelectMany(f => f.Limits).Select(l => l.What)];
        return [.. terms.Flours.SelectMany(OfFlour), .. terms.Arrivals.SelectMany(a => OfArrival(a, limited)), .. limited.Order().SelectMany(what => OfReading(what, terms)),
            new("stated", Promise, "Stated at", "probability", terms.Stated, (t, v) => t with { Stated = v ?? 0 })];
    }

    private static IEnumerable<TermsField> OfFlour(FlourTerms flour)
    {
        SeasonTerms Put(SeasonTerms terms, Func<FlourTerms, FlourTerms> change) => terms with { Flours = [.. terms.Flours.Select(f => f.Code == flour.Code ? change(f) : f)] };
        var group = $"How far {flour.Name} may differ";
        yield return new($"year:{flour.Code}", group, "Demand of the year", Share, flour.YearShare, (terms, v) => Put(terms, f => f with { YearShare = v ?? 0 }));
        yield return new($"week:{flour.Code}", group, "Of a week beside it", Share, flour.WeekShare, (terms, v) => Put(terms, f => f with { WeekShare = v ?? 0 }));
        yield return new($"hold:{flour.Code}", group, "Left of it a week later", "share, 0 to below 1", flour.Hold, (terms, v) => Put(terms, f => f with { Hold = v ?? 0 }));
        yield return new($"stays:{flour.Code}", group, "Flour that stays in store", "t, at least", flour.StockLeast, (terms, v) => Put(terms, f => f with { StockLeast = v ?? 0 }));
    }

    private static IEnumerable<TermsField> OfArrival(ArrivalTerms arrival, HashSet<Property> limited)
    {
        SeasonTerms Put(SeasonTerms terms, Func<ArrivalTerms, ArrivalTerms> change) => terms with { Arrivals = [.. terms.Arrivals.Select(a => a.Code == arrival.Code ? change(a) : a)] };
        var group = $"How far {arrival.Code} may differ";
        yield return new($"spread:{arrival.Code}", group, "Tonnes in all", "t, standard deviation", arrival.TonnesSpread, (terms, v) => Put(terms, a => a with { TonnesSpread = v ?? 0 }));
        yield return new($"aweek:{arrival.Code}", group, "Tonnes of a week", Share, arrival.WeekShare, (terms, v) => Put(terms, a => a with { WeekShare = v ?? 0 }));
        yield return new($"truck:{arrival.Code}", group, "A truck carries", "t", arrival.TruckTonnes, (terms, v) => Put(terms, a => a with { TruckTonnes = v ?? 0 }));
        foreach (var quality in arrival.Quality.Where(q => limited.Contains(q.What)))
        {
            SeasonTerms PutQuality(SeasonTerms terms, Func<QualityTerms, QualityTerms> change) => Put(terms, a => a with { Quality = [.. a.Quality.Select(q => q.What == quality.What ? change(q) : q)] });
            var (words, unit) = (quality.What.Words(), UnitOf(quality.What));
            yield return new($"yearof:{arrival.Code}:{quality.What}", group, $"Mean {words} of the harvest", unit, quality.YearSpread, (terms, v) => PutQuality(terms, q => q with { YearSpread = v ?? 0 }));
            yield return new($"lotof:{arrival.Code}:{quality.What}", group, $"{words} of a large lot", unit, quality.Spread, (terms, v) => PutQuality(terms, q => q with { Spread = v ?? 0 }));
            yield return new($"truckof:{arrival.Code}:{quality.What}", group, $"{words} between trucks", unit, quality.TruckSpread, (terms, v) => PutQuality(terms, q => q with { TruckSpread = v ?? 0 }));
        }
    }

    private static IEnumerable<TermsField> OfReading(Property what, SeasonTerms terms)
    {
        var (reading, tolerated) = (terms.Instruments.FirstOrDefault(i => i.What == what) ?? new InstrumentSpread(what, 0, 0), terms.Tolerances.FirstOrDefault(t => t.What == what)?.By ?? 0);
        SeasonTerms Put(SeasonTerms old, Func<InstrumentSpread, InstrumentSpread> change) => old with
        {
            Instruments = [.. old.Instruments.Where(i => i.What != what), change(old.Instruments.FirstOrDefault(i => i.What == what) ?? new InstrumentSpread(what, 0, 0))],
        };
        var (group, unit) = ($"How far readings of {what.Words()} may be off", UnitOf(what));
        yield return new($"shared:{what}", group, "All in common", unit, reading.Shared, (old, v) => Put(old, i => i with { Shared = v ?? 0 }));
        yield return new($"drift:{what}", group, "Drift in a week", unit, reading.Drift, (old, v) => Put(old, i => i with { Drift = v ?? 0 }));
        yield return new($"own:{what}", group, "Of a single lot", unit, reading.Own, (old, v) => Put(old, i => i with { Own = v ?? 0 }));
        yield return new($"tolerance:{what}", Promise, $"Off the limit of {what.Words()} and still on target", Readings.UnitsOf(what)[0], tolerated, (old, v) => old with { Tolerances = [.. old.Tolerances.Where(t => t.What != what), new(what, v ?? 0)] });
    }

    private static string UnitOf(Property what) => $"{(Readings.UnitsOf(what)[0] is "%" ? "points" : Readings.UnitsOf(what)[0])}, standard deviation";
}
