namespace Evengrist.Tracing.Structure;

/// <summary>The flour bin that finished lots leave through: what stays behind mixes with the next lot.</summary>
internal sealed class FlourVessel(StructureSpec spec)
{
    // What is below a part in a thousand million million of a lot is nothing that could be found or counted.
    private const double Nothing = 1e-15;
    private Dictionary<int, double> shares = [];
    private int sinceClean;

    public double Kilograms { get; private set; }

    public double SetAside { get; private set; }

    public int CleanOuts { get; private set; }

    public List<double> Lots { get; } = [];

    public List<(int Truck, int Lot)> Links { get; } = [];

    /// <summary>A lot of wheat is milled into it, mixed with what stayed behind, and leaves as a finished lot.</summary>
    public void Take(Dictionary<int, double> wheat)
    {
        var fresh = spec.LotKilograms * spec.Yield;
        if (spec.CleanEveryLots > 0 && sinceClean == spec.CleanEveryLots)
        {
            SetAside += Kilograms;
            (Kilograms, shares, sinceClean) = (0, [], 0);
            CleanOuts++;
        }

        var flush = Kilograms > 0 ? spec.FlushKilograms : 0;
        var old = Kilograms * (Kilograms > 0 ? Heel.LeftAfter(flush / Kilograms) : 0);
        SetAside += flush;
        var content = Kilograms + fresh - flush;
        var mixed = wheat.ToDictionary(p => p.Key, p => p.Value / spec.LotKilograms * (content - old) / content);
        foreach (var (truck, share) in shares)
        {
            mixed[truck] = mixed.GetValueOrDefault(truck) + share * old / content;
        }

        foreach (var (truck, share) in mixed)
        {
            if (share > Math.Max(spec.ThresholdShare, Nothing))
            {
                Links.Add((truck, Lots.Count));
            }
        }

        Lots.Add(content - spec.HeelKilograms);
        shares = mixed.Where(p => p.Value > Nothing).ToDictionary();
        Kilograms = spec.HeelKilograms;
        sinceClean++;
    }
}
