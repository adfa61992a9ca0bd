using Evengrist.Ledger;

namespace Evengrist.Tracing;

/// <summary>One origin of what was traced back: a field by way of a truck, a merchant's load, water, an additive lot, opening stock.</summary>
/// <param name="Origin">The place it came from.</param>
/// <param name="Truck">The truck or railcar it came in; null where it came in none.</param>
/// <param name="Share">Share of the whole, water and additives included; a fraction. Over all roots each hypothesis sums to one.</param>
/// <param name="GrainShare">Share of the grain alone, water and additives set aside; a fraction; zero for water and additives.</param>
public sealed record Root(Place Origin, Place? Truck, Spread Share, Spread GrainShare)
{
    /// <summary>Whether it is neither water nor an additive.</summary>
    public bool IsGrain => Origin.Kind is not (PlaceKind.Water or PlaceKind.AdditiveLot);
}
