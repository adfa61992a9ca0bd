namespace Evengrist.Planning.Solving;

/// <summary>What a solver answered.</summary>
/// <param name="Exit">Why it stopped.</param>
/// <param name="Cost">Σ cost·x of the answer; not a number without one.</param>
/// <param name="Bound">No answer can cost less than this; −∞ where nothing was proven.</param>
/// <param name="Values">Value of every column; empty without an answer.</param>
/// <param name="RowDuals">What one more unit of a row's binding side changes in cost; empty for problems with whole numbers and from engines that branch.</param>
/// <param name="ReducedCosts">What one more unit of a column at its bound changes in cost; empty for problems with whole numbers and from engines that branch.</param>
/// <param name="Took">Time in the solver.</param>
public sealed record LinearAnswer(
    ExitReason Exit, double Cost, double Bound, IReadOnlyList<double> Values, IReadOnlyList<double> RowDuals, IReadOnlyList<double> ReducedCosts, TimeSpan Took)
{
    /// <summary>Whether there is an answer that can be used.</summary>
    public bool HasValues => Values.Count > 0;

    /// <summary>(cost − bound)/|cost|; 0 where the answer is proven best, +∞ without a bound.</summary>
    public double Gap => !HasValues || double.IsInfinity(Bound) ? double.PositiveInfinity : Cost == Bound ? 0 : Math.Max(0, (Cost - Bound) / Math.Max(1e-12, Math.Abs(Cost)));
}
