using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Season;

/// <summary>What the wheat mix of a flour has to keep.</summary>
/// <param name="What">The property.</param>
/// <param name="Least">At least so much, in the usual unit of the property; null for no such limit.</param>
/// <param name="Most">At most so much; null for no such limit.</param>
/// <param name="MissPrice">What a miss is taken to cost, money for a t of wheat mix that is one unit off, above 0. A miss is never on-spec, whatever its price.</param>
public sealed record SeasonLimit(Property What, double? Least, double? Most, double MissPrice)
{
    /// <summary>Basis at which a share of solids is meant; the default value for what has none.</summary>
    public Basis Basis { get; init; }

    /// <summary>Steps by which the limit may yield for money, in order.</summary>
    public IReadOnlyList<ReliefStep> Relief { get; init; } = [];
}
