using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Mix;

/// <summary>One end of a limit as the wheat has to keep it.</summary>
/// <param name="End">The end as it was given.</param>
/// <param name="Relation">How flour follows from wheat; null for a limit of the wheat itself.</param>
/// <param name="IsLeast">Whether the wheat's value has to be at least <paramref name="Value"/>.</param>
/// <param name="Value">The wheat's value, usual unit.</param>
/// <param name="Basis">Its basis.</param>
/// <param name="Residual">One standard uncertainty of the relation, carried to the wheat; 0 without one.</param>
public sealed record WheatLimit(LimitEnd End, FlourRelation? Relation, bool IsLeast, double Value, Basis Basis, double Residual)
{
    /// <summary>Carries an end of a limit to the wheat: wheat = (flour − intercept)/slope. Page: docs/model/mix.md.</summary>
    /// <exception cref="ArgumentException">A limit of the flour has no relation.</exception>
    public static WheatLimit Of(LimitEnd end, IReadOnlyList<FlourRelation> relations)
    {
        ArgumentNullException.ThrowIfNull(end);
        ArgumentNullException.ThrowIfNull(relations);
        if (end.Limit.On == LimitOn.Wheat)
        {
            return new WheatLimit(end, null, end.IsLeast, end.Value, end.Limit.Basis, 0);
        }

        var relation = relations.FirstOrDefault(r => r.What == end.Limit.What) ?? throw new ArgumentException($"Nothing says how the flour's {end.Limit.What.Words()} follows from the wheat's.", nameof(relations));
        var flour = end.Limit.Basis == relation.FlourBasis || !end.Limit.Basis.IsStated ? end.Value : end.Value * Dry(relation.FlourBasis) / Dry(end.Limit.Basis);
        return new WheatLimit(end, relation, end.IsLeast == relation.Slope > 0, relation.WheatFor(flour), relation.WheatBasis, relation.Uncertainty / Math.Abs(relation.Slope));
    }

    private static double Dry(Basis basis) => 100 - (double)basis.MoisturePercent;
}
