using Evengrist.Ledger;
using Evengrist.Packing.Rework;
using NodaTime;

namespace Evengrist.Records.Packing.Rework;

/// <summary>A tote with its genealogy, as the ledger tells it at a moment.</summary>
/// <param name="Tote">What counts for feeding it.</param>
/// <param name="Since">When the first of it came in; null where nothing did.</param>
/// <param name="Record">Why it is rework; null where nobody said.</param>
/// <param name="From">What went into it: from where, how much, when.</param>
/// <param name="To">What it was fed into.</param>
public sealed record SeenTote(ReworkTote Tote, Instant? Since, ToteRecord? Record, IReadOnlyList<Movement> From, IReadOnlyList<Movement> To);
