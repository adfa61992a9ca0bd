namespace Evengrist.Planning.Season;

/// <summary>How far planning has come.</summary>
/// <param name="Doing">What is being done, in words.</param>
/// <param name="Cost">What the best plan so far costs; not a number without one.</param>
/// <param name="Bound">No plan can cost less; where wheats have layers, none that draws them alike.</param>
/// <param name="Took">Time so far.</param>
public sealed record SeasonProgress(string Doing, double Cost, double Bound, TimeSpan Took)
{
    /// <summary>(cost − bound)/|cost|; +∞ without a plan.</summary>
    public double Gap => double.IsNaN(Cost) ? double.PositiveInfinity : Math.Max(0, (Cost - Bound) / Math.Max(1e-12, Math.Abs(Cost)));
}
