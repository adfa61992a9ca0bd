using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Mix;

/// <summary>What a search came to.</summary>
/// <param name="Exit">Why it stopped.</param>
/// <param name="Shares">A share for each bin; empty without an answer.</param>
/// <param name="Cost">Cost of a tonne; not a number without an answer.</param>
/// <param name="Gap">Share by which the answer may cost more than the best.</param>
internal sealed record Found(ExitReason Exit, double[] Shares, double Cost, double Gap)
{
    public bool IsThere => Shares.Length > 0;

    public static Found None(ExitReason exit) => new(exit, [], double.NaN, double.PositiveInfinity);
}
