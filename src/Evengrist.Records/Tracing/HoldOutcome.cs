using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Tracing;

/// <summary>What became of a list to hold.</summary>
/// <param name="Held">Codes now on hold by this.</param>
/// <param name="AlreadyHeld">Codes that were on hold before.</param>
/// <param name="Gone">What had left for a customer and cannot be held here.</param>
/// <param name="Receipt">What was recorded.</param>
public sealed record HoldOutcome(IReadOnlyList<string> Held, IReadOnlyList<string> AlreadyHeld, IReadOnlyList<GoneToCustomer> Gone, Receipt Receipt)
{
    /// <summary>What by the ledger left for a customer after the moment it is held from: the hold does not reach it there, and the customer is to be told.</summary>
    public IReadOnlyList<GoneToCustomer> LeftSince { get; init; } = [];
}

/// <summary>Something that had left before the hold: tell the customer.</summary>
/// <param name="Place">Code of the pallet, load or tote.</param>
/// <param name="Customer">Code of the customer.</param>
/// <param name="Mass">How much.</param>
/// <param name="At">When it left.</param>
public sealed record GoneToCustomer(string Place, string Customer, Mass Mass, Instant At);
