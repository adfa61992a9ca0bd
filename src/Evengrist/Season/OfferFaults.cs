namespace Evengrist.Season;

/// <summary>What is wrong with what can be bought.</summary>
internal static class OfferFaults
{
    public static void Of(SeasonSpec spec, FaultList faults)
    {
        foreach (var offer in spec.Offers)
        {
            One(spec, offer, $"offer {offer.Code}", faults);
        }
    }

    private static void One(SeasonSpec spec, SeasonOffer offer, string where, FaultList faults)
    {
        if (offer.Wheat.OpeningTonnes != 0 || offer.Wheat.Deliveries.Count > 0 || offer.Wheat.Layers.Count > 0)
        {
            faults.Add(where, "something of it lies there or is expected already: give that as a wheat of its own.");
        }

        if (offer.Tiers.Count == 0)
        {
            faults.Add(where, "it has no price.");
        }

        if (offer.TotalTonnes is { } total)
        {
            faults.Number($"{where}, total", total, 0);
        }

        var good = WheatFaults.Period(spec, $"{where}, first period", offer.First, faults) & WheatFaults.Period(spec, $"{where}, last period", offer.Last, faults);
        if (good && offer.First > offer.Last)
        {
            faults.Add(where, $"its first period {offer.First} comes after its last {offer.Last}.");
            good = false;
        }

        for (var i = 0; i < offer.Tiers.Count; i++)
        {
            var tier = offer.Tiers[i];
            good &= faults.Number($"{where}, tier {i}, price", tier.PricePerTonne, double.MinValue);
            if (!(tier.TonnesPerPeriod > 0))
            {
                faults.Add($"{where}, tier {i}", $"it holds for {FaultList.Shown(tier.TonnesPerPeriod)} t a period; more than 0 is needed.");
            }

            if (i > 0 && tier.PricePerTonne < offer.Tiers[i - 1].PricePerTonne)
            {
                faults.Add($"{where}, tier {i}", "it is cheaper than the tier before it; a plan would take it first, so put the cheapest first.");
            }
        }

        if (good)
        {
            Unbounded(spec, offer, where, faults);
        }
    }

    private static void Unbounded(SeasonSpec spec, SeasonOffer offer, string where, FaultList faults)
    {
        var bounded = offer.TotalTonnes is not null || offer.Wheat.Home.Length > 0;
        foreach (var tier in offer.Tiers.Where(t => !bounded && double.IsPositiveInfinity(t.TonnesPerPeriod)))
        {
            var kept = spec.StoragePerTonneWeek * spec.Periods.Skip(offer.Last).Sum(p => p.Weeks);
            if (tier.PricePerTonne + kept < offer.Wheat.EndValuePerTonne)
            {
                faults.Add(where, $"it can be had without limit at {FaultList.Shown(tier.PricePerTonne)} a t and is worth {FaultList.Shown(offer.Wheat.EndValuePerTonne)} at the end: a plan would buy without end. Limit it, or lower its end value.");
            }
        }
    }
}
