using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Season.Terms;

/// <summary>What the wheat of a flour has to keep.</summary>
/// <param name="What">The property.</param>
/// <param name="MissPrice">What a miss is taken to cost, money for a t of wheat mix that is one unit off, above 0.</param>
public sealed record LimitTerms(Property What, double MissPrice)
{
    /// <summary>At least so much; null for no such limit.</summary>
    public double? Least { get; init; }

    /// <summary>At most so much; null for no such limit.</summary>
    public double? Most { get; init; }

    /// <summary>Basis at which a share of solids is meant.</summary>
    public Basis Basis { get; init; }

    /// <summary>Steps by which the limit may yield for money, in order.</summary>
    public IReadOnlyList<ReliefStep> Relief { get; init; } = [];

    /// <summary>The limit of the plan.</summary>
    public SeasonLimit ToLimit() => new(What, Least, Most, MissPrice) { Basis = Basis, Relief = Relief };
}
