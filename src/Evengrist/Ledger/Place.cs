using Evengrist.Quantities;

namespace Evengrist.Ledger;

/// <summary>Something grain, flour, water or an additive can be in. Opened once; its stock is reckoned from movements, never stored.</summary>
/// <param name="Id">The ledger's number of the place.</param>
/// <param name="Code">What people call it and type: <c>B14</c>, a ticket number, a pallet code. Unique, case does not matter.</param>
/// <param name="Kind">What sort of place it is.</param>
/// <param name="Name">A longer name, or the plate of a truck; may be empty.</param>
/// <param name="Material">The wheat class, flour or additive it is meant for; may be empty.</param>
public sealed record Place(PlaceId Id, string Code, PlaceKind Kind, string Name = "", string Material = "")
{
    /// <summary>The most it may hold; null where no limit is stated.</summary>
    public Mass? Capacity { get; init; }

    /// <summary>What it belongs to, in words: the farm and district of a field, the customer of an order; may be empty.</summary>
    public string Of { get; init; } = "";

    /// <summary>Share of every layer that stands over the outlet and leaves first when the core leaves first; 0 ≤ share ≤ 1, design choice.</summary>
    public double CoreShare { get; init; } = 0.1;

    /// <summary>Mass of the stirred stage at the outlet of a flow-through place; zero means first in first out alone.</summary>
    public Mass Stirred { get; init; }
}
