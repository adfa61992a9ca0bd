namespace Evengrist.Season.Futures;

/// <summary>Counts futures into a promise.</summary>
/// <remarks>Model: docs/model/season-promise.md.</remarks>
public static class PromiseModel
{
    /// <summary>Counts.</summary>
    /// <param name="spec">What the futures were drawn from.</param>
    /// <param name="years">What came of them, in any order; 2 or more.</param>
    /// <exception cref="ArgumentException">There are fewer than 2.</exception>
    public static SeasonPromise Of(FuturesSpec spec, IReadOnlyList<FutureYear> years)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(years);
        if (years.Count < 2)
        {
            throw new ArgumentException($"{years.Count} futures are no ground for a promise.", nameof(years));
        }

        var season = spec.Plan.Spec;
        var flours = season.Flours.Select((f, i) => Flour(f.Code, [.. years.Select(y => y.Flours[i])], season.Periods.Count, spec.Stated));
        double[] costs = [.. years.Select(y => y.Costs.Total).Order()];
        var mean = costs.Average();
        var spread = Math.Sqrt(costs.Sum(c => (c - mean) * (c - mean)) / (costs.Length - 1));
        return new SeasonPromise(spec, years.Count, [.. flours.OrderBy(f => f.Through).ThenBy(f => f.Points[^1].Probability).ThenBy(f => f.Flour, StringComparer.Ordinal)], mean, spread);
    }

    private static FlourPromise Flour(string code, FlourFate[] fates, int periods, double stated)
    {
        int[] off = [.. fates.Select(f => f.Off).Order()];
        var points = new PromisePoint[periods];
        var through = -1;
        for (var (t, ended) = (0, 0); t < periods; t++)
        {
            while (ended < off.Length && off[ended] <= t)
            {
                ended++;
            }

            var p = 1 - ((double)ended / off.Length);
            points[t] = new PromisePoint(t, p, Math.Sqrt(p * (1 - p) / off.Length));
            through = p >= stated ? t : through;
        }

        int? Quantile(double share) => off[Math.Max(0, (int)Math.Ceiling(share * off.Length) - 1)] is var t && t < periods ? t : null;
        var endings = fates.Where(f => f.Off < periods).ToList();
        var ends = endings.GroupBy(f => f.Limiting).Select(g => new PromiseEnd(g.Key, (double)g.Count() / endings.Count)).OrderByDescending(e => e.Share).ThenBy(e => e.What);
        return new FlourPromise(code, points, Quantile(0.05), Quantile(0.5), Quantile(0.95), [.. ends], through);
    }
}
