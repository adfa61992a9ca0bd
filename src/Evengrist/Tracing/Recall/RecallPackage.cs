using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing.Bounds;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>A pallet, bulk load or tote that some hypothesis reaches, or that any outflow can reach.</summary>
/// <param name="Place">The package.</param>
/// <param name="Mass">Its whole mass when it was filled.</param>
/// <param name="Made">When it was filled.</param>
/// <param name="Grams">Grams of the suspect in it under each hypothesis, as it lay when first suspect; water taken up on the way not counted.</param>
/// <param name="Bound">Grams of the suspect in it at least and at most, under any outflow; same basis.</param>
/// <param name="Chance">Belief, 0 to 1, that it holds more than the threshold.</param>
/// <param name="Where">The customer or other place it has gone to last; null while all of it is in stock.</param>
/// <param name="Left">When; null while it is in stock.</param>
/// <param name="Hold">The hold on it; null where there is none.</param>
public sealed record RecallPackage(Place Place, Mass Mass, Instant Made, Spread Grams, Bound Bound, double Chance, Place? Where, Instant? Left, Happening? Hold);
