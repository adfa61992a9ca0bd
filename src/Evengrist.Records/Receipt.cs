using Evengrist.Ledger;

namespace Evengrist.Records;

/// <summary>What became of a batch.</summary>
/// <param name="Added">How many facts were added, each safe on disk.</param>
/// <param name="AlreadyKnown">How many were there already, with the same key and the same content, and were not added again.</param>
/// <param name="First">Number of the first fact added; null where none was.</param>
/// <param name="Last">Number of the last fact added; null where none was.</param>
public sealed record Receipt(int Added, int AlreadyKnown, FactId? First, FactId? Last);
