using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Mix;

/// <summary>A part of all mixes: bounds of each bin, in steps or shares, and which gates are taken to be open.</summary>
/// <param name="Least">Least of each bin.</param>
/// <param name="Most">Most of each bin.</param>
/// <param name="Open">Gates taken to be open.</param>
internal sealed record GateNode(double[] Least, double[] Most, bool[] Open)
{
    /// <summary>The solved tableau of the part that this one is a part of; null where it is solved from the root's.</summary>
    public DenseSimplex? From { get; init; }

    /// <summary>How many parts lie between this one and one solved from the root's tableau: what numbers lose adds up.</summary>
    public int Depth { get; init; }

    /// <summary>The same with a gate shut.</summary>
    public GateNode Shut(int bin) => With(bin, 0, 0, false);

    /// <summary>The same with a gate open by at least so much.</summary>
    public GateNode Opened(int bin, double least) => With(bin, Math.Max(Least[bin], least), Most[bin], true);

    /// <summary>The same with other bounds of a bin.</summary>
    public GateNode Between(int bin, double least, double most) => With(bin, least, most, Open[bin] || least > 0);

    private GateNode With(int bin, double least, double most, bool open)
    {
        var node = new GateNode((double[])Least.Clone(), (double[])Most.Clone(), (bool[])Open.Clone());
        (node.Least[bin], node.Most[bin], node.Open[bin]) = (least, most, open);
        return node;
    }
}
