using System.Globalization;
using Evengrist.Ledger;

namespace Evengrist.Season;

/// <summary>Checks limits: the blended value of every mix, less what relief and misses state, keeps every limit; nothing is missed that is not named.</summary>
internal static class LimitCheck
{
    public static IEnumerable<string> Of(PlanTally tally)
    {
        var misses = tally.Plan.Misses.ToLookup(m => (m.Flour, m.Period, m.What, m.IsBelow));
        var reliefs = tally.Plan.Reliefs.ToLookup(r => (r.Flour, r.Period, r.What, r.IsBelow));
        foreach (var flour in tally.Spec.Flours)
        {
            for (var t = 0; t < tally.Periods; t++)
            {
                if (tally.UsesOf[(flour.Code, t)].Sum(u => u.Tonnes) < 1e-6)
                {
                    continue;
                }

                foreach (var limit in flour.Limits)
                {
                    var value = Blended(tally, flour.Code, t, limit);
                    foreach (var (at, below) in new[] { (limit.Least, true), (limit.Most, false) })
                    {
                        if (at is not { } edge)
                        {
                            continue;
                        }

                        var key = (flour.Code, t, limit.What, below);
                        if (reliefs[key].Any(r => r.Share > 1 + 1e-6 || r.Step >= limit.Relief.Count))
                        {
                            yield return $"{flour.Code}, period {t}, {limit.What.Words()}: more relief than there is.";
                            continue;
                        }

                        var short_ = below ? edge - value : value - edge;
                        var allowed = misses[key].Sum(m => m.Amount) + reliefs[key].Sum(r => r.Share * limit.Relief[r.Step].By);
                        // Relief of a falling number is a straight line on the scale of the blend, not of the seconds: it may give up to the whole of the steps it uses.
                        var most = (limit.What is Property.FallingNumber or Property.ThousandKernelWeight) && reliefs[key].Any() ? misses[key].Sum(m => m.Amount) + limit.Relief.Sum(r => r.By) : allowed;
                        if (short_ > most + (2e-6 * Math.Max(1, Math.Abs(edge))))
                        {
                            yield return string.Create(CultureInfo.InvariantCulture, $"{flour.Code}, period {t}: {limit.What.Words()} {value:0.######} against {(below ? "at least" : "at most")} {edge:0.######}; {allowed:0.######} is stated as missed or relieved.");
                        }
                    }
                }
            }
        }
    }

    // By dry matter for shares of solids; 50 + 6000/mean of 6000/(FN − 50) for falling number; by count for kernel weight; by mass for the rest.
    private static double Blended(PlanTally tally, string flour, int period, SeasonLimit limit)
    {
        var (sum, weight) = (0.0, 0.0);
        foreach (var use in tally.UsesOf[(flour, period)])
        {
            var (moisture, quality) = tally.Quality(use.Wheat, period);
            var value = quality.Values[limit.What];
            if (limit.What.NeedsBasis())
            {
                var dry = use.Tonnes * (100 - moisture) / 100;
                (sum, weight) = (sum + (dry * value.Value / (100 - (double)value.Basis.MoisturePercent)), weight + dry);
            }
            else
            {
                (sum, weight) = (sum + (use.Tonnes * (limit.What switch { Property.FallingNumber => 6000 / (value.Value - 50), Property.ThousandKernelWeight => 1 / value.Value, _ => value.Value })), weight + use.Tonnes);
            }
        }

        var mean = sum / weight;
        return limit.What.NeedsBasis() ? mean * (100 - (double)limit.Basis.MoisturePercent)
            : limit.What switch { Property.FallingNumber => 50 + (6000 / mean), Property.ThousandKernelWeight => 1 / mean, _ => mean };
    }
}
