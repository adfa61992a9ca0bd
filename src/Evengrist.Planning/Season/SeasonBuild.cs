using Evengrist.Planning.Solving;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>Writes a season as a linear problem. Equations: docs/model/season.md.</summary>
internal sealed class SeasonBuild
{
    private readonly SeasonSpec spec;
    private readonly SeasonModel model;
    private readonly LinearProblem problem;
    private readonly bool soft;
    private readonly int periods;

    private SeasonBuild(SeasonSpec spec, LayerDraws draws, bool soft)
    {
        (this.spec, this.soft, periods) = (spec, soft, spec.Periods.Count);
        model = new SeasonModel(spec, draws);
        problem = model.Problem;
    }

    /// <summary>The problem of a season.</summary>
    /// <param name="spec">A spec without faults.</param>
    /// <param name="draws">Quality of every wheat by period.</param>
    /// <param name="soft">Whether what has to be kept may yield, at one money a unit and with no other cost: to find a clash.</param>
    public static SeasonModel Of(SeasonSpec spec, LayerDraws draws, bool soft = false)
    {
        var build = new SeasonBuild(spec, draws, soft);
        for (var t = 0; t < build.periods; t++)
        {
            build.Wheat(t);
            build.Flour(t);
        }

        build.Balances();
        build.Homes();
        build.Offers();
        build.CarryOut();
        build.Choices();
        return build.model;
    }

    private double Cost(double cost) => soft ? 0 : cost;

    private void Wheat(int t)
    {
        var storage = spec.StoragePerTonneWeek * spec.Periods[t].Weeks;
        for (var k = 0; k < model.Wheats.Length; k++)
        {
            var wheat = model.Wheats[k];
            model.Stock[k, t] = problem.Column($"S.{wheat.Code}.{t}", 0, double.PositiveInfinity, Cost(storage - (t == periods - 1 ? wheat.EndValuePerTonne : 0)));
        }

        for (var o = 0; o < spec.Offers.Count; o++)
        {
            var offer = spec.Offers[o];
            for (var tier = 0; t >= offer.First && t <= offer.Last && tier < offer.Tiers.Count; tier++)
            {
                model.Buy[o][tier, t] = problem.Column($"B.{offer.Code}.{tier}.{t}", 0, offer.Tiers[tier].TonnesPerPeriod, Cost(offer.Tiers[tier].PricePerTonne));
            }
        }
    }

    private void Flour(int t)
    {
        for (var f = 0; f < spec.Flours.Count; f++)
        {
            var flour = spec.Flours[f];
            var unit = spec.Units[model.UnitOf(f)];
            var most = unit.Hours[t] * unit.TonnesPerHour;
            model.Unmet[f, t] = problem.Column($"U.{flour.Code}.{t}", 0, flour.Demand[t], Cost(flour.UnmetPricePerTonne * SeasonPrices.At(t, periods)));
            model.FlourStock[f, t] = problem.Column($"F.{flour.Code}.{t}", soft ? 0 : flour.StockLeast, flour.StockMost, Cost(spec.StoragePerTonneWeek * spec.Periods[t].Weeks));
            model.FlourRow[f, t] = problem.Row($"flour.{flour.Code}.{t}", Wanted(f, t), Wanted(f, t));
            problem.Put(model.FlourRow[f, t], model.Unmet[f, t], 1);
            problem.Put(model.FlourRow[f, t], model.FlourStock[f, t], -1);
            if (t > 0)
            {
                problem.Put(model.FlourRow[f, t], model.FlourStock[f, t - 1], 1);
            }

            for (var k = 0; k < model.Wheats.Length; k++)
            {
                if (most > 0 && SeasonYield.Allows(flour, model.Wheats[k]))
                {
                    var yield = SeasonYield.Of(model.Wheats[k], flour);
                    model.Use[k, f, t] = problem.Column($"X.{model.Wheats[k].Code}.{flour.Code}.{t}", 0, most, Cost(-flour.ByProductPerTonne * (1 - yield)));
                    problem.Put(model.FlourRow[f, t], model.Use[k, f, t], yield);
                }
            }

            if (soft && flour.StockLeast > 0)
            {
                var row = problem.Row($"least.{flour.Code}.{t}", flour.StockLeast, double.PositiveInfinity);
                problem.Put(row, model.FlourStock[f, t], 1);
                Yields(FormattableString.Invariant($"at least {flour.StockLeast:0.##} t of {flour.Code} in store"), row, 1);
            }

            Limits(f, t, most);
        }
    }

    private double Wanted(int f, int t) => spec.Flours[f].Demand[t] - (t == 0 ? spec.Flours[f].OpeningTonnes : 0);

    private void Limits(int f, int t, double most)
    {
        foreach (var side in model.Sides[f])
        {
            var (worst, edge, sign) = (0.0, side.Edge, side.IsFloor ? 1 : -1);
            var terms = new List<(int Column, double Off, double Weight)>();
            for (var k = 0; k < model.Wheats.Length; k++)
            {
                if (model.Use[k, f, t] >= 0)
                {
                    var (moisture, quality) = model.Draws.At(k, t);
                    var weight = SeasonScale.Weight(side.Limit.What, moisture);
                    var off = sign * weight * (SeasonScale.OnScale(side.Limit.What, quality.Values[side.Limit.What]) - edge);
                    terms.Add((model.Use[k, f, t], off, weight));
                    worst = Math.Max(worst, -off);
                }
            }

            // A limit that every wheat keeps by itself has its row too: so a change of numbers never changes the shape, and a new wheat finds its price.
            var row = problem.Row($"limit.{spec.Flours[f].Code}.{side.Limit.What}.{(side.IsLeast ? "least" : "most")}.{t}", 0, double.PositiveInfinity);
            foreach (var (column, off, _) in terms)
            {
                problem.Put(row, column, off);
            }

            var (relief, caps) = (new List<int>(), new List<int>());
            foreach (var (by, price) in side.Relief)
            {
                var column = problem.Column($"R.{row}.{relief.Count}", 0, by * most, Cost(price));
                var cap = problem.Row($"relief.{row}.{relief.Count}", double.NegativeInfinity, 0);
                problem.Put(row, column, 1);
                problem.Put(cap, column, 1);
                foreach (var (use, _, weight) in terms)
                {
                    problem.Put(cap, use, -by * weight);
                }

                relief.Add(column);
                caps.Add(cap);
            }

            var miss = problem.Column($"M.{row}", 0, worst * most, Cost(side.MissPrice * SeasonPrices.At(t, periods)));
            problem.Put(row, miss, 1);
            model.Limits.Add(new LimitRow(f, t, side, row, miss, relief, caps));
        }
    }

    private void Balances()
    {
        for (var t = 0; t < periods; t++)
        {
            for (var k = 0; k < model.Wheats.Length; k++)
            {
                var wheat = model.Wheats[k];
                var comes = (t == 0 ? wheat.OpeningTonnes : 0) + wheat.Deliveries.Where(d => d.Period == t).Sum(d => d.Tonnes);
                var row = model.WheatRow[k, t] = problem.Row($"wheat.{wheat.Code}.{t}", -comes, -comes);
                problem.Put(row, model.Stock[k, t], -1);
                if (t > 0)
                {
                    problem.Put(row, model.Stock[k, t - 1], 1);
                }

                for (var f = 0; f < spec.Flours.Count; f++)
                {
                    Put(row, model.Use[k, f, t], -1);
                }

                for (var tier = 0; k >= spec.Wheats.Count && tier < spec.Offers[k - spec.Wheats.Count].Tiers.Count; tier++)
                {
                    Put(row, model.Buy[k - spec.Wheats.Count][tier, t], 1);
                }
            }

            for (var u = 0; u < spec.Units.Count; u++)
            {
                var row = model.HoursRow[u, t] = problem.Row($"hours.{spec.Units[u].Code}.{t}", double.NegativeInfinity, spec.Units[u].Hours[t]);
                for (var f = 0; f < spec.Flours.Count; f++)
                {
                    for (var k = 0; spec.Flours[f].Unit == spec.Units[u].Code && k < model.Wheats.Length; k++)
                    {
                        Put(row, model.Use[k, f, t], 1 / spec.Units[u].TonnesPerHour);
                    }
                }
            }
        }
    }

    // A bin into which nothing comes can never overflow: no row.
    private void Homes()
    {
        for (var h = 0; h < spec.Homes.Count; h++)
        {
            var home = spec.Homes[h];
            var within = Enumerable.Range(0, model.Wheats.Length).Where(k => model.Wheats[k].Home == home.Code).ToArray();
            var filled = within.Any(k => k >= spec.Wheats.Count || model.Wheats[k].Deliveries.Count > 0);
            if (!filled && within.Sum(k => model.Wheats[k].OpeningTonnes) <= home.CapacityTonnes)
            {
                continue;
            }

            for (var t = 0; t < periods; t++)
            {
                var row = model.HomeRow[h, t] = problem.Row($"home.{home.Code}.{t}", double.NegativeInfinity, home.CapacityTonnes);
                Array.ForEach(within, k => problem.Put(row, model.Stock[k, t], 1));
                Yields(FormattableString.Invariant($"no more than {home.CapacityTonnes:0.##} t in {home.Code}"), row, -1);
            }
        }
    }

    private void Offers()
    {
        for (var o = 0; o < spec.Offers.Count; o++)
        {
            if (spec.Offers[o].TotalTonnes is { } total)
            {
                var row = model.Total[o] = problem.Row($"total.{spec.Offers[o].Code}", double.NegativeInfinity, total);
                foreach (var column in model.Buy[o])
                {
                    Put(row, column, 1);
                }
            }
        }
    }

    private void CarryOut()
    {
        for (var c = 0; c < spec.CarryOut.Count; c++)
        {
            var wanted = spec.CarryOut[c];
            var row = model.CarryOutRow[c] = problem.Row($"carry-out.{c}", wanted.LeastTonnes, double.PositiveInfinity);
            for (var k = 0; k < model.Wheats.Length; k++)
            {
                if (wanted.WheatClass.Length == 0 || model.Wheats[k].WheatClass == wanted.WheatClass)
                {
                    problem.Put(row, model.Stock[k, periods - 1], 1);
                }
            }

            Yields(FormattableString.Invariant($"at least {wanted.LeastTonnes:0.##} t of {(wanted.WheatClass.Length == 0 ? "wheat" : wanted.WheatClass)} left at the end"), row, 1);
        }
    }

    private void Choices()
    {
        foreach (var choice in spec.Choices)
        {
            var (words, terms) = ChoiceRow.Of(model, choice);
            foreach (var (row, sign) in ChoiceRow.Rows(problem, choice, terms))
            {
                Yields(words, row, sign);
            }
        }
    }

    private void Yields(string words, int row, int sign)
    {
        if (!soft)
        {
            return;
        }

        var demand = model.Hard.Find(d => d.Words == words);
        if (demand is null)
        {
            model.Hard.Add(demand = new HardDemand(words, "t", []));
        }

        demand.Slack.Add(problem.Column($"Z.{row}", 0, 1e9, 1));
        problem.Put(row, demand.Slack[^1], sign);
    }

    private void Put(int row, int column, double coefficient)
    {
        if (column >= 0)
        {
            problem.Put(row, column, coefficient);
        }
    }
}
