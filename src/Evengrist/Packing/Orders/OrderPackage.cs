using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Packing.Orders;

/// <summary>A pallet or load as the ledger has it, to be set against orders.</summary>
/// <param name="Code">What it is known by.</param>
/// <param name="Product">Code of its product.</param>
/// <param name="Mass">Net mass packed.</param>
/// <param name="PackedAt">When.</param>
/// <param name="To">The customer it went to; null where it still stands.</param>
/// <param name="IsHeld">Whether it is on hold.</param>
public sealed record OrderPackage(string Code, string Product, Mass Mass, Instant PackedAt, string? To, bool IsHeld = false);
