namespace Evengrist.Season.Futures;

/// <summary>How the mill stands in one period of a future, as it is believed.</summary>
internal sealed class MillState
{
    private readonly FutureFrame frame;
    private readonly double[] claims;
    private readonly double[] boughtNow;
    private readonly double[] boughtEver;
    private readonly double[] seen;

    public MillState(FutureFrame frame, FutureWorld world)
    {
        (this.frame, World) = (frame, world);
        var wheats = frame.Wheats.Count;
        Piles = [.. frame.Wheats.Select(_ => new WheatPile(frame))];
        (Worth, claims, boughtNow, boughtEver, seen) = (new double[wheats], new double[wheats], new double[wheats], new double[wheats], new double[frame.Properties.Count]);
    }

    public FutureWorld World { get; }

    public int Period { get; private set; }

    public WheatPile[] Piles { get; }

    /// <summary>What a t of each wheat is worth now, money.</summary>
    public double[] Worth { get; }

    /// <summary>Money spent on purchases.</summary>
    public double Spent { get; private set; }

    /// <summary>Begins a period: what is bought follows the plan, more or less of it as far as what lies there is worth less or more than planned.</summary>
    /// <param name="period">The period.</param>
    /// <param name="follow">Whether what is bought follows the plan; otherwise nothing is bought yet.</param>
    public void Begin(int period, bool follow)
    {
        Period = period;
        Array.Clear(boughtNow);
        var value = frame.Value;
        var behind = new double[value.Remaining.Length];
        for (var k = 0; k < Piles.Length; k++)
        {
            behind[value.ClassOf[k]] += Behind(k);
            claims[k] = 0;
            for (var f = 0; f < frame.Season.Flours.Count; f++)
            {
                claims[k] += frame.Use[k][f][period];
            }
        }

        for (var k = 0; k < Piles.Length; k++)
        {
            var left = value.Remaining[value.ClassOf[k]][period];
            var sway = left > 0 ? Math.Clamp(behind[value.ClassOf[k]] / left, -FutureRule.MostSway, FutureRule.MostSway) : 0;
            Worth[k] = frame.Worth[k][period] * (1 + sway);
        }

        if (follow)
        {
            BuyAhead(behind);
        }
    }

    /// <summary>How the mill stands, to decide by.</summary>
    /// <param name="wanted">Flour the period wants, t, by number of the flour.</param>
    public FutureStand Stand(IReadOnlyList<double> wanted) => new(
        Period, [.. Piles.Select(p => (p.Tonnes, p.Peek(Math.Max(p.Tonnes, 1), seen), (IReadOnlyList<double>)[.. seen]))], wanted, [.. boughtEver.Skip(frame.FirstOffer)],
        [.. World.Offered.Select(o => o[Period]?.Believed)]);

    /// <summary>t of a wheat that a flour may take: what later flours are planned to take stays for them.</summary>
    public double Free(int wheat, int flour) => Math.Max(0, Piles[wheat].Tonnes - Math.Max(0, claims[wheat] - frame.Use[wheat][flour][Period]));

    /// <summary>A flour is done: its claim on what lies there ends.</summary>
    public void Done(int flour)
    {
        for (var k = 0; k < claims.Length; k++)
        {
            claims[k] -= frame.Use[k][flour][Period];
        }
    }

    /// <summary>t that a tier of an offer still has in this period.</summary>
    public double Offered(int wheat, int tier)
    {
        var offer = frame.Season.Offers[wheat - frame.FirstOffer];
        var before = 0.0;
        for (var i = 0; i < tier; i++)
        {
            before += offer.Tiers[i].TonnesPerPeriod;
        }

        var gone = Math.Clamp(boughtNow[wheat] - before, 0, offer.Tiers[tier].TonnesPerPeriod);
        return Math.Max(0, Math.Min(offer.Tiers[tier].TonnesPerPeriod - gone, (offer.TotalTonnes ?? double.PositiveInfinity) - boughtEver[wheat]));
    }

    /// <summary>What a wheat on offer would bring now; null for one that is not.</summary>
    public FutureLot? Offer(int wheat) => wheat >= frame.FirstOffer ? World.Offered[wheat - frame.FirstOffer][Period] : null;

    public void Buy(int wheat, double tonnes)
    {
        var offer = frame.Season.Offers[wheat - frame.FirstOffer];
        for (var tier = 0; tier < offer.Tiers.Count && tonnes > 1e-9; tier++)
        {
            var take = Math.Min(tonnes, Offered(wheat, tier));
            Piles[wheat].Add(Offer(wheat)!, take);
            boughtNow[wheat] += take;
            boughtEver[wheat] += take;
            Spent += take * offer.Tiers[tier].PricePerTonne;
            tonnes -= take;
        }
    }

    // Money by which a wheat's stock is behind the plan: tonnes that are not there, and quality that what is there lacks.
    private double Behind(int k)
    {
        var (value, pile) = (frame.Value, Piles[k]);
        var behind = frame.Worth[k][Period] * (value.Expected[k][Period] - pile.Tonnes);
        var slope = value.Slope[k];
        // Of what is as good as gone no quality is known.
        if (pile.Tonnes < 0.001 || !Array.Exists(slope, s => s != 0))
        {
            return behind;
        }

        var moisture = pile.Peek(pile.Tonnes, seen);
        for (var p = 0; p < slope.Length; p++)
        {
            if (slope[p] != 0)
            {
                behind += slope[p] * (value.Planned[k][p] - seen[p]) * pile.Tonnes * SeasonScale.Weight(frame.Properties[p], moisture);
            }
        }

        return behind;
    }

    private void BuyAhead(double[] behind)
    {
        for (var k = frame.FirstOffer; k < Piles.Length; k++)
        {
            if (Offer(k) is null)
            {
                continue;
            }

            var (own, planned) = (frame.Value.ClassOf[k], frame.Bought[k][Period]);
            var worth = frame.Worth[k][Period];
            var more = worth > 0 ? behind[own] / worth : 0;
            var tonnes = planned;
            if (more < 0)
            {
                tonnes = Math.Max(0, planned + more);
            }
            else if (more > 0)
            {
                var offer = frame.Season.Offers[k - frame.FirstOffer];
                var upTo = 0.0;
                for (var tier = 0; tier < offer.Tiers.Count && offer.Tiers[tier].PricePerTonne <= Worth[k]; tier++)
                {
                    upTo += offer.Tiers[tier].TonnesPerPeriod;
                }

                tonnes = Math.Max(planned, Math.Min(upTo, planned + more));
            }

            behind[own] -= (tonnes - planned) * worth;
            Buy(k, tonnes);
        }
    }
}
