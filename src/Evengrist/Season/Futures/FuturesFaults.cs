using Evengrist.Ledger;

namespace Evengrist.Season.Futures;

/// <summary>What is wrong with what was asked of a promise.</summary>
public static class FuturesFaults
{
    /// <summary>Most futures that are drawn at once [design].</summary>
    public const int MostFutures = 1_000_000;

    /// <summary>Every fault; none where the futures can be drawn. The plan itself is taken to have passed its own checks.</summary>
    public static IReadOnlyList<SeasonFault> Of(FuturesSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        SeasonFault[] worthless = spec.Plan.Duals is null ? [new("plan", "The plan says nothing of what wheat is worth, and futures swap wheat by it; give the duals of the linear plan.")] : [];
        return [.. Of(spec, spec.Plan.Spec, spec.Futures), .. worthless];
    }

    /// <summary>Every fault of spreads for a season; none where futures can be drawn once it is planned.</summary>
    /// <param name="spec">The spreads.</param>
    /// <param name="season">The season, sound by its own checks.</param>
    /// <param name="futures">How many futures are asked for.</param>
    public static IReadOnlyList<SeasonFault> Of(FutureSpreads spec, SeasonSpec season, int futures)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(season);
        var faults = new List<SeasonFault>();
        void Check(bool holds, string where, string what)
        {
            if (!holds)
            {
                faults.Add(new SeasonFault(where, what));
            }
        }

        static bool Spread(double value) => double.IsFinite(value) && value >= 0;
        Check(futures is >= 2 and <= MostFutures, "futures", $"{futures} futures; give 2 to {MostFutures}, and 1 000 or more for a promise.");
        Check(spec.Stated is > 0 and < 1, "stated", $"A promise cannot be stated at {spec.Stated}; give a probability between 0 and 1, 0.85 for example.");
        Check(spec.MadeTolerance is >= 0 and < 1, "made tolerance", $"{spec.MadeTolerance} is no share of demand; give one from 0 to 1.");
        var districts = season.Wheats.SelectMany(w => w.Deliveries).Select(d => d.District).ToHashSet(StringComparer.Ordinal);
        foreach (var district in spec.Districts)
        {
            var where = $"district {district.District}";
            Check(districts.Contains(district.District), where, "No delivery comes from it; name a district as the deliveries do.");
            Check(Spread(district.TonnesShare), where, $"The tonnes cannot have a spread of {district.TonnesShare}; give a share of 0 or more.");
            foreach (var quality in district.Quality)
            {
                Known(quality.What, where);
                Check(Spread(quality.Spread), $"{where}, {quality.What}", $"A spread of {quality.Spread} cannot be; give 0 or more.");
            }
        }

        foreach (var trucks in spec.Trucks)
        {
            var where = $"trucks of {trucks.Wheat}";
            Check(season.Wheats.Any(w => w.Code == trucks.Wheat && w.Deliveries.Count > 0), where, "No delivery of such a wheat is in the plan; name a wheat that is to come.");
            Check(trucks.TruckTonnes > 0 && double.IsFinite(trucks.TruckTonnes), where, $"A truck cannot carry {trucks.TruckTonnes} t; give t above 0.");
            foreach (var quality in trucks.Quality)
            {
                Known(quality.What, where);
                Check(Spread(quality.Spread), $"{where}, {quality.What}", $"A spread of {quality.Spread} cannot be; give 0 or more.");
            }
        }

        foreach (var demand in spec.Demands)
        {
            var where = $"demand of {demand.Flour}";
            Check(season.Flours.Any(f => f.Code == demand.Flour), where, "There is no such flour in the plan.");
            Check(Spread(demand.YearShare) && Spread(demand.PeriodShare), where, $"Spreads of {demand.YearShare} and {demand.PeriodShare} cannot be; give shares of 0 or more.");
            Check(demand.Hold is >= 0 and < 1, where, $"A hold of {demand.Hold} cannot be; give 0 up to below 1.");
        }

        foreach (var instrument in spec.Instruments)
        {
            Known(instrument.What, "instrument");
            Check(Spread(instrument.Shared) && Spread(instrument.Own) && Spread(instrument.Drift), $"instrument, {instrument.What}", $"Errors of {instrument.Shared} and {instrument.Own} cannot be; give standard deviations of 0 or more.");
        }

        foreach (var tolerance in spec.Tolerances)
        {
            Known(tolerance.What, "tolerance");
            Check(Spread(tolerance.By), $"tolerance, {tolerance.What}", $"A tolerance of {tolerance.By} cannot be; give 0 or more.");
        }

        Twice(spec.Districts.Select(d => d.District), "district");
        Twice(spec.Trucks.Select(t => t.Wheat), "trucks of");
        Twice(spec.Demands.Select(d => d.Flour), "demand of");
        Twice(spec.Instruments.Select(i => i.What.ToString()), "instrument,");
        Twice(spec.Tolerances.Select(i => i.What.ToString()), "tolerance,");
        return faults;

        void Known(Property what, string where) =>
            Check(season.Flours.Any(f => f.Limits.Any(l => l.What == what)), $"{where}, {what}", "No flour of the plan has a limit on this property; leave it out or add the limit.");

        void Twice(IEnumerable<string> names, string where)
        {
            foreach (var group in names.GroupBy(n => n, StringComparer.Ordinal).Where(g => g.Count() > 1))
            {
                faults.Add(new SeasonFault($"{where} {group.Key}", "It is given more than once; give it once."));
            }
        }
    }
}
