using Evengrist.Ledger;
using Evengrist.Numerics;

namespace Evengrist.Season.Futures;

/// <summary>Draws what may befall the mill: deliveries, quality, demand, and the errors of what reads them.</summary>
/// <remarks>
/// A district's tonnes and mean quality move together for all its deliveries; each delivery and purchase has its own noise on top, a delivery of few trucks more of it; one error of each instrument,
/// drifting, is in everything it read, what lies in store included. Busy periods come in runs. All normal; tonnes and demand never fall below 0. Model: docs/model/season-promise.md.
/// </remarks>
public static class FutureModel
{
    private const double LeastFallingNumber = 61;

    /// <summary>Draws one future.</summary>
    /// <param name="frame">The plan, laid out.</param>
    /// <param name="future">Number of the future, 0 or more: the same number of the same spec is the same future.</param>
    public static FutureWorld Draw(FutureFrame frame, int future)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentOutOfRangeException.ThrowIfNegative(future);
        var (spec, season, draws) = (frame.Spec, frame.Season, new SeededDraws(frame.Spec.Seed, future));
        double[][] shared = [.. frame.Properties.Select(p => Shared(spec.Instruments.FirstOrDefault(i => i.What == p)))];
        var districts = spec.Districts.ToDictionary(
            d => d.District, d => (Tonnes: d.TonnesShare * draws.Normal(), Quality: frame.Properties.Select(p => draws.Normal() * (d.Quality.FirstOrDefault(q => q.What == p)?.Spread ?? 0)).ToArray()), StringComparer.Ordinal);
        double[] own = [.. frame.Properties.Select(p => spec.Instruments.FirstOrDefault(i => i.What == p)?.Own ?? 0)];
        var nothing = new double[frame.Properties.Count];
        var lots = new List<FutureLot>();
        for (var k = 0; k < season.Wheats.Count; k++)
        {
            var wheat = season.Wheats[k];
            if (wheat.Layers.Count > 0)
            {
                lots.AddRange(wheat.Layers.Select(l => InStore(k, l.Tonnes, l.MoisturePercent, Over(l.Quality, wheat.Quality))));
            }
            else if (wheat.OpeningTonnes > 0)
            {
                lots.Add(InStore(k, wheat.OpeningTonnes, wheat.MoisturePercent, wheat.Quality));
            }

            var trucks = spec.Trucks.FirstOrDefault(x => x.Wheat == wheat.Code);
            double[] each = [.. frame.Properties.Select(p => trucks?.Quality.FirstOrDefault(q => q.What == p)?.Spread ?? 0)];
            foreach (var delivery in wheat.Deliveries.OrderBy(d => d.Period))
            {
                var (byDistrict, moved) = districts.TryGetValue(delivery.District, out var d) ? d : (0, nothing);
                var tonnes = Math.Max(0, (delivery.Tonnes * (1 + byDistrict)) + (delivery.TonnesSpread * draws.Normal()));
                lots.Add(Coming(k, delivery.Period, tonnes, delivery.MoisturePercent ?? wheat.MoisturePercent, Over(delivery.Quality, wheat.Quality), moved, (lot, p) => trucks?.Of(lot, each[p], tonnes) ?? lot));
            }
        }

        FutureLot?[][] offered = [.. season.Offers.Select((o, i) => Enumerable.Range(0, frame.Periods).Select(t =>
            t >= o.First && t <= o.Last ? Coming(frame.FirstOffer + i, t, 0, o.Wheat.MoisturePercent, o.Wheat.Quality, nothing, (lot, _) => lot) : null).ToArray())];
        double[][] demand = [.. season.Flours.Select(f => Demand(f, spec.Demands.FirstOrDefault(d => d.Flour == f.Code)))];
        return new FutureWorld(lots, offered, demand);

        double[] Demand(SeasonFlour flour, DemandSpread? spread)
        {
            var year = (spread?.YearShare ?? 0) * draws.Normal();
            var (hold, last) = (spread?.Hold ?? 0, draws.Normal());
            return [.. flour.Demand.Select((d, t) =>
            {
                var kept = Math.Pow(hold, season.Periods[t].Weeks);
                last = (kept * last) + (Math.Sqrt(1 - (kept * kept)) * draws.Normal());
                return d * Math.Max(0, 1 + year + ((spread?.PeriodShare ?? 0) * last));
            })];
        }

        // The error that everything read in a period has in common; the first is in what lies in store.
        double[] Shared(InstrumentSpread? spread)
        {
            var error = draws.Normal() * (spread?.Shared ?? 0);
            var errors = new double[frame.Periods];
            for (var t = 0; t < errors.Length; t++)
            {
                (errors[t], error) = (error, error + (draws.Normal() * (spread?.Drift ?? 0) * Math.Sqrt(season.Periods[t].Weeks)));
            }

            return errors;
        }

        // What lies there reads what it reads; the truth is that less the errors.
        FutureLot InStore(int k, double tonnes, double moisture, SeasonQuality quality) => Lot(k, -1, tonnes, moisture, quality, (value, p) =>
            (value.Value - shared[p][0] - (value.Spread * draws.Normal()), value.Value));

        // What comes is what it is; it reads that and the errors.
        FutureLot Coming(int k, int period, double tonnes, double moisture, SeasonQuality quality, double[] moved, Func<double, int, double> spread) => Lot(k, period, tonnes, moisture, quality, (value, p) =>
        {
            var truth = value.Value + moved[p] + (spread(value.Spread, p) * draws.Normal());
            return (truth, truth + shared[p][period] + (own[p] * draws.Normal()));
        });

        FutureLot Lot(int k, int period, double tonnes, double moisture, SeasonQuality quality, Func<SeasonValue, int, (double True, double Believed)> values)
        {
            var (truth, belief) = (new double[frame.Properties.Count], new double[frame.Properties.Count]);
            for (var p = 0; p < truth.Length; p++)
            {
                if (!quality.TryGet(frame.Properties[p], out var value))
                {
                    (truth[p], belief[p]) = (double.NaN, double.NaN);
                    continue;
                }

                var (is_, read) = values(value, p);
                (truth[p], belief[p]) = (Scaled(frame.Properties[p], is_, value), Scaled(frame.Properties[p], read, value));
            }

            return new FutureLot(k, period, tonnes, moisture, truth, belief);
        }
    }

    private static double Scaled(Property what, double value, SeasonValue of) =>
        SeasonScale.OnScale(what, SeasonScale.Falls(what) ? Math.Max(LeastFallingNumber, value) : Math.Max(0, value), of.Basis);

    private static SeasonQuality Over(SeasonQuality? own, SeasonQuality mean)
    {
        if (own is null)
        {
            return mean;
        }

        var values = new Dictionary<Property, SeasonValue>(mean.Values);
        foreach (var (what, value) in own.Values)
        {
            values[what] = value;
        }

        return new SeasonQuality(values);
    }
}
