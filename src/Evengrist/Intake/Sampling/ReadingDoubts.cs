using Evengrist.Quantities;

namespace Evengrist.Intake.Sampling;

/// <summary>One reading of a load set against the edges of a scale or of the house's bands.</summary>
/// <param name="Finding">The reading.</param>
/// <param name="Value">Its value in the unit and on the basis of the edges, not rounded.</param>
/// <param name="Unit">Unit of the edges.</param>
/// <param name="Basis">Basis of the edges.</param>
/// <param name="StandardDeviation">One standard deviation in that unit; null where it is not known, and then no doubt is told.</param>
/// <param name="How">Where the standard deviation comes from, in words.</param>
/// <param name="Against">What it is set against.</param>
/// <param name="Doubts">The doubt at each edge within reach, nearest first.</param>
public sealed record ReadingDoubts(
    Finding Finding, decimal Value, string Unit, Basis Basis, double? StandardDeviation, string How, string Against, IReadOnlyList<EdgeDoubt> Doubts)
{
    /// <summary>What to do; null where no chance can be told.</summary>
    public EdgeAdvice? Advice => StandardDeviation is null ? null : EdgeAdvice.Of(Doubts);
}
