using Evengrist.Ledger;

namespace Evengrist.Packing.Dispatch;

/// <summary>A source of what was released, as far as it is reasonably known: where an ingredient came from and the truck it came in.</summary>
/// <param name="Origin">The place it came from: a field, a merchant's load, an additive lot, water, opening stock.</param>
/// <param name="Truck">The truck or railcar; null where it came in none.</param>
/// <param name="ExpectedKilograms">Kilograms of the release from it, expected over the ways bins may empty; reckoned.</param>
/// <param name="MostKilograms">The most under any of them, package by package.</param>
/// <remarks>Source: 21 CFR 1.345(b), read in copies of 2019 and of April 2026: the specific source of each ingredient, to the extent it is reasonably available. Model: docs/model/dispatch.md.</remarks>
public sealed record ReleaseSource(Place Origin, Place? Truck, double ExpectedKilograms, double MostKilograms);
