namespace Evengrist.Season.Futures;

/// <summary>Sums over what went into a flour in a period.</summary>
internal sealed class MixSum(int properties)
{
    private readonly double[] truth = new double[properties];
    private readonly double[] belief = new double[properties];
    private double mass;
    private double dry;

    public double Tonnes => mass;

    public void Clear()
    {
        Array.Clear(truth);
        Array.Clear(belief);
        (mass, dry) = (0, 0);
    }

    public void Add(FutureLot lot, double tonnes, bool[] byDry)
    {
        var solids = tonnes * (1 - (lot.MoisturePercent / 100));
        for (var p = 0; p < truth.Length; p++)
        {
            var weight = byDry[p] ? solids : tonnes;
            truth[p] += weight * lot.True[p];
            belief[p] += weight * lot.Believed[p];
        }

        (mass, dry) = (mass + tonnes, dry + solids);
    }

    /// <summary>True mean on the scale.</summary>
    public double True(FrameLimit limit) => truth[limit.Property] / Weight(limit);

    /// <summary>Believed mean on the scale.</summary>
    public double Believed(FrameLimit limit) => belief[limit.Property] / Weight(limit);

    /// <summary>t of mix, or of its dry matter, by which a limit weighs.</summary>
    public double Weight(FrameLimit limit) => limit.ByDry ? dry : mass;
}
