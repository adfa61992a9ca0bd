using Evengrist.Laboratory.Lots;

namespace Evengrist.Records.Laboratory;

/// <summary>What was decided of lots: papers by lot and version, nothing lost.</summary>
public static class LotDecisions
{
    /// <summary>Every decision, by lot and version.</summary>
    public static IReadOnlyList<LotDecision> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(LotDecision.Kind).All().Read<LotDecision>(LotDecision.TryRead).Select(p => p.Value)];
    }
}
