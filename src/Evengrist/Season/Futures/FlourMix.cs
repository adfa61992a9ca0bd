namespace Evengrist.Season.Futures;

/// <summary>The mix of one flour in one period: what the plan says, or what is cheapest by the worth of what is left where the plan no longer does.</summary>
/// <remarks>Model: docs/model/season-promise.md.</remarks>
internal sealed class FlourMix
{
    private readonly FutureFrame frame;
    private readonly int flour;
    private readonly FrameLimit[] limits;
    private readonly SmallProblem problem;
    private readonly MixLook look;
    private readonly List<(int Wheat, int Tier, int Column, double Price)> columns = [];
    private readonly List<(int Wheat, int Tier, double Tonnes)> best = [];

    public FlourMix(FutureFrame frame, int flour)
    {
        (this.frame, this.flour, limits) = (frame, flour, frame.Limits[flour]);
        var tiers = frame.Season.Offers.Sum(o => o.Tiers.Count);
        look = new MixLook(frame, flour);
        problem = new SmallProblem(limits.Length + 2, (2 * limits.Length) + 2 + (2 * frame.Wheats.Count) + tiers);
    }

    /// <summary>What is taken, with the tier it is bought at, −1 for what lies there.</summary>
    public List<(int Wheat, int Tier, double Tonnes)> Taken { get; } = [];

    /// <summary>Finds the mix: made anew by what it would really draw, until that is what it was made by; the best of them where that does not end.</summary>
    /// <param name="now">How the mill stands.</param>
    /// <param name="wanted">t of flour.</param>
    /// <param name="hours">Hours of the mill unit that are left.</param>
    public void Solve(MillState now, double wanted, double hours)
    {
        look.Begin(now);
        var least = double.PositiveInfinity;
        for (var pass = 0; pass < FutureRule.Looks; pass++)
        {
            var cost = Make(now, wanted, hours);
            var (misses, differs) = look.Again(now, Taken);
            if (!differs)
            {
                return;
            }

            if (cost + (misses * FutureRule.Defence) is var all && all < least)
            {
                least = all;
                best.Clear();
                best.AddRange(Taken);
            }
        }

        Taken.Clear();
        Taken.AddRange(best);
    }

    // What the mix costs without its misses, money; what is not made included.
    private double Make(MillState now, double wanted, double hours)
    {
        var (t, season) = (now.Period, frame.Season);
        var unit = frame.UnitOf[flour];
        var rate = season.Units[unit].TonnesPerHour;
        problem.Clear();
        columns.Clear();
        Taken.Clear();
        problem.Put(0, problem.Column(frame.Dearest[flour], double.PositiveInfinity), 1);
        problem.Right(0, wanted);
        for (var i = 0; i < limits.Length; i++)
        {
            problem.Put(i + 1, problem.Column(limits[i].MissPrice * FutureRule.Defence, double.PositiveInfinity), 1);
            problem.Right(i + 1, 0);
        }

        problem.Put(limits.Length + 1, problem.Column(0, double.PositiveInfinity), 1);
        problem.Right(limits.Length + 1, Math.Max(0, hours) * rate);
        for (var i = 0; i < limits.Length; i++)
        {
            problem.Put(i + 1, problem.Column(0, double.PositiveInfinity), -1);
        }

        var hour = frame.HourWorth[unit][t] / rate;
        for (var k = 0; k < frame.Wheats.Count; k++)
        {
            var yield = frame.Yield[k][flour];
            if (double.IsNaN(yield))
            {
                continue;
            }

            var handling = hour - (season.Flours[flour].ByProductPerTonne * (1 - yield));
            if (now.Free(k, flour) is > 1e-9 and var free)
            {
                var planned = Math.Min(free, frame.Use[k][flour][t]);
                var worth = now.Worth[k] + handling;
                Add(k, -1, worth - frame.FollowCost, planned, yield, look.Believed[k], look.Moisture[k], t);
                Add(k, -1, worth + frame.FollowCost, free - planned, yield, look.Believed[k], look.Moisture[k], t);
            }

            if (now.Offer(k) is not null)
            {
                var offer = season.Offers[k - frame.FirstOffer];
                for (var tier = 0; tier < offer.Tiers.Count; tier++)
                {
                    Add(k, tier, offer.Tiers[tier].PricePerTonne + frame.FollowCost + handling, now.Offered(k, tier), yield, look.Believed[k], look.Moisture[k], t);
                }
            }
        }

        problem.Solve();
        var cost = frame.Dearest[flour] * problem.Values[0];
        foreach (var (k, tier, column, price) in columns)
        {
            if (problem.Values[column] > 1e-9)
            {
                Taken.Add((k, tier, problem.Values[column]));
                cost += price * problem.Values[column];
            }
        }

        return cost;
    }

    private void Add(int wheat, int tier, double price, double most, double yield, double[] believed, double moisture, int t)
    {
        if (most <= 1e-9)
        {
            return;
        }

        for (var i = 0; i < limits.Length; i++)
        {
            if (double.IsNaN(believed[limits[i].Property]))
            {
                return;
            }
        }

        // An endless tier still ends where nothing more could be milled: a bound keeps the table's steps finite.
        var column = problem.Column(price, Math.Min(most, 1e9));
        problem.Put(0, column, yield);
        problem.Put(limits.Length + 1, column, 1);
        for (var i = 0; i < limits.Length; i++)
        {
            var weight = limits[i].ByDry ? 1 - (moisture / 100) : 1;
            problem.Put(i + 1, column, weight * (believed[limits[i].Property] - limits[i].Aim[t]) * (limits[i].IsFloor ? 1 : -1));
        }

        columns.Add((wheat, tier, column, price));
    }
}
