namespace Evengrist.Season;

/// <summary>One side of a limit on the scale on which its property averages: Σ w·(v − edge)·x ≥ 0 over the wheats of a mix, or ≤ 0 where it is no floor.</summary>
/// <param name="Limit">The limit.</param>
/// <param name="IsLeast">Whether it is its least; its most otherwise.</param>
public sealed record LimitSide(SeasonLimit Limit, bool IsLeast)
{
    /// <summary>The limit in the unit of the property, on the limit's basis.</summary>
    /// <exception cref="InvalidOperationException">The limit has no such side.</exception>
    public double At => (IsLeast ? Limit.Least : Limit.Most) ?? throw new InvalidOperationException("The limit has no such side.");

    /// <summary>The limit on the scale.</summary>
    public double Edge => SeasonScale.OnScale(Limit.What, At, Limit.Basis);

    /// <summary>Whether it is a floor on the scale; a least falling number is a ceiling there.</summary>
    public bool IsFloor => IsLeast != SeasonScale.Falls(Limit.What);

    /// <summary>What a t·unit of a miss costs, on the scale.</summary>
    public double MissPrice => Limit.MissPrice / SeasonScale.PerUnit(Limit.What, At);

    /// <summary>By how much each step of relief moves the edge, units of the scale, above 0, and what a t·unit of it costs.</summary>
    public IEnumerable<(double By, double Price)> Relief
    {
        get
        {
            var (at, edge) = (At, Edge);
            var dry = SeasonScale.Weight(Limit.What, Limit.Basis.IsStated ? (double)Limit.Basis.MoisturePercent : 0);
            foreach (var step in Limit.Relief)
            {
                at += IsLeast ? -step.By : step.By;
                var next = SeasonScale.OnScale(Limit.What, at, Limit.Basis);
                var by = Math.Abs(next - edge);
                edge = next;
                yield return (by, step.CostPerTonne / (by * dry));
            }
        }
    }

    /// <summary>Every side of every limit of a flour, in their order.</summary>
    public static IEnumerable<LimitSide> Of(SeasonFlour flour)
    {
        ArgumentNullException.ThrowIfNull(flour);
        return flour.Limits.SelectMany(l => new[] { true, false }.Where(least => (least ? l.Least : l.Most) is not null).Select(least => new LimitSide(l, least)));
    }

    /// <summary>How far a t of wheat lies on the good side, t·units on the scale: the coefficient of its tonnes in the limit.</summary>
    public double Off(double moisturePercent, SeasonQuality quality)
    {
        ArgumentNullException.ThrowIfNull(quality);
        return (IsFloor ? 1 : -1) * SeasonScale.Weight(Limit.What, moisturePercent) * (SeasonScale.OnScale(Limit.What, quality.Values[Limit.What]) - Edge);
    }

    /// <summary>What a mix that is off by so much on the scale is off by, in units of the property on the basis of the limit.</summary>
    public double AmountOf(double offScale) => Math.Abs(SeasonScale.FromScale(Limit.What, Edge + (IsFloor ? -offScale : offScale), Limit.Basis) - At);
}
