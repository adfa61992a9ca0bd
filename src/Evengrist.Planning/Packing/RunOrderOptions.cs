namespace Evengrist.Planning.Packing;

/// <summary>How runs are to be put in order.</summary>
public sealed record RunOrderOptions
{
    /// <summary>Longest time [ours: a rush order is planned anew while the customer is on the telephone].</summary>
    public TimeSpan Longest { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>A plan to begin from, such as the one in force; null for none.</summary>
    public Evengrist.Packing.Runs.RunPlan? From { get; init; }
}
