using Evengrist.Ledger;

namespace Evengrist.Laboratory.Methods;

/// <summary>How far the mean reading of a check sample may lie from what the sample is known to have.</summary>
/// <param name="What">The property.</param>
/// <param name="Within">Either way, in the first unit of the property; above 0.</param>
/// <param name="Mark">Where the figure comes from.</param>
/// <param name="Source">The source in words.</param>
public sealed record CheckTolerance(Property What, decimal Within, FigureMark Mark, string Source);
