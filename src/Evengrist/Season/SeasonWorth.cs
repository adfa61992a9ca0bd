using Evengrist.Ledger;

namespace Evengrist.Season;

/// <summary>What wheat is worth to the rest of the year, from the duals of a linear plan: exact for a small amount.</summary>
/// <remarks>
/// A t that is kept apart is worth the most that any flour in any period would save by it: y·π + by-product·(1 − y) − hours·μ + Σ limits λ·w·(v − edge), less storage
/// until then, or its end value with what carry-out is short of. A truck laid into a bin is worth its tonnes at the bin's own worth, and what it changes of the bin's quality at the worth of
/// that in every planned use of the bin. Shares that people have fixed are not in it. Model: docs/model/season.md.
/// </remarks>
public sealed class SeasonWorth
{
    private readonly SeasonPlan plan;
    private readonly LimitSide[][] sides;
    private readonly Dictionary<(string, int), double> wheats;
    private readonly Dictionary<(string, int), double> flours;
    private readonly Dictionary<(string, int), double> hours;
    private readonly Dictionary<(string, int, Property, bool), double> limits;
    private readonly Dictionary<(string, int, Property, bool, int), double> reliefs;
    private readonly IReadOnlyList<CarryOutWorth> carryOut;
    private readonly ILookup<string, PlannedUse> uses;
    private readonly double[] keeping;

    /// <summary>Makes ready for any number of questions.</summary>
    /// <exception cref="ArgumentException">The plan has no duals: ask for the linear plan.</exception>
    public SeasonWorth(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var duals = plan.Duals ?? throw new ArgumentException("This plan has no duals: worth is reckoned from a linear plan.", nameof(plan));
        this.plan = plan;
        sides = [.. plan.Spec.Flours.Select(f => LimitSide.Of(f).ToArray())];
        wheats = duals.Wheats.ToDictionary(w => (w.Wheat, w.Period), w => w.PerTonne);
        flours = duals.Flours.ToDictionary(f => (f.Flour, f.Period), f => f.PerTonne);
        hours = plan.Spec.Units.SelectMany(u => duals.Units.Where(d => d.Unit == u.Code).Select(d => (u, d))).ToDictionary(x => (x.u.Code, x.d.Period), x => x.d.PerHour / x.u.TonnesPerHour);
        limits = duals.Limits.ToDictionary(l => (l.Flour, l.Period, l.What, l.IsLeast), l => l.PerTonneUnit);
        reliefs = duals.Reliefs.ToDictionary(l => (l.Flour, l.Period, l.What, l.IsLeast, l.Step), l => l.PerTonneUnit);
        carryOut = duals.CarryOut;
        uses = plan.Uses.ToLookup(u => u.Wheat);
        keeping = new double[plan.Spec.Periods.Count + 1];
        for (var t = 0; t < plan.Spec.Periods.Count; t++)
        {
            keeping[t + 1] = keeping[t] + (plan.Spec.StoragePerTonneWeek * plan.Spec.Periods[t].Weeks);
        }
    }

    /// <summary>What one more t of a wheat of the plan is worth, were it there in a period, money per t.</summary>
    /// <exception cref="ArgumentException">No such wheat or period.</exception>
    public double Of(string wheat, int period = 0) => wheats.TryGetValue((wheat, period), out var worth) ? worth : throw new ArgumentException($"The plan has no wheat {wheat} in period {period}.", nameof(wheat));

    /// <summary>What a t of a wheat kept apart is worth, from a period on: the best flour and period for it.</summary>
    /// <exception cref="ArgumentException">A property that a flour it may go into limits is not known of it.</exception>
    public TonneWorth OfTonne(SeasonWheat wheat, int period = 0)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        var best = new TonneWorth(wheat.EndValuePerTonne + carryOut.Where(c => c.WheatClass.Length == 0 || c.WheatClass == wheat.WheatClass).Sum(c => c.PerTonne) - (keeping[^1] - keeping[period]), null, plan.Spec.Periods.Count - 1);
        for (var f = 0; f < sides.Length; f++)
        {
            var flour = plan.Spec.Flours[f];
            if (!SeasonYield.Allows(flour, wheat))
            {
                continue;
            }

            if (sides[f].FirstOrDefault(s => !wheat.Quality.TryGet(s.Limit.What, out _)) is { } unknown)
            {
                throw new ArgumentException($"The {unknown.Limit.What.Words()} of {wheat.Code} is not known, and {flour.Code} limits it.", nameof(wheat));
            }

            for (var t = period; t < plan.Spec.Periods.Count; t++)
            {
                var worth = Into(f, t, wheat) - (keeping[t] - keeping[period]);
                if (worth > best.PerTonne)
                {
                    best = new TonneWorth(worth, flour.Code, t);
                }
            }
        }

        return best;
    }

    /// <summary>The worth of a t as one property of it changes, on the basis of its own value.</summary>
    /// <param name="wheat">The wheat; the property is known of it.</param>
    /// <param name="what">The property that changes.</param>
    /// <param name="values">The values asked for.</param>
    /// <param name="period">From which period on.</param>
    public IReadOnlyList<WorthPoint> Curve(SeasonWheat wheat, Property what, IReadOnlyList<double> values, int period = 0)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        ArgumentNullException.ThrowIfNull(values);
        return [.. values.Select(v => new WorthPoint(v, OfTonne(wheat with { Quality = wheat.Quality.With(what, wheat.Quality.Values[what] with { Value = v }) }, period)))];
    }

    /// <summary>What a truck is worth in each wheat of the plan that lies in a bin, best first, now: without solving anew.</summary>
    /// <param name="truck">The truck as a wheat: its tonnes are the opening.</param>
    public IReadOnlyList<TruckWorth> OfTruck(SeasonWheat truck)
    {
        ArgumentNullException.ThrowIfNull(truck);
        var apart = OfTonne(truck).PerTonne * truck.OpeningTonnes;
        return [.. plan.Spec.Wheats.Where(w => w.Home.Length > 0).Select(w => InBin(w, truck, apart)).OrderBy(w => w.WhyNot.Length > 0).ThenByDescending(w => w.Money).ThenBy(w => w.Wheat, StringComparer.Ordinal)];
    }

    private double Into(int f, int t, SeasonWheat wheat)
    {
        var flour = plan.Spec.Flours[f];
        if (plan.Spec.Units.First(u => u.Code == flour.Unit).Hours[t] <= 0)
        {
            return double.NegativeInfinity;
        }

        var yield = SeasonYield.Of(wheat, flour);
        return (yield * flours[(flour.Code, t)]) + (flour.ByProductPerTonne * (1 - yield)) - hours[(flour.Unit, t)] + LimitsOf(f, t, wheat.MoisturePercent, wheat.Quality);
    }

    private double LimitsOf(int f, int t, double moisture, SeasonQuality quality)
    {
        var (sum, code) = (0.0, plan.Spec.Flours[f].Code);
        foreach (var side in sides[f])
        {
            var what = side.Limit.What;
            if (limits.TryGetValue((code, t, what, side.IsLeast), out var worth))
            {
                sum += worth * side.Off(moisture, quality);
            }

            var step = 0;
            foreach (var (by, _) in side.Relief)
            {
                sum += reliefs.GetValueOrDefault((code, t, what, side.IsLeast, step++)) * by * SeasonScale.Weight(what, moisture);
            }
        }

        return sum;
    }

    private TruckWorth InBin(SeasonWheat bin, SeasonWheat truck, double apart)
    {
        var home = plan.Spec.Homes.First(h => h.Code == bin.Home);
        var lies = plan.Spec.Wheats.Where(w => w.Home == bin.Home).Sum(w => w.OpeningTonnes);
        var why = bin.WheatClass != truck.WheatClass ? $"it holds {bin.WheatClass}, the truck is {truck.WheatClass}"
            : lies + truck.OpeningTonnes > home.CapacityTonnes ? FormattableString.Invariant($"room for {Math.Max(0, home.CapacityTonnes - lies):0.#} t")
            : bin.Quality.Values.Keys.FirstOrDefault(p => !truck.Quality.TryGet(p, out _)) is var unknown and not Property.None ? $"the truck's {unknown.Words()} is not known" : "";
        if (why.Length > 0)
        {
            return new TruckWorth(bin.Code, bin.Home, double.NaN, double.NaN, double.NaN, apart, why);
        }

        if (TruckMix.Lies(bin) <= 0)
        {
            return new TruckWorth(bin.Code, bin.Home, apart, apart, 0, apart, "");
        }

        var mixed = TruckMix.Of(bin, truck);
        var (itself, change) = (truck.OpeningTonnes * Of(bin.Code), 0.0);
        foreach (var use in uses[bin.Code])
        {
            var f = plan.Spec.Flours.TakeWhile(x => x.Code != use.Flour).Count();
            change += use.Tonnes * (LimitsOf(f, use.Period, mixed.MoisturePercent, mixed.Quality) - LimitsOf(f, use.Period, bin.MoisturePercent, bin.Quality));
            var flour = plan.Spec.Flours[f];
            change += use.Tonnes * (SeasonYield.Of(mixed, flour) - SeasonYield.Of(bin, flour)) * (flours[(flour.Code, use.Period)] - flour.ByProductPerTonne);
        }

        return new TruckWorth(bin.Code, bin.Home, itself + change, itself, change, apart, "");
    }
}
