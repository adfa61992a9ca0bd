using Evengrist.Planning.Solving;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>Reads an answer of the solver back as a plan. Stocks, flour, misses and money are reckoned anew from what is used, bought and not made.</summary>
internal static class SeasonReading
{
    private const double Dust = 1e-7;

    public static double[,] Drawn(SeasonModel model, IReadOnlyList<double> values)
    {
        var drawn = new double[model.Wheats.Length, model.Spec.Periods.Count];
        ForEachUse(model, values, (k, _, t, tonnes) => drawn[k, t] += tonnes);
        return drawn;
    }

    public static SeasonPlan Plan(SeasonModel model, LinearAnswer answer, double bound, bool millable)
    {
        var (spec, values) = (model.Spec, answer.Values);
        var uses = new List<PlannedUse>();
        ForEachUse(model, values, (k, f, t, tonnes) => uses.Add(new PlannedUse(model.Wheats[k].Code, spec.Flours[f].Code, t, tonnes)));
        var purchases = Purchases(model, values);
        var (misses, reliefs) = Misses(model, values);
        var (stocks, flours) = (Stocks(model, values), Flours(model, values));
        return new SeasonPlan(spec, "")
        {
            Uses = uses,
            Purchases = purchases,
            Stocks = stocks,
            Flours = flours,
            Misses = misses,
            Reliefs = reliefs,
            Costs = Costs(model, values, purchases, stocks, flours, misses, reliefs),
            Bound = bound,
            Exit = ExitOf(answer.Exit),
            Took = answer.Took,
            IsMillable = millable,
            Qualities = model.Draws.Rows(),
        };
    }

    public static SeasonExit ExitOf(ExitReason exit) => exit switch
    {
        ExitReason.Optimal => SeasonExit.Optimal,
        ExitReason.GapReached => SeasonExit.GapReached,
        ExitReason.TimeReached => SeasonExit.TimeReached,
        ExitReason.Cancelled => SeasonExit.Cancelled,
        ExitReason.Infeasible => SeasonExit.Infeasible,
        ExitReason.Unbounded => SeasonExit.Unbounded,
        _ => SeasonExit.SolverFailed,
    };

    private static double At(IReadOnlyList<double> values, int column) => column >= 0 && values[column] > Dust ? values[column] : 0;

    private static void ForEachUse(SeasonModel model, IReadOnlyList<double> values, Action<int, int, int, double> each)
    {
        for (var t = 0; t < model.Spec.Periods.Count; t++)
        {
            for (var f = 0; f < model.Spec.Flours.Count; f++)
            {
                for (var k = 0; k < model.Wheats.Length; k++)
                {
                    if (At(values, model.Use[k, f, t]) is > 0 and var tonnes)
                    {
                        each(k, f, t, tonnes);
                    }
                }
            }
        }
    }

    private static List<PlannedPurchase> Purchases(SeasonModel model, IReadOnlyList<double> values)
    {
        var bought = new List<PlannedPurchase>();
        for (var t = 0; t < model.Spec.Periods.Count; t++)
        {
            for (var o = 0; o < model.Spec.Offers.Count; o++)
            {
                for (var tier = 0; tier < model.Spec.Offers[o].Tiers.Count; tier++)
                {
                    if (At(values, model.Buy[o][tier, t]) is > 0 and var tonnes)
                    {
                        bought.Add(new PlannedPurchase(model.Spec.Offers[o].Code, tier, t, tonnes));
                    }
                }
            }
        }

        return bought;
    }

    private static List<PlannedStock> Stocks(SeasonModel model, IReadOnlyList<double> values)
    {
        var (drawn, stocks) = (Drawn(model, values), new List<PlannedStock>());
        for (var k = 0; k < model.Wheats.Length; k++)
        {
            var stock = model.Wheats[k].OpeningTonnes;
            for (var t = 0; t < model.Spec.Periods.Count; t++)
            {
                stock += model.Wheats[k].Deliveries.Where(d => d.Period == t).Sum(d => d.Tonnes) - drawn[k, t];
                for (var tier = 0; k >= model.Spec.Wheats.Count && tier < model.Spec.Offers[k - model.Spec.Wheats.Count].Tiers.Count; tier++)
                {
                    stock += At(values, model.Buy[k - model.Spec.Wheats.Count][tier, t]);
                }

                if (stock > 1e-6)
                {
                    stocks.Add(new PlannedStock(model.Wheats[k].Code, t, stock));
                }
            }
        }

        return stocks;
    }

    private static List<PlannedFlour> Flours(SeasonModel model, IReadOnlyList<double> values)
    {
        var rows = new List<PlannedFlour>();
        for (var f = 0; f < model.Spec.Flours.Count; f++)
        {
            var flour = model.Spec.Flours[f];
            var stock = flour.OpeningTonnes;
            for (var t = 0; t < model.Spec.Periods.Count; t++)
            {
                var (wheat, made) = (0.0, 0.0);
                for (var k = 0; k < model.Wheats.Length; k++)
                {
                    var tonnes = At(values, model.Use[k, f, t]);
                    (wheat, made) = (wheat + tonnes, made + (tonnes * SeasonYield.Of(model.Wheats[k], flour)));
                }

                var unmet = At(values, model.Unmet[f, t]) is var u && u > 1e-6 ? u : 0;
                stock = Math.Max(0, stock + made + unmet - flour.Demand[t]);
                rows.Add(new PlannedFlour(flour.Code, t, wheat, made, wheat / model.Spec.Units[model.UnitOf(f)].TonnesPerHour, unmet, stock > 1e-6 ? stock : 0));
            }
        }

        return rows;
    }

    private static (List<PlannedMiss> Misses, List<PlannedRelief> Reliefs) Misses(SeasonModel model, IReadOnlyList<double> values)
    {
        var (misses, reliefs) = (new List<PlannedMiss>(), new List<PlannedRelief>());
        foreach (var row in model.Limits)
        {
            var (tonnes, weighted, off) = (0.0, 0.0, 0.0);
            for (var k = 0; k < model.Wheats.Length; k++)
            {
                if (At(values, model.Use[k, row.Flour, row.Period]) is > 0 and var x)
                {
                    var (moisture, quality) = model.Draws.At(k, row.Period);
                    var w = SeasonScale.Weight(row.Side.Limit.What, moisture) * x;
                    (tonnes, weighted, off) = (tonnes + x, weighted + w, off + (w * (SeasonScale.OnScale(row.Side.Limit.What, quality.Values[row.Side.Limit.What]) - row.Side.Edge)));
                }
            }

            off *= row.Side.IsFloor ? 1 : -1;
            var (code, what) = (model.Spec.Flours[row.Flour].Code, row.Side.Limit.What);
            foreach (var ((by, price), step) in row.Side.Relief.Select((r, i) => (r, i)))
            {
                if (At(values, row.Relief[step]) is > 1e-6 and var relief)
                {
                    off += relief;
                    reliefs.Add(new PlannedRelief(code, row.Period, what, row.Side.IsLeast, step, relief / (by * weighted), tonnes, relief * price));
                }
            }

            if (-off > 1e-6 * Math.Max(1, weighted))
            {
                var cost = -off * row.Side.MissPrice * SeasonPrices.At(row.Period, model.Spec.Periods.Count);
                misses.Add(new PlannedMiss(code, row.Period, what, row.Side.IsLeast, row.Side.AmountOf(-off / weighted), tonnes, cost));
            }
        }

        return (misses, reliefs);
    }

    private static SeasonCosts Costs(
        SeasonModel model, IReadOnlyList<double> values, List<PlannedPurchase> purchases, List<PlannedStock> stocks, List<PlannedFlour> flours, List<PlannedMiss> misses, List<PlannedRelief> reliefs)
    {
        var spec = model.Spec;
        var (last, offers, flourOf) = (spec.Periods.Count - 1, spec.Offers.ToDictionary(o => o.Code), spec.Flours.ToDictionary(f => f.Code));
        var wheats = model.Wheats.ToDictionary(w => w.Code);
        var byProducts = 0.0;
        ForEachUse(model, values, (k, f, _, tonnes) => byProducts += tonnes * (1 - SeasonYield.Of(model.Wheats[k], spec.Flours[f])) * spec.Flours[f].ByProductPerTonne);
        return new SeasonCosts(
            purchases.Sum(p => p.Tonnes * offers[p.Offer].Tiers[p.Tier].PricePerTonne),
            spec.StoragePerTonneWeek * (stocks.Sum(s => s.Tonnes * spec.Periods[s.Period].Weeks) + flours.Sum(f => f.StockTonnes * spec.Periods[f.Period].Weeks)),
            reliefs.Sum(r => r.Cost),
            misses.Sum(m => m.Cost),
            flours.Sum(f => f.UnmetTonnes * flourOf[f.Flour].UnmetPricePerTonne * SeasonPrices.At(f.Period, spec.Periods.Count)),
            byProducts,
            stocks.Where(s => s.Period == last).Sum(s => s.Tonnes * wheats[s.Wheat].EndValuePerTonne));
    }
}
