namespace Evengrist.Packing.Runs;

/// <summary>What came of putting runs in order.</summary>
public abstract record RunOrderOutcome;

/// <summary>A plan.</summary>
/// <param name="Plan">The plan; it passed the check.</param>
/// <param name="IsProven">Whether no plan costs less.</param>
/// <param name="Bound">What no plan can cost less than.</param>
/// <param name="Said">Why the solver stopped, in words.</param>
/// <param name="Took">How long it took.</param>
/// <param name="Choked">Bins that would overflow with all the mill makes, and when, in minutes from the start; empty where none would.</param>
public sealed record RunOrderSolved(RunPlan Plan, bool IsProven, double Bound, string Said, TimeSpan Took, IReadOnlyList<(string Bin, int Minute)> Choked) : RunOrderOutcome
{
    /// <summary>How far the plan may be above the best, as a share of its cost; 0 where it is proven.</summary>
    public double Gap => IsProven || Plan.Cost <= 0 ? 0 : Math.Max(0, (Plan.Cost - Bound) / Plan.Cost);
}

/// <summary>The runs cannot be read as a plan.</summary>
/// <param name="Faults">Each a sentence that says what to do.</param>
public sealed record RunOrderRefused(IReadOnlyList<string> Faults) : RunOrderOutcome;

/// <summary>No order keeps all that it must.</summary>
/// <param name="Clash">What clashes: without any one of these there is a plan. Empty where it was not found.</param>
public sealed record RunOrderClash(IReadOnlyList<string> Clash) : RunOrderOutcome;

/// <summary>No plan was found, and none is proven not to be.</summary>
/// <param name="Said">Why, and what to do.</param>
public sealed record RunOrderNotSolved(string Said) : RunOrderOutcome;
