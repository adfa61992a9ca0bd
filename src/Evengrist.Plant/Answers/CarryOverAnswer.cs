using Evengrist.Intake.Carrying;

namespace Evengrist.Plant.Answers;

/// <summary>A carry-over in plain values.</summary>
public sealed record CarryOverAnswer(decimal CarriedKg, decimal SharePercent, decimal BelowAfterTonnes, double ThresholdPercent, string Formula, string Source)
{
    /// <summary>The carry-over in plain values, not rounded.</summary>
    public static CarryOverAnswer Of(CarryOverOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        return new(outcome.Carried.Value, outcome.Share.Value, outcome.Until.Value, outcome.Threshold, outcome.Carried.Because!.Formula, outcome.Carried.Because.Source);
    }
}
