using Evengrist.Ledger;

namespace Evengrist.Season.Terms;

/// <summary>What cannot be in terms.</summary>
internal static class TermsFaults
{
    public static IReadOnlyList<string> Of(SeasonTerms terms)
    {
        var codes = terms.Offers.Select(o => o.Code).Concat(terms.Arrivals.Select(a => a.Code)).ToArray();
        return [.. new[]
        {
            Unless(terms.Currency is { Length: 3 } && terms.Currency.All(char.IsAsciiLetterUpper), "A currency is three capital letters, such as USD."),
            Unless(NotNegative(terms.StoragePerTonneWeek), "Keeping a t for a week costs 0 or more."),
            Unless(terms.Units.Count > 0, "At least one mill unit is needed."),
            Unless(terms.Flours.Count > 0, "At least one flour is needed."),
            Unless(Distinct(terms.Units.Select(u => u.Code)), "Every mill unit has a code of its own."),
            Unless(Distinct(terms.Flours.Select(f => f.Code)), "Every flour has a code of its own."),
            Unless(Distinct(codes), "Every offer and every arrival has a code of its own."),
            Unless(terms.CarryOut.All(c => NotNegative(c.LeastTonnes)), "What is to be left at the end is 0 t or more."),
            Unless(terms.EndWorths.All(w => double.IsFinite(w.PerTonne)), "What wheat is worth at the end is a number."),
            Unless(terms.Stated is > 0 and < 1, "A promise is stated at a probability above 0 and below 1, such as 0.85."),
            Unless(Distinct(terms.Instruments.Select(i => i.What.ToString())), "The error of the readings of a property is given once."),
            Unless(terms.Instruments.All(i => NotNegative(i.Shared) && NotNegative(i.Own) && NotNegative(i.Drift)), "Errors of readings are 0 or more."),
            Unless(Distinct(terms.Tolerances.Select(t => t.What.ToString())), "The tolerance of a property is given once."),
            Unless(terms.Tolerances.All(t => NotNegative(t.By)), "What is tolerated beyond a limit is 0 or more."),
            Unless(terms.Extraction is null or { AtTestWeight: > 0, PointsPerUnit: >= 0 }, "The rule of extraction needs a test weight above 0 and 0 points or more for a unit of it."),
        }.OfType<string>(),
            .. terms.Units.SelectMany(OfUnit), .. terms.Flours.SelectMany(f => OfFlour(f, terms)), .. terms.Offers.SelectMany(OfOffer), .. terms.Arrivals.SelectMany(OfArrival)];
    }

    private static IEnumerable<string> OfUnit(UnitTerms unit) => new[]
    {
        Unless(Positive(unit.TonnesPerHour), $"Unit {unit.Code} grinds more than 0 t/h."),
        Unless(unit.HoursPerDay is >= 0 and <= 24, $"Unit {unit.Code} runs 0 to 24 hours a day."),
        Unless(unit.LeastCampaignHours is null or >= 0, $"The least campaign of unit {unit.Code} is 0 h or more."),
    }.OfType<string>();

    private static IEnumerable<string> OfFlour(FlourTerms flour, SeasonTerms terms) => new[]
    {
        Unless(terms.Units.Any(u => u.Code == flour.Unit), $"{flour.Code} is milled on unit {flour.Unit}, and there is none of that code."),
        Unless(NotNegative(flour.TonnesPerWeek) && flour.Peaks.All(p => NotNegative(p.TonnesPerWeek)), $"The demand for {flour.Code} is 0 t a week or more."),
        Unless(flour.Peaks.All(p => p.From <= p.To), $"A time of other demand for {flour.Code} ends before it begins."),
        Unless(flour.Yield is > 0 and <= 1, $"The yield of {flour.Code} lies above 0 and is at most 1."),
        Unless(Positive(flour.UnmetPricePerTonne), $"What a t of {flour.Code} that is not made costs is above 0."),
        Unless(flour.LeastShare is >= 0 and <= 1, $"The least share of a wheat in {flour.Code} lies from 0 to 1."),
        Unless(flour.MostGates is null or > 0, $"{flour.Code} needs at least one gate."),
        Unless(NotNegative(flour.StockMost), $"The most of {flour.Code} in store is 0 t or more."),
        Unless(NotNegative(flour.StockLeast) && flour.StockLeast <= flour.StockMost, $"The least of {flour.Code} in store is 0 t or more, and not above the most."),
        Unless(NotNegative(flour.YearShare) && NotNegative(flour.WeekShare), $"The demand for {flour.Code} differs by a share of 0 or more."),
        Unless(flour.Hold is >= 0 and < 1, $"What is left of a busy week of {flour.Code} a week later lies from 0 to below 1."),
    }.OfType<string>().Concat(flour.Limits.SelectMany(l => OfLimit(flour.Code, l)));

    private static IEnumerable<string> OfLimit(string flour, LimitTerms limit) => new[]
    {
        Unless(limit.Least is not null || limit.Most is not null, $"The limit on {limit.What.Words()} of {flour} says neither least nor most."),
        Unless(limit.Least is null || limit.Most is null || limit.Least <= limit.Most, $"The limit on {limit.What.Words()} of {flour} has its least above its most."),
        Unless(Positive(limit.MissPrice), $"What missing the limit on {limit.What.Words()} of {flour} costs is above 0."),
        Unless(limit.Relief.All(r => Positive(r.By) && NotNegative(r.CostPerTonne)), $"A step by which the limit on {limit.What.Words()} of {flour} yields is above 0 and costs 0 or more."),
    }.OfType<string>();

    private static IEnumerable<string> OfOffer(OfferTerms offer) => new[]
    {
        Unless(SpecFromTerms.OfferOf(offer.Code) == offer.Code, $"Offer {offer.Code}: a code has no “ from ” in it."),
        Unless(offer.First <= offer.Last, $"Offer {offer.Code} ends before it begins."),
        Unless(offer.Tiers.Count > 0 && offer.Tiers.All(t => Positive(t.TonnesPerWeek) && double.IsFinite(t.PricePerTonne)), $"Offer {offer.Code} needs tonnes above 0 and a price for each step."),
        Unless(offer.Tiers.Zip(offer.Tiers.Skip(1)).All(p => p.First.PricePerTonne <= p.Second.PricePerTonne), $"The steps of offer {offer.Code} stand cheapest first."),
        Unless(offer.TotalTonnes is null or >= 0, $"Offer {offer.Code} has 0 t or more in all."),
    }.OfType<string>().Concat(OfQuality($"Offer {offer.Code}", offer.Quality));

    private static IEnumerable<string> OfArrival(ArrivalTerms arrival) => new[]
    {
        Unless(arrival.First <= arrival.Last, $"Arrival {arrival.Code} ends before it begins."),
        Unless(NotNegative(arrival.Tonnes) && NotNegative(arrival.TonnesSpread), $"Arrival {arrival.Code} has 0 t or more, and so has its spread."),
        Unless(NotNegative(arrival.TruckTonnes), $"A truck of arrival {arrival.Code} carries 0 t or more; 0 where that is not known."),
        Unless(NotNegative(arrival.WeekShare), $"A week of arrival {arrival.Code} differs by a share of 0 or more."),
        Unless(arrival.TruckTonnes > 0 || arrival.Quality.All(q => q.TruckSpread == 0), $"Arrival {arrival.Code} says how far trucks differ; say too what a truck usually carries, in t."),
    }.OfType<string>().Concat(OfQuality($"Arrival {arrival.Code}", arrival.Quality));

    private static IEnumerable<string> OfQuality(string of, IReadOnlyList<QualityTerms> quality) => new[]
    {
        Unless(Distinct(quality.Select(q => q.What.ToString())), $"{of} gives a property twice."),
        Unless(quality.All(q => NotNegative(q.Spread) && NotNegative(q.TruckSpread) && NotNegative(q.YearSpread)), $"{of}: a spread of quality is 0 or more."),
    }.OfType<string>();

    private static string? Unless(bool holds, string otherwise) => holds ? null : otherwise;

    private static bool NotNegative(double value) => value >= 0 && double.IsFinite(value);

    private static bool Positive(double value) => value > 0 && double.IsFinite(value);

    private static bool Distinct(IEnumerable<string> codes)
    {
        var all = codes.ToArray();
        return all.All(c => !string.IsNullOrWhiteSpace(c)) && all.Distinct(StringComparer.OrdinalIgnoreCase).Count() == all.Length;
    }
}
