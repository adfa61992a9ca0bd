namespace Evengrist.Season.Futures;

/// <summary>What wheat in store is worth to the plan, by class: to say in money how far a future runs ahead of the plan or behind it.</summary>
internal sealed class FrameValue
{
    public FrameValue(FutureFrame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        var (wheats, periods) = (frame.Wheats, frame.Periods);
        var classes = wheats.Select(w => w.WheatClass).Distinct().ToList();
        ClassOf = [.. wheats.Select(w => classes.IndexOf(w.WheatClass))];
        Slope = [.. wheats.Select(_ => new double[frame.Properties.Count])];
        Remaining = [.. classes.Select(_ => new double[periods])];
        Expected = [.. wheats.Select(_ => new double[periods])];
        Planned = [.. wheats.Select(w => frame.OnScale(w.Quality))];
        var limits = frame.Spec.Plan.Duals!.Limits.ToLookup(l => (frame.FlourIndex[l.Flour], l.Period));
        for (var k = 0; k < wheats.Count; k++)
        {
            var total = 0.0;
            for (var t = periods - 1; t >= 0; t--)
            {
                var used = 0.0;
                for (var f = 0; f < frame.Season.Flours.Count; f++)
                {
                    var tonnes = frame.Use[k][f][t];
                    used += tonnes;
                    foreach (var limit in tonnes > 0 ? limits[(f, t)] : [])
                    {
                        var p = frame.Properties.ToList().IndexOf(limit.What);
                        Slope[k][p] += tonnes * Math.Abs(limit.PerTonneUnit) * (limit.IsLeast != SeasonScale.Falls(limit.What) ? 1 : -1);
                    }
                }

                total += used;
                Remaining[ClassOf[k]][t] += used * frame.Worth[k][t];
                Expected[k][t] = (t > 0 ? frame.Stock[k][t - 1] : wheats[k].OpeningTonnes) + wheats[k].Deliveries.Where(d => d.Period == t).Sum(d => d.Tonnes);
            }

            for (var p = 0; p < Slope[k].Length; p++)
            {
                Slope[k][p] = total > 0 ? Slope[k][p] / total : 0;
            }
        }

        foreach (var remaining in Remaining)
        {
            for (var t = periods - 2; t >= 0; t--)
            {
                remaining[t] += remaining[t + 1];
            }
        }
    }

    /// <summary>Class of each wheat, by number.</summary>
    public int[] ClassOf { get; }

    /// <summary>Money for a t·unit of each property of each wheat, mean over its planned uses.</summary>
    public double[][] Slope { get; }

    /// <summary>Value of what is planned to be used of each class from a period on.</summary>
    public double[][] Remaining { get; }

    /// <summary>t of each wheat expected to lie there when a period's deliveries are in and nothing is bought or drawn yet.</summary>
    public double[][] Expected { get; }

    /// <summary>Quality the plan reckons with, on its scale.</summary>
    public double[][] Planned { get; }
}
