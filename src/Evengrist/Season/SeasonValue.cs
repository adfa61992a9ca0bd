using Evengrist.Quantities;

namespace Evengrist.Season;

/// <summary>One quality of a wheat, as it is spoken of.</summary>
/// <param name="Value">In the usual unit of its property: per cent, s, kg/hL, mg/kg or µg/kg.</param>
/// <param name="Spread">Standard deviation of what it may be off by, in the same unit, 0 or more.</param>
/// <param name="Basis">Basis of a share of solids; the default value for what has none.</param>
public sealed record SeasonValue(double Value, double Spread = 0, Basis Basis = default);
