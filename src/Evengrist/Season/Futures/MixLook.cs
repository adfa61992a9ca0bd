namespace Evengrist.Season.Futures;

/// <summary>What each wheat would give a flour next, as it is believed: the mean of what would be drawn, for lots that lie behind one another differ.</summary>
/// <remarks>Model: docs/model/season-promise.md.</remarks>
internal sealed class MixLook
{
    private readonly FutureFrame frame;
    private readonly int flour;
    private readonly FrameLimit[] limits;
    private readonly double[] drawn;
    private readonly double[] seen;

    public MixLook(FutureFrame frame, int flour)
    {
        (this.frame, this.flour, limits) = (frame, flour, frame.Limits[flour]);
        Believed = [.. frame.Wheats.Select(_ => new double[frame.Properties.Count])];
        (Moisture, drawn, seen) = (new double[frame.Wheats.Count], new double[frame.Wheats.Count], new double[frame.Properties.Count]);
    }

    public double[][] Believed { get; }

    public double[] Moisture { get; }

    /// <summary>Looks at what the plan would draw.</summary>
    public void Begin(MillState now)
    {
        for (var k = 0; k < drawn.Length; k++)
        {
            Moisture[k] = now.Piles[k].Peek(Math.Max(frame.Use[k][flour][now.Period], 1), Believed[k], now.Offer(k));
        }
    }

    /// <summary>Looks again at what a mix would draw.</summary>
    /// <returns>What the misses of that mix would cost, money, by what would really be drawn; and whether that differs from what it was made by.</returns>
    public (double Misses, bool Differs) Again(MillState now, IReadOnlyList<(int Wheat, int Tier, double Tonnes)> taken)
    {
        Array.Clear(drawn);
        foreach (var (k, _, tonnes) in taken)
        {
            drawn[k] += tonnes;
        }

        Span<double> thought = stackalloc double[limits.Length], found = stackalloc double[limits.Length], weights = stackalloc double[limits.Length], before = stackalloc double[limits.Length];
        for (var k = 0; k < drawn.Length; k++)
        {
            if (drawn[k] > 0)
            {
                Add(thought, before, k);
                Moisture[k] = now.Piles[k].Peek(drawn[k], seen, now.Offer(k));
                seen.CopyTo(Believed[k], 0);
                Add(found, weights, k);
            }
        }

        var (misses, differs) = (0.0, false);
        for (var i = 0; i < limits.Length; i++)
        {
            if (weights[i] > 0)
            {
                var aim = limits[i].Aim[now.Period];
                misses += Math.Max(0, ((aim * weights[i]) - found[i]) * (limits[i].IsFloor ? 1 : -1)) * limits[i].MissPrice;
                differs |= Math.Abs((found[i] / weights[i]) - (thought[i] / before[i])) > FutureRule.Near * Math.Max(1, Math.Abs(aim));
            }
        }

        return (misses, differs);
    }

    private void Add(Span<double> sums, Span<double> weights, int k)
    {
        for (var i = 0; i < limits.Length; i++)
        {
            var weight = drawn[k] * (limits[i].ByDry ? 1 - (Moisture[k] / 100) : 1);
            sums[i] += weight * Believed[k][limits[i].Property];
            weights[i] += weight;
        }
    }
}
