using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>A package (pallet, bulk load, tote) that may hold some of what was traced forward.</summary>
/// <param name="Place">The package.</param>
/// <param name="Mass">Its whole mass when it was filled.</param>
/// <param name="Made">When it was filled.</param>
/// <param name="Grams">Grams of it that stand for what was traced; water and additives set aside when grain was traced.</param>
/// <param name="ChanceOverThreshold">Belief, 0 to 1, that it holds more than the threshold.</param>
/// <param name="Where">The customer or other place it has gone to; null while it is in stock.</param>
/// <param name="Left">When it left; null while it is in stock.</param>
/// <param name="Hold">The hold on it; null where there is none.</param>
public sealed record Reached(Place Place, Mass Mass, Instant Made, Spread Grams, double ChanceOverThreshold, Place? Where, Instant? Left, Happening? Hold);
