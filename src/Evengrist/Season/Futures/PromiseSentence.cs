using System.Globalization;
using Evengrist.Ledger;

namespace Evengrist.Season.Futures;

/// <summary>A promise in words, for a buyer.</summary>
public static class PromiseSentence
{
    /// <summary>One sentence of a flour.</summary>
    /// <param name="promise">The promise.</param>
    /// <param name="flour">The flour of it.</param>
    /// <param name="name">What people call the flour; null for its code.</param>
    public static string Of(SeasonPromise promise, FlourPromise flour, string? name = null)
    {
        ArgumentNullException.ThrowIfNull(promise);
        ArgumentNullException.ThrowIfNull(flour);
        var periods = promise.Spec.Plan.Spec.Periods;
        var (last, called) = (flour.Points[^1], name ?? flour.Flour);
        var limited = flour.Limiting is { } end ? $"; limited by {Words(end.What)} ({Share(end.Share)} of the futures in which it ends)" : "";
        if (flour.Through < 0)
        {
            return $"{called} cannot be promised with probability {Number(promise.Spec.Stated)} for any time: it is on target through {Through(periods[0])} with probability {Chance(flour.Points[0])}{limited}.";
        }

        var at = flour.Points[flour.Through];
        var span = flour.Through == periods.Count - 1 ? $"to the end of the plan, {Through(periods[^1])}," : $"through {Through(periods[flour.Through])}";
        var end_ = flour.Through == periods.Count - 1 ? "" : $"; to the end of the plan with probability {Chance(last)}";
        return $"{called} is on target {span} with probability {Chance(at)}{end_}{limited}.";
    }

    /// <summary>What all of it rests on.</summary>
    public static string Basis(SeasonPromise promise)
    {
        ArgumentNullException.ThrowIfNull(promise);
        var (spec, season) = (promise.Spec, promise.Spec.Plan.Spec);
        var tolerances = spec.Tolerances.Count == 0 ? "no tolerance beyond the limits of the wheat mix"
            : "limits of the wheat mix to a tolerance of " + string.Join(", ", spec.Tolerances.Select(t => FormattableString.Invariant($"{t.By:0.###} {Unit(t.What)} {t.What.Words()}").Trim()));
        return FormattableString.Invariant(
            $"Basis: {promise.Futures} futures of deliveries, quality, demand and instrument error (seed {spec.Seed}), milled after the plan that starts {season.Start:uuuu-MM-dd}; on target means made in full to {100 * (1 - spec.MadeTolerance):0.#} % and true quality within the {tolerances}. Reckoned, not seen; tried against simulated crop years of a demonstration only, not against this mill's own history, and no truer than the spreads given.");
    }

    private static string Through(SeasonPeriod period) => period.End.PlusDays(-1).ToString("uuuu-MM-dd", CultureInfo.InvariantCulture);

    private static string Unit(Property what) => what.Trait().Units.FirstOrDefault("") is var unit && unit == "%" ? "points of" : unit;

    private static string Words(Property? what) => what is { } property ? property.Words() : "wheat or hours: it is not made in full";

    private static string Share(double share) => FormattableString.Invariant($"{100 * share:0} %");

    private static string Chance(PromisePoint point) => FormattableString.Invariant($"{Number(point.Probability)} ± {2 * point.StandardError:0.00}");

    private static string Number(double p) => p.ToString(p is > 0.995 and < 1 ? "0.000" : "0.00", CultureInfo.InvariantCulture);
}
