using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing.Bounds;

/// <summary>Bounds that hold for any outflow from stores, at a moment.</summary>
/// <param name="AsOf">The moment.</param>
/// <param name="Traced">All that was suspect from the start; grams as it lay then.</param>
/// <param name="Packages">For each pallet, bulk load and tote that can hold as much as a gram: what was packed into it.</param>
/// <param name="Where">Where it can be, by the words of <see cref="Whereabouts"/>; the sums of all together are no bounds, each is.</param>
/// <param name="Stays">Places of the plant it can have been in, and when.</param>
/// <param name="Unexplained">Grams taken from places that by the ledger held nothing: of unknown origin, taken for not suspect.</param>
public sealed record BoundsOutcome(Instant AsOf, Bound Traced, IReadOnlyDictionary<PlaceId, Bound> Packages, IReadOnlyList<BoundedPlace> Where, IReadOnlyList<Stay> Stays, double Unexplained);

/// <summary>How much of it a place can hold.</summary>
/// <param name="Words">Where, in words.</param>
/// <param name="Place">The one place; null for a sum over packages.</param>
/// <param name="Grams">How much of it.</param>
public sealed record BoundedPlace(string Words, Place? Place, Bound Grams);

/// <summary>A place of the plant that the suspect can have been in.</summary>
/// <param name="Place">The place.</param>
/// <param name="From">From this moment on.</param>
/// <param name="Until">To this one; the moment looked back from where it can be there still.</param>
/// <param name="Most">Grams of it that can have come there, at most.</param>
public sealed record Stay(Place Place, Instant From, Instant Until, double Most);
