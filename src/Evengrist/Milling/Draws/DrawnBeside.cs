using Evengrist.Milling.OnPaper;

namespace Evengrist.Milling.Draws;

/// <summary>A figure of mills drawn beside its first-order forecast.</summary>
/// <param name="Drawn">The figure of the draws.</param>
/// <param name="First">The first-order forecast of the same figure.</param>
/// <param name="Draws">How many mills were drawn.</param>
public sealed record DrawnBeside(DrawnFigure Drawn, Estimate First, int Draws)
{
    // What nobody would act on, in the figure's unit; a quarter of the ± that the mean may lie off; a fifth that the ± may be off [ours].
    private const double Nothing = 1e-4;
    private const double Mean = 0.25;
    private const double Spread = 0.2;

    // Standard errors that chance may make of a figure: so many figures stand beside one another that two would be passed by some.
    private const double Chance = 4;

    /// <summary>Whether both say something else, by more than chance and by so much that it matters: the mean more than a quarter of the standard uncertainty off, or the standard deviation more than a fifth. The mill bends within its ±, and the draws hold.</summary>
    public bool Differ
    {
        get
        {
            var larger = Math.Max(Drawn.StandardDeviation, First.Uncertainty);
            return Math.Abs(Drawn.Mean - First.Value) > Math.Max(Nothing, Math.Max(Mean, Chance / Math.Sqrt(Draws)) * larger)
                || Math.Abs(Drawn.StandardDeviation - First.Uncertainty) > Math.Max(Nothing, Math.Max(Spread, Chance / Math.Sqrt(2.0 * Draws)) * larger);
        }
    }
}
