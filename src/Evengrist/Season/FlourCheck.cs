using static Evengrist.Season.SeasonCheck;

namespace Evengrist.Season;

/// <summary>Checks flour: what is made, wanted, unmet and in store balances, within hours and stores, from wheats that are allowed.</summary>
internal static class FlourCheck
{
    public static IEnumerable<string> Of(PlanTally tally) => [.. tally.Spec.Flours.SelectMany(f => One(tally, f)), .. Hours(tally)];

    private static IEnumerable<string> One(PlanTally tally, SeasonFlour flour)
    {
        var before = flour.OpeningTonnes;
        for (var t = 0; t < tally.Periods; t++)
        {
            var at = $"{flour.Code}, period {t}";
            if (tally.Flour(flour.Code, t) is not { } row)
            {
                yield return $"{at}: no row.";
                continue;
            }

            var (wheat, made) = (0.0, 0.0);
            foreach (var use in tally.UsesOf[(flour.Code, t)])
            {
                (wheat, made) = (wheat + use.Tonnes, made + (use.Tonnes * tally.YieldOf(use.Wheat, flour)));
                var of = tally.Wheat(use.Wheat);
                if ((flour.Classes.Count > 0 && !flour.Classes.Contains(of.WheatClass)) || (flour.Wheats.Count > 0 && !flour.Wheats.Contains(of.Code)))
                {
                    yield return $"{at}: {use.Wheat} may not go into it.";
                }
            }

            if (!Agree(wheat, row.WheatTonnes) || !Agree(made, row.FlourTonnes))
            {
                yield return $"{at}: {Tonnes(row.FlourTonnes)} of flour from {Tonnes(row.WheatTonnes)} stated, {Tonnes(made)} from {Tonnes(wheat)} by what is used.";
            }

            if (!Agree(before + made + row.UnmetTonnes, flour.Demand[t] + row.StockTonnes))
            {
                yield return $"{at}: {Tonnes(before)} + {Tonnes(made)} made + {Tonnes(row.UnmetTonnes)} unmet is not {Tonnes(flour.Demand[t])} wanted + {Tonnes(row.StockTonnes)} in store.";
            }

            if (!NotAbove(row.StockTonnes, flour.StockMost) || !NotAbove(flour.StockLeast, row.StockTonnes) || row.UnmetTonnes < 0 || !NotAbove(row.UnmetTonnes, flour.Demand[t]))
            {
                yield return $"{at}: {Tonnes(row.StockTonnes)} in store or {Tonnes(row.UnmetTonnes)} unmet cannot be.";
            }

            before = row.StockTonnes;
        }
    }

    private static IEnumerable<string> Hours(PlanTally tally)
    {
        foreach (var unit in tally.Spec.Units)
        {
            for (var t = 0; t < tally.Periods; t++)
            {
                var hours = 0.0;
                foreach (var flour in tally.Spec.Flours.Where(f => f.Unit == unit.Code))
                {
                    var ground = tally.UsesOf[(flour.Code, t)].Sum(u => u.Tonnes);
                    hours += ground / unit.TonnesPerHour;
                    if (tally.Flour(flour.Code, t) is { } row && !Agree(row.Hours, ground / unit.TonnesPerHour))
                    {
                        yield return $"{flour.Code}, period {t}: {row.Hours:0.######} h stated, {ground / unit.TonnesPerHour:0.######} h by what is ground.";
                    }
                }

                if (!NotAbove(hours, unit.Hours[t]))
                {
                    yield return $"{unit.Code}, period {t}: {hours:0.######} h of {unit.Hours[t]:0.######} h.";
                }
            }
        }
    }
}
