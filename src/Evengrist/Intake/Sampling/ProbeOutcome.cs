namespace Evengrist.Intake.Sampling;

/// <summary>What comes of planning a sample: a <see cref="ProbePlan"/>, or the reasons why there is none.</summary>
public abstract record ProbeOutcome;

/// <summary>A plan for one vehicle. Advice: the site's rules and local code come first.</summary>
/// <param name="Spec">What it is for.</param>
/// <param name="Points">Where the probe goes in; empty for a rule that cuts the stream.</param>
/// <param name="Increments">Probes or cuts to take.</param>
/// <param name="IncrementGrams">What each weighs at least, g; null where neither rule nor composite says so.</param>
/// <param name="CompositeGrams">What they make up at least, g; null where no such figure is known.</param>
/// <param name="Why">Which line of the rule counted, in words.</param>
/// <param name="Cautions">What may hurt somebody, each a sentence.</param>
public sealed record ProbePlan(
    ProbeSpec Spec, IReadOnlyList<ProbePoint> Points, int Increments, int? IncrementGrams, int? CompositeGrams, string Why, IReadOnlyList<string> Cautions) : ProbeOutcome
{
    /// <summary>For cuts of the stream: shares of the load run out at which to cut, 0 to 1; empty for probes.</summary>
    public IReadOnlyList<double> CutsAt { get; init; } = [];
}

/// <summary>There is no plan.</summary>
/// <param name="Reasons">Each a sentence that says what to do; at least one.</param>
public sealed record NoProbePlan(IReadOnlyList<string> Reasons) : ProbeOutcome;
