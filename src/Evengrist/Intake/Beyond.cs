namespace Evengrist.Intake;

/// <summary>What a scale says outside its table, at one end.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="PerStep">What one step up adds to the effect (so one step down takes it), for <see cref="BeyondRule.PerStep"/>.</param>
/// <param name="StepSize">Size of a step in the unit of the factor, above 0, for <see cref="BeyondRule.PerStep"/>.</param>
public sealed record Beyond(BeyondRule Rule, decimal PerStep = 0m, decimal StepSize = 0m)
{
    /// <summary>The end step holds on.</summary>
    public static readonly Beyond Holds = new(BeyondRule.Hold);

    /// <summary>Nothing is agreed.</summary>
    public static readonly Beyond NotCovered = new(BeyondRule.NotCovered);
}
