namespace Evengrist.Milling.Solving;

/// <summary>Room for the stock of one mill: made once, used again without a new allocation.</summary>
internal sealed class MillState
{
    internal MillState(int passages, int outlets, int width)
    {
        (In, Out, Leaves) = (new double[passages * width], new double[outlets * width], new double[outlets * width]);
        (Broken, Load) = (new double[passages * width], new double[passages]);
        (Torn, Stock, Picked) = (new double[outlets * width], new double[width], new double[width]);
    }

    /// <summary>Dry matter that enters each passage, t/h, by part and size.</summary>
    internal double[] In { get; }

    /// <summary>Dry matter of each outlet, t/h, by part and size.</summary>
    internal double[] Out { get; }

    /// <summary>By outlet: share of what reaches it that leaves there.</summary>
    internal double[] Leaves { get; }

    /// <summary>By passage: share that the rolls break in each of their steps.</summary>
    internal double[] Broken { get; }

    /// <summary>Dry matter that enters each passage, t/h.</summary>
    internal double[] Load { get; }

    internal double[] Torn { get; }

    internal double[] Stock { get; }

    internal double[] Picked { get; }

    /// <summary>Forgets all stock.</summary>
    internal void Clear()
    {
        Array.Clear(In);
        Array.Clear(Out);
        Array.Clear(Load);
    }
}
