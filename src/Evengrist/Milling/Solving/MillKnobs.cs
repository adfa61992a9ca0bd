namespace Evengrist.Milling.Solving;

/// <summary>What can be turned in a prepared mill without making it anew: settings and what tuning finds, each as a factor on what the flow sheet says.</summary>
internal sealed class MillKnobs
{
    public MillKnobs(int passages, int outlets, double[] shares)
        => (Nip, Bran, Air, Cut, Tear, Shares) = (Ones(passages), Ones(passages), Ones(passages), Ones(outlets), new double[outlets], shares);

    private MillKnobs(MillKnobs other)
    {
        (Nip, Bran, Air, Cut, Tear, Shares) = ([.. other.Nip], [.. other.Bran], [.. other.Air], [.. other.Cut], [.. other.Tear], [.. other.Shares]);
        (FirstBreak, Feed) = (other.FirstBreak, other.Feed);
    }

    /// <summary>By passage: how hard its rolls nip or its beaters strip; a gap half as wide is a factor of 2.</summary>
    public double[] Nip { get; }

    /// <summary>By passage: how readily bran breaks there.</summary>
    public double[] Bran { get; }

    /// <summary>By passage: speed of a purifier's air.</summary>
    public double[] Air { get; }

    /// <summary>By outlet: size that passes its cloth.</summary>
    public double[] Cut { get; }

    /// <summary>By outlet: share of what would stay over its cloth that falls through a tear or past the frame.</summary>
    public double[] Tear { get; }

    /// <summary>By way: share of its outlet.</summary>
    public double[] Shares { get; }

    /// <summary>Severity of first break on whole kernels.</summary>
    public double FirstBreak { get; set; } = 1;

    /// <summary>Flow of wheat, as a factor.</summary>
    public double Feed { get; set; } = 1;

    public MillKnobs Copy() => new(this);

    /// <summary>Turns all but the shares back to what the flow sheet says.</summary>
    public void Level()
    {
        foreach (var factors in (ReadOnlySpan<double[]>)[Nip, Bran, Air, Cut])
        {
            Array.Fill(factors, 1);
        }

        Array.Clear(Tear);
        (FirstBreak, Feed) = (1, 1);
    }

    private static double[] Ones(int count)
    {
        var ones = new double[count];
        Array.Fill(ones, 1);
        return ones;
    }
}
