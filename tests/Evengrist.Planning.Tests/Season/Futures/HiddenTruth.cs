using Evengrist.Ledger;
using Evengrist.Season;
using Evengrist.Season.Futures;
using Evengrist.Season.Terms;

namespace Evengrist.Planning.Tests.Season.Futures;

/// <summary>
/// A crop year as it really is. It is drawn truck by truck and week by week, its parameters are unknown to the promise, and its errors are not of the promise's shape:
/// districts come in short more than they come in long, trucks are skewed, the instrument drifts, demand holds on to its own past. What a mill would know of it is
/// a history of years past. It shares nothing with the futures but the types.
/// </summary>
internal sealed class HiddenTruth
{
    private const double TruckTonnes = 26, WeekTonnes = 0.15, FieldProtein = 0.096, TruckFn = 25;
    private readonly Random dice;
    private readonly Dictionary<string, District> districts;
    private readonly Dictionary<string, (double Year, double Week, double Hold)> demand;
    private readonly double biasSpread, biasWalk, fnBias, truckError;

    public HiddenTruth(int seed)
    {
        dice = new Random(seed);
        districts = new[] { "Northledge", "Scarrow Rim", "Lowmere", "Talvin Bank", "High Brack" }.ToDictionary(d => d, _ => new District(Between(.04, .14), Between(.08, .30), Between(6, 25), Between(.5, .9), Between(.05, .2)));
        demand = new[] { "HG", "WB", "AP", "PA", "WW" }.ToDictionary(f => f, _ => (Between(.01, .04), Between(.02, .06), Between(.2, .7)));
        (biasSpread, biasWalk, fnBias, truckError) = (Between(.03, .09), Between(0, .006), Between(2, 6), Between(.15, .25));
    }

    /// <summary>What a mill enters into its terms after so many years: forecasts against what came, trucks against their lots, paired checks of the instrument, orders against what was shipped.</summary>
    public SeasonTerms Told(SeasonTerms terms, int years = 15)
    {
        double Sd(Func<double> draw) => Math.Sqrt(Enumerable.Range(0, years).Select(_ => draw()).ToArray() is var x ? x.Sum(v => v * v) / years : 0);
        QualityTerms Of(QualityTerms q, District of) => q.What switch
        {
            Property.Protein => q with { Spread = Sd(() => Normal() * FieldProtein), TruckSpread = Sd(() => Skewed() * of.Truck), YearSpread = Sd(() => Normal() * of.Protein) },
            Property.FallingNumber => q with { Spread = 0, TruckSpread = Sd(() => Normal() * TruckFn), YearSpread = Sd(() => Normal() * of.Fn) },
            _ => q,
        };
        return terms with
        {
            Arrivals = [.. terms.Arrivals.Select(a => a with
            {
                TonnesSpread = a.Tonnes * Sd(() => Yield(districts[a.District]) - 1), WeekShare = Sd(() => Normal() * WeekTonnes), TruckTonnes = TruckTonnes, Quality = [.. a.Quality.Select(q => Of(q, districts[a.District]))],
            })],
            Flours = [.. terms.Flours.Select(f => f with { YearShare = Sd(() => Normal() * demand[f.Code].Year), WeekShare = Sd(() => Normal() * demand[f.Code].Week), Hold = Math.Clamp(demand[f.Code].Hold + (Normal() * 0.05), 0, 0.95) })],
            Instruments = [new(Property.Protein, Sd(() => Normal() * biasSpread), truckError / 4) { Drift = Sd(() => Normal() * biasWalk) }, new(Property.FallingNumber, Sd(() => Normal() * fnBias), 4)],
            Tolerances = [new(Property.Protein, 0.2), new(Property.FallingNumber, 15), new(Property.TestWeight, 0.4), new(Property.Don, 0.05)],
        };
    }

    /// <summary>What then comes.</summary>
    public FutureWorld Year(FutureFrame frame)
    {
        var season = frame.Season;
        var (bias, fnOff) = (Bias(season.Periods.Count), Normal() * fnBias);
        var year = districts.ToDictionary(d => d.Key, d => (Tonnes: Yield(d.Value), Protein: Normal() * d.Value.Protein, Fn: Normal() * d.Value.Fn, Of: d.Value));
        var lots = new List<FutureLot>();
        for (var k = 0; k < season.Wheats.Count; k++)
        {
            var wheat = season.Wheats[k];
            if (wheat.OpeningTonnes > 0)
            {
                var own = wheat.Quality.Values.ToDictionary(v => v.Key, v => Normal() * v.Value.Spread);
                lots.Add(Lot(frame, k, -1, wheat.OpeningTonnes, wheat, (p, v) => (v - own[p] - (p == Property.Protein ? bias[0] : p == Property.FallingNumber ? fnOff : 0), v)));
            }

            foreach (var delivery in wheat.Deliveries)
            {
                lots.Add(Delivered(frame, k, delivery, wheat, year[delivery.District], bias[delivery.Period], fnOff));
            }
        }

        FutureLot?[][] offered = [.. season.Offers.Select((o, i) => season.Periods.Select((_, t) => t < o.First || t > o.Last ? null
            : Lot(frame, season.Wheats.Count + i, t, 0, o.Wheat, (p, v) => Bought(p, v, o.Wheat.Quality.Values[p].Spread, bias[t], fnOff))).ToArray())];
        return new FutureWorld(lots, offered, [.. season.Flours.Select(f => Wanted(f))]);
    }

    private FutureLot Delivered(FutureFrame frame, int k, SeasonDelivery delivery, SeasonWheat wheat, (double Tonnes, double Protein, double Fn, District Of) year, double bias, double fnOff)
    {
        var trucks = Math.Max(1, (int)Math.Round(delivery.Tonnes * year.Tonnes * (1 + (Normal() * WeekTonnes)) / TruckTonnes));
        var (truth, read, fn) = (0.0, 0.0, 0.0);
        for (var i = 0; i < trucks; i++)
        {
            var own = Skewed() * year.Of.Truck;
            truth += own;
            read += own + bias + (Normal() * truckError);
            fn += Normal() * TruckFn;
        }

        var field = Normal() * FieldProtein;
        return Lot(frame, k, delivery.Period, trucks * TruckTonnes, wheat, (p, v) => p switch
        {
            Property.Protein => (v + year.Protein + field + (truth / trucks), v + year.Protein + field + (read / trucks)),
            Property.FallingNumber => (v + year.Fn + (fn / trucks), v + year.Fn + (fn / trucks) + fnOff),
            _ => Same(v + (Normal() * wheat.Quality.Values[p].Spread)),
        });
    }

    private (double, double) Bought(Property what, double value, double spread, double bias, double fnOff)
    {
        var truth = value + (Normal() * spread);
        return what switch
        {
            Property.Protein => (truth, truth + bias + (Normal() * truckError / 4)),
            Property.FallingNumber => (truth, truth + fnOff + (Normal() * 4)),
            _ => Same(truth),
        };
    }

    private double[] Wanted(SeasonFlour flour)
    {
        var of = demand[flour.Code];
        var (year, last) = (Normal() * of.Year, Normal() * of.Week);
        return [.. flour.Demand.Select(d => d * (1 + year + (last = (of.Hold * last) + (Math.Sqrt(1 - (of.Hold * of.Hold)) * of.Week * Normal()))))];
    }

    private static FutureLot Lot(FutureFrame frame, int k, int period, double tonnes, SeasonWheat wheat, Func<Property, double, (double True, double Read)> values)
    {
        var both = frame.Properties.Select(p => (p, wheat.Quality.Values[p].Basis, Of: values(p, wheat.Quality.Values[p].Value))).ToArray();
        double Scaled(Property p, double v, Evengrist.Quantities.Basis basis) => SeasonScale.OnScale(p, p == Property.FallingNumber ? Math.Max(62, v) : Math.Max(0, v), basis);
        return new FutureLot(k, period, tonnes, wheat.MoisturePercent, [.. both.Select(b => Scaled(b.p, b.Of.True, b.Basis))], [.. both.Select(b => Scaled(b.p, b.Of.Read, b.Basis))]);
    }

    // A district comes in short more often and further than long: two halves of different width about 1, mean nearly 1.
    private double Yield(District of)
    {
        var z = Normal();
        return 1 + (of.Tonnes * ((z < 0 ? 1.25 * z : 0.75 * z) + 0.2));
    }

    // Trucks are skewed: a shifted gamma of shape 4, mean 0 and spread 1.
    private double Skewed() => (-Math.Log(dice.NextDouble() * dice.NextDouble() * dice.NextDouble() * dice.NextDouble()) - 4) / 2;

    private double[] Bias(int periods)
    {
        var at = Normal() * biasSpread;
        return [.. Enumerable.Range(0, periods).Select(_ => at += Normal() * biasWalk)];
    }

    private static (double, double) Same(double value) => (value, value);

    private double Between(double least, double most) => least + ((most - least) * dice.NextDouble());

    private double Normal()
    {
        var sum = -6.0;
        for (var i = 0; i < 12; i++)
        {
            sum += dice.NextDouble();
        }

        return sum;
    }

    private sealed record District(double Tonnes, double Protein, double Fn, double Truck, double Own);
}
