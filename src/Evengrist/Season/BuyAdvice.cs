using NodaTime;

namespace Evengrist.Season;

/// <summary>What to buy of an offer, until when, and up to which price.</summary>
/// <param name="Offer">Code of the offer.</param>
/// <param name="Tonnes">How much the plan buys of it over the year, t; 0 for none.</param>
/// <param name="Money">What that costs.</param>
/// <param name="First">The day from which the plan buys; null where it buys none.</param>
/// <param name="Latest">The last day on which the first of it can be bought: keeping wheat costs money, so the plan buys as late as it can.</param>
/// <param name="WorthPerTonne">What one more t of it is worth at best: above this price, buy no more of it.</param>
/// <param name="WorthOn">The first day of the period in which it is worth that.</param>
public sealed record BuyAdvice(string Offer, double Tonnes, double Money, LocalDate? First, LocalDate? Latest, double WorthPerTonne, LocalDate WorthOn)
{
    /// <summary>One row for every offer, most money first.</summary>
    /// <exception cref="ArgumentException">The plan has no duals: ask for the linear plan.</exception>
    public static IReadOnlyList<BuyAdvice> Of(SeasonPlan plan)
    {
        var worth = new SeasonWorth(plan);
        return [.. plan.Spec.Offers.Select(o => One(plan, o, worth)).OrderByDescending(b => b.Money).ThenBy(b => b.Offer, StringComparer.Ordinal)];
    }

    private static BuyAdvice One(SeasonPlan plan, SeasonOffer offer, SeasonWorth worth)
    {
        var bought = plan.Purchases.Where(p => p.Offer == offer.Code).OrderBy(p => p.Period).ToArray();
        var best = Enumerable.Range(offer.First, offer.Last - offer.First + 1).Select(t => (T: t, Worth: worth.Of(offer.Code, t))).MaxBy(x => x.Worth);
        return new BuyAdvice(
            offer.Code, bought.Sum(b => b.Tonnes), bought.Sum(b => b.Tonnes * offer.Tiers[b.Tier].PricePerTonne),
            bought.Length > 0 ? plan.Spec.Periods[bought[0].Period].Start : null,
            bought.Length > 0 ? plan.Spec.Periods[bought[0].Period].End.PlusDays(-1) : null,
            best.Worth, plan.Spec.Periods[best.T].Start);
    }
}
