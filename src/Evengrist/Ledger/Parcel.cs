using NodaTime;

namespace Evengrist.Ledger;

/// <summary>A quantity of grain, flour, water or additive of one composition: an origin, a load, or a mixture that lay in a place.</summary>
/// <param name="Number">Its number in the parcel graph of one reckoning; parents have lower numbers.</param>
/// <param name="Place">Where it came from (an origin), was set down (a load) or was mixed.</param>
/// <param name="Movement">Position in <see cref="Book.Movements"/> of the movement that brought or gave it; −1 for a mixture.</param>
/// <param name="From">When it began to be.</param>
/// <param name="Until">When it was whole.</param>
/// <param name="Grams">How much; reckoned.</param>
/// <param name="GrainShare">Share of it that is neither water nor an additive, 0 to 1.</param>
public sealed record Parcel(int Number, PlaceId Place, int Movement, Instant From, Instant Until, double Grams, double GrainShare)
{
    /// <summary>Whether it is an origin: nothing is known of what it was before.</summary>
    public bool IsOrigin { get; init; }
}
