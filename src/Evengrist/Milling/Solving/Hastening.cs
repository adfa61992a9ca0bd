namespace Evengrist.Milling.Solving;

/// <summary>When a fixed point that is approached step by step may be run ahead of, and how far: by the dominant eigenvalue [the method of Orbach and Crowe, from memory].</summary>
/// <remarks>Where what a step moves has become a steady share λ of what the one before moved, all further steps together would move λ/(1 − λ) of the last one.</remarks>
internal struct Hastening
{
    private double before = double.NaN;
    private double ratio = double.NaN;

    public Hastening()
    {
    }

    /// <summary>How many times its own way the last step is to be carried on; 0 where it is not yet steady.</summary>
    /// <param name="moved">What the step moved, 0 or more.</param>
    public double Beyond(double moved)
    {
        var now = moved / before;
        var steady = now is > 0.05 and < 0.9999 && Math.Abs(now - ratio) < 0.1 * (1 - now);
        (before, ratio) = steady ? (double.NaN, double.NaN) : (moved, now);
        return steady ? now / (1 - now) : 0;
    }
}
