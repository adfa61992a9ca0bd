using Evengrist.Ledger;

namespace Evengrist.Season.Futures;

/// <summary>Mills a future period by period under the rule: the plan is followed, and where what is there no longer allows it, the mix is made anew by what wheat is worth to the rest of the year.</summary>
/// <remarks>The mill sees what it believes; what is judged is what is true. Model: docs/model/season-promise.md.</remarks>
public static class FutureMill
{
    /// <summary>Mills a future.</summary>
    /// <param name="frame">The plan, laid out.</param>
    /// <param name="world">What befalls the mill.</param>
    /// <param name="decide">Decides each period in place of the rule; null for the rule.</param>
    /// <exception cref="ArgumentException">The world does not fit the frame.</exception>
    public static FutureYear Run(FutureFrame frame, FutureWorld world, Func<FutureStand, FutureDecision>? decide = null)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(world);
        if (world.Demand.Count != frame.Season.Flours.Count || world.Offered.Count != frame.Season.Offers.Count)
        {
            throw new ArgumentException("The future has other flours or offers than the plan.", nameof(world));
        }

        return new Year(frame, world, decide).Run();
    }

    private sealed class Year(FutureFrame frame, FutureWorld world, Func<FutureStand, FutureDecision>? decide)
    {
        private readonly MillState state = new(frame, world);
        private readonly FlourMix[] mixes = [.. frame.Season.Flours.Select((_, f) => new FlourMix(frame, f))];
        private readonly double[] flourStock = [.. frame.Season.Flours.Select(f => f.OpeningTonnes)];
        private readonly (int Off, Property? Limiting, int Believed)[] fates = [.. frame.Season.Flours.Select(_ => (int.MaxValue, (Property?)null, int.MaxValue))];
        private readonly double[] hours = new double[frame.Season.Units.Count];
        private readonly double[] filled = new double[frame.Season.Units.Count];
        private readonly MixSum mix = new(frame.Properties.Count);
        private FutureDecision? decided;
        private double storage, misses, unmet, byProducts;

        public FutureYear Run()
        {
            var season = frame.Season;
            var coming = world.Lots.ToLookup(l => l.Period);
            foreach (var lot in coming[-1])
            {
                state.Piles[lot.Wheat].Add(lot, lot.Tonnes);
            }

            for (var t = 0; t < frame.Periods; t++)
            {
                foreach (var lot in coming[t])
                {
                    state.Piles[lot.Wheat].Add(lot, lot.Tonnes);
                }

                state.Begin(t, follow: decide is null);
                if (decide is not null)
                {
                    decided = decide(state.Stand([.. Enumerable.Range(0, season.Flours.Count).Select(f => Wanted(f, t))]));
                    foreach (var (offer, tonnes) in decided.Bought)
                    {
                        state.Buy(frame.FirstOffer + offer, tonnes);
                    }
                }

                for (var u = 0; u < hours.Length; u++)
                {
                    hours[u] = season.Units[u].Hours[t];
                }

                Share(t);
                for (var f = 0; f < season.Flours.Count; f++)
                {
                    Mill(f, t);
                }

                storage += season.StoragePerTonneWeek * season.Periods[t].Weeks * (state.Piles.Sum(p => p.Tonnes) + flourStock.Sum());
            }

            var left = 0.0;
            for (var k = 0; k < state.Piles.Length; k++)
            {
                left += state.Piles[k].Tonnes * frame.Wheats[k].EndValuePerTonne;
            }

            return new FutureYear(
                [.. fates.Select(x => new FlourFate(Math.Min(x.Off, frame.Periods), x.Limiting, Math.Min(x.Believed, frame.Periods)))],
                new SeasonCosts(state.Spent, storage, 0, misses, unmet, byProducts, left));
        }

        private void Mill(int f, int t)
        {
            var (flour, demand) = (frame.Season.Flours[f], world.Demand[f][t]);
            var made = 0.0;
            mix.Clear();
            if (Wanted(f, t) is > 1e-9 and var wanted)
            {
                foreach (var (k, tier, tonnes) in Mix(f, t, wanted))
                {
                    if (tier >= 0)
                    {
                        state.Buy(k, tonnes);
                    }

                    var before = mix.Tonnes;
                    state.Piles[k].Draw(tonnes, mix);
                    var taken = mix.Tonnes - before;
                    made += taken * frame.Yield[k][f];
                    byProducts += taken * (1 - frame.Yield[k][f]) * flour.ByProductPerTonne;
                }

                hours[frame.UnitOf[f]] -= mix.Tonnes / frame.Season.Units[frame.UnitOf[f]].TonnesPerHour;
            }

            state.Done(f);
            var lacking = Math.Max(0, demand - flourStock[f] - made);
            flourStock[f] = Math.Max(0, flourStock[f] + made - demand);
            unmet += lacking * flour.UnmetPricePerTonne * SeasonPrices.At(t, frame.Periods);
            Judge(f, t, lacking > (frame.Spec.MadeTolerance * demand) + 1e-6);
        }

        // What the period wants, and what makes up the store that is to be there at its end.
        private double Wanted(int f, int t) => Math.Max(0, world.Demand[f][t] + Math.Max(frame.FlourStock[f][t], frame.Standing[f][t]) - flourStock[f]);

        private IEnumerable<(int Wheat, int Tier, double Tonnes)> Mix(int f, int t, double wanted)
        {
            if (decided is not null)
            {
                return decided.Drawn.Where(d => d.Flour == f).Select(d => (d.Wheat, -1, d.Tonnes));
            }

            mixes[f].Solve(state, Math.Min(wanted, Shared(f, t)), hours[frame.UnitOf[f]] - Reserved(f, t));
            return mixes[f].Taken;
        }

        // Hours go to what the period itself wants of every flour of a unit first; of what makes up the stores each gets the same share.
        private void Share(int t)
        {
            for (var u = 0; u < filled.Length; u++)
            {
                var (now, store) = (0.0, 0.0);
                for (var f = 0; f < frame.Season.Flours.Count; f++)
                {
                    if (frame.UnitOf[f] == u)
                    {
                        now += Hours(f, Needed(f, t));
                        store += Hours(f, Wanted(f, t) - Needed(f, t));
                    }
                }

                filled[u] = now > hours[u] ? double.NaN : store > 0 ? Math.Min(1, (hours[u] - now) / store) : 1;
            }
        }

        // What the period, and the days after it on which the unit stands still, want beyond all that lies in store.
        private double Needed(int f, int t) => Math.Min(Wanted(f, t), Math.Max(0, world.Demand[f][t] + frame.Standing[f][t] - flourStock[f]));

        private double Shared(int f, int t) => Needed(f, t) + ((double.IsNaN(filled[frame.UnitOf[f]]) ? 0 : filled[frame.UnitOf[f]]) * (Wanted(f, t) - Needed(f, t)));

        private double Hours(int f, double tonnes) => tonnes / frame.Season.Flours[f].Yield / frame.Season.Units[frame.UnitOf[f]].TonnesPerHour;

        // What flours that come after this one on the same unit are to have; where there is not enough for all, the last ones go short.
        private double Reserved(int f, int t)
        {
            var reserved = 0.0;
            for (var later = f + 1; later < frame.Season.Flours.Count && !double.IsNaN(filled[frame.UnitOf[f]]); later++)
            {
                reserved += frame.UnitOf[later] == frame.UnitOf[f] ? Hours(later, Shared(later, t)) : 0;
            }

            return reserved;
        }

        private void Judge(int f, int t, bool lacking)
        {
            var (worst, limiting, believedOff) = (0.0, (Property?)null, lacking);
            foreach (var limit in mix.Tonnes > 0 ? frame.Limits[f] : [])
            {
                var sign = limit.IsFloor ? 1 : -1;
                var (truth, belief) = (mix.True(limit), mix.Believed(limit));
                misses += Math.Max(0, (limit.Aim[t] - truth) * sign) * mix.Weight(limit) * limit.MissPrice * SeasonPrices.At(t, frame.Periods);
                var slack = 1e-6 * Math.Max(1, Math.Abs(limit.Kept[t]));
                believedOff |= (limit.Kept[t] - belief) * sign > slack;
                if ((limit.Kept[t] - truth) * sign is var off && off > slack && off * limit.MissPrice > worst)
                {
                    (worst, limiting) = (off * limit.MissPrice, frame.Properties[limit.Property]);
                }
            }

            if (fates[f].Off == int.MaxValue && (lacking || limiting is not null))
            {
                (fates[f].Off, fates[f].Limiting) = (t, lacking ? null : limiting);
            }

            if (fates[f].Believed == int.MaxValue && believedOff)
            {
                fates[f].Believed = t;
            }
        }
    }
}
