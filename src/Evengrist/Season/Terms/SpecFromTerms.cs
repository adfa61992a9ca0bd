using System.Globalization;
using NodaTime;

namespace Evengrist.Season.Terms;

/// <summary>Cuts terms into the periods of a plan.</summary>
public static class SpecFromTerms
{
    private const string From = " from ";

    /// <summary>The offer of the terms that an offer of a plan belongs to: the days of the first weeks and the weeks after them are two of the same.</summary>
    public static string OfferOf(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        return code.IndexOf(From, StringComparison.Ordinal) is > 0 and var at ? code[..at] : code;
    }

    /// <summary>What a plan is made from: the terms from a day on, and what lies there on that day.</summary>
    /// <param name="terms">The terms.</param>
    /// <param name="start">The first day planned.</param>
    /// <param name="stocks">What lies in the bins.</param>
    /// <param name="homes">The bins.</param>
    /// <param name="flour">Flour in store, t by code; null for none.</param>
    /// <param name="days">How many single days come first.</param>
    /// <exception cref="ArgumentException">The crop year is over on that day.</exception>
    public static SeasonSpec Of(SeasonTerms terms, LocalDate start, IReadOnlyList<SeasonWheat> stocks, IReadOnlyList<SeasonHome> homes, IReadOnlyDictionary<string, double>? flour = null, int days = 14)
    {
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(stocks);
        if (start > terms.End)
        {
            throw new ArgumentException($"The crop year of the terms ended on {terms.End:uuuu-MM-dd}: enter terms for the next one.", nameof(start));
        }

        var periods = SeasonCalendar.DaysThenWeeks(start, terms.End, days);
        return new SeasonSpec(
            periods,
            [.. terms.Units.Select(u => new MillUnit(u.Code, u.TonnesPerHour, [.. periods.Select(u.HoursIn)], u.LeastCampaignHours))],
            [.. stocks.Select(terms.Seen), .. terms.Arrivals.Where(a => a.Last >= start).Select(a => terms.Seen(Coming(a, periods)))],
            [.. terms.Flours.Select(f => Wanted(f, periods, flour?.GetValueOrDefault(f.Code) ?? 0))],
            terms.Currency)
        {
            Homes = homes,
            Offers = [.. terms.Offers.Where(o => o.Last >= start && o.First <= terms.End).SelectMany(o => Offered(o, periods, terms.Seen))],
            CarryOut = terms.CarryOut,
            StoragePerTonneWeek = terms.StoragePerTonneWeek,
        };
    }

    private static SeasonFlour Wanted(FlourTerms flour, IReadOnlyList<SeasonPeriod> periods, double inStore) =>
        new(flour.Code, flour.Unit, [.. periods.Select(flour.DemandIn)], flour.Yield, flour.UnmetPricePerTonne)
        {
            Limits = [.. flour.Limits.Select(l => l.ToLimit())],
            Classes = flour.Classes,
            LeastShare = flour.LeastShare,
            MostGates = flour.MostGates,
            OpeningTonnes = inStore,
            StockMost = Math.Max(flour.StockMost, inStore),
            StockLeast = Math.Min(flour.StockLeast, inStore),
            ByProductPerTonne = flour.ByProductPerTonne,
        };

    private static SeasonWheat Coming(ArrivalTerms arrival, IReadOnlyList<SeasonPeriod> periods)
    {
        var days = Period.DaysBetween(arrival.First, arrival.Last) + 1.0;
        var aDay = arrival.Tonnes / days;
        var deliveries = periods.Select((p, t) => (Period: t, Days: Overlap(p, arrival.First, arrival.Last))).Where(d => d.Days > 0)
            .Select(d => new SeasonDelivery(d.Period, aDay * d.Days, Own(d.Days)) { District = arrival.Place });
        return new SeasonWheat(arrival.Code, arrival.WheatClass, 0, arrival.MoisturePercent, QualityTerms.Of(arrival.Quality)) { Deliveries = [.. deliveries] };

        // Days of a week differ on their own, and what comes is whole trucks: a count rounded evenly is off by a twelfth of its square.
        double Own(int of) => Math.Sqrt((Math.Pow(arrival.WeekShare * 7 * aDay, 2) * of / 7) + (arrival.TruckTonnes * arrival.TruckTonnes / 12));
    }

    // The price curve of a plan is one for all periods, so that the days of the first weeks and the weeks after them are two offers of the same wheat.
    private static IEnumerable<SeasonOffer> Offered(OfferTerms offer, IReadOnlyList<SeasonPeriod> periods, Func<SeasonWheat, SeasonWheat> seen)
    {
        var open = periods.Select((p, t) => (p.Days, Period: t)).Where(p => Overlap(periods[p.Period], offer.First, offer.Last) > 0).ToArray();
        foreach (var (n, run) in open.GroupBy(p => p.Days == 1).Select((g, n) => (n, g.ToArray())))
        {
            var code = n == 0 ? offer.Code : $"{offer.Code}{From}{periods[run[0].Period].Start.ToString("d MMM", CultureInfo.InvariantCulture)}";
            var wheat = seen(new SeasonWheat(code, offer.WheatClass, 0, offer.MoisturePercent, QualityTerms.Of(offer.Quality)));
            yield return new SeasonOffer(wheat, [.. offer.Tiers.Select(t => new OfferTier(t.TonnesPerWeek * run[0].Days / 7, t.PricePerTonne))], run[0].Period, run[^1].Period, offer.TotalTonnes * run.Sum(r => r.Days) / open.Sum(o => o.Days));
        }
    }

    private static int Overlap(SeasonPeriod period, LocalDate first, LocalDate last) =>
        Math.Max(0, Period.DaysBetween(LocalDate.Max(period.Start, first), LocalDate.Min(period.End, last.PlusDays(1))));
}
