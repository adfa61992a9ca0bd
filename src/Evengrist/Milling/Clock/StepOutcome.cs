namespace Evengrist.Milling.Clock;

/// <summary>What comes of laying a step through readings.</summary>
public abstract record StepOutcome
{
    private protected StepOutcome()
    {
    }
}

/// <summary>A dead time and a stirred time found from readings.</summary>
/// <param name="Stage">The way from the change to the readings as one stage, with one standard uncertainty of each.</param>
/// <param name="Before">Value before.</param>
/// <param name="After">Value after.</param>
/// <param name="StepUncertainty">One standard uncertainty of their difference.</param>
/// <param name="Covariance">Of dead time and stirred time, h².</param>
/// <param name="Scatter">How much wider the readings scatter about the step than their uncertainties say; the uncertainties here are widened by it where it is above 1.</param>
/// <param name="Count">Readings.</param>
/// <param name="IsSharp">Whether what is stirred is too little to be told from nothing: a reading follows the other too far off.</param>
public sealed record StepFitted(ClockStage Stage, double Before, double After, double StepUncertainty, double Covariance, double Scatter, int Count, bool IsSharp) : StepOutcome;

/// <summary>The readings do not tell.</summary>
/// <param name="Reasons">Why, each a sentence that says what to do.</param>
public sealed record StepNotFitted(IReadOnlyList<string> Reasons) : StepOutcome;
