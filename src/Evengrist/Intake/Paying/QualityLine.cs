using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Paying;

/// <summary>One property averaged over loads.</summary>
/// <param name="What">The property.</param>
/// <param name="Figure">The average.</param>
/// <param name="Loads">How many loads were read for it.</param>
/// <param name="Net">Their net.</param>
public sealed record QualityLine(Property What, Figure Figure, int Loads, Mass Net);
