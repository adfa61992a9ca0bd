namespace Evengrist.Intake.Sampling;

/// <summary>How sure the side of one edge is.</summary>
/// <param name="Edge">The edge.</param>
/// <param name="ChanceAtLeast">Chance, 0 to 1, that the true value is at least the edge.</param>
/// <param name="ReadsAbove">Whether the reading itself is at or above it.</param>
/// <param name="Settled">Whether the side it reads is sure enough by the policy.</param>
/// <param name="MoreProbes">Further probes (or whole samples) that would settle it if the mean stayed where it is; 0 where it is settled, null where none would.</param>
public sealed record EdgeDoubt(Edge Edge, double ChanceAtLeast, bool ReadsAbove, bool Settled, int? MoreProbes)
{
    /// <summary>Chance that the load is really on the side it reads.</summary>
    public double ChanceRightSide => ReadsAbove ? ChanceAtLeast : 1 - ChanceAtLeast;
}
