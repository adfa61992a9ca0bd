using Evengrist.Laboratory.Validation;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>How an instrument agrees with the reference; differences are reference less instrument.</summary>
/// <param name="Found">Every figure.</param>
/// <param name="Decision">What is asked for, in words.</param>
public sealed record LabValidateAnswer(ValidationOutcome Found, string Decision)
{
    /// <summary>Answers a case.</summary>
    public static Reply<LabValidateAnswer> To(LabValidateCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return new(Of(ValidationModel.Of(posed.Spec)), []);
    }

    /// <summary>A judgement as it is answered.</summary>
    public static LabValidateAnswer Of(ValidationOutcome found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return new(found, Words(found));
    }

    private static string Words(ValidationOutcome found) => found.Decision switch
    {
        ValidationDecision.Recalibrate => "calibrate anew: what is left without bias is larger than the calibration and chance leave open",
        ValidationDecision.SlopeAndBias => FormattableString.Invariant($"set slope and bias: new result = {found.Intercept:0.####} + {found.Slope:0.####} × result"),
        ValidationDecision.BiasOnly => FormattableString.Invariant($"set the bias alone: add {found.Bias:+0.####;−0.####} to every result"),
        _ => "leave it as it is: neither bias nor slope is more than chance",
    };
}
