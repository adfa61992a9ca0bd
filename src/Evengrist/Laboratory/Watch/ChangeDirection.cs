namespace Evengrist.Laboratory.Watch;

/// <summary>What a move does to a pair's readings.</summary>
/// <param name="Along">What a size of 1 does to reference, difference and wheat.</param>
/// <param name="Unit">The standard deviation in which its sizes are thought of beforehand.</param>
internal sealed record ChangeDirection(double[] Along, double Unit)
{
    /// <summary>What a size of 1 does to the difference, whose level is known.</summary>
    public double OnDifference => Along[1];
}
