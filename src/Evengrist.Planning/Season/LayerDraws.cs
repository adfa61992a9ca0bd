using Evengrist.Ledger;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>Moisture and quality of every wheat in every period, where layers leave in their order.</summary>
internal sealed class LayerDraws
{
    private readonly SeasonSpec spec;
    private readonly SeasonWheat[] wheats;
    private readonly (double Moisture, SeasonQuality Quality)[]?[] layered;

    private LayerDraws(SeasonSpec spec, (double, SeasonQuality)[]?[] layered)
    {
        this.spec = spec;
        this.layered = layered;
        wheats = [.. spec.AllWheats];
    }

    /// <summary>Whether any wheat changes with time.</summary>
    public bool AnyLayers => Array.Exists(layered, l => l is not null);

    /// <summary>A first guess: everything that will have come by a period, mixed.</summary>
    public static LayerDraws First(SeasonSpec spec) => new(spec, [.. spec.AllWheats.Select(w => HasLayers(w) ? Mixed(spec, w) : null)]);

    /// <summary>What a plan draws, layer by layer.</summary>
    /// <param name="drawn">t drawn, by wheat and period.</param>
    public LayerDraws Of(double[,] drawn) => new(spec, [.. wheats.Select((w, k) => HasLayers(w) ? Drawn(w, k, drawn) : null)]);

    public (double Moisture, SeasonQuality Quality) At(int wheat, int period) => layered[wheat] is { } own ? own[period] : (wheats[wheat].MoisturePercent, wheats[wheat].Quality);

    /// <summary>Half of this and half of another: steadies a guess that swings.</summary>
    public LayerDraws Halfway(LayerDraws other) => new(spec, [.. layered.Select((own, k) => own is null ? null
        : own.Zip(other.layered[k]!, (a, b) => Mean([(1, a.Moisture, a.Quality), (1, b.Moisture, b.Quality)])).ToArray())]);

    /// <summary>The largest difference of a value that any limit looks at, in units of the property.</summary>
    public double DifferenceTo(LayerDraws other, double[,] drawn)
    {
        var most = 0.0;
        var limited = spec.Flours.SelectMany(f => f.Limits).Select(l => l.What).Distinct().ToArray();
        for (var k = 0; k < wheats.Length; k++)
        {
            for (var t = 0; layered[k] is { } own && t < own.Length; t++)
            {
                foreach (var what in limited.Where(_ => drawn[k, t] > 1e-6))
                {
                    if (own[t].Quality.TryGet(what, out var mine) && other.layered[k]![t].Quality.TryGet(what, out var others))
                    {
                        most = Math.Max(most, Math.Abs(mine.Value - others.Value));
                    }
                }
            }
        }

        return most;
    }

    public IReadOnlyList<PlannedQuality> Rows() => [.. layered.SelectMany((own, k) => own is null ? [] : own.Select((q, t) => new PlannedQuality(wheats[k].Code, t, q.Moisture, q.Quality)))];

    private static bool HasLayers(SeasonWheat wheat) => wheat.Layers.Count > 0 || wheat.Deliveries.Any(d => d.Quality is not null || d.MoisturePercent is not null);

    private static List<(int Period, double Tonnes, double Moisture, SeasonQuality Quality)> Lots(SeasonWheat wheat)
    {
        var lots = new List<(int, double, double, SeasonQuality)>();
        lots.AddRange(wheat.Layers.Count > 0
            ? wheat.Layers.Select(l => (-1, l.Tonnes, l.MoisturePercent, Over(l.Quality, wheat.Quality)))
            : [(-1, wheat.OpeningTonnes, wheat.MoisturePercent, wheat.Quality)]);
        lots.AddRange(wheat.Deliveries.OrderBy(d => d.Period)
            .Select(d => (d.Period, d.Tonnes, d.MoisturePercent ?? wheat.MoisturePercent, d.Quality is { } q ? Over(q, wheat.Quality) : wheat.Quality)));
        return lots;
    }

    private static SeasonQuality Over(SeasonQuality own, SeasonQuality mean)
    {
        var values = new Dictionary<Property, SeasonValue>(mean.Values);
        foreach (var (what, value) in own.Values)
        {
            values[what] = value;
        }

        return new SeasonQuality(values);
    }

    private static (double, SeasonQuality)[] Mixed(SeasonSpec spec, SeasonWheat wheat) =>
        [.. spec.Periods.Select((_, t) => Mean([.. Lots(wheat).Where(l => l.Period <= t).Select(l => (l.Tonnes, l.Moisture, l.Quality))], wheat))];

    private (double, SeasonQuality)[] Drawn(SeasonWheat wheat, int k, double[,] drawn)
    {
        var (lots, at, left) = (Lots(wheat), 0, 0.0);
        left = lots[0].Tonnes;
        var result = new (double, SeasonQuality)[spec.Periods.Count];
        for (var t = 0; t < result.Length; t++)
        {
            var (parts, wanted) = (new List<(double, double, SeasonQuality)>(), drawn[k, t]);
            while (true)
            {
                while (left <= 1e-9 && at + 1 < lots.Count)
                {
                    left = lots[++at].Tonnes;
                }

                var take = Math.Min(wanted, left);
                if (take <= 1e-9)
                {
                    break;
                }

                parts.Add((take, lots[at].Moisture, lots[at].Quality));
                (wanted, left) = (wanted - take, left - take);
            }

            result[t] = parts.Count > 0 ? Mean(parts, wheat) : (lots[at].Moisture, lots[at].Quality);
        }

        return result;
    }

    private static (double Moisture, SeasonQuality Quality) Mean(List<(double Tonnes, double Moisture, SeasonQuality Quality)> parts, SeasonWheat wheat) =>
        parts.Sum(p => p.Tonnes) > 0 ? Mean(parts) : (wheat.MoisturePercent, wheat.Quality);

    private static (double Moisture, SeasonQuality Quality) Mean(List<(double Tonnes, double Moisture, SeasonQuality Quality)> parts)
    {
        var tonnes = parts.Sum(p => p.Tonnes);
        var values = new Dictionary<Property, SeasonValue>();
        foreach (var (what, first) in parts[0].Quality.Values.Where(v => SeasonScale.Averages(v.Key) && parts.TrueForAll(p => p.Quality.TryGet(v.Key, out _))))
        {
            var (sum, weight) = (0.0, 0.0);
            foreach (var part in parts)
            {
                var w = part.Tonnes * SeasonScale.Weight(what, part.Moisture);
                (sum, weight) = (sum + (w * SeasonScale.OnScale(what, part.Quality.Values[what])), weight + w);
            }

            values[what] = first with { Value = SeasonScale.FromScale(what, sum / weight, first.Basis) };
        }

        return (parts.Sum(p => p.Tonnes * p.Moisture) / tonnes, new SeasonQuality(values));
    }
}
