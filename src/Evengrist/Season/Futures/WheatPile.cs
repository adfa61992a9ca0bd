namespace Evengrist.Season.Futures;

/// <summary>What lies of a wheat in a future: its lots, first in first out.</summary>
internal sealed class WheatPile(FutureFrame frame)
{
    private readonly List<(FutureLot Lot, double Left)> lots = [];
    private readonly bool[] byDry = frame.ByDry;
    private int at;

    public double Tonnes { get; private set; }

    public void Add(FutureLot lot, double tonnes)
    {
        if (tonnes > 0)
        {
            lots.Add((lot, tonnes));
            Tonnes += tonnes;
        }
    }

    /// <summary>Believed mean of the next tonnes, on the scale, and their mean moisture; not a number where there are none.</summary>
    /// <param name="tonnes">How many.</param>
    /// <param name="believed">Where the means go.</param>
    /// <param name="then">What would come behind what lies there; null for nothing.</param>
    public double Peek(double tonnes, double[] believed, FutureLot? then = null)
    {
        Array.Clear(believed);
        var (mass, dry, left, moisture) = (0.0, 0.0, tonnes, 0.0);
        for (var i = at; i <= lots.Count && left > 1e-9; i++)
        {
            var (lot, have) = i < lots.Count ? lots[i] : (then, then is null ? 0 : left);
            if (lot is null)
            {
                break;
            }

            var take = Math.Min(left, have);
            var solids = take * (1 - (lot.MoisturePercent / 100));
            for (var p = 0; p < believed.Length; p++)
            {
                believed[p] += (byDry[p] ? solids : take) * lot.Believed[p];
            }

            (mass, dry, left, moisture) = (mass + take, dry + solids, left - take, moisture + (take * lot.MoisturePercent));
        }

        for (var p = 0; p < believed.Length && mass > 0; p++)
        {
            believed[p] /= byDry[p] ? dry : mass;
        }

        return mass > 0 ? moisture / mass : double.NaN;
    }

    /// <summary>Draws from the front.</summary>
    /// <param name="tonnes">At most what lies there.</param>
    /// <param name="into">Where the true and believed sums go.</param>
    public void Draw(double tonnes, MixSum into)
    {
        var left = Math.Min(tonnes, Tonnes);
        while (left > 1e-12 && at < lots.Count)
        {
            var (lot, have) = lots[at];
            var take = Math.Min(left, have);
            into.Add(lot, take, byDry);
            (left, Tonnes) = (left - take, Tonnes - take);
            lots[at] = (lot, have - take);
            if (have - take <= 1e-12)
            {
                at++;
            }
        }

        Tonnes = Math.Max(0, Tonnes);
    }
}
