namespace Evengrist.Intake.Sampling;

/// <summary>How often each step from the load to the number is repeated; each at least 1.</summary>
/// <param name="Probes">Probes in the composite.</param>
/// <param name="Samples">Laboratory samples drawn from composites.</param>
/// <param name="Subsamples">Portions prepared.</param>
/// <param name="Determinations">Determinations made.</param>
public sealed record SampleSizes(int Probes = 1, int Samples = 1, int Subsamples = 1, int Determinations = 1)
{
    /// <summary>Whether every number is at least 1.</summary>
    public bool AreSound => Probes >= 1 && Samples >= 1 && Subsamples >= 1 && Determinations >= 1;
}
