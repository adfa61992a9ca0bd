namespace Evengrist.Laboratory.Watch;

/// <summary>The same flour read twice at one moment: by a reference method and by the instrument that is watched; both in one unit, on one basis.</summary>
/// <param name="Reference">What the reference method read.</param>
/// <param name="Instrument">What the instrument read.</param>
/// <param name="Wheat">What was read of the wheat that this flour was milled from, before the mill; null where nobody did. With it, wheat and mill are told apart.</param>
public sealed record WatchdogPair(double Reference, double Instrument, double? Wheat = null)
{
    /// <summary>Instrument less reference: above 0, the instrument reads high.</summary>
    public double Difference => Instrument - Reference;
}
