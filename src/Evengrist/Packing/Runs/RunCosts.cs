namespace Evengrist.Packing.Runs;

/// <summary>What an order of runs is judged by, in money of the mill's choice [defaults ours].</summary>
/// <param name="LatePerHour">A run an hour late, times its weight.</param>
/// <param name="ChangePerHour">A line changing over for an hour.</param>
/// <param name="FlushPerTonne">A tonne of flour run through: what it loses in value.</param>
public sealed record RunCosts(double LatePerHour = 1000, double ChangePerHour = 120, double FlushPerTonne = 150)
{
    /// <summary>What is wrong, in a sentence; null where nothing is.</summary>
    public string? Fault => new[] { LatePerHour, ChangePerHour, FlushPerTonne }.All(c => c is >= 0 and <= 1e6) ? null : "Costs lie from 0 to 1,000,000.";
}
