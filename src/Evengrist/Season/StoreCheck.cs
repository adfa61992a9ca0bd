using static Evengrist.Season.SeasonCheck;

namespace Evengrist.Season;

/// <summary>Checks wheat: what comes, lies, is bought and goes balances, fits the bins, and enough is left.</summary>
internal static class StoreCheck
{
    public static IEnumerable<string> Of(PlanTally tally) => [.. Balances(tally), .. Homes(tally), .. Offers(tally), .. CarryOut(tally)];

    private static IEnumerable<string> Balances(PlanTally tally)
    {
        foreach (var wheat in tally.Spec.AllWheats)
        {
            var before = wheat.OpeningTonnes;
            for (var t = 0; t < tally.Periods; t++)
            {
                var (period, comes) = (t, 0.0);
                foreach (var delivery in wheat.Deliveries.Where(d => d.Period == period))
                {
                    comes += delivery.Tonnes;
                }

                var expected = before + comes + tally.Bought(wheat.Code, t) - tally.Drawn(wheat.Code, t);
                var stated = tally.Stock(wheat.Code, t);
                if (!Agree(stated, expected, before + comes))
                {
                    yield return $"{wheat.Code}, period {t}: {Tonnes(stated)} stated in store, {Tonnes(expected)} by the balance.";
                }

                before = stated;
            }
        }
    }

    private static IEnumerable<string> Homes(PlanTally tally)
    {
        foreach (var home in tally.Spec.Homes)
        {
            var within = tally.Spec.AllWheats.Where(w => w.Home == home.Code).Select(w => w.Code).ToArray();
            for (var t = 0; t < tally.Periods; t++)
            {
                var lies = within.Sum(w => tally.Stock(w, t));
                var drains = t == 0 ? tally.Spec.AllWheats.Where(w => w.Home == home.Code).Sum(w => w.OpeningTonnes) : within.Sum(w => tally.Stock(w, t - 1));
                if (!NotAbove(lies, home.CapacityTonnes) && !NotAbove(lies, drains))
                {
                    yield return $"{home.Code}, period {t}: {Tonnes(lies)} in {Tonnes(home.CapacityTonnes)} of room.";
                }
            }
        }
    }

    private static IEnumerable<string> Offers(PlanTally tally)
    {
        var offers = tally.Spec.Offers.ToDictionary(o => o.Code);
        foreach (var bought in tally.Plan.Purchases)
        {
            if (!offers.TryGetValue(bought.Offer, out var offer) || bought.Period < offer.First || bought.Period > offer.Last || bought.Tier >= offer.Tiers.Count || !NotAbove(bought.Tonnes, offer.Tiers[bought.Tier].TonnesPerPeriod))
            {
                yield return $"{bought.Offer}, tier {bought.Tier}, period {bought.Period}: {Tonnes(bought.Tonnes)} bought against its terms.";
            }
        }

        foreach (var offer in offers.Values)
        {
            var all = tally.Plan.Purchases.Where(p => p.Offer == offer.Code).Sum(p => p.Tonnes);
            if (offer.TotalTonnes is { } total && !NotAbove(all, total))
            {
                yield return $"{offer.Code}: {Tonnes(all)} bought of {Tonnes(total)}.";
            }
        }
    }

    private static IEnumerable<string> CarryOut(PlanTally tally)
    {
        foreach (var wanted in tally.Spec.CarryOut)
        {
            var left = tally.Spec.AllWheats.Where(w => wanted.WheatClass.Length == 0 || w.WheatClass == wanted.WheatClass).Sum(w => tally.Stock(w.Code, tally.Periods - 1));
            if (!NotAbove(wanted.LeastTonnes, left))
            {
                yield return $"carry-out of {wanted.WheatClass}: {Tonnes(left)} of {Tonnes(wanted.LeastTonnes)}.";
            }
        }
    }
}
